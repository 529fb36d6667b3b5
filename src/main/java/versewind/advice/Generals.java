package versewind.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** The general pistons of a plan: each distinct registration has one, in the order of need. Common practice, no source. */
final class Generals {
    private Generals() {}

    /** The general that sets just what a verse has, or else the first that the plan leaves free; if there is one. */
    static Optional<String> forVerse(Plan plan, Instrument organ, Verse verse) {
        List<Verse> all =
                plan.hymns().stream().flatMap(hymn -> hymn.verses().stream()).toList();
        Optional<String> same = all.stream()
                .filter(other -> isSetTheSame(other, verse) && isGeneral(other.piston(), organ))
                .map(Verse::piston)
                .findFirst();
        return same.or(() -> names(organ).stream()
                .filter(name -> all.stream().noneMatch(other -> other.piston().equals(name)))
                .findFirst());
    }

    static boolean isSetTheSame(Verse one, Verse other) {
        return one.registration().stops().equals(other.registration().stops())
                && one.registration().couplers().equals(other.registration().couplers())
                && one.registration().tremulants().equals(other.registration().tremulants());
    }

    static boolean isGeneral(String piston, Instrument organ) {
        return names(organ).contains(piston);
    }

    private static List<String> names(Instrument organ) {
        return IntStream.rangeClosed(1, organ.pistons().generals())
                .mapToObj(number -> "G" + number)
                .toList();
    }
}
