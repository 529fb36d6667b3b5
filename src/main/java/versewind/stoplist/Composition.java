package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.KeyName;
import versewind.organ.MixtureBreak;
import versewind.stoplist.Token.Kind;

/**
 * The pitches of a compound stop as a list tells them beside it or below it: "15.19.22", "2 2/3 + 1 3/5", "C: 1 1/3 + 1
 * + 2/3".
 */
final class Composition {

    /** Where a list tells the pitches of the lowest key alone, a rank drops an octave above this. An estimate. */
    private static final double HIGHEST_HZ = 8000;

    /** What the degrees of the scale are over the unison: the pitch of the unison is divided by so much. */
    private static final Map<String, Footage> UNDER = under();

    private static final TokenForm BREAK = TokenForm.of("<key_of_stop> ~octave* [:=]?");
    private static final int FEWEST = 2;

    private Composition() {}

    private static Map<String, Footage> under() {
        Map<String, Footage> degrees = new HashMap<>();
        List<String> all = List.of(
                "1 8", "5 16/3", "8 4", "10 16/5", "12 8/3", "15 2", "17 8/5", "19 4/3", "21 8/7", "22 1", "24 4/5",
                "26 2/3", "28 4/7", "29 1/2", "31 2/5", "33 1/3", "36 1/4", "40 1/5", "43 1/6");
        for (String each : all) {
            String[] parts = each.split("[ /]", -1);
            degrees.put(
                    parts[0],
                    new Footage(Integer.parseInt(parts[1]), parts.length > 2 ? Integer.parseInt(parts[2]) : 1));
        }
        return Map.copyOf(degrees);
    }

    /** True if a line tells the pitches of a mixture from one key on. */
    static boolean isBreak(String text) {
        Line line = new Line(text);
        int key = BREAK.at(line, 0);
        return key > 0
                && key < line.size()
                && pitches(line.text().substring(line.start(key)), 1).size() >= FEWEST;
    }

    /** True if a remark tells the pitches of a mixture. */
    static boolean isOne(String remark) {
        return isBreak(remark) || pitches(remark, 1).size() >= FEWEST;
    }

    /**
     * The composition of a stop; empty where the list does not tell it from the lowest key on, or another number of
     * ranks.
     *
     * @param stop a compound stop
     * @param keys how many keys it has
     * @param isPedal whether the unison of its division is 16 ft
     */
    static List<MixtureBreak> of(ReadStop stop, int keys, boolean isPedal) {
        TreeMap<Integer, List<Footage>> told = new TreeMap<>();
        for (String remark : stop.remarks()) {
            Line line = new Line(remark);
            int length = isBreak(remark) ? BREAK.at(line, 0) : 0;
            Optional<Integer> key = length > 0 ? key(line, length) : Optional.of(Division.BOTTOM_KEY);
            List<Footage> pitches = pitches(remark.substring(length > 0 ? line.start(length) : 0), isPedal ? 2 : 1);
            if (key.isPresent() && pitches.size() == stop.ranks()) {
                told.putIfAbsent(key.get(), pitches);
            }
        }
        boolean fits = stop.family().isCompound() && told.containsKey(Division.BOTTOM_KEY);
        return !fits
                ? List.of()
                : told.size() > 1 || stop.family() == Family.CORNET
                        ? told.entrySet().stream()
                                .map(each -> new MixtureBreak(each.getKey(), each.getValue()))
                                .toList()
                        : broken(told.firstEntry().getValue(), keys);
    }

    /** "c1", "c'" and, at the beginning, "C". */
    private static Optional<Integer> key(Line line, int length) {
        String name = line.part(0, length).replaceAll("[:=\\s]", "");
        int marks = (int) name.chars().filter(each -> each == '\'').count();
        String plain = name.replace("'", "").replace("\"", "");
        return KeyName.parse(marks > 0 ? plain + marks : plain);
    }

    /** The pitches of the lowest key over the whole compass, every rank an octave lower where it would be too high. */
    private static List<MixtureBreak> broken(List<Footage> lowest, int keys) {
        List<MixtureBreak> breaks = new ArrayList<>();
        for (int key = Division.BOTTOM_KEY; key < Division.BOTTOM_KEY + keys; key++) {
            int at = key;
            List<Footage> pitches =
                    lowest.stream().map(each -> within(each, at)).toList();
            if (breaks.isEmpty() || !breaks.get(breaks.size() - 1).pitches().equals(pitches)) {
                breaks.add(new MixtureBreak(key, pitches));
            }
        }
        return breaks;
    }

    private static Footage within(Footage pitch, int key) {
        Footage low = pitch;
        while (low.frequencyHz(key) > HIGHEST_HZ) {
            low = new Footage(2 * low.numerator(), low.denominator());
        }
        return low;
    }

    /** The pitches of a text that holds nothing else: scale numbers, or two or more of them in feet. */
    private static List<Footage> pitches(String text, int octave) {
        Line line = new Line(text.strip());
        if (line.size() > 0 && RankCount.scale(line, 0) == line.size()) {
            return Stream.of(text.strip().split("[^0-9]+", -1))
                    .filter(each -> !each.isEmpty())
                    .map(UNDER::get)
                    .map(each -> new Footage(octave * each.numerator(), each.denominator()))
                    .toList();
        }
        boolean figures = IntStream.range(0, line.size())
                .allMatch(i -> line.is(i, Kind.NUMBER)
                        || line.is(i, Kind.QUOTE)
                        || line.isSign(i, "+,;-/")
                        || line.is(i, "and")
                        || line.is(i, "feet"));
        List<Footage> pitches = figures
                ? line.tokens().stream()
                        .filter(each -> each.is(Kind.NUMBER))
                        .flatMap(each -> Pitches.read(each.text()).stream())
                        .toList()
                : List.of();
        return pitches.size() >= FEWEST ? pitches : List.of();
    }
}
