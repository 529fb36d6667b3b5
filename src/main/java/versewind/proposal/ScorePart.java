package versewind.proposal;

/**
 * A part of a score.
 *
 * @param kind what it is
 * @param points what it costs, 0 or more; an estimate
 * @param sentence what it rests on, in one sentence
 */
public record ScorePart(PartKind kind, double points, String sentence) {}
