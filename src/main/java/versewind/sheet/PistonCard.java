package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;

/**
 * What is set on the pistons before the service, in the order in which they are needed.
 *
 * <p>A piston that the plan uses for several registrations holds the first on memory level 1, the next on level 2 and so
 * on. Boxes are no matter of pistons. A piston whose name begins as a division's does ("Sw 2") sets that division alone.
 *
 * @param settings what is set
 */
public record PistonCard(List<Setting> settings) {

    public PistonCard {
        settings = List.copyOf(settings);
    }

    /**
     * One piston on one memory level.
     *
     * @param piston the piston, "G3"
     * @param level memory level, from 1
     * @param isBeyond whether the organ has no such memory level
     * @param drawn what is set on it
     * @param usedBy the verses that it is for
     */
    public record Setting(String piston, int level, boolean isBeyond, List<Drawn> drawn, List<String> usedBy) {

        public Setting {
            drawn = List.copyOf(drawn);
            usedBy = List.copyOf(usedBy);
        }

        /** The memory level, and whether it is to be had. */
        public String levelWords() {
            return level + (isBeyond ? " (the organ has no such level)" : "");
        }
    }

    /** What a piston holds; boxes are left out. */
    private record Held(String piston, Registration registration) {}

    static PistonCard of(Instrument organ, List<HymnSheet> hymns) {
        List<Held> held = new ArrayList<>();
        List<List<String>> uses = new ArrayList<>();
        for (HymnSheet hymn : hymns) {
            for (VerseSheet verse : hymn.verses()) {
                String piston = verse.verse().piston().strip();
                if (piston.isEmpty()) {
                    continue;
                }
                Held wanted = held(organ, piston, verse.verse().registration());
                if (!held.contains(wanted)) {
                    held.add(wanted);
                    uses.add(new ArrayList<>());
                }
                uses.get(held.indexOf(wanted))
                        .add(hymn.shortName() + " " + verse.verse().label());
            }
        }
        List<Setting> settings = IntStream.range(0, held.size())
                .mapToObj(i -> setting(organ, held, i, uses.get(i)))
                .toList();
        return new PistonCard(settings);
    }

    private static Setting setting(Instrument organ, List<Held> held, int index, List<String> uses) {
        Held each = held.get(index);
        int level = 1
                + (int) held.subList(0, index).stream()
                        .filter(other -> other.piston().equalsIgnoreCase(each.piston()))
                        .count();
        boolean isBeyond = level > Math.max(1, organ.pistons().memoryLevels());
        List<Drawn> drawn = Drawn.of(organ, each.registration()).stream()
                .map(place -> new Drawn(place.where(), place.knobs(), Optional.empty()))
                .toList();
        return new Setting(each.piston(), level, isBeyond, drawn, uses);
    }

    private static Held held(Instrument organ, String piston, Registration registration) {
        Registration withoutBoxes = new Registration(
                registration.stops(),
                registration.couplers(),
                registration.tremulants(),
                Registration.silent(organ).boxes());
        OptionalInt division = division(organ, piston);
        if (division.isEmpty()) {
            return new Held(piston, withoutBoxes);
        }
        IndexSet stops = IndexSet.of(registration.stops().stream()
                .filter(stop -> organ.stops().get(stop).division() == division.getAsInt()));
        return new Held(piston, Registration.silent(organ).withStops(stops));
    }

    /** The only division whose name begins with the piston's letters; none for "G" and "General". */
    private static OptionalInt division(Instrument organ, String piston) {
        String letters = piston.replaceAll("[^\\p{L}].*$", "").toLowerCase(Locale.ROOT);
        if (letters.length() < 2 || "general".startsWith(letters)) {
            return OptionalInt.empty();
        }
        int[] beginning = IntStream.range(0, organ.divisions().size())
                .filter(i ->
                        organ.divisions().get(i).name().toLowerCase(Locale.ROOT).startsWith(letters))
                .toArray();
        return beginning.length == 1 ? OptionalInt.of(beginning[0]) : OptionalInt.empty();
    }
}
