package versewind.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A sheet as one HTML file that needs nothing else: no network, no script, no font. For the screen, light and dark,
 * and for paper of any size; no verse is parted by the end of a page. Plain ASCII.
 */
public final class SheetHtml {

    /** Stands in every sheet, so that a sheet can be told from other files. */
    public static final String MADE_BY = "<meta name=\"generator\" content=\"Versewind\">";

    /** More than can be moved by hand in a breath, and more than can be read in one: set smaller. */
    private static final int MANY = 10;

    private static final String STYLE = style();
    private static final String NO_BREAK = "\u00a0";

    private final HtmlWriter html = new HtmlWriter();
    private final Sheet sheet;

    private SheetHtml(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The sheet as a file. */
    public static String of(Sheet sheet) {
        SheetHtml page = new SheetHtml(sheet);
        page.write();
        return page.html.toString();
    }

    private void write() {
        Object[] large = sheet.wishes().type() == SheetOptions.Type.LARGE
                ? new Object[] {"lang", "en", "class", "large"}
                : new Object[] {"lang", "en"};
        html.raw("<!DOCTYPE html>\n")
                .block("html", () -> html.block("head", this::head).block("body", this::body), large);
    }

    private void head() {
        html.raw("<meta charset=\"utf-8\">\n")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .raw(MADE_BY + "\n")
                .line("title", title())
                .block("style", () -> html.raw(STYLE));
    }

    private void body() {
        html.block("header", this::heading);
        if (sheet.sounds()) {
            html.block("section", this::overview, "class", "overview", "aria-label", "The service at a glance");
        }
        for (int i = 0; i < sheet.hymns().size(); i++) {
            HymnSheet hymn = sheet.hymns().get(i);
            String id = "h" + (i + 1);
            html.block("section", () -> hymn(hymn, id), "class", "hymn", "aria-labelledby", id);
        }
        pistons();
        assistant();
        html.block("footer", () -> sheet.cautions().forEach(each -> html.line("p", each)), "class", "cautions");
    }

    private String title() {
        return sheet.heading().title().isBlank() ? "Sheet" : sheet.heading().title();
    }

    private void heading() {
        html.line("h1", title())
                .line("p", sheet.date(), "class", "day")
                .line("p", sheet.heading().summary().orElse(""), "class", "day")
                .line("p", sheet.setting(), "class", "soft")
                .line("p", sheet.heading().notes(), "class", "notes");
    }

    private void overview() {
        Chart.draw(html, sheet.hymns());
        html.line(
                "p",
                "Bar: organ level in the nave in dB(A), with its uncertainty in grey. Ring: singers. Pale band: the"
                        + " right level for the organ. Exclamation mark: needs attention.",
                "class",
                "soft");
    }

    private void hymn(HymnSheet hymn, String id) {
        String title = hymn.hymn().title();
        html.block(
                "div",
                () -> html.line("p", hymn.hymn().number(), "class", "number")
                        .line("h2", title.isBlank() ? "-" : title, "id", id),
                "class",
                "name");
        if (!hymn.facts().isEmpty()) {
            html.block("ul", () -> hymn.facts().forEach(fact -> html.line("li", fact)), "class", "facts");
        }
        html.line("p", hymn.hymn().notes(), "class", "notes");
        Chart.draw(html, hymn);
        if (hymn.verses().isEmpty()) {
            html.line("p", "No verses yet.");
        }
        for (int i = 0; i < hymn.verses().size(); i++) {
            VerseSheet verse = hymn.verses().get(i);
            String verseId = id + "v" + (i + 1);
            boolean listsStops = sheet.wishes().listsStopsOf(i);
            html.block(
                    "article",
                    () -> html.block("div", () -> mark(verse, verseId), "class", "mark")
                            .block("div", () -> verse(verse, listsStops)),
                    "class",
                    "verse",
                    "aria-labelledby",
                    verseId);
        }
    }

    /** The label of a verse and its piston. */
    private void mark(VerseSheet verse, String id) {
        String label = verse.verse().label();
        String piston = verse.verse().piston();
        html.line("h3", label.isBlank() ? "-" : label, "id", id);
        if (!piston.isBlank()) {
            html.line("p", () -> html.tag("span", "piston ", "class", "apart").text(piston), "class", "piston");
        }
    }

    private void verse(VerseSheet verse, boolean listsStops) {
        changes(verse);
        if (!verse.besides().isEmpty()) {
            html.line("p", "By hand, besides the piston:", "class", "still");
            moves(verse.besides());
        }
        verse.leftOut().forEach(this::leftOut);
        html.block(
                "div",
                () -> {
                    html.line("p", verse.playing());
                    if (verse.verse().isPlayed()) {
                        html.line("p", () -> level(verse), "class", "level");
                    }
                },
                "class",
                "play");
        if (listsStops) {
            stops(verse);
        }
        html.line("p", String.join(" ", verse.played()), "class", "touch")
                .line("p", verse.verse().note(), "class", "note");
        if (!verse.stronger().isEmpty() || !verse.softer().isEmpty()) {
            html.block(
                    "dl",
                    () -> {
                        steps("stronger", verse.stronger());
                        steps("softer", verse.softer());
                    },
                    "class",
                    "steps");
        }
    }

    private void level(VerseSheet verse) {
        html.text(verse.levelWords() + ", ");
        if (verse.wantsAttention()) {
            html.tag("strong", verse.verdictWords());
        } else {
            html.text(verse.verdictWords());
        }
    }

    private void changes(VerseSheet verse) {
        if (!verse.verse().isPlayed()) {
            return;
        }
        if (verse.before().isEmpty() || verse.changes().isEmpty()) {
            String still = verse.before().isEmpty() ? "Set before the service:" : "No changes.";
            html.line("p", still, "class", "still");
            return;
        }
        moves(verse.changes());
    }

    private void leftOut(VerseSheet.LeftOut other) {
        html.line("p", other.words(), "class", "still");
        if (other.changes().isEmpty()) {
            html.line("p", "No changes.", "class", "still");
        } else {
            moves(other.changes());
        }
    }

    private void moves(List<ChangeRow> changes) {
        int knobs = changes.stream().mapToInt(ChangeRow::knobs).sum();
        html.block("dl", () -> changes.forEach(this::change), "class", knobs > MANY ? "moves many" : "moves");
    }

    private void change(ChangeRow row) {
        Object[] attributes = row.kind() == ChangeRow.Kind.PUT_IN ? new Object[] {"class", "in"} : new Object[] {};
        html.tag("dt", row.kind().word()).line("dd", () -> places(row.places()), attributes);
    }

    /** "Great Mixture III, Twelfth 2 2/3; Swell Cornopean 8". */
    private void places(List<Placed> places) {
        String between = "";
        for (Placed place : places) {
            html.raw(between);
            if (!place.where().isEmpty()) {
                html.tag("b", place.where()).raw(" ");
            }
            html.text(labels(place.names()));
            between = "; ";
        }
    }

    private static String labels(List<String> names) {
        return names.stream().map(SheetHtml::unbroken).collect(Collectors.joining(", "));
    }

    /** A name that is never parted from its pitch: "Open Diapason 8", "Twelfth 2 2/3". */
    static String unbroken(String label) {
        return label.replaceAll(" (?=(?:[0-9/]+|[IVX]+)(?: |$))", NO_BREAK);
    }

    private void stops(VerseSheet verse) {
        List<DivisionLine> drawn = verse.drawn();
        if (drawn.isEmpty()) {
            html.line("p", "Nothing drawn.");
            return;
        }
        String caption = "Drawn for " + verse.verse().label();
        html.block(
                "table",
                () -> {
                    html.tag("caption", () -> html.tag("span", caption, "class", "apart"));
                    drawn.forEach(line -> html.line("tr", () -> stops(line)));
                },
                "class",
                "stops");
    }

    private void stops(DivisionLine line) {
        html.tag("th", line.where(), "scope", "row").tag("td", () -> {
            html.text(labels(line.knobs()));
            line.box().ifPresent(box -> html.raw(" ").tag("span", "box " + box.word(), "class", "box"));
        });
    }

    private void steps(String way, List<VerseSheet.Step> steps) {
        if (!steps.isEmpty()) {
            html.tag("dt", way).line("dd", () -> {
                for (int i = 0; i < steps.size(); i++) {
                    html.raw(i == 0 ? "" : "; then ");
                    step(steps.get(i));
                }
            });
        }
    }

    private void step(VerseSheet.Step step) {
        String between = "";
        for (ChangeRow row : step.changes()) {
            html.raw(between + row.kind().word() + " ");
            places(row.places());
            between = "; ";
        }
        html.text(" (" + step.changeWords().replace(" ", NO_BREAK) + ")");
    }

    private void pistons() {
        card(
                "pistons",
                "Pistons to set before the service",
                List.of("Piston", "Level", "Set", "For"),
                sheet.pistons().stream()
                        .<Runnable>map(each -> () -> html.tag("th", each.piston(), "scope", "row")
                                .tag("td", each.levelWords())
                                .tag("td", () -> setting(each.drawn()))
                                .tag("td", String.join(", ", each.usedBy()))));
    }

    private void setting(List<DivisionLine> drawn) {
        if (drawn.isEmpty()) {
            html.text("nothing");
        }
        drawn.forEach(each -> html.tag("p", () -> html.tag("b", each.where()).text(" " + labels(each.knobs()))));
    }

    private void assistant() {
        card(
                "assistant",
                "For the registrant",
                List.of("Before", "Push in", "Draw"),
                sheet.turns().stream()
                        .<Runnable>map(each -> () -> html.tag("th", each.hymn() + " " + each.verse(), "scope", "row")
                                .tag("td", () -> places(each.places(ChangeRow.Kind.PUT_IN)))
                                .tag("td", () -> places(each.places(ChangeRow.Kind.DRAW)))));
    }

    /** A card on a page of its own; none without rows. */
    private void card(String id, String title, List<String> heads, Stream<Runnable> cells) {
        List<Runnable> rows = cells.toList();
        if (!rows.isEmpty()) {
            html.block(
                    "section",
                    () -> html.line("h2", title, "id", id).block("table", () -> table(heads, rows)),
                    "class",
                    "card",
                    "aria-labelledby",
                    id);
        }
    }

    private void table(List<String> heads, List<Runnable> rows) {
        html.line("thead", () -> html.tag("tr", () -> heads.forEach(each -> html.tag("th", each, "scope", "col"))))
                .block("tbody", () -> rows.forEach(row -> html.line("tr", row)));
    }

    private static String style() {
        try (InputStream css = SheetHtml.class.getResourceAsStream("/versewind/sheet/sheet.css")) {
            return new String(css.readAllBytes(), StandardCharsets.US_ASCII);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the style of the sheet is part of the program", unreadable);
        }
    }
}
