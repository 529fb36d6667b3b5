package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.DayWords;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.ServiceHeading;
import versewind.screen.toolkit.Text;

/** Lines of plain text, 80 columns wide at most unless other widths are wanted, in the letters of one terminal. */
final class Page {

    static final int COLUMNS = 80;
    private static final String CUT = "~";
    private static final String NO_BREAK = "\u00a0";

    /** The blank before a number, at which no line is broken: "Fifteenth 2", "Mixture III", "2 2/3"; "208 V2". */
    private static final Pattern NUMBERED =
            Pattern.compile("(?<=[\\p{L}.)]) (?=(?:\\d+|[IVX]+)(?:[,;.:)]|\\s|$))|(?<=\\d) (?=\\d+/\\d|V\\d)");

    private final CharsetFallback lettering;
    private final int columns;
    private final List<String> lines = new ArrayList<>();

    Page(CharsetFallback lettering) {
        this(lettering, COLUMNS);
    }

    Page(CharsetFallback lettering, int columns) {
        this.lettering = lettering;
        this.columns = columns;
    }

    /** As wide as the terminal that shows it, if that is wide; without an end where none does. */
    static Page asWideAs(OptionalInt terminal, CharsetFallback lettering) {
        return new Page(lettering, Math.max(COLUMNS, terminal.orElse(Integer.MAX_VALUE)));
    }

    /** A line, cut where it is too long; on a narrow page, wrapped. */
    void line(String text) {
        String whole = lettering.of(text).stripTrailing();
        if (columns < COLUMNS && Text.columns(whole) > columns) {
            String start = "";
            for (String part : Text.wrapped(whole.replaceAll("(?<=\\S) {2,}", " "), columns - 2)) {
                lines.add((start + part).stripTrailing());
                start = "  ";
            }
            return;
        }
        lines.add(shortened(text, columns).stripTrailing());
    }

    /** A line of a head and a tail, which are never cut, and between them a text, which is where it is too long. */
    void line(String head, String text, String tail) {
        if (columns < COLUMNS) {
            line(head + text + tail);
            return;
        }
        String first = lettering.of(head);
        String last = lettering.of(tail);
        int room = columns - Text.columns(first) - Text.columns(last);
        lines.add((first + shortened(text, Math.max(0, room)) + last).stripTrailing());
    }

    /** A blank line. */
    void blank() {
        lines.add("");
    }

    /** Sentences, wrapped between words. */
    void paragraph(String text) {
        hanging("", text);
    }

    /** A heading with words beside it, wrapped under the first word. */
    void hanging(String head, String text) {
        hanging(
                head,
                Stream.of(NUMBERED.matcher(text).replaceAll(NO_BREAK).split(" ", -1))
                        .map(piece -> piece.replace(NO_BREAK, " "))
                        .toList());
    }

    /** A heading with pieces of text beside it, wrapped between pieces and never inside one. */
    void hanging(String head, List<String> pieces) {
        int indent = Text.columns(head);
        String line = head;
        boolean isFirst = true;
        for (String piece : pieces) {
            String shown = lettering.of(piece);
            String longer = isFirst ? line + shown : line + " " + shown;
            if (!isFirst && Text.columns(longer) > columns) {
                line(line);
                longer = " ".repeat(indent) + shown;
            }
            line = longer;
            isFirst = false;
        }
        line(line);
    }

    /** The first lines of a report on a plan: the service, its day, its instrument. */
    void heading(ServiceHeading heading, Instrument instrument) {
        line(heading.title()
                + heading.date().map(date -> ", " + DayWords.of(date)).orElse(""));
        heading.summary()
                .ifPresent(day -> paragraph(day + ", " + heading.occasion().suggestion() + "."));
        line(instrument.toString());
    }

    /** The line over a hymn, and one below where it has no verses. */
    void hymn(Hymn hymn) {
        blank();
        line((hymn.number() + "  " + hymn.title()).strip());
        if (hymn.verses().isEmpty()) {
            line("no verses yet");
        }
    }

    /** "1 person", "40 people". */
    static String people(int number) {
        return number + (number == 1 ? " person" : " people");
    }

    /** A row of a table: cells as wide as said, negative for those set to the right, a blank between them. */
    void row(int[] widths, String... cells) {
        line(cells(" ", widths, cells));
    }

    /** Cells as wide as said, negative for those set to the right, with something between them. */
    String cells(String between, int[] widths, String... cells) {
        return IntStream.range(0, cells.length)
                .mapToObj(i -> widths[i] < 0 ? right(cells[i], -widths[i]) : left(cells[i], widths[i]))
                .collect(Collectors.joining(between));
    }

    /** A text, cut where it is too long. */
    String shortened(String text, int columns) {
        return Text.fit(lettering.of(text), columns, CUT);
    }

    /** A cell of a table: the text to the left, blanks up to a number of columns; cut where it is too long. */
    String left(String text, int columns) {
        String fitting = shortened(text, columns);
        return fitting + " ".repeat(columns - Text.columns(fitting));
    }

    /** A cell of a table: the text to the right, blanks before it. */
    String right(String text, int columns) {
        String fitting = shortened(text, columns);
        return " ".repeat(columns - Text.columns(fitting)) + fitting;
    }

    /** All lines, each with its end. */
    String text() {
        return String.join("\n", lines) + "\n";
    }
}
