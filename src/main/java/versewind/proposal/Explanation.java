package versewind.proposal;

import java.util.Comparator;
import java.util.Set;
import java.util.stream.Collectors;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.rules.BuildingStep;
import versewind.rules.OrganFacts;
import versewind.sound.Balance;
import versewind.sound.Verdict;

/** Reasons for a registration, in words. */
final class Explanation {

    private static final double RESERVATION = 0.6;

    /** So many stops are named. */
    private static final int FEW = 2;

    private static final Set<PartKind> RESERVED =
            Set.of(PartKind.FAULT, PartKind.RULE, PartKind.CHANGES, PartKind.HYMN);

    private final OrganFacts organ;
    private final Requirement requirement;

    Explanation(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
    }

    /** The sound: "principals 8 4 2 on the Great, step 5 of 10". */
    String sound(Sketch sketch) {
        Sound sound = sketch.sound();
        String keyboard = name(sound.keyboard());
        if (sound.voice() != Voice.NONE) {
            return "tune on the " + keyboard + " " + sound.words() + ", over " + sound.place() + " on the "
                    + name(sketch.draft().hands().left());
        }
        String words = isBeyond(sound) ? keyboard + " " + chorus(sound) : sound.words() + " on the " + keyboard;
        return words + (sound.place().isEmpty() ? "" : ", " + sound.place());
    }

    /** The sound, how it stands to the singers, and what most speaks against it. */
    String why(Candidate candidate, Balance promised, Score score) {
        Sketch sketch = candidate.sketch();
        String words =
                sound(sketch) + feet(sketch) + ": " + balance(candidate.balance(), promised, reservation(score)) + ".";
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private String feet(Sketch sketch) {
        return switch (sketch.draft().hands().layout()) {
            case FOUR_PARTS, MELODY_SOLOED -> "";
            case MANUALS_ONLY, SOLOED_WITHOUT_PEDAL -> ", hands only";
            case PEDAL_BY_COUPLER -> ", the feet without 16 ft";
        };
    }

    /** True for a sound that is called by the last thing that it adds. */
    private static boolean isBeyond(Sound sound) {
        return sound.step().compareTo(BuildingStep.PRINCIPALS_8_4_2) > 0;
    }

    /** How another sound differs from the best: its manual, its colour, or what it adds or leaves out. */
    String unlike(Candidate best, Candidate other) {
        Sound one = best.sketch().sound();
        Sound two = other.sketch().sound();
        return difference(best, other, one, two) + level(other.levelDba() - best.levelDba());
    }

    private String difference(Candidate best, Candidate other, Sound one, Sound two) {
        if (two.voice() != Voice.NONE) {
            String tune = "tune on the " + name(two.keyboard()) + " " + two.words();
            boolean isChoice = organ.keyboards().size() > 2;
            return isChoice ? tune + " over the " + name(other.draft().hands().left()) : tune;
        }
        if (one.keyboard() != two.keyboard()) {
            return "on the " + name(two.keyboard()) + ": " + (isBeyond(two) ? chorus(two) : two.words());
        }
        if (!one.colour().equals(two.colour())) {
            return two.words();
        }
        boolean isOfStops = best.draft().couplers().equals(other.draft().couplers());
        IndexSet more = other.draft().stops().minus(best.draft().stops());
        IndexSet less = best.draft().stops().minus(other.draft().stops());
        if (isOfStops && less.isEmpty() && isFew(more)) {
            return "adds " + names(more, two.keyboard()) + box(best, other);
        }
        if (isOfStops && more.isEmpty() && isFew(less)) {
            return "leaves out " + names(less, two.keyboard()) + box(best, other);
        }
        return two.step().compareTo(one.step()) > 0
                ? "goes on to " + two.words()
                : (isBeyond(two) ? "only as far as " : "only ") + two.words();
    }

    /** A chorus by what it adds last: "chorus with its mixture", "chorus with the Swell mixture". */
    private String chorus(Sound sound) {
        String own = name(sound.keyboard()) + " ";
        String last = sound.words();
        if (last.startsWith(own)) {
            return "chorus with its " + last.substring(own.length());
        }
        boolean isOfAnother = !last.endsWith("coupled")
                && organ.organ().divisions().stream().anyMatch(each -> last.startsWith(each.name() + " "));
        return "chorus with " + (isOfAnother ? "the " : "") + last;
    }

    /** The first box that stands elsewhere and is heard: ", Swell half". */
    private String box(Candidate best, Candidate other) {
        return other.heard().boxes().stream()
                .filter(box -> boxOf(best, box) != boxOf(other, box))
                .mapToObj(box -> ", " + name(box) + " " + boxOf(other, box).word())
                .findFirst()
                .orElse("");
    }

    private static BoxPosition boxOf(Candidate candidate, int division) {
        return candidate.draft().registration().boxes().get(division);
    }

    private static boolean isFew(IndexSet stops) {
        return !stops.isEmpty() && stops.size() <= FEW;
    }

    /** Stops, with their division where it is not that of the keyboard. */
    private String names(IndexSet stops, int keyboard) {
        return stops.stream()
                .mapToObj(stop -> (organ.divisionOf(stop) == keyboard ? "" : name(organ.divisionOf(stop)) + " ")
                        + organ.stop(stop).label())
                .collect(Collectors.joining(" and "));
    }

    private static String level(double db) {
        long whole = Math.round(db);
        return whole == 0 ? ", same level" : ", " + Math.abs(whole) + " dB " + (whole > 0 ? "louder" : "softer");
    }

    private String name(int division) {
        return organ.organ().divisions().get(division).name();
    }

    /** How it stands to the singers; as wanted only where neither the verdict nor a rule says otherwise. */
    private String balance(double share, Balance promised, String reservation) {
        boolean isLess = requirement.target().isMissed(share);
        boolean isMore = requirement.target().isPassed(share);
        String aim = isLess ? tooLittle() : isMore ? tooMuch() : asWanted();
        if (promised.kind() == Balance.Kind.ORGAN_ALONE) {
            return aim + reservation;
        }
        boolean isContradicted = promised.verdict().way() != Verdict.Way.NONE || !reservation.isEmpty();
        return promised.words() + (isLess || isMore || !isContradicted ? "; " + aim : "") + reservation;
    }

    private String tooLittle() {
        return switch (requirement.mode()) {
            case CONGREGATION ->
                requirement.company().isSung() ? "less firmly than the verse wants" : "softer than it could be";
            case SMALL_CHOIR, SOLO_VOICE -> "near to covering the words";
            case MELODY_SOLOED -> "the tune stands out only a little";
        };
    }

    private String tooMuch() {
        return switch (requirement.mode()) {
            case CONGREGATION ->
                requirement.company().isSung() ? "more strongly than the verse wants" : "stronger than it need be";
            case SMALL_CHOIR, SOLO_VOICE -> "well below the singing";
            case MELODY_SOLOED -> "the tune stands far out";
        };
    }

    private String asWanted() {
        return switch (requirement.mode()) {
            case CONGREGATION ->
                requirement.company().isSung()
                        ? "as strong as the verse wants"
                        : "strong enough to introduce the verse";
            case SMALL_CHOIR, SOLO_VOICE ->
                requirement.company().isSung()
                        ? "it supports the singing and lets the words through"
                        : "strong enough to introduce the verse";
            case MELODY_SOLOED -> "the tune is heard over a soft accompaniment";
        };
    }

    /** The row that most speaks against it. */
    private static String reservation(Score score) {
        return score.parts().stream()
                .filter(part -> RESERVED.contains(part.kind()) && part.points() >= RESERVATION)
                .max(Comparator.comparingDouble(ScorePart::points))
                .map(part -> "; but " + lower(part.sentence()))
                .orElse("");
    }

    /** A sentence as part of another: names keep their capital letters. */
    private static String lower(String sentence) {
        String words = sentence.substring(0, sentence.length() - 1);
        boolean isName = words.contains(":") && words.indexOf(':') < words.indexOf(' ');
        return isName ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }
}
