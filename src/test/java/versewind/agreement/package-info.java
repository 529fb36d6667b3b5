/**
 * A measure of the rule book: a teacher who knows the organ and the plan, and nothing of the program's own rules,
 * judges what the program proposes, finds and mends, on shipped organs and on organs drawn at random.
 */
package versewind.agreement;
