package versewind.rules;

/**
 * The head of a rule's row.
 *
 * @param word its name in files and on screens
 * @param weight cost of breaking it, 1 to 10
 * @param severity how much it usually matters
 */
record RuleHead(String word, int weight, Severity severity) {}
