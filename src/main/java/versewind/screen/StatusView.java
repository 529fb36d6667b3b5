package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.plan.Hymn;
import versewind.plan.Mood;
import versewind.plan.Verse;
import versewind.sheet.Wording;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;
import versewind.sound.Margin;

/** The status bar: who sings and how it is played, the live levels, what has to be moved, what the program says. */
final class StatusView {

    private StatusView() {}

    /** How a verse of the hymn where we are sounds. */
    static Estimate estimate(PlanEdit work, Verse verse) {
        OptionalInt tempo = work.hymn().map(Hymn::tempo).orElse(OptionalInt.empty());
        return work.sound().estimate(verse, work.plan().heading().people(), tempo);
    }

    static void paint(Frame frame, State state, PlanEdit work) {
        int y = Layout.of(state).statusTop();
        paintRule(frame, state, work, y);
        if (work.verse().isPresent()) {
            Verse verse = work.verse().get();
            paintLevels(frame, state, verse, estimate(work, verse), y + 1);
            int adviceRows = Layout.adviceRows(frame.height());
            if (adviceRows > 0) {
                AdviceLine.paint(frame, state, work, y + 2);
            }
            paintMoves(frame, state, work, y + 2 + adviceRows);
        }
        paintNotice(frame, state);
    }

    private static void paintRule(Frame frame, State state, PlanEdit work, int y) {
        frame.write(0, y, state.marks().rule().repeat(frame.width()), Style.FAINT);
        String page = StopGridView.page(state, work);
        int limit = frame.width() - (page.isEmpty() ? 1 : Text.columns(page) + 3);
        if (!page.isEmpty()) {
            frame.write(frame.width() - Text.columns(page) - 2, y, " " + page + " ", Style.FAINT);
        }
        if (work.verse().isEmpty()) {
            return;
        }
        Verse verse = work.verse().get();
        List<String> parts = new ArrayList<>();
        parts.add(verse.label());
        parts.add(singers(work, verse));
        parts.add(Wording.hands(work.instrument(), verse.hands()));
        if (!verse.piston().isBlank()) {
            parts.add("piston " + verse.piston());
        }
        if (verse.mood() != Mood.PLAIN) {
            parts.add("to sound " + verse.mood().word());
        }
        verse.answer().ifPresent(answer -> parts.add("was " + answer.heard().word()));
        int x = 1;
        for (int i = 0; i < parts.size(); i++) {
            String part = " " + parts.get(i) + " ";
            int room = limit - x;
            boolean isNeeded = i < 3 && room > 8;
            if (Text.columns(part) <= room || isNeeded) {
                x = frame.write(x, y, Text.fit(part, room, state.marks().cut()), i == 0 ? Style.STRONG : Style.TEXT)
                        + 1;
            }
        }
    }

    private static String singers(PlanEdit work, Verse verse) {
        return Wording.who(verse, work.plan().heading().people(), estimate(work, verse));
    }

    /** The levels in as many words as fit; the verdict always. */
    private static void paintLevels(Frame frame, State state, Verse verse, Estimate estimate, int y) {
        List<List<Piece>> wordings = Stream.of(Length.values())
                .map(length -> levels(state, verse, estimate, length))
                .toList();
        List<Piece> fitting = wordings.stream()
                .filter(pieces -> columns(pieces) <= frame.width() - 2)
                .findFirst()
                .orElse(wordings.get(wordings.size() - 1));
        int x = 1;
        for (Piece piece : fitting) {
            if (x > 1) {
                x = frame.write(x, y, " " + state.marks().wall() + " ", Style.FAINT);
            }
            x = frame.write(x, y, piece.text(), piece.style());
        }
    }

    /** How much is said of the levels, from all to the least. */
    private enum Length {
        FULL,
        WITHOUT_LAG,
        WITHOUT_UNIT,
        SHORT,
        LEAST
    }

    private record Piece(String text, Style style) {}

    private static int columns(List<Piece> pieces) {
        return pieces.stream().mapToInt(piece -> Text.columns(piece.text()) + 3).sum() - 3;
    }

    private static List<Piece> levels(State state, Verse verse, Estimate estimate, Length length) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(organ(state, estimate, length));
        if (estimate.singersDba().isPresent() && length != Length.LEAST) {
            String unit =
                    switch (length) {
                        case FULL, WITHOUT_LAG -> " dB(A)";
                        case WITHOUT_UNIT, SHORT, LEAST -> "";
                    };
            String number = whole(estimate.singersDba().getAsDouble())
                    + plusMinus(state, estimate.plusMinus().singersDb());
            pieces.add(new Piece("singing " + number + unit, Style.TEXT));
        }
        Margin margin = estimate.margin();
        String marginDb = margin.db().isPresent()
                ? ", " + signed(state, margin.db().getAsDouble())
                        + plusMinus(state, margin.plusMinusDb().orElse(0))
                        + (length.compareTo(Length.SHORT) < 0 ? " dB" : "")
                : "";
        String mark = VerseListView.mark(state.marks(), margin.verdict());
        pieces.add(new Piece(
                (mark + " " + Wording.verdict(margin) + marginDb).strip(), VerseListView.style(margin.verdict())));
        if (verse.isSung() && length == Length.FULL) {
            pieces.add(new Piece("lag " + whole(estimate.lagMs()) + " ms", Style.TEXT));
        }
        return pieces;
    }

    private static Piece organ(State state, Estimate estimate, Length length) {
        if (estimate.isSilent()) {
            return new Piece(
                    length.compareTo(Length.SHORT) >= 0 ? "Organ silent" : "Organ silent: nothing drawn sounds",
                    Style.TEXT);
        }
        String level = "Organ " + whole(estimate.organDba().getAsDouble())
                + plusMinus(state, estimate.plusMinus().organDb());
        String dynamic = estimate.dynamic().map(Dynamic::word).orElse("");
        String text = length.compareTo(Length.SHORT) >= 0
                ? level + " dB " + dynamic
                : level + " dB(A) " + dynamic + ", " + whole(estimate.sone()) + " sone";
        return new Piece(text, Style.STRONG);
    }

    static String plusMinus(State state, double plusMinusDb) {
        return state.marks().plusMinus() + whole(plusMinusDb);
    }

    private static String whole(double number) {
        return Long.toString(Math.round(number));
    }

    static String signed(State state, double db) {
        long rounded = Math.round(db);
        return (rounded > 0 ? state.marks().plus() : rounded < 0 ? state.marks().minus() : "") + Math.abs(rounded);
    }

    private static void paintMoves(Frame frame, State state, PlanEdit work, int y) {
        int rows = Layout.moveRows(frame.height());
        List<String> lines = MovesLine.of(state, work, frame.width() - 2, rows);
        for (int row = 0; row < lines.size(); row++) {
            frame.write(1, y + row, lines.get(row), Style.TEXT);
        }
    }

    /** What was last said, or which keys are most wanted. */
    static void paintNotice(Frame frame, State state) {
        int y = frame.height() - 1;
        if (state.panel() instanceof Panel.Find find && state.work().isPresent()) {
            paintFind(frame, state, state.work().get(), find, y);
            return;
        }
        if (!state.notice().text().isBlank()) {
            paintSaid(frame, state.notice());
            return;
        }
        if (state.work().isPresent() && state.top() instanceof Panel.None) {
            HintLine.paint(frame, state, y);
        }
    }

    /** What was said, upward from the last row; it may cover what stands there. */
    private static void paintSaid(Frame frame, Notice notice) {
        List<String> lines = Text.wrapped(notice.text(), frame.width() - 2);
        int top = Math.max(0, frame.height() - lines.size());
        frame.clear(0, top, frame.width(), frame.height() - top);
        for (int i = 0; i < lines.size(); i++) {
            frame.write(1, top + i, lines.get(i), notice.style());
        }
    }

    private static void paintFind(Frame frame, State state, PlanEdit work, Panel.Find find, int y) {
        int x = frame.write(1, y, "Find: ", Style.HEADING);
        int typed = Math.min(Text.columns(find.text().text()) + 1, frame.width() / 2);
        find.text().paint(frame, x, y, typed, true);
        x += typed + 1;
        List<Item> items = Layout.jamb(state, work).items();
        List<Integer> fitting =
                Finder.fitting(work.instrument(), items, find.text().text());
        String found = fitting.isEmpty()
                ? find.text().text().isBlank() ? "part of a stop's name" : "no stop has this in its name"
                : ShortWords.fullName(work.instrument(), items.get(work.item()))
                        + (fitting.size() > 1 ? "  (" + fitting.size() + " fit, Tab: the next)" : "");
        frame.write(x, y, Text.fit(found, frame.width() - 1 - x, state.marks().cut()), Style.TEXT);
    }
}
