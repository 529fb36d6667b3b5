package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Edit;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/**
 * The smallest change that mends what was found.
 *
 * @param words what to do, in one sentence
 * @param edit the same, to be applied to the plan
 */
public record Mend(String words, Edit edit) {

    /** Another registration for a verse. */
    static Mend drawing(Instrument organ, VersePlace place, Verse verse, Registration after) {
        return drawing(organ, place, verse, List.of(verse.registration(), after));
    }

    /**
     * Another registration for a verse, reached in steps.
     *
     * @param drawn what is drawn before and after each step, the first as it is now
     */
    static Mend drawing(Instrument organ, VersePlace place, Verse verse, List<Registration> drawn) {
        String steps = IntStream.range(1, drawn.size())
                .mapToObj(i -> words(organ, drawn.get(i - 1), drawn.get(i)))
                .collect(Collectors.joining("; then "));
        Registration after = drawn.get(drawn.size() - 1);
        return new Mend(sentence(steps), new Edit.SetVerse(place.hymn(), place.verse(), verse.withRegistration(after)));
    }

    /** A verse set on a piston. */
    static Mend onPiston(String piston, VersePlace place, Verse verse) {
        return new Mend(
                "Set it on piston " + piston + ".",
                new Edit.SetVerse(place.hymn(), place.verse(), verse.withPiston(piston)));
    }

    /** What is moved, "draw Great: Principal 4; put in Swell: Oboe 8". */
    static String words(Instrument organ, Registration before, Registration after) {
        List<String> parts = new ArrayList<>();
        for (StopChangesByDivision movements : StopChangesByDivision.of(organ, StopChanges.between(before, after))) {
            String where = movements.where().equals(StopChangesByDivision.COUPLERS) ? "" : movements.where() + ": ";
            add(parts, "draw " + where, movements.drawn());
            add(parts, "put in " + where, movements.putIn());
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
