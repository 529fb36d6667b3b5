package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import versewind.sheet.ChangeRow;
import versewind.sheet.DivisionLine;
import versewind.sheet.HymnSheet;
import versewind.sheet.PistonSetting;
import versewind.sheet.Placed;
import versewind.sheet.Sheet;
import versewind.sheet.VerseSheet;

/** A sheet as plain text, 80 columns wide, for printers and mail. */
final class SheetText {

    /** The last line of every sheet, by which a sheet is recognised. */
    static final String MADE_BY = "Made by Versewind.";

    private static final int LABEL = 8;
    private static final int WHERE = 10;
    private static final int COLUMNS = 80;

    private final Page page;
    private final Sheet sheet;

    private SheetText(Page page, Sheet sheet) {
        this.page = page;
        this.sheet = sheet;
    }

    static String of(Sheet sheet, CharsetFallback lettering) {
        Page page = new Page(lettering);
        SheetText text = new SheetText(page, sheet);
        text.heading();
        sheet.hymns().forEach(text::hymn);
        text.pistons();
        text.assistant();
        page.blank();
        sheet.cautions().forEach(page::paragraph);
        page.line(MADE_BY);
        return page.text();
    }

    private void heading() {
        page.paragraph(sheet.heading().title());
        if (!sheet.date().isEmpty()) {
            page.paragraph(sheet.date());
        }
        sheet.heading().summary().ifPresent(page::paragraph);
        page.paragraph(sheet.setting());
        note("", sheet.heading().notes());
    }

    private void note(String indent, String note) {
        note.lines().filter(line -> !line.isBlank()).forEach(line -> page.hanging(indent + "* ", line));
    }

    private void rule(String title) {
        page.blank();
        page.paragraph(title);
        page.line("=".repeat(COLUMNS));
    }

    private void hymn(HymnSheet hymn) {
        rule(hymn.name());
        if (!hymn.facts().isEmpty()) {
            page.paragraph(String.join(", ", hymn.facts()));
        }
        note("", hymn.hymn().notes());
        if (hymn.verses().isEmpty()) {
            page.line("No verses yet.");
        }
        for (int i = 0; i < hymn.verses().size(); i++) {
            page.blank();
            verse(hymn.verses().get(i), sheet.wishes().listsStopsOf(i));
        }
    }

    private void verse(VerseSheet verse, boolean listsStops) {
        String piston = verse.verse().piston();
        page.hanging(
                page.left(verse.verse().label(), LABEL - 1) + " ",
                (piston.isBlank() ? "" : "[" + piston + "] ") + verse.playing());
        if (verse.before().isPresent()) {
            changes(verse.changes());
            if (!verse.besides().isEmpty()) {
                page.line(indent() + "By hand, besides the piston:");
                changes(verse.besides());
            }
            verse.leftOut().forEach(other -> {
                page.line(indent() + other.words());
                changes(other.changes());
            });
        }
        if (listsStops) {
            verse.drawn().forEach(drawn -> row(drawn.where(), drawn(drawn)));
        }
        if (verse.verse().isPlayed()) {
            String mark = verse.wantsAttention() ? "! " : "";
            page.hanging(indent(), mark + verse.levelWords() + ", " + verse.verdictWords());
        }
        if (!verse.played().isEmpty()) {
            page.hanging(indent(), String.join(" ", verse.played()));
        }
        note(indent(), verse.verse().note());
        steps("stronger", verse.stronger());
        steps("softer", verse.softer());
    }

    private static String indent() {
        return " ".repeat(LABEL);
    }

    /** A row that is broken only between its pieces; none where there are none. */
    private void row(String head, List<String> pieces) {
        if (!pieces.isEmpty()) {
            page.hanging(indent() + page.left(head, WHERE - 1) + " ", pieces);
        }
    }

    private void changes(List<ChangeRow> changes) {
        if (changes.isEmpty()) {
            page.line(indent() + "No changes.");
        }
        changes.forEach(change -> row(sign(change.kind()) + change.kind().word(), pieces(change.places())));
    }

    private static String sign(ChangeRow.Kind kind) {
        return switch (kind) {
            case PUT_IN -> "- ";
            case DRAW -> "+ ";
            case BOX -> "  ";
        };
    }

    /** Names with commas between those of a place, and semicolons between places; the place before its first name. */
    private static List<String> pieces(List<Placed> places) {
        return ended(places.stream()
                .map(place -> {
                    List<String> pieces = listed(place.names());
                    pieces.set(0, (place.where() + " " + pieces.get(0)).strip());
                    return pieces;
                })
                .toList());
    }

    private static List<String> listed(List<String> names) {
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            pieces.add(names.get(i) + (i < names.size() - 1 ? "," : ""));
        }
        return pieces;
    }

    /** All places, one after another, with semicolons between. */
    private static List<String> ended(List<List<String>> places) {
        List<String> pieces = new ArrayList<>();
        for (List<String> place : places) {
            if (!pieces.isEmpty() && !place.isEmpty()) {
                pieces.set(pieces.size() - 1, pieces.get(pieces.size() - 1) + ";");
            }
            pieces.addAll(place);
        }
        return pieces;
    }

    private static List<String> drawn(DivisionLine drawn) {
        List<String> pieces = listed(drawn.knobs());
        drawn.box().ifPresent(box -> pieces.add("(box " + box.word() + ")"));
        return pieces;
    }

    private void steps(String way, List<VerseSheet.Step> steps) {
        List<String> pieces = new ArrayList<>();
        for (VerseSheet.Step step : steps) {
            List<String> movements = ended(step.changes().stream()
                    .map(row -> Stream.concat(Stream.of(row.kind().word()), pieces(row.places()).stream())
                            .toList())
                    .toList());
            if (!pieces.isEmpty()) {
                pieces.set(pieces.size() - 1, pieces.get(pieces.size() - 1) + ";");
                pieces.add("then");
            }
            pieces.addAll(movements);
            pieces.add("(" + step.changeWords() + ")");
        }
        row(way, pieces);
    }

    private void pistons() {
        List<PistonSetting> settings = sheet.pistons();
        if (settings.isEmpty()) {
            return;
        }
        rule("Pistons to set before the service");
        for (PistonSetting setting : settings) {
            page.blank();
            page.hanging(
                    page.left(setting.piston(), LABEL - 1) + " ",
                    "memory level " + setting.levelWords() + ", for " + String.join(", ", setting.usedBy()));
            setting.drawn().forEach(drawn -> row(drawn.where(), drawn(drawn)));
        }
    }

    private void assistant() {
        List<Sheet.Turn> turns = sheet.turns();
        if (turns.isEmpty()) {
            return;
        }
        rule("For the registrant");
        for (Sheet.Turn turn : turns) {
            page.blank();
            page.paragraph("before " + turn.hymn() + " " + turn.verse());
            changes(turn.changes());
        }
    }
}
