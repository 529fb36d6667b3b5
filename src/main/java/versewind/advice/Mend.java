package versewind.advice;

import java.util.ArrayList;
import java.util.List;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Edit;
import versewind.plan.Place;
import versewind.plan.Verse;

/**
 * The smallest change that mends what was found.
 *
 * @param words what to do, in one sentence
 * @param edit the same, to be applied to the plan
 */
public record Mend(String words, Edit edit) {

    /** Another registration for a verse. */
    static Mend drawing(Instrument organ, Place place, Verse verse, Registration after) {
        return new Mend(
                words(organ, verse.registration(), after),
                new Edit.SetVerse(place.hymn(), place.verse(), verse.withRegistration(after)));
    }

    private static String words(Instrument organ, Registration before, Registration after) {
        List<String> parts = new ArrayList<>();
        for (Movements movements : Movements.of(organ, Moves.between(before, after))) {
            String where = movements.where().equals(Movements.COUPLERS) ? "" : movements.where() + ": ";
            add(parts, "draw " + where, movements.drawn());
            add(parts, "put in " + where, movements.putIn());
            movements.box().ifPresent(to -> parts.add("set the box of the " + movements.where() + " to " + to.word()));
        }
        return sentence(String.join("; ", parts));
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
