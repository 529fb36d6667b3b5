package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Registration;
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

    /**
     * Another registration for a verse, reached in steps.
     *
     * @param drawn the registrations before and after each step, the first as it is now
     */
    static Mend drawing(InHymn hymn, int index, List<Registration> drawn) {
        String steps = IntStream.range(1, drawn.size())
                .mapToObj(i -> words(hymn.organ(), drawn.get(i - 1), drawn.get(i)))
                .collect(Collectors.joining("; then "));
        Registration after = drawn.get(drawn.size() - 1);
        return hymn.mend(sentence(steps), index, hymn.verse(index).withRegistration(after));
    }

    /** The changes in words: "draw Great: Principal 4; push in Swell: Oboe 8". */
    static String words(Instrument organ, Registration before, Registration after) {
        List<String> parts = new ArrayList<>();
        for (StopChangesByDivision movements : StopChangesByDivision.of(organ, StopChanges.between(before, after))) {
            String where = movements.where().equals(StopChangesByDivision.COUPLERS) ? "" : movements.where() + ": ";
            add(parts, "draw " + where, movements.drawn());
            add(parts, "push in " + where, movements.putIn());
            movements.box().ifPresent(to -> parts.add("set the box of the " + movements.where() + " to " + to.word()));
        }
        return String.join("; ", parts);
    }

    private static void add(List<String> parts, String verb, List<String> names) {
        if (!names.isEmpty()) {
            parts.add(verb + String.join(", ", names));
        }
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
