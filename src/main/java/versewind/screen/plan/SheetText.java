package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import versewind.screen.toolkit.Text;
import versewind.sheet.Sheet;
import versewind.sheet.SheetPage;

/** A sheet as plain text, for printers, mail and braille. */
public final class SheetText {

    /** The last line of every sheet, by which a sheet is recognised. */
    public static final String MADE_BY = "Made by Versewind.";

    /** Columns of a line: the usual ones, and their limits. */
    public static final int COLUMNS = 80;

    public static final int NARROWEST = 40;
    public static final int WIDEST = 200;

    /** On lines shorter than this, what belongs to a head is not indented as far as it. */
    private static final int NARROW = 60;

    private static final int INDENT = 2;
    private static final int LABEL = 8;
    private static final int HEAD = 10;
    private static final String CUT = "~";

    private final UnaryOperator<String> lettering;
    private final int columns;
    private final boolean isSpoken;
    private final List<String> lines = new ArrayList<>();

    private SheetText(UnaryOperator<String> lettering, int columns, boolean isSpoken) {
        this.lettering = lettering;
        this.columns = columns;
        this.isSpoken = isSpoken;
    }

    /**
     * The sheet as text.
     *
     * @param lettering writes a line in letters that can be shown
     * @param columns columns of a line
     */
    public static String of(Sheet sheet, UnaryOperator<String> lettering, int columns) {
        return new SheetText(lettering, columns, /* isSpoken= */ false).all(sheet);
    }

    /** The same for who hears it: a line for each statement, no columns, rules and signs. */
    public static String spoken(Sheet sheet, UnaryOperator<String> lettering) {
        return new SheetText(lettering, WIDEST, /* isSpoken= */ true).all(sheet);
    }

    private String all(Sheet sheet) {
        sheet.pages().forEach(this::page);
        lines.add("");
        lines.add(MADE_BY);
        return String.join("\n", lines) + "\n";
    }

    private void page(SheetPage page) {
        if (!lines.isEmpty()) {
            lines.add("");
        }
        hanging("", page.name());
        if (!isSpoken) {
            lines.add("=".repeat(Math.min(columns, Text.columns(lettering.apply(page.name())))));
        }
        boolean isCautioned = false;
        for (SheetPage.Block block : page.blocks()) {
            boolean isCaution = block instanceof SheetPage.Line line && line.look() == SheetPage.Look.CAUTION;
            if (isCaution && !isCautioned) {
                lines.add("");
            }
            isCautioned = isCaution;
            block("", block);
        }
    }

    /** A part of a page after a head of its first line; the rest is indented as far. */
    private void block(String head, SheetPage.Block block) {
        if (block instanceof SheetPage.Line line) {
            String note = line.look() == SheetPage.Look.NOTE ? (isSpoken ? "Note: " : "* ") : "";
            line.text().lines().filter(each -> !each.isBlank()).forEach(each -> hanging(head + note, each));
        } else if (block instanceof SheetPage.Rows rows) {
            rows.rows().forEach(row -> row(head, row));
        } else if (block instanceof SheetPage.Verse verse) {
            verse(verse);
        }
    }

    private void row(String head, SheetPage.Row row) {
        String mark =
                switch (row.weight()) {
                    case PLAIN, STRONG -> "";
                    case HEADING -> {
                        lines.add("");
                        yield "";
                    }
                    case ATTENTION -> isSpoken ? "attention, " : "! ";
                };
        hanging(head + padded(row.head(), HEAD), mark + row.text());
    }

    /** Label and piston stand before what is said first, which is who sings. */
    private void verse(SheetPage.Verse verse) {
        lines.add("");
        String head = padded(verse.label(), LABEL);
        String piston = verse.piston().isBlank()
                ? ""
                : isSpoken ? "piston " + verse.piston() + "; " : "[" + verse.piston() + "] ";
        for (SheetPage.Block block : verse.blocks()) {
            if (block instanceof SheetPage.Line line && line.look() == SheetPage.Look.WHO) {
                hanging(head, piston + line.text());
            } else {
                block(" ".repeat(LABEL), block);
            }
        }
    }

    private String padded(String text, int columns) {
        if (isSpoken) {
            return text + ": ";
        }
        String fitting = Text.fit(lettering.apply(text), columns - 1, CUT);
        return fitting + " ".repeat(columns - Text.columns(fitting));
    }

    /** Without signs: "81 decibels" for "81\u00b13", "draw" for "+ draw". */
    private static String inWords(String text) {
        return text.replace('\u00a0', ' ')
                .replaceAll("[+\u2212] (?=draw|put in)", "")
                .replaceAll("\u00b1\\d+(?: dB)?", " dB")
                .replaceAll("\\+(\\d+ dB)\\b", "$1 louder")
                .replaceAll("[\u2212-](\\d+ dB)\\b", "$1 softer")
                .replaceAll("(?<=\\b1) dB\\b", " decibel")
                .replaceAll("(?<=\\d) dB\\b", " decibels");
    }

    /** A text after a head, wrapped under its first word. */
    private void hanging(String head, String text) {
        if (isSpoken) {
            lines.add(lettering.apply(inWords(head.stripLeading() + text)));
            return;
        }
        boolean isNarrow = columns < NARROW;
        int indent = isNarrow ? INDENT : Text.columns(head);
        String start = isNarrow ? "" : head;
        String whole = isNarrow ? (head.strip() + " " + text).strip() : text;
        for (String line : Text.wrapped(lettering.apply(whole), columns - indent)) {
            lines.add((start + line.replace('\u00a0', ' ')).stripTrailing());
            start = " ".repeat(indent);
        }
    }
}
