package versewind.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import versewind.plan.ChurchDay;
import versewind.rules.StopChangesByDivision;

/**
 * A sheet as one HTML file that needs nothing else: no network, no script, no font. For the screen, light and dark, and for
 * paper of any size; no verse is parted by the end of a page. Plain ASCII.
 */
public final class SheetHtml {

    /** Stands in every sheet, so that a sheet can be told from other files. */
    public static final String MADE_BY = "<meta name=\"generator\" content=\"Versewind\">";

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
    private static final String STYLE = style();

    private SheetHtml() {}

    /** The sheet as a file. */
    public static String of(Sheet sheet) {
        String head = "<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n" + MADE_BY + "\n"
                + Html.line("title", title(sheet))
                + Html.element("style", "\n" + STYLE) + "\n";
        String body =
                heading(sheet) + overview(sheet) + hymns(sheet) + pistons(sheet) + assistant(sheet) + cautions(sheet);
        String large = sheet.wishes().type() == SheetOptions.Type.LARGE ? " class=\"large\"" : "";
        return "<!DOCTYPE html>\n"
                + Html.block("html lang=\"en\"" + large, Html.block("head", head) + Html.block("body", body));
    }

    private static String title(Sheet sheet) {
        return sheet.heading().title().isBlank() ? "Sheet" : sheet.heading().title();
    }

    private static String heading(Sheet sheet) {
        String date = sheet.heading().date().map(DATE::format).orElse("");
        String day = sheet.day().map(ChurchDay::summary).orElse("");
        int people = sheet.heading().people();
        return Html.block(
                "header",
                Html.line("h1", title(sheet))
                        + Html.line("p class=\"day\"", date)
                        + Html.line("p class=\"day\"", day)
                        + Html.line(
                                "p class=\"soft\"",
                                sheet.organ() + ". " + people + (people == 1 ? " person" : " people") + " expected.")
                        + Html.line("p class=\"notes\"", sheet.heading().notes()));
    }

    private static String overview(Sheet sheet) {
        String chart = Chart.of(sheet.hymns());
        return chart.isEmpty()
                ? ""
                : Html.block(
                        "section class=\"overview\" aria-label=\"The service at a glance\"",
                        chart
                                + Html.line(
                                        "p class=\"soft\"",
                                        "Bar: the organ in the nave in dB(A), grey: plus or minus. Ring: the singers."
                                                + " Pale field: where the organ would be right for them."
                                                + " Exclamation mark: wants attention."));
    }

    private static String hymns(Sheet sheet) {
        StringBuilder hymns = new StringBuilder();
        for (int i = 0; i < sheet.hymns().size(); i++) {
            hymns.append(
                    hymn(sheet.hymns().get(i), "h" + (i + 1), sheet.wishes().content()));
        }
        return hymns.toString();
    }

    private static String hymn(HymnSheet hymn, String id, SheetOptions.Content content) {
        String number = hymn.hymn().number();
        String name = Html.block(
                "div class=\"name\"",
                Html.line("p class=\"number\"", number)
                        + Html.line(
                                "h2 id=\"" + id + "\"",
                                hymn.hymn().title().isBlank()
                                        ? "-"
                                        : hymn.hymn().title()));
        String facts = hymn.facts().stream().map(fact -> Html.line("li", fact)).collect(Collectors.joining());
        StringBuilder verses = new StringBuilder();
        for (int i = 0; i < hymn.verses().size(); i++) {
            VerseHtml.Stops stops =
                    content == SheetOptions.Content.WHOLE || i == 0 ? VerseHtml.Stops.LISTED : VerseHtml.Stops.LEFT_OUT;
            verses.append(VerseHtml.of(hymn.verses().get(i), id + "v" + (i + 1), stops));
        }
        return Html.block(
                "section class=\"hymn\" aria-labelledby=\"" + id + "\"",
                name
                        + (facts.isEmpty() ? "" : Html.block("ul class=\"facts\"", facts))
                        + Html.line("p class=\"notes\"", hymn.hymn().notes())
                        + Chart.of(hymn)
                        + (hymn.verses().isEmpty() ? Html.line("p", "No verse yet.") : verses));
    }

    private static String pistons(Sheet sheet) {
        List<PistonCard.Setting> settings = sheet.pistons().settings();
        if (settings.isEmpty()) {
            return "";
        }
        String rows = settings.stream()
                .map(each -> Html.element(
                                "tr",
                                Html.element("th scope=\"row\"", Html.text(each.piston()))
                                        + Html.element("td", Html.text(each.levelWords()))
                                        + Html.element("td", places(each.drawn()))
                                        + Html.element("td", Html.text(String.join(", ", each.usedBy()))))
                        + "\n")
                .collect(Collectors.joining());
        return card("pistons", "Pistons, to set before the service", List.of("Piston", "Level", "Set", "For"), rows);
    }

    private static String places(List<DivisionLine> drawn) {
        return drawn.isEmpty()
                ? "nothing"
                : drawn.stream()
                        .map(each -> Html.element(
                                "p", Html.element("b", Html.text(each.where())) + " " + VerseHtml.labels(each.knobs())))
                        .collect(Collectors.joining());
    }

    private static String assistant(Sheet sheet) {
        List<AssistantCard.Turn> turns = sheet.assistant().turns();
        if (turns.isEmpty()) {
            return "";
        }
        String rows = turns.stream()
                .map(each -> Html.element(
                                "tr",
                                Html.element("th scope=\"row\"", Html.text(each.hymn() + " " + each.verse()))
                                        + Html.element(
                                                "td", VerseHtml.joined(each.movements(), StopChangesByDivision::putIn))
                                        + Html.element(
                                                "td", VerseHtml.joined(each.movements(), StopChangesByDivision::drawn)))
                        + "\n")
                .collect(Collectors.joining());
        return card("assistant", "For whoever pulls stops", List.of("Before", "Put in", "Draw"), rows);
    }

    private static String card(String id, String title, List<String> heads, String rows) {
        String head = heads.stream()
                .map(each -> Html.element("th scope=\"col\"", each))
                .collect(Collectors.joining());
        return Html.block(
                "section class=\"card\" aria-labelledby=\"" + id + "\"",
                Html.line("h2 id=\"" + id + "\"", title)
                        + Html.block(
                                "table",
                                Html.element("thead", Html.element("tr", head)) + "\n" + Html.block("tbody", rows)));
    }

    private static String cautions(Sheet sheet) {
        return Html.block(
                "footer class=\"cautions\"",
                sheet.cautions().stream().map(each -> Html.line("p", each)).collect(Collectors.joining()));
    }

    private static String style() {
        try (InputStream css = SheetHtml.class.getResourceAsStream("/versewind/sheet/sheet.css")) {
            return new String(css.readAllBytes(), StandardCharsets.US_ASCII);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the style of the sheet is part of the program", unreadable);
        }
    }
}
