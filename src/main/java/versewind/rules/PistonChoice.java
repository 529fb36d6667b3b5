package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Piston;
import versewind.organ.Pressed;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/**
 * The pistons of a plan: each distinct registration has a general, or each distinct registration of a division a
 * divisional, in the order of need; and a verse that is drawn otherwise than others on its piston goes on a piston of
 * its own. Common practice, no source.
 */
public final class PistonChoice {

    private PistonChoice() {}

    /**
     * A verse that is drawn otherwise than the plan has it, on a piston that may set it: its own where no other verse
     * has it, else one that sets just this, or the first that is free. A verse that was set by hand stays so, and a
     * name that is no piston of the organ stays.
     *
     * @param plan with the verse as it was
     * @param place of the verse
     * @param drawn the verse as it is drawn now
     * @param organ the instrument
     */
    public static Verse redrawn(Plan plan, VersePlace place, Verse drawn, Instrument organ) {
        return redrawn(PistonUse.of(plan, organ), place, plan.verse(place), drawn);
    }

    private static Verse redrawn(PistonUse use, VersePlace place, Verse before, Verse drawn) {
        Pressed pressed = use.pressed(before);
        Verse without = drawn.withPiston("");
        PistonUse others = use.with(place, without);
        boolean isFree = pressed.pistons().stream()
                .allMatch(piston -> use.isSetTheSame(piston, drawn, before) || !others.isPressed(piston));
        if (isFree) {
            return drawn.withPiston(before.piston());
        }
        return drawn.withPiston(chosen(others, without, divisions(pressed)).orElse(""));
    }

    private static List<OptionalInt> divisions(Pressed pressed) {
        return pressed.pistons().stream().map(Piston::division).toList();
    }

    /** A mend, with another piston where it would leave one that sets something else in another verse. */
    static Mend mend(Mend mend, InHymn hymn, int index) {
        Verse before = hymn.verse(index);
        if (!mend.place().equals(hymn.place(index)) || !mend.verse().piston().equals(before.piston())) {
            return mend;
        }
        Verse after = redrawn(hymn.pistons(), hymn.place(index), before, mend.verse());
        if (after.piston().equals(before.piston())) {
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
        PistonUse without = hymn.pistons().with(hymn.place(index), verse);
        Optional<Verse> before =
                hymn.hymn().before(index).stream().map(hymn::verse).findFirst();
        return chosen(without, verse, divisions(without.pressed(hymn.verse(index))))
                .or(() -> forVerse(without, before, verse))
                .map(piston -> hymn.onPiston(piston, index, verse));
    }

    /**
     * The general that sets just what a verse has, or else the first that the plan leaves free; where there is none,
     * likewise a divisional for each division that is drawn otherwise than before. First on the memory level that the
     * verse before is on, or the lowest, since nobody changes it in a breath; then on the others.
     *
     * @param before the verse before, if there is one
     */
    static Optional<String> forVerse(PistonUse use, Optional<Verse> before, Verse verse) {
        Instrument organ = use.organ();
        List<OptionalInt> general = List.of(OptionalInt.empty());
        List<OptionalInt> changed = organ.pistons().divisionals().keySet().stream()
                .map(name -> organ.division(name))
                .filter(division -> !before.map(
                                other -> use.isSetTheSame(Piston.of(1, division.getAsInt(), 1), other, verse))
                        .orElse(false))
                .toList();
        int here = before.map(other -> use.pressed(other).pistons()).stream()
                .flatMap(List::stream)
                .mapToInt(Piston::level)
                .findFirst()
                .orElse(1);
        return chosen(use, verse, general, here, here)
                .or(() -> chosen(use, verse, changed, here, here))
                .or(() -> chosen(use, verse, general))
                .or(() -> chosen(use, verse, changed));
    }

    /** Pistons of some divisions, or a general, on the lowest memory level that has all; if there is one. */
    private static Optional<String> chosen(PistonUse use, Verse verse, List<OptionalInt> wanted) {
        return chosen(use, verse, wanted, 1, use.organ().pistons().memoryLevels());
    }

    /** The same on one of some memory levels. */
    private static Optional<String> chosen(
            PistonUse use, Verse verse, List<OptionalInt> wanted, int lowest, int highest) {
        Predicate<Piston> isFree = piston -> !use.isPressed(piston);
        Predicate<Piston> isSet = piston -> use.isSetTo(piston, verse);
        return onOneLevel(use.organ(), wanted, List.of(isSet), lowest, highest)
                .or(() -> onOneLevel(use.organ(), wanted, List.of(isSet, isFree), lowest, highest));
    }

    /** Pistons of one memory level, each the first that is wanted most. */
    private static Optional<String> onOneLevel(
            Instrument organ, List<OptionalInt> divisions, List<Predicate<Piston>> wanted, int lowest, int highest) {
        for (int level = lowest; level <= highest && !divisions.isEmpty(); level++) {
            List<Piston> chosen = new ArrayList<>();
            for (OptionalInt division : divisions) {
                List<Piston> inOrder = inOrder(organ, level, division);
                wanted.stream()
                        .flatMap(each -> inOrder.stream().filter(each))
                        .findFirst()
                        .ifPresent(chosen::add);
            }
            if (chosen.size() == divisions.size()) {
                return Optional.of(new Pressed(chosen).name(organ));
            }
        }
        return Optional.empty();
    }

    private static List<Piston> inOrder(Instrument organ, int level, OptionalInt division) {
        int count = division.isEmpty()
                ? organ.pistons().generals()
                : organ.pistons()
                        .divisionals()
                        .getOrDefault(organ.divisionNames().get(division.getAsInt()), 0);
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> new Piston(level, division, number))
                .toList();
    }

    /**
     * A piston that a verse has and that an earlier verse has drawn otherwise, so that it would set something else.
     *
     * @param piston "G4"
     * @param holder the first verse that has it, after the number of its hymn where that is another: "V1", "208 V1"
     */
    public record HeldElsewhere(String piston, String holder) {

        /** "Piston G4 holds something else since 208 V1". */
        public String words() {
            return "Piston " + piston + " holds something else since " + holder;
        }
    }

    /** The first piston of a verse that holds what an earlier verse has drawn, and not what this one has. */
    public static Optional<HeldElsewhere> heldElsewhere(Plan plan, Instrument organ, VersePlace place) {
        return heldElsewhere(PistonUse.of(plan, organ), place);
    }

    /** The same, of a plan whose pistons are known. */
    static Optional<HeldElsewhere> heldElsewhere(PistonUse use, VersePlace place) {
        Verse verse = use.verse(place);
        return use.pressed(verse).pistons().stream()
                .flatMap(piston -> use
                        .holder(piston, place)
                        .filter(first -> !use.isSetTheSame(piston, use.verse(first), verse))
                        .map(first -> new HeldElsewhere(piston.name(use.organ()), name(use, first, place)))
                        .stream())
                .findFirst();
    }

    /**
     * What is to be said of a verse that is put on a piston which holds something else in another verse: "Great 1 holds
     * something else in 436 Last; free for V2: Great 2".
     *
     * @param verse the verse as it shall be
     */
    public static Optional<String> warning(Plan plan, Instrument organ, VersePlace place, Verse verse) {
        PistonUse use = PistonUse.of(plan, organ).with(place, verse);
        Pressed pressed = use.pressed(verse);
        Verse without = verse.withPiston("");
        return pressed.pistons().stream()
                .flatMap(piston -> use
                        .otherHolder(piston, place)
                        .map(other -> piston.name(organ) + " holds something else in " + name(use, other, place))
                        .stream())
                .findFirst()
                .map(words -> words
                        + chosen(use.with(place, without), without, divisions(pressed))
                                .map(free -> "; free for " + verse.label() + ": " + free + ".")
                                .orElse("; no other piston is free."));
    }

    private static String name(PistonUse use, VersePlace place, VersePlace from) {
        String number =
                place.hymn() == from.hymn() ? "" : use.plan().hymn(place).number();
        return (number + " " + use.verse(place).label()).strip();
    }
}
