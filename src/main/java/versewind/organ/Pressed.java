package versewind.organ;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The pistons that are pressed for a verse, on one memory level: a general, or divisionals of one division or several.
 *
 * <p>Written "G3", "Great 3, Swell 2", and on the second memory level "2/G3". A division may be abbreviated: "Gt 3 Sw
 * 2".
 *
 * @param pistons none where nothing is pressed
 */
public record Pressed(List<Piston> pistons) {

    /** Nothing. */
    public static final Pressed NONE = new Pressed(List.of());

    private static final Pattern LEVEL = Pattern.compile("(\\d{1,4})\\s*/\\s*(.*)");
    private static final Pattern GENERAL = Pattern.compile("(?:G|Gen|General)\\s*(\\d{1,4})", Pattern.CASE_INSENSITIVE);
    private static final Pattern DIVISIONAL = Pattern.compile("[\\s,;+&]*(\\p{L}[^\\d,;+&]{0,80}?)\\s*(\\d{1,4})\\b");

    public Pressed {
        pistons = List.copyOf(pistons);
    }

    /** Written out, like {@link #equals}: a record's own cost milliseconds at the start of the program. */
    @Override
    public int hashCode() {
        return pistons.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pressed pressed && pistons.equals(pressed.pistons);
    }

    /** What a verse's text presses; nothing where that is blank, or no piston of the organ. */
    public static Pressed of(Instrument organ, String text) {
        try {
            return read(organ, text);
        } catch (NotationException unknown) {
            return NONE;
        }
    }

    /**
     * What a text presses.
     *
     * @throws NotationException if it names what the organ does not have, with what there is
     */
    public static Pressed read(Instrument organ, String text) throws NotationException {
        Matcher levelled = LEVEL.matcher(text.strip());
        boolean hasLevel = levelled.matches();
        int level = hasLevel ? Integer.parseInt(levelled.group(1)) : 1;
        String rest = hasLevel ? levelled.group(2) : text.strip();
        if (rest.isEmpty() && !hasLevel) {
            return NONE;
        }
        Matcher general = GENERAL.matcher(rest);
        List<Piston> pistons = general.matches()
                ? List.of(general(organ, level, Integer.parseInt(general.group(1))))
                : divisionals(organ, text.strip(), level, rest);
        if (level < 1 || level > organ.pistons().memoryLevels()) {
            throw new NotationException(
                    "The organ has no memory level " + level + " for piston " + new Pressed(pistons).name(organ)
                            + ": it has " + organ.pistons().memoryLevels() + ".");
        }
        return new Pressed(pistons);
    }

    private static Piston general(Instrument organ, int level, int number) throws NotationException {
        int generals = organ.pistons().generals();
        if (generals == 0) {
            throw new NotationException("The organ has no general pistons, and so no G" + number + ": "
                    + (organ.pistons().any() ? "its pistons are " + there(organ) : "all is moved by hand") + ".");
        }
        if (number < 1 || number > generals) {
            throw new NotationException(
                    "The organ has no piston G" + number + ": its generals are G1 to G" + generals + ".");
        }
        return Piston.general(level, number);
    }

    private static List<Piston> divisionals(Instrument organ, String whole, int level, String text)
            throws NotationException {
        List<Piston> pistons = new ArrayList<>();
        Matcher part = DIVISIONAL.matcher(text);
        int end = 0;
        while (end < text.length() && part.find(end) && part.start() == end) {
            int number = Integer.parseInt(part.group(2));
            Piston piston = divisional(organ, whole, level, part.group(1), number);
            if (pistons.stream().anyMatch(other -> other.division().equals(piston.division()))) {
                throw new NotationException(
                        "Press one piston of a division at a time, as in " + piston.name(organ) + ".");
            }
            pistons.add(piston);
            end = part.end();
        }
        if (end < text.length() || pistons.isEmpty()) {
            throw unknown(organ, whole);
        }
        return pistons;
    }

    private static Piston divisional(Instrument organ, String whole, int level, String written, int number)
            throws NotationException {
        OptionalInt division = division(organ, written);
        if (division.isEmpty()) {
            throw unknown(organ, whole);
        }
        String name = organ.divisionNames().get(division.getAsInt());
        int count = organ.pistons().divisionals().getOrDefault(name, 0);
        if (count == 0) {
            throw new NotationException(
                    "The " + name + " has no pistons of its own. The organ has " + there(organ) + ".");
        }
        if (number < 1 || number > count) {
            throw new NotationException("The " + name + " has no piston " + number + ": it has 1 to " + count + ".");
        }
        return Piston.of(level, division.getAsInt(), number);
    }

    private static NotationException unknown(Instrument organ, String text) {
        return new NotationException(
                Quoted.text(text) + " is not a piston of this organ, which has " + there(organ) + ".");
    }

    /** All pistons in words: "generals G1 to G6, Great 1 to 4, Swell 1 to 4". */
    private static String there(Instrument organ) {
        List<String> there = new ArrayList<>();
        if (organ.pistons().generals() > 0) {
            there.add("generals G1 to G" + organ.pistons().generals());
        }
        organ.pistons().divisionals().forEach((name, count) -> there.add(name + " 1 to " + count));
        return there.isEmpty() ? "none" : String.join(", ", there);
    }

    /**
     * The division of a name, of the only one that begins so, or of the only one that has the letters in this order and
     * begins with the first.
     */
    private static OptionalInt division(Instrument organ, String written) {
        List<String> names = organ.divisionNames().stream().map(Pressed::plain).toList();
        String plain = plain(written);
        if (names.contains(plain)) {
            return OptionalInt.of(names.indexOf(plain));
        }
        int[] begun = IntStream.range(0, names.size())
                .filter(i -> names.get(i).startsWith(plain))
                .toArray();
        int[] like = begun.length > 0
                ? begun
                : IntStream.range(0, names.size())
                        .filter(i -> Names.abbreviates(plain, names.get(i)))
                        .toArray();
        return like.length == 1 ? OptionalInt.of(like[0]) : OptionalInt.empty();
    }

    private static String plain(String name) {
        return Names.plain(name).replaceAll("[\\s.]", "").toLowerCase(Locale.ROOT);
    }

    /** True if anything is set. */
    public boolean sets() {
        return !pistons.isEmpty();
    }

    /** The knobs that they set. */
    public Knobs reach(Instrument organ) {
        return pistons.stream().map(piston -> piston.reach(organ)).reduce(Knobs.NONE, Knobs::plus);
    }

    /**
     * What is drawn once they are pressed; swell boxes stay.
     *
     * @param before what was drawn
     * @param held the registration for which they are set
     */
    public Registration press(Instrument organ, Registration before, Registration held) {
        Knobs reach = reach(organ);
        Knobs set = Knobs.drawn(held).and(reach);
        return new Registration(
                before.stops().minus(reach.stops()).plus(set.stops()),
                before.couplers().minus(reach.couplers()).plus(set.couplers()),
                before.tremulants().minus(reach.tremulants()).plus(set.tremulants()),
                before.boxes());
    }

    /** As plans write them: "G3"; "2/Great 3, Swell 2"; blank for nothing. */
    public String name(Instrument organ) {
        String labels = pistons.stream().map(piston -> piston.label(organ)).collect(Collectors.joining(", "));
        return pistons.isEmpty() || pistons.get(0).level() == 1
                ? labels
                : pistons.get(0).level() + "/" + labels;
    }
}
