package versewind.proposal;

import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * The rows against a registration, in points: the lower the better. It is the sum of its parts.
 *
 * @param parts every row that speaks against it
 */
public record Score(List<ScorePart> parts) {

    private static final double WORTH_A_WORD = 0.3;
    private static final Set<PartKind> UNSAID = Set.of(PartKind.ECONOMY, PartKind.AIM);

    public Score {
        parts = List.copyOf(parts);
    }

    /** The sum of the parts. */
    public double points() {
        return parts.stream().mapToDouble(ScorePart::points).sum();
    }

    /**
     * The sentences worth a word against it, the weightiest first; the number of stops and moves, and a balance
     * that is as wanted, are not.
     */
    public List<String> remarks() {
        return parts.stream()
                .filter(part -> !UNSAID.contains(part.kind()) && part.points() >= WORTH_A_WORD)
                .sorted(Comparator.comparingDouble(ScorePart::points).reversed())
                .map(ScorePart::sentence)
                .toList();
    }
}
