package versewind.calibration;

import java.util.List;
import java.util.stream.Collectors;
import versewind.organ.Quoted;

/**
 * A judgement that does not agree with others.
 *
 * @param answer the judgement
 * @param others those that it hardly can be true beside; empty if it only disagrees with all the rest together
 */
public record Contradiction(HeardRegistration answer, List<HeardRegistration> others) {

    private static final int MOST_NAMED = 3;

    public Contradiction {
        others = List.copyOf(others);
    }

    /** What it contradicts, and what may be the reason. */
    public String sentence() {
        return claim()
                + " Was something else drawn, or were more or fewer people there? Delete the one that was wrong.";
    }

    /** "You found V5 of 208 on Sun 22 Nov 2026 too soft, but V4, with the same stops, right.". */
    public String claim() {
        String but = others.isEmpty()
                ? "which agrees with none of the rest"
                : "but " + others.stream().limit(MOST_NAMED).map(this::other).collect(Collectors.joining(", "))
                        + (others.size() > MOST_NAMED ? " and " + (others.size() - MOST_NAMED) + " more" : "");
        return "You found " + answer.inWords() + " " + answer.heard().word() + ", " + but + ".";
    }

    private String other(HeardRegistration other) {
        boolean isAlike = other.registration().equals(answer.registration());
        return other.besides(answer)
                + (isAlike ? ", with the same stops, " : " ")
                + other.heard().word();
    }

    /** What it contradicts: "ordinary" (right) and "2026-11-22, 208 V3" (too strong). */
    public String whom() {
        if (others.isEmpty()) {
            return "all the rest";
        }
        String named = others.stream()
                .limit(MOST_NAMED)
                .map(other -> Quoted.text(other.name()) + " (" + other.heard().word() + ")")
                .collect(Collectors.joining(", "));
        int more = others.size() - MOST_NAMED;
        return more > 0 ? named + " and " + more + " more" : named;
    }
}
