package versewind.proposal;

import versewind.plan.Plan;
import versewind.plan.VersePlace;

/**
 * A verse for which something is to be proposed.
 *
 * @param plan with the verse
 * @param place of the verse
 * @param scoring the scores of its drafts
 * @param step from the verse before
 */
record Asked(Plan plan, VersePlace place, ScoreFunction scoring, Step step) {}
