package versewind.proposal;

import java.util.List;

/**
 * What speaks against a registration, in points: the lower the better. It is the sum of its parts.
 *
 * @param parts one of every kind, in their order
 */
public record Score(List<ScorePart> parts) {

    public Score {
        parts = List.copyOf(parts);
    }

    /** The sum of the parts. */
    public double points() {
        return parts.stream().mapToDouble(ScorePart::points).sum();
    }

    /** One part. */
    public ScorePart part(PartKind kind) {
        return parts.get(kind.ordinal());
    }
}
