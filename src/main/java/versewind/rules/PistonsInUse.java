package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.General;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** The general pistons of a plan: each distinct registration has one, in the order of need. Common practice, no source. */
final class PistonsInUse {
    private PistonsInUse() {}

    /** The general that sets just what a verse has, or else the first that the plan leaves free, on the lowest memory level; if there is one. */
    static Optional<String> forVerse(Plan plan, Instrument organ, Verse verse) {
        List<Verse> all =
                plan.hymns().stream().flatMap(hymn -> hymn.verses().stream()).toList();
        Optional<String> same = all.stream()
                .filter(other -> isSetTheSame(other, verse) && isGeneral(other.piston(), organ))
                .map(Verse::piston)
                .findFirst();
        return same.or(() -> inOrder(organ)
                .filter(general -> all.stream().noneMatch(other -> isNamed(other.piston(), general)))
                .findFirst()
                .map(General::name));
    }

    static boolean isSetTheSame(Verse one, Verse other) {
        return one.registration().stops().equals(other.registration().stops())
                && one.registration().couplers().equals(other.registration().couplers())
                && one.registration().tremulants().equals(other.registration().tremulants());
    }

    static boolean isGeneral(String piston, Instrument organ) {
        return General.of(piston).filter(organ.pistons()::has).isPresent();
    }

    /** Whether two names are those of one general on one memory level. */
    static boolean isTheSame(String piston, String other) {
        return General.of(piston).filter(general -> isNamed(other, general)).isPresent();
    }

    private static boolean isNamed(String piston, General general) {
        return General.of(piston).equals(Optional.of(general));
    }

    /** All that the organ has, those of the first memory level first. */
    private static Stream<General> inOrder(Instrument organ) {
        return IntStream.rangeClosed(1, organ.pistons().memoryLevels()).boxed().flatMap(level -> IntStream.rangeClosed(
                        1, organ.pistons().generals())
                .mapToObj(number -> new General(level, number)));
    }
}
