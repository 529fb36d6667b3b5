/**
 * The rule book: how every verse of a plan stands, what is found in it, how it is played, and what has to be changed
 * from verse to verse.
 *
 * <p>A rule is a row of an enum with its word, its points, its condition, its sentence and what may fix it: {@code
 * ChorusRule} on a registration as it is played (cheap enough for a search), {@code BalanceRule} on a verdict, {@code
 * VerseRule} on a verse as it sounds, {@code ChangeRule} on a verse after the one before, {@code HymnRule} on a hymn as
 * a whole. 5 points and more are for what nobody does. A rule without its cases in {@code RuleBookTest} fails. Every
 * number of theirs stands in {@code Practice}; the order of building up, along which fixes move, is the {@code
 * BuildingLine}.
 *
 * <p>Pure. Knows {@code organ}, {@code plan}, {@code acoustics} and {@code sound}.
 */
package versewind.rules;
