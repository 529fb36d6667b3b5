package versewind.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import versewind.sheet.SheetPage.Look;
import versewind.sheet.SheetPage.Weight;

/**
 * A sheet as one HTML file that needs nothing else: no network, no script, no font. For the screen, light and dark,
 * and for paper, a leaf of A4 or A5 a page; in large type a page may take several leaves. Plain ASCII.
 */
public final class SheetHtml {

    /** Stands in every sheet, so that a sheet can be told from other files. */
    public static final String MADE_BY = "<meta name=\"generator\" content=\"Versewind\">";

    /** How many letters a label has room for in their full size. */
    private static final int LABEL = 5;

    private static final String STYLE = style();

    private final HtmlWriter html = new HtmlWriter();
    private final Sheet sheet;
    private final List<SheetPage> pages;

    private SheetHtml(Sheet sheet) {
        this.sheet = sheet;
        this.pages = SheetPages.of(sheet);
    }

    /** The sheet as a file. */
    public static String of(Sheet sheet) {
        SheetHtml page = new SheetHtml(sheet);
        page.write();
        return page.html.toString();
    }

    private void write() {
        Object[] attributes =
                switch (sheet.wishes().type()) {
                    case USUAL -> new Object[] {"lang", "en"};
                    case LARGE -> new Object[] {"lang", "en", "class", "large"};
                };
        html.raw("<!DOCTYPE html>\n")
                .block("html", () -> html.block("head", this::head).block("body", this::body), attributes);
    }

    private void head() {
        html.raw("<meta charset=\"utf-8\">\n")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .raw(MADE_BY + "\n")
                .line(
                        "title",
                        sheet.heading().title().isBlank()
                                ? "Sheet"
                                : sheet.heading().title())
                .block("style", () -> html.raw(STYLE));
    }

    private void body() {
        for (int i = 0; i < pages.size(); i++) {
            SheetPage page = pages.get(i);
            String heading = i == 0 ? "h1" : "h2";
            String id = "p" + (i + 1);
            List<Object> attributes = new ArrayList<>(
                    List.of("class", "page " + page.kind().name().toLowerCase(Locale.ROOT), "aria-labelledby", id));
            String sizes = (sheet.wishes().type() == SheetOptions.Type.USUAL ? letters(page) : "") + heads(page);
            if (!sizes.isEmpty()) {
                attributes.addAll(List.of("style", sizes));
            }
            html.block(
                    "section",
                    () -> {
                        html.block("header", () -> html.line("p", page.number(), "class", "number")
                                .line(heading, page.title(), "id", id));
                        blocks(page.blocks(), id);
                    },
                    attributes.toArray());
        }
    }

    /** The size of its letters on every paper. */
    private static String letters(SheetPage page) {
        return Arrays.stream(PageFit.Paper.values())
                .map(paper ->
                        "--" + paper.name().toLowerCase(Locale.ROOT) + ":" + new PageFit(paper).sizePt(page) + "pt;")
                .collect(Collectors.joining());
    }

    /** The width of heads that need more than is usual. */
    private static String heads(SheetPage page) {
        return Arrays.stream(Look.values())
                .filter(look -> page.headEm(look) > look.headEm())
                .map(look -> String.format(Locale.ROOT, "--%s:%.1fem;", look.css(), page.headEm(look)))
                .collect(Collectors.joining());
    }

    private void blocks(List<SheetPage.Block> blocks, String id) {
        for (int i = 0; i < blocks.size(); i++) {
            block(blocks.get(i), id + "v" + i);
        }
    }

    private void block(SheetPage.Block block, String id) {
        if (block instanceof SheetPage.Line line) {
            html.line("p", line.text(), "class", line.look().css());
        } else if (block instanceof SheetPage.Rows rows) {
            rows(rows);
        } else if (block instanceof SheetPage.Verse verse) {
            html.block("article", () -> verse(verse, id), "class", "verse", "aria-labelledby", id);
        } else if (block instanceof SheetPage.Curve curve) {
            html.block("figure", () -> curve.chart().draw(html)).line("p", Chart.KEY, "class", Look.KEY.css());
        }
    }

    /** Label and piston on the left, all else beside them. */
    private void verse(SheetPage.Verse verse, String id) {
        html.block("div", () -> mark(verse, id), "class", "mark").block("div", () -> blocks(verse.blocks(), id));
    }

    private void mark(SheetPage.Verse verse, String id) {
        html.line("h3", verse.label(), "id", id, "class", length(verse.label(), LABEL));
        for (String piston : verse.pistons()) {
            html.line(
                    "p",
                    () -> html.tag("span", "piston ", "class", "apart").text(SheetPages.unbroken(piston)),
                    "class",
                    "piston",
                    "style",
                    "font-size:" + HtmlWriter.number(PageFit.pistonEm(piston)) + "em");
        }
    }

    private static String length(String text, int room) {
        return text.length() <= room ? "short" : text.length() <= room + 2 ? "longer" : "long";
    }

    private void rows(SheetPage.Rows rows) {
        if (!rows.rows().isEmpty()) {
            html.block(
                    "ul",
                    () -> rows.rows().forEach(this::row),
                    "class",
                    rows.look().css());
        }
    }

    private void row(SheetPage.Row row) {
        Object[] attributes = row.weight() == Weight.PLAIN
                ? new Object[] {}
                : new Object[] {"class", row.weight().css()};
        html.line("li", () -> html.tag("b", row.head()).raw(" ").tag("span", row.text()), attributes);
    }

    /** The style that is part of the program, with the sizes that fit a page to its leaf. */
    private static String style() {
        String sizes = Arrays.stream(Look.values())
                .map(look -> "." + look.css() + " { font-size: " + look.em() + "em; }\n"
                        + (look.headEm() > 0
                                ? "." + look.css() + " > li { grid-template-columns: var(--" + look.css() + ", "
                                        + look.headEm() + "em) minmax(0, 1fr); }\n"
                                : ""))
                .collect(Collectors.joining());
        String marks = "header { font-size: " + PageFit.TITLE_EM + "em; }\n" + ".verse { grid-template-columns: "
                + PageFit.MARK_EM + "em minmax(0, 1fr); }\n" + ".mark h3 { font-size: " + PageFit.LABEL_EM + "em; }\n";
        try (InputStream css = SheetHtml.class.getResourceAsStream("/versewind/sheet/sheet.css")) {
            return sizes + marks + new String(css.readAllBytes(), StandardCharsets.US_ASCII);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the style of the sheet is part of the program", unreadable);
        }
    }
}
