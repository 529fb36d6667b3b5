package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.General;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/**
 * The general pistons of a plan: each distinct registration has one, in the order of need, and a verse that is drawn
 * otherwise than others on its piston goes on a piston of its own. Common practice, no source.
 */
public final class PistonChoice {

    private PistonChoice() {}

    /**
     * A verse that is drawn otherwise than the plan has it, on a piston that may set it: its own where no other verse
     * has it, else one that sets just this, or the first that is free. A verse that was set by hand stays so.
     *
     * @param plan with the verse as it was
     * @param place of the verse
     * @param drawn the verse as it is drawn now
     * @param organ the instrument
     */
    public static Verse redrawn(Plan plan, VersePlace place, Verse drawn, Instrument organ) {
        Verse before = plan.hymns().get(place.hymn()).verses().get(place.verse());
        if (isSetTheSame(drawn, before)) {
            return drawn.withPiston(before.piston());
        }
        Verse without = drawn.withPiston("");
        if (!isGeneral(before.piston(), organ)) {
            return without;
        }
        if (!isShared(plan, before.piston())) {
            return drawn.withPiston(before.piston());
        }
        return without.withPiston(
                forVerse(plan.withVerse(place, without), organ, without).orElse(""));
    }

    /** A mend, with another piston where it would leave one that sets something else in another verse. */
    static Mend mend(Mend mend, InHymn hymn, int index) {
        Verse before = hymn.verse(index);
        if (!mend.place().equals(hymn.place(index)) || !mend.verse().piston().equals(before.piston())) {
            return mend;
        }
        Verse after = redrawn(hymn.plan(), hymn.place(index), mend.verse(), hymn.organ());
        if (after.piston().equals(before.piston()) || !isGeneral(before.piston(), hymn.organ())) {
            return mend;
        }
        String words = after.piston().isEmpty()
                ? " No piston is free for it: move it by hand."
                : " Set it on piston " + after.piston() + ".";
        return hymn.mend(mend.words() + words, index, after);
    }

    /** Another piston for a verse whose own cannot be used. */
    static Optional<Mend> another(InHymn hymn, int index) {
        Verse verse = hymn.verse(index).withPiston("");
        Plan without = hymn.plan().withVerse(hymn.place(index), verse);
        return forVerse(without, hymn.organ(), verse).map(piston -> hymn.onPiston(piston, index, verse));
    }

    /**
     * The general that sets just what a verse has, or else the first that the plan leaves free, on the lowest memory
     * level; if there is one.
     */
    static Optional<String> forVerse(Plan plan, Instrument organ, Verse verse) {
        List<Verse> all = verses(plan).toList();
        Optional<String> same = all.stream()
                .filter(other -> isSetTheSame(other, verse) && isGeneral(other.piston(), organ))
                .map(Verse::piston)
                .findFirst();
        return same.or(() -> inOrder(organ)
                .filter(general -> all.stream().noneMatch(other -> isNamed(other.piston(), general)))
                .findFirst()
                .map(General::name));
    }

    private static Stream<Verse> verses(Plan plan) {
        return plan.hymns().stream().flatMap(hymn -> hymn.verses().stream());
    }

    private static boolean isShared(Plan plan, String piston) {
        return verses(plan).filter(verse -> isTheSame(verse.piston(), piston)).count() > 1;
    }

    /** True where a general sets two verses alike. */
    static boolean isSetTheSame(Verse one, Verse other) {
        return one.registration().stops().equals(other.registration().stops())
                && one.registration().couplers().equals(other.registration().couplers())
                && one.registration().tremulants().equals(other.registration().tremulants());
    }

    /** True for the name of a general that the organ has. */
    static boolean isGeneral(String piston, Instrument organ) {
        return General.of(piston).filter(organ.pistons()::has).isPresent();
    }

    /** True for two names of one general on one memory level. */
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
