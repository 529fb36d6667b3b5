package versewind.cli;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import versewind.plan.ServiceHeading;
import versewind.rules.StopChangesByDivision;
import versewind.sheet.AssistantCard;
import versewind.sheet.DivisionLine;
import versewind.sheet.HymnSheet;
import versewind.sheet.PistonCard;
import versewind.sheet.Sheet;
import versewind.sheet.SheetOptions;
import versewind.sheet.VerseSheet;

/** A sheet as plain text, 80 columns wide, for printers and mail. */
final class SheetText {

    /** Stands at the end of every sheet, so that a sheet can be told from other files. */
    static final String MADE_BY = "Made by Versewind.";

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
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
        ServiceHeading heading = sheet.heading();
        page.paragraph(heading.title());
        heading.date().ifPresent(date -> page.paragraph(DATE.format(date)));
        sheet.day().ifPresent(day -> page.paragraph(day.summary()));
        int people = heading.people();
        page.paragraph(sheet.organ() + ". " + people + (people == 1 ? " person" : " people") + " expected.");
        note("", heading.notes());
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
            page.line("No verse yet.");
        }
        for (int i = 0; i < hymn.verses().size(); i++) {
            page.blank();
            verse(
                    hymn.verses().get(i),
                    sheet.wishes().content() == SheetOptions.Content.WHOLE || i == 0 ? Stops.ALL : Stops.NONE);
        }
    }

    /** Which of the stops are listed. */
    private enum Stops {
        ALL,
        NONE
    }

    private void verse(VerseSheet verse, Stops stops) {
        String piston = verse.verse().piston();
        page.hanging(
                page.left(verse.verse().label(), LABEL - 1) + " ",
                (piston.isBlank() ? "" : "[" + piston + "] ") + verse.playing());
        if (verse.before().isPresent()) {
            moves(verse.changes());
        }
        if (stops == Stops.ALL) {
            verse.drawn().forEach(drawn -> row(drawn.where(), drawn(drawn)));
        }
        String mark = verse.wantsAttention() ? "! " : "";
        page.hanging(indent(), mark + verse.levelWords() + ", " + verse.verdictWords());
        List<String> playing =
                Stream.concat(verse.touch().stream(), verse.breath().stream()).toList();
        if (!playing.isEmpty()) {
            page.hanging(indent(), String.join(" ", playing));
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

    private void moves(List<StopChangesByDivision> changes) {
        if (changes.isEmpty()) {
            page.line(indent() + "Nothing moves.");
        }
        row("- put in", knobs(changes, StopChangesByDivision::putIn));
        row("+ draw", knobs(changes, StopChangesByDivision::drawn));
        row("  box", boxes(changes));
    }

    private static List<String> knobs(
            List<StopChangesByDivision> changes, Function<StopChangesByDivision, List<String>> which) {
        List<List<String>> places = changes.stream()
                .filter(each -> !which.apply(each).isEmpty())
                .map(each -> placed(each.where(), which.apply(each)))
                .toList();
        return ended(places);
    }

    private static List<String> boxes(List<StopChangesByDivision> changes) {
        return ended(changes.stream()
                .filter(each -> each.box().isPresent())
                .map(each -> List.of(each.where() + " " + each.box().get().word()))
                .toList());
    }

    /** Names with commas after all but the last; the place before the first, unless they say it themselves. */
    private static List<String> placed(String where, List<String> names) {
        List<String> pieces = listed(names);
        if (!where.equals(StopChangesByDivision.COUPLERS)) {
            pieces.set(0, where + " " + pieces.get(0));
        }
        return pieces;
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
            List<List<String>> kinds = List.of(
                    headed("put in", knobs(step.movements(), StopChangesByDivision::putIn)),
                    headed("draw", knobs(step.movements(), StopChangesByDivision::drawn)),
                    headed("box", boxes(step.movements())));
            List<String> movements = ended(kinds);
            if (!pieces.isEmpty()) {
                pieces.set(pieces.size() - 1, pieces.get(pieces.size() - 1) + ";");
                pieces.add("then");
            }
            pieces.addAll(movements);
            pieces.add("(" + step.changeWords() + ")");
        }
        row(way, pieces);
    }

    private static List<String> headed(String head, List<String> pieces) {
        return pieces.isEmpty()
                ? List.of()
                : Stream.concat(Stream.of(head), pieces.stream()).toList();
    }

    private void pistons() {
        List<PistonCard.Setting> settings = sheet.pistons().settings();
        if (settings.isEmpty()) {
            return;
        }
        rule("Pistons, to set before the service");
        for (PistonCard.Setting setting : settings) {
            page.blank();
            page.hanging(
                    page.left(setting.piston(), LABEL - 1) + " ",
                    "memory level " + setting.levelWords() + ", for " + String.join(", ", setting.usedBy()));
            setting.drawn().forEach(drawn -> row(drawn.where(), drawn(drawn)));
        }
    }

    private void assistant() {
        List<AssistantCard.Turn> turns = sheet.assistant().turns();
        if (turns.isEmpty()) {
            return;
        }
        rule("For whoever pulls stops");
        for (AssistantCard.Turn turn : turns) {
            page.blank();
            page.paragraph("before " + turn.hymn() + " " + turn.verse());
            row("- put in", knobs(turn.movements(), StopChangesByDivision::putIn));
            row("+ draw", knobs(turn.movements(), StopChangesByDivision::drawn));
        }
    }
}
