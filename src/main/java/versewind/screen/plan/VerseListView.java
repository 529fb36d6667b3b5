package versewind.screen.plan;

import java.util.List;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.sound.Balance;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/**
 * The verses of the hymn where we are, each with its level and its share; below them the hymns of the service.
 */
final class VerseListView {

    private static final int WHO = 5;
    private static final int LEVEL = 3;
    private static final int WORD = 16;

    /** Numbers of hymns stand right-aligned in so many columns at most. */
    private static final int MOST_NUMBER = 4;

    private static final int SHARE = "share".length();

    private VerseListView() {}

    /** The columns of a row, from the width of the list; with room for labels and the mark of what may be left out. */
    private record Columns(int x, int label, int bar, int word) {

        static Columns of(Layout layout, List<Verse> verses) {
            int fixed = 1 + 1 + WHO + 1 + LEVEL + 1 + 1 + 1;
            int rest = layout.listWidth() - fixed;
            int word = rest >= 6 + 8 + WORD + 1 ? WORD + 1 : 0;
            int widest = verses.stream()
                    .mapToInt(verse -> Text.columns(VerseListView.label(verse)))
                    .max()
                    .orElse(0);
            int label = Math.max(5, Math.min(9, Math.max(Math.min(widest, rest - word - SHARE), (rest - word) / 2)));
            return new Columns(layout.listX(), label, rest - word - label, word);
        }

        int whoX() {
            return x + 1 + label + 1;
        }

        int levelX() {
            return whoX() + WHO + 1;
        }

        int barX() {
            return levelX() + LEVEL + 1;
        }

        int markX() {
            return barX() + bar + 1;
        }
    }

    static void paint(Frame frame, State state, PlanEdit work, List<Estimate> estimates) {
        Layout layout = Layout.ofPanels(state);
        Columns columns = Columns.of(layout, work.verses());
        frame.write(columns.x() + 1, layout.top(), "verse", Style.FAINT);
        frame.write(columns.whoX(), layout.top(), "who", Style.FAINT);
        List<Verse> verses = work.verses();
        String unit = "dB" + widest(frame, estimates);
        int organX = frame.write(columns.levelX(), layout.top(), unit, Style.FAINT) + 1;
        frame.write(organX, layout.top(), "share", Style.FAINT, columns.markX());

        int room = layout.height() - 1;
        new ListBox<>(estimates, work.place().verse())
                .each(layout.top() + 1, room, (estimate, i, y) -> paintVerse(frame, work, estimate, i, columns, y));
        if (verses.isEmpty() && work.hymn().isPresent()) {
            frame.write(columns.x() + 1, layout.top() + 1, "no verse yet; i to add one", Style.FAINT);
        }
        int used = Math.max(1, verses.size());
        int left = room - used - 1;
        int noteRows = noteRows(work, layout);
        if (noteRows > 0) {
            paintNote(frame, work, layout, layout.statusTop() - noteRows);
        }
        if (left >= 2 && !work.plan().hymns().isEmpty()) {
            paintHymns(frame, work, layout, layout.top() + 2 + used, left - 1);
        }
    }

    /** What the levels of the list may well be off, the widest of them: it hardly differs from verse to verse. */
    private static String widest(Frame frame, List<Estimate> estimates) {
        double widest = 0;
        for (Estimate estimate : estimates) {
            widest = estimate.isSilent()
                    ? widest
                    : Math.max(widest, estimate.plusMinus().organDb());
        }
        return widest == 0 ? "" : frame.mark(Mark.PLUS_MINUS) + Math.round(widest);
    }

    private static void paintVerse(Frame frame, PlanEdit work, Estimate estimate, int index, Columns columns, int y) {
        Verse verse = work.verses().get(index);
        boolean here = index == work.place().verse();
        frame.write(columns.x(), y, here ? frame.mark(Mark.HERE) : " ", Style.STRONG);
        frame.write(columns.x() + 1, y, label(frame, verse, columns.label()), here ? Style.STRONG : Style.TEXT);
        frame.write(columns.whoX(), y, who(verse), Style.TEXT);
        String level = estimate.organDba().isPresent()
                ? Long.toString(Math.round(estimate.organDba().getAsDouble()))
                : frame.mark(Mark.MINUS);
        frame.write(columns.levelX() + LEVEL - Text.columns(level), y, level, Style.TEXT);
        paintBar(frame, verse, estimate.balance(), columns, y);
        Verdict verdict = estimate.balance().verdict();
        frame.write(columns.markX(), y, ShortWords.mark(frame.marks(), estimate.balance()), ShortWords.style(verdict));
        if (columns.word() > 0 && verdict.kind() != Balance.Kind.ORGAN_ALONE) {
            String words = estimate.balance().shortWords();
            frame.write(
                    columns.markX() + 2,
                    y,
                    Text.columns(words) <= columns.word() - 1 ? words : verdict.word(),
                    ShortWords.style(verdict));
        }
        if (here) {
            Style cursor = work.side() == PlanEdit.Side.VERSES ? Style.CURSOR : Style.RESTING_CURSOR;
            frame.paint(columns.x() + 1, y, columns.label(), cursor);
        }
    }

    /** In parentheses where the verse may be left out. */
    private static String label(Verse verse) {
        return verse.isOptional() ? "(" + verse.label() + ")" : verse.label();
    }

    private static String label(Frame frame, Verse verse, int columns) {
        return verse.isOptional()
                ? "(" + frame.fit(verse.label(), columns - 2) + ")"
                : frame.fit(verse.label(), columns);
    }

    /** A bar as long as the share, up to where a lead is too strong; with a mark where the verdict is right. */
    private static void paintBar(Frame frame, Verse verse, Balance balance, Columns columns, int y) {
        if (balance.share().isEmpty()) {
            return;
        }
        double whole = balance.kind() == Balance.Kind.VOICE ? 1 : Verdict.TOO_STRONG.from(verse.mode());
        double filled = columns.bar() * balance.share().getAsDouble() / whole;
        for (int cell = 0; cell < columns.bar(); cell++) {
            frame.write(columns.barX() + cell, y, frame.marks().bar(filled - cell), Style.BAR);
        }
        double edge = columns.bar() * Verdict.right(verse.mode()).from(verse.mode()) / whole;
        int cell = Math.min(columns.bar() - 1, (int) edge);
        frame.write(columns.barX() + cell, y, frame.mark(Mark.EDGE), Style.EDGE);
    }

    /** Whom the organ accompanies, in five letters at most. */
    private static String who(Verse verse) {
        if (verse.kind().isOrganAlone() && verse.isPlayed() && verse.mode() != Mode.MELODY_SOLOED) {
            return "organ";
        }
        return verse.sungBy().shortWord();
    }

    /** Rows that verses and hymns leave for the note. */
    private static int noteRows(PlanEdit work, Layout layout) {
        return layout.height()
                - 4
                - Math.max(1, work.verses().size())
                - work.plan().hymns().size();
    }

    private static String note(PlanEdit work) {
        String verseNote = work.verse().map(Verse::note).orElse("");
        return verseNote.isBlank() ? work.hymn().map(Hymn::notes).orElse("") : verseNote;
    }

    /** The note, if there is no room for all of it here; blank otherwise. */
    static String noteNotShown(PlanEdit work, Layout layout) {
        List<String> lines = Text.wrapped(note(work), layout.listWidth() - 2);
        return lines.size() > Math.max(0, noteRows(work, layout)) ? note(work) : "";
    }

    private static void paintNote(Frame frame, PlanEdit work, Layout layout, int y) {
        int width = layout.listWidth() - 2;
        int rows = layout.statusTop() - y;
        List<String> lines = Text.wrapped(note(work), width);
        for (int i = 0; i < Math.min(lines.size(), rows); i++) {
            boolean isCut = i == rows - 1 && lines.size() > rows;
            String line = isCut ? frame.fit(lines.get(i) + " " + lines.get(i + 1), width) : lines.get(i);
            frame.write(layout.listX() + 1, y + i, line, Style.MESSAGE);
        }
    }

    private static void paintHymns(Frame frame, PlanEdit work, Layout layout, int y, int room) {
        frame.write(layout.listX() + 1, y, "Hymns", Style.HEADING);
        List<Hymn> hymns = work.plan().hymns();
        int numbers = Math.min(
                MOST_NUMBER,
                hymns.stream()
                        .mapToInt(hymn -> Text.columns(hymn.number()))
                        .max()
                        .orElse(0));
        new ListBox<>(hymns, work.place().hymn()).each(y + 1, room, (hymn, i, row) -> {
            boolean here = i == work.place().hymn();
            frame.write(layout.listX(), row, here ? frame.mark(Mark.HERE) : " ", Style.STRONG);
            String before = " ".repeat(Math.max(0, numbers - Text.columns(hymn.number())));
            String line = numbers == 0 ? hymn.title() : before + hymn.number() + " " + hymn.title();
            frame.write(
                    layout.listX() + 1, row, frame.fit(line, layout.listWidth() - 2), here ? Style.STRONG : Style.TEXT);
        });
    }
}
