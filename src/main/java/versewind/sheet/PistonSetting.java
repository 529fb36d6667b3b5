package versewind.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Knobs;
import versewind.organ.Piston;
import versewind.organ.Pressed;
import versewind.organ.Registration;

/**
 * One piston on one memory level, to be set before the service.
 *
 * <p>A piston is set on the memory level that its name says. One that the plan uses for several registrations without
 * saying so holds the first on memory level 1, the next on the next level that is free, and so on. Pistons do not set
 * swell boxes. A divisional sets its division alone.
 *
 * @param piston the piston, "G3"
 * @param level memory level, from 1
 * @param isBeyond whether the organ has no such memory level
 * @param drawn what is set on it
 * @param usedBy the verses that it is for
 */
public record PistonSetting(String piston, int level, boolean isBeyond, List<DivisionLine> drawn, List<String> usedBy) {

    public PistonSetting {
        drawn = List.copyOf(drawn);
        usedBy = List.copyOf(usedBy);
    }

    /** Memory level and piston as plans write them: "2/G4". */
    String name() {
        return (level == 1 ? "" : level + "/") + piston;
    }

    /** True for one that sets the same piston otherwise, where the organ has no memory level to keep them apart. */
    boolean clashesWith(PistonSetting other) {
        return !equals(other) && piston.equalsIgnoreCase(other.piston) && (isBeyond || other.isBeyond);
    }

    /** The memory level, and whether it is to be had. */
    public String levelWords() {
        return level + (isBeyond ? " (this organ has no such level)" : "");
    }

    /**
     * What a piston holds; boxes are left out.
     *
     * @param fixed the memory level, where the plan says another than the first
     */
    private record Held(String piston, OptionalInt fixed, Registration registration) {

        boolean isOnSamePiston(Held other) {
            return piston.equalsIgnoreCase(other.piston);
        }
    }

    /** Level by level, and on each the pistons as they stand under the keys: "G2" before "G10". */
    private static final Comparator<PistonSetting> AS_AT_THE_CONSOLE = Comparator.comparingInt(
                    (PistonSetting setting) -> setting.level)
            .thenComparing(setting -> setting.piston.substring(0, setting.digits()))
            .thenComparingInt(setting -> setting.piston.length())
            .thenComparing(setting -> setting.piston);

    /** Where the digits begin with which its name ends. */
    private int digits() {
        int at = piston.length();
        while (at > 0 && Character.isDigit(piston.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    /** What is set on the pistons before the service. */
    static List<PistonSetting> of(Instrument organ, List<HymnSheet> hymns) {
        List<Held> held = new ArrayList<>();
        List<List<String>> uses = new ArrayList<>();
        for (HymnSheet hymn : hymns) {
            for (VerseSheet verse : hymn.verses()) {
                String piston = verse.verse().piston().strip();
                if (piston.isEmpty() || !verse.verse().isPlayed()) {
                    continue;
                }
                for (Held wanted : held(organ, piston, verse.verse().registration())) {
                    if (!held.contains(wanted)) {
                        held.add(wanted);
                        uses.add(new ArrayList<>());
                    }
                    uses.get(held.indexOf(wanted)).add(hymn.placed(verse));
                }
            }
        }
        return IntStream.range(0, held.size())
                .mapToObj(i -> setting(organ, held, i, uses.get(i)))
                .sorted(AS_AT_THE_CONSOLE)
                .toList();
    }

    private static PistonSetting setting(Instrument organ, List<Held> held, int index, List<String> uses) {
        Held each = held.get(index);
        int level = each.fixed().orElseGet(() -> level(held, index));
        boolean isBeyond = level > Math.max(1, organ.pistons().memoryLevels());
        List<DivisionLine> drawn = DivisionLine.of(
                        organ, each.registration(), each.registration().stops())
                .stream()
                .map(place -> new DivisionLine(place.where(), place.knobs(), Optional.empty(), false))
                .toList();
        return new PistonSetting(each.piston(), level, isBeyond, drawn, uses);
    }

    /** The level of a piston that is used for the nth time without saying which: the nth that is left free. */
    private static int level(List<Held> held, int index) {
        Held each = held.get(index);
        List<Integer> fixed = held.stream()
                .filter(each::isOnSamePiston)
                .flatMap(other -> other.fixed().stream().boxed())
                .toList();
        long before = held.subList(0, index).stream()
                .filter(other -> other.isOnSamePiston(each) && other.fixed().isEmpty())
                .count();
        return IntStream.iterate(1, level -> level + 1)
                .filter(level -> !fixed.contains(level))
                .skip(before)
                .findFirst()
                .orElseThrow();
    }

    /** What the pistons of a verse hold; a name that is none of the organ's holds everything. */
    private static List<Held> held(Instrument organ, String text, Registration registration) {
        List<Piston> pistons = Pressed.of(organ, text).pistons();
        if (pistons.isEmpty()) {
            return List.of(new Held(text, OptionalInt.empty(), within(organ, registration, Knobs.all(organ))));
        }
        return pistons.stream()
                .map(piston -> new Held(
                        piston.label(organ),
                        piston.level() == 1 ? OptionalInt.empty() : OptionalInt.of(piston.level()),
                        within(organ, registration, piston.reach(organ))))
                .toList();
    }

    private static Registration within(Instrument organ, Registration registration, Knobs reach) {
        Knobs held = Knobs.drawn(registration).and(reach);
        return new Registration(
                held.stops(),
                held.couplers(),
                held.tremulants(),
                Registration.silent(organ).boxes());
    }
}
