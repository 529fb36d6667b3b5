package versewind.stoplist;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.stoplist.PrintedOrgan.KnownDivision;
import versewind.stoplist.PrintedOrgan.KnownStop;

/** The layouts in which stop lists are published and pasted. */
enum ListLayout {
    LINES(organ -> lines(organ, stop -> stop.name() + " " + feet(stop, "'"))),
    LINES_WITH_WORDS(organ -> lines(organ, stop -> stop.name() + " " + inWords(organ, stop))),
    BARE_NUMBERS(organ -> lines(organ, stop -> stop.name() + " " + feet(stop, ""))),
    LEADERS(organ -> lines(organ, stop -> stop.name() + " . . . . . . . " + feet(stop, "'"))),
    PITCH_FIRST(organ -> lines(organ, stop -> feet(stop, "'") + " " + stop.name())),
    BULLETS(organ -> lines(organ, stop -> "\u2022 " + stop.name() + " \u2013 " + feet(stop, "\u2032"))),
    IN_PARENTHESES(organ -> lines(organ, stop -> stop.name() + " (" + feet(stop, "'") + ")")),
    COMMA_BEFORE_PITCH(organ -> lines(organ, stop -> stop.name() + ", " + feet(stop, ""))),
    WITH_REMARKS(organ -> lines(organ, stop -> stop.name() + " " + feet(stop, "'") + ", 1896")),
    NUMBERED(organ -> numbered(organ, (n, stop) -> n + ". " + stop.name() + " " + feet(stop, "'"))),
    NUMBERED_BARE(organ -> numbered(organ, (n, stop) -> n + " " + stop.name() + " " + feet(stop, ""))),
    PIPES_IN_COLUMNS(organ -> heads(organ, "  ")
            + lines(
                    organ,
                    stop -> String.format(Locale.ROOT, "%-24s%-8s%s", stop.name(), feet(stop, ""), pipes(stop)))),
    PIPES_BY_TABS(organ -> lines(organ, stop -> stop.name() + "\t" + feet(stop, "") + "\t" + pipes(stop))),
    NUMBER_NAME_PITCH_PIPES(
            organ -> numbered(organ, (n, stop) -> n + "\t" + stop.name() + "\t" + feet(stop, "") + "\t" + pipes(stop))),
    MARKDOWN(organ -> parts(
            organ,
            "headings",
            division -> "| " + organ.words().at("columns", 0) + " | "
                    + organ.words().at("columns", 1) + " |\n|---|---|\n"
                    + division.stops().stream()
                            .map(stop -> "| " + stop.name() + " | " + feet(stop, "'") + " |\n")
                            .collect(Collectors.joining()))),
    WIKI_BULLETS(organ -> organ.divisions().stream()
                    .map(division -> "=== " + heading(organ, division, "headings") + " ===\n"
                            + division.stops().stream()
                                    .map(stop -> "* [[" + stop.name() + " (organ)|" + stop.name() + "]] "
                                            + feet(stop, "\u2032") + "<ref>Survey 1931</ref>\n")
                                    .collect(Collectors.joining()))
                    .collect(Collectors.joining("\n"))
            + couplers(organ)),
    WIKI_TABLE(organ -> "{| class=\"wikitable\" border=\"0\" cellspacing=\"10\"\n| style=\"vertical-align:top\" |\n"
            + organ.divisions().stream()
                    .map(division -> "{| border=\"0\"\n| colspan=2 | '''" + heading(organ, division, "headings")
                            + "'''\n----\n|-\n"
                            + division.stops().stream()
                                    .map(stop -> "| " + stop.name() + " || " + feet(stop, "\u2032") + "\n|-\n")
                                    .collect(Collectors.joining())
                            + "|}\n")
                    .collect(Collectors.joining("| style=\"vertical-align:top\" |\n"))
            + "|}\n" + couplers(organ)),
    HTML_ROWS(organ -> "<table>"
            + organ.divisions().stream()
                    .map(division -> "<tr><th colspan=\"2\">" + heading(organ, division, "headings") + "</th></tr>\n"
                            + division.stops().stream()
                                    .map(stop -> "<tr><td>" + stop.name() + "</td><td>" + feet(stop, "&prime;")
                                            + "</td></tr>\n")
                                    .collect(Collectors.joining()))
                    .collect(Collectors.joining())
            + "</table>\n" + couplers(organ)),
    HTML_ITEMS(organ -> organ.divisions().stream()
                    .map(division -> "<h3 class=\"x\">" + heading(organ, division, "headings") + "</h3><ul>"
                            + division.stops().stream()
                                    .map(stop -> "<li>" + stop.name() + " <b>" + feet(stop, "&#8242;") + "</b></li>")
                                    .collect(Collectors.joining())
                            + "</ul>")
                    .collect(Collectors.joining())
            + "<p>" + couplers(organ) + "</p>"),
    COMMAS(organ -> parts(
            organ,
            "short",
            ": ",
            division -> division.stops().stream()
                            .map(stop -> stop.name() + " " + feet(stop, "'"))
                            .collect(Collectors.joining(", "))
                    + "\n")),
    COMMAS_BARE(organ -> parts(
            organ,
            "short",
            ": ",
            division -> division.stops().stream()
                            .map(stop -> stop.name() + " " + feet(stop, ""))
                            .collect(Collectors.joining(", "))
                    + ".\n")),
    RUN_ON_BARE(organ -> parts(
            organ,
            "short",
            ": ",
            division -> division.stops().stream()
                            .map(stop -> stop.name() + " " + feet(stop, ""))
                            .collect(Collectors.joining(" "))
                    + "\n")),
    ONE_PARAGRAPH(organ -> organ.divisions().stream()
                    .map(division -> heading(organ, division, "short") + ": "
                            + division.stops().stream()
                                    .map(stop -> stop.name() + " " + feet(stop, "'"))
                                    .collect(Collectors.joining(", ")))
                    .collect(Collectors.joining(". "))
            + ".\n" + couplers(organ)),
    ONE_PARAGRAPH_BARE(organ -> organ.divisions().stream()
                    .map(division -> heading(organ, division, "short").toUpperCase(Locale.ROOT) + " - "
                            + division.stops().stream()
                                    .map(stop -> stop.name() + " " + feet(stop, ""))
                                    .collect(Collectors.joining("; ")))
                    .collect(Collectors.joining(". "))
            + ".\n" + couplers(organ)),
    SIDE_BY_SIDE(organ -> sideBySide(organ, "%-36s", "'")),
    TWO_ON_A_LINE(organ -> sideBySide(organ, "%s ", "'")),
    TABS_SIDE_BY_SIDE(organ -> sideBySide(organ, "%s\t", "'")),
    CELLS(organ -> lines(organ, stop -> stop.name() + "\n" + feet(stop, "'"))),
    CELLS_BARE(organ -> lines(organ, stop -> stop.name() + "\n" + feet(stop, ""))),
    CELLS_NUMBERED(organ -> numbered(organ, (n, stop) -> n + "\n" + stop.name() + "\n" + feet(stop, "'"))),
    CELLS_WITH_PIPES(organ -> lines(organ, stop -> stop.name() + "\n" + feet(stop, "") + "\n" + pipes(stop))),
    GLUED(organ -> lines(organ, stop -> stop.name() + feet(stop, "'").replace(" ", ""))),
    GLUED_WITH_PIPES(organ -> lines(organ, stop -> stop.name() + feet(stop, "'") + pipes(stop))),
    MUSEUM(organ -> organ.divisions().stream()
                    .map(division -> heading(organ, division, "short") + ": "
                            + division.stops().stream()
                                    .map(stop -> feet(stop, "'") + " " + stop.name())
                                    .collect(Collectors.joining("; ")))
                    .collect(Collectors.joining(".\n"))
            + ".\n" + couplers(organ)),
    CONTRACT(organ -> numbered(
            organ,
            (n, stop) -> n + ". " + stop.name() + ", " + inWords(organ, stop) + ", " + pipes(stop) + " "
                    + organ.words().at("columns", 2).toLowerCase(Locale.ROOT))),
    OLD_PRINT(organ -> numbered(
            organ,
            (n, stop) -> n + "  " + stop.name() + " . . . . . . "
                    + inWords(organ, stop) + " . . . . " + pipes(stop) + " "
                    + organ.words().at("columns", 2).toLowerCase(Locale.ROOT))),
    HEADING_OVER_TWO_LINES(organ -> organ.divisions().stream()
                    .map(division -> (division.isPedal() ? "" : organ.words().at("ordinals", division.place()) + "\n")
                            + heading(organ, division, "short") + "\n\n"
                            + division.stops().stream()
                                    .map(stop -> stop.name() + " " + feet(stop, "'") + "\n")
                                    .collect(Collectors.joining()))
                    .collect(Collectors.joining("\n"))
            + couplers(organ)),
    ORDINALS(organ -> organ.divisions().stream()
                    .map(division -> (division.isPedal()
                                    ? heading(organ, division, "short")
                                    : organ.words().at("ordinals", division.place()) + " ("
                                            + heading(organ, division, "short") + ")")
                            + "\n"
                            + division.stops().stream()
                                    .map(stop -> stop.name() + " " + feet(stop, "'") + "\n")
                                    .collect(Collectors.joining()))
                    .collect(Collectors.joining("\n"))
            + couplers(organ)),
    NAMES_ONLY(organ -> lines(organ, stop -> stop.name() + (stop.ranks() > 1 ? " " + roman(stop) : ""))),
    DIVISION_IN_EACH_ROW(organ -> organ.divisions().stream()
                    .flatMap(division -> division.stops().stream()
                            .map(stop -> heading(organ, division, "short") + "\t" + stop.name() + "\t" + feet(stop, "'")
                                    + "\n"))
                    .collect(Collectors.joining())
            + couplers(organ)),
    SLASHES(organ -> parts(
            organ,
            "short",
            ": ",
            division -> division.stops().stream()
                            .map(stop -> stop.name() + " " + feet(stop, "'"))
                            .collect(Collectors.joining(" / "))
                    + "\n"));

    private static final List<String> ROMAN = List.of("", "I", "II", "III", "IV", "V");

    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<PrintedOrgan, String> printer;

    ListLayout(Function<PrintedOrgan, String> printer) {
        this.printer = printer;
    }

    String print(PrintedOrgan organ) {
        return printer.apply(organ);
    }

    private interface NumberedStop {
        String print(int number, KnownStop stop);
    }

    private static String roman(KnownStop stop) {
        return ROMAN.get(stop.ranks());
    }

    private static String feet(KnownStop stop, String unit) {
        return stop.feet().map(feet -> feet + unit).orElseGet(() -> roman(stop));
    }

    private static String inWords(PrintedOrgan organ, KnownStop stop) {
        return stop.feet()
                .map(feet -> feet + " " + organ.words().one("feet"))
                .orElseGet(() -> stop.ranks() + " " + organ.words().one("ranks"));
    }

    private static int pipes(KnownStop stop) {
        return 56 * stop.ranks();
    }

    private static String heading(PrintedOrgan organ, KnownDivision division, String head) {
        return organ.words().at(head, division.place());
    }

    private static String heads(PrintedOrgan organ, String between) {
        return organ.words().one("columns").replace(", ", between + "    ") + "\n\n";
    }

    private static String parts(PrintedOrgan organ, String head, String behind, Function<KnownDivision, String> text) {
        return organ.divisions().stream()
                        .map(division -> heading(organ, division, head) + behind + text.apply(division))
                        .collect(Collectors.joining("\n"))
                + couplers(organ);
    }

    private static String parts(PrintedOrgan organ, String head, Function<KnownDivision, String> text) {
        return parts(organ, head, "\n", text);
    }

    private static String lines(PrintedOrgan organ, Function<KnownStop, String> stop) {
        return parts(organ, "headings", division -> division.stops().stream()
                .map(each -> stop.apply(each) + "\n")
                .collect(Collectors.joining()));
    }

    private static String numbered(PrintedOrgan organ, NumberedStop print) {
        int[] number = {0};
        return lines(organ, stop -> print.print(++number[0], stop));
    }

    private static String sideBySide(PrintedOrgan organ, String cell, String unit) {
        int most = organ.divisions().stream()
                .mapToInt(each -> each.stops().size())
                .max()
                .orElse(0);
        StringBuilder text = new StringBuilder();
        organ.divisions().forEach(each -> text.append(String.format(cell, heading(organ, each, "short"))));
        for (int row = 0; row < most; row++) {
            text.append('\n');
            for (KnownDivision each : organ.divisions()) {
                String stop = row >= each.stops().size()
                        ? ""
                        : each.stops().get(row).name() + " " + feet(each.stops().get(row), unit);
                text.append(String.format(cell, stop));
            }
        }
        return text.append("\n\n").append(couplers(organ)).toString();
    }

    private static String couplers(PrintedOrgan organ) {
        String join = organ.words().one("join");
        boolean worded = join.chars().allMatch(Character::isLetter);
        boolean inNumbers = !worded;
        return "\n"
                + IntStream.range(0, organ.couplers().size())
                        .mapToObj(i -> organ.couplers().get(i))
                        .map(each -> inNumbers
                                ? ROMAN.get(each.source() + 1)
                                        + join
                                        + (organ.divisions()
                                                        .get(each.keyboard())
                                                        .isPedal()
                                                ? "P"
                                                : ROMAN.get(each.keyboard() + 1))
                                : heading(organ, organ.divisions().get(each.source()), "short") + " " + join + " "
                                        + heading(organ, organ.divisions().get(each.keyboard()), "short"))
                        .collect(Collectors.joining("\n"));
    }
}
