/**
 * What an experienced colleague would say: how every verse of a plan stands, what is found in it, how it is played,
 * what has to be moved from verse to verse.
 *
 * <p>Rules are small classes, one a rule, in three kinds: on how stops are put together ({@code ChorusRule}, cheap enough
 * for a search), on a verse as it sounds ({@code VerseRule}), on a hymn as a whole ({@code HymnRule}). Every number of
 * theirs stands in {@code Practice}.
 *
 * <p>Pure. Knows {@code organ}, {@code plan} and {@code sound}.
 */
package versewind.rules;
