package versewind.screen;

import java.util.List;
import java.util.Optional;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.screen.KeyRow.Hint;

/** The verse where we are, over the whole screen, to be played from. */
final class DeskView {

    private static final int GUTTER = 12;
    private static final int NARROW_GUTTER = 6;
    private static final int NARROW = 60;

    private static final List<Hint> HINTS = List.of(
            new Hint(Command.TURN_ON, "on"),
            new Hint(Command.TURN_BACK, "back"),
            new Hint(Command.MORE_PRESENT, "- present"),
            new Hint(Command.HOW_IT_WAS, "how it was"),
            new Hint(Command.CLOSE_DESK, "leave"));

    private DeskView() {}

    static void paint(Frame frame, State state, PlanEdit work) {
        Screen panel = state.ground();
        if (panel instanceof Panel.Answers answers) {
            FeedbackView.paint(frame, state, work, answers);
        } else if (panel instanceof Panel.Desk desk && work.verse().isPresent()) {
            paint(frame, state, work, desk.notes());
        } else {
            frame.write(1, 0, work.plan().heading().title(), Style.HEADING);
            frame.write(1, 2, "This plan has no verse to play yet.", Style.TEXT);
        }
        paintLast(frame, state);
    }

    private static void paint(Frame frame, State state, PlanEdit work, DeskNotes notes) {
        DeskLayout layout = DeskLayout.of(frame.height());
        Marks marks = state.marks();
        DeskWords words = new DeskWords(marks, work, notes);
        int whole = frame.width() - 2;
        paintHeader(frame, state, work, notes);
        paintLetters(frame, marks, work, layout);
        words.who(whole).paint(frame, marks, 1, layout.who(), whole, 1);
        words.level(whole).paint(frame, marks, 1, layout.level(), whole, 1);
        if (layout.note() >= 0) {
            String note = note(work);
            frame.write(1, layout.note(), Text.fit(note, whole, marks.cut()), Style.MESSAGE);
        }
        block(frame, marks, "Now", words.now(), layout.now(), layout.nowRows());
        Flow drawn = words.drawn(blockColumns(frame), layout.drawnRows());
        block(frame, marks, "Drawn", drawn, layout.drawn(), layout.drawnRows());
        block(frame, marks, "Next", words.next(), layout.next(), layout.nextRows());
        paintLadder(frame, marks, words, layout);
    }

    private static void block(Frame frame, Marks marks, String name, Flow flow, int y, int rows) {
        if (rows > 0) {
            frame.write(1, y, name, Style.HEADING);
            flow.paint(frame, marks, gutter(frame), y, blockColumns(frame), rows);
        }
    }

    private static int gutter(Frame frame) {
        return frame.width() < NARROW ? NARROW_GUTTER : GUTTER;
    }

    private static int blockColumns(Frame frame) {
        return frame.width() - 1 - gutter(frame);
    }

    /** Stronger over softer, or where rows are few, beside each other with their keys alone. */
    private static void paintLadder(Frame frame, Marks marks, DeskWords words, DeskLayout layout) {
        int y = layout.ladder();
        String stronger = Command.PLAY_STRONGER.keys().get(0).name();
        String softer = Command.PLAY_SOFTER.keys().get(0).name();
        int rows = layout.ladderRows();
        if (rows > 0) {
            step(frame, marks, stronger, "stronger", words.steps(1), y, rows);
            step(frame, marks, softer, "softer", words.steps(-1), y + rows, rows);
            return;
        }
        int half = frame.width() / 2;
        frame.write(1, y, stronger, Style.KEY);
        words.steps(1).paint(frame, marks, 3, y, half - 4, 1);
        frame.write(half, y, softer, Style.KEY);
        words.steps(-1).paint(frame, marks, half + 2, y, frame.width() - half - 3, 1);
    }

    private static void step(Frame frame, Marks marks, String key, String name, Flow flow, int y, int rows) {
        block(frame, marks, "  " + name, flow, y, rows);
        frame.write(1, y, key, Style.KEY);
    }

    /** The hymn, how many are present, and how far the service is. */
    private static void paintHeader(Frame frame, State state, PlanEdit work, DeskNotes notes) {
        Hymn hymn = work.hymn().orElseThrow();
        int people = notes.people(work);
        int planned = work.plan().heading().people();
        List<VersePlace> places = ServiceOrder.places(work.plan());
        String present =
                people + " present" + (people == planned || frame.width() < NARROW ? "" : " (" + planned + " planned)");
        String page = (places.indexOf(work.place()) + 1) + " of " + places.size();
        int pageX = frame.width() - 1 - Text.columns(page);
        int presentX = pageX - 2 - Text.columns(present);
        String title = (hymn.number() + " " + hymn.title()).strip();
        frame.write(1, 0, Text.fit(title, presentX - 3, state.marks().cut()), Style.HEADING);
        frame.write(presentX, 0, present, people == planned ? Style.TEXT : Style.NEAR);
        frame.write(pageX, 0, page, Style.TEXT);
    }

    /** The hymn's number and the verse; without the number, or not at all, where that is too long. */
    private static void paintLetters(Frame frame, Marks marks, PlanEdit work, DeskLayout layout) {
        Verse verse = work.verse().orElseThrow();
        String number = work.hymn().map(Hymn::number).orElse("");
        int whole = frame.width() - 2;
        for (String text : List.of(number + " " + verse.label(), verse.label())) {
            Optional<BigLetters> letters = BigLetters.of(text);
            Optional<BigLetters.Dot> dot = letters.flatMap(each -> each.fitting(layout.dots(), whole));
            if (dot.isPresent()) {
                paint(frame, marks, letters.get(), 1, dot.get(), style(marks));
                int used = letters.get().columns(dot.get()) + 6 * dot.get().columns();
                paintPiston(frame, marks, work, verse, layout, whole - used);
                return;
            }
        }
    }

    /** The piston to press, at the right. */
    private static void paintPiston(
            Frame frame, Marks marks, PlanEdit work, Verse verse, DeskLayout layout, int columns) {
        if (!work.instrument().pistons().any()) {
            return;
        }
        BigLetters.of(verse.piston())
                .ifPresent(piston -> piston.fitting(layout.dots(), columns).ifPresent(dot -> {
                    int x = frame.width() - 1 - piston.columns(dot);
                    paint(frame, marks, piston, x, dot, pistonStyle(marks));
                }));
    }

    private static void paint(Frame frame, Marks marks, BigLetters letters, int x, BigLetters.Dot dot, Style style) {
        letters.paint(frame, x, 1, dot, marks, style);
    }

    /** A cell of ASCII is not filled by its character, so it is filled by its ground. */
    private static Style style(Marks marks) {
        return switch (marks) {
            case UNICODE -> Style.STRONG;
            case ASCII -> Style.CURSOR;
        };
    }

    private static Style pistonStyle(Marks marks) {
        return switch (marks) {
            case UNICODE -> Style.HEADING;
            case ASCII -> Style.CURSOR;
        };
    }

    private static String note(PlanEdit work) {
        String note = work.verse().map(Verse::note).orElse("");
        return note.isBlank() && work.place().verse() == 0
                ? work.hymn().map(Hymn::notes).orElse("")
                : note;
    }

    /** What was said, or else the keys. */
    private static void paintLast(Frame frame, State state) {
        if (!state.notice().text().isBlank()) {
            StatusView.paintNotice(frame, state);
            return;
        }
        if (state.panel() instanceof Panel.Desk) {
            KeyRow.paint(frame, frame.height() - 1, HINTS, Style.TEXT);
        }
    }
}
