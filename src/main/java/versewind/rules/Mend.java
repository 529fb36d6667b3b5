package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/**
 * The smallest change that mends a finding.
 *
 * @param words what to do, in one sentence
 * @param place the verse that is changed
 * @param verse what it becomes
 */
public record Mend(String words, VersePlace place, Verse verse) {

    /** The plan with the verse changed. */
    public Plan on(Plan plan) {
        return plan.withVerse(place, verse);
    }

    /** The changes in words: "play the left hand on the Great; draw Great: Principal 4". */
    static String words(Instrument organ, Verse before, Verse after) {
        return Stream.of(
                        hands(organ, before.hands(), after.hands()),
                        words(organ, before.registration(), after.registration()))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String hands(Instrument organ, HandsAndFeet before, HandsAndFeet after) {
        String right = organ.divisions().get(after.right()).name();
        String left = organ.divisions().get(after.left()).name();
        if (before.equals(after)) {
            return "";
        }
        if (before.layout() != after.layout()) {
            return after.layout().usesPedal() ? "play it in four parts on the " + right : "play it with the hands only";
        }
        if (after.right() == after.left()) {
            return "play it on the " + right;
        }
        if (before.left() == after.left()) {
            return "play the tune on the " + right;
        }
        return before.right() == after.right()
                ? "play the left hand on the " + left
                : "play the tune on the " + right + " and the rest on the " + left;
    }

    /** The changes in words: "draw Great: Principal 4; put in Swell: Oboe 8". */
    static String words(Instrument organ, Registration before, Registration after) {
        List<String> parts = new ArrayList<>();
        for (StopChangesByDivision movements : StopChangesByDivision.of(organ, StopChanges.between(before, after))) {
            String where = movements.where().equals(StopChangesByDivision.COUPLERS) ? "" : movements.where() + ": ";
            add(parts, "draw " + where, movements.drawn());
            add(parts, Registration.PUT_IN + " " + where, movements.putIn());
            movements.box().ifPresent(to -> parts.add(0, box(organ, before, movements.where(), to)));
        }
        return String.join("; ", parts);
    }

    private static String box(Instrument organ, Registration before, String division, BoxPosition to) {
        BoxPosition from = before.boxes().get(organ.division(division).orElseThrow());
        boolean isWhole = to == BoxPosition.OPEN || to == BoxPosition.CLOSED;
        return (to.compareTo(from) > 0 ? "open" : "close") + " the box of the " + division
                + (isWhole ? "" : " to " + to.word());
    }

    private static void add(List<String> parts, String verb, List<String> names) {
        if (!names.isEmpty()) {
            parts.add(verb + String.join(", ", names));
        }
    }

    /** Words as a sentence. */
    static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
