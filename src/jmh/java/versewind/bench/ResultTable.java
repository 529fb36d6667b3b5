package versewind.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The table of results, printed row by row as they come. */
final class ResultTable {

    private static final String FORMAT = "%-58s %-22s %-18s %-20s %s%n";

    private final List<String> sentences = new ArrayList<>();

    ResultTable() {
        row("what", "reference", "ours", "goal", "floor");
    }

    void row(String what, String reference, String ours, String goal, String floor) {
        System.out.printf(Locale.ROOT, FORMAT, what, reference, ours, goal, floor);
    }

    /** A time beside the reference that was measured in turn with it. */
    void ratio(String what, Times reference, Times ours, String goal, Times floor) {
        row(
                what,
                "HelloWorld " + reference,
                String.format(Locale.ROOT, "%s = %.2f x", ours, ours.median() / reference.median()),
                goal,
                String.format(Locale.ROOT, "%s = %.2f x", floor, floor.median() / reference.median()));
    }

    /** Says below the table why a row is missing. */
    void missing(String sentence) {
        sentences.add(sentence);
    }

    void end() {
        sentences.forEach(System.out::println);
    }
}
