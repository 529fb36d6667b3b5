package versewind.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.plan.Mood;

/** Points that add up, and, where somebody wants to know, what each is for. */
final class Tally {

    private static final int NO_STOP = -1;
    private static final int MOST_NAMES = 3;
    private static final double WORTH_A_WORD = 0.05;

    private final boolean remembers;
    private final List<Entry> entries = new ArrayList<>();
    private double points;

    private record Entry(double points, String words, int stop) {}

    private Tally(boolean remembers) {
        this.remembers = remembers;
    }

    /** One that only adds. */
    static Tally silent() {
        return new Tally(false);
    }

    /** One that can tell. */
    static Tally telling() {
        return new Tally(true);
    }

    void add(Cost cost) {
        add(cost.points(), cost.words());
    }

    void addIf(boolean isBroken, Cost cost) {
        if (isBroken) {
            add(cost);
        }
    }

    void add(double times, Cost cost) {
        add(cost.points() * times, cost.words());
    }

    void add(Cost cost, Mood mood) {
        add(cost.points(mood), cost.words());
    }

    void add(Cost cost, int stop) {
        add(cost.points(), cost.words(), stop);
    }

    /** Adds points for what is not one stop's fault. */
    void add(double more, String words) {
        add(more, words, NO_STOP);
    }

    /**
     * Adds points for a stop.
     *
     * @param words what is said, "%s" standing for the stop's name and others of which the same is said
     */
    void add(double more, String words, int stop) {
        if (more > 0) {
            points += more;
            if (remembers) {
                entries.add(new Entry(more, words, stop));
            }
        }
    }

    double points() {
        return points;
    }

    void clear() {
        points = 0;
        entries.clear();
    }

    /** The weightiest of what was said, in one sentence; otherwise the words given. */
    String sentence(Instrument organ, String otherwise) {
        Map<String, List<Entry>> said = new LinkedHashMap<>();
        for (Entry entry : entries) {
            said.computeIfAbsent(entry.words, words -> new ArrayList<>()).add(entry);
        }
        String sentence = said.entrySet().stream()
                .filter(each -> sum(each.getValue()) >= WORTH_A_WORD)
                .sorted((one, other) -> Double.compare(sum(other.getValue()), sum(one.getValue())))
                .limit(2)
                .map(each -> each.getKey().replace("%s", names(organ, each.getValue())))
                .collect(Collectors.joining("; "));
        String words = sentence.isEmpty() ? otherwise : sentence;
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    private static double sum(List<Entry> entries) {
        return entries.stream().mapToDouble(Entry::points).sum();
    }

    private static String names(Instrument organ, List<Entry> entries) {
        List<String> names = entries.stream()
                .filter(entry -> entry.stop != NO_STOP)
                .map(entry -> organ.stops().get(entry.stop).name().toString())
                .distinct()
                .toList();
        int last = names.size() - 1;
        if (names.size() > MOST_NAMES) {
            return String.join(", ", names.subList(0, MOST_NAMES - 1)) + " and " + (names.size() - MOST_NAMES + 1)
                    + " others";
        }
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
