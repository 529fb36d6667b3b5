package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import versewind.calibration.HeardRegistration;
import versewind.plan.Locks;
import versewind.plan.Mood;
import versewind.plan.Verse;
import versewind.rules.Advice;
import versewind.rules.Otherwise;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.sheet.LevelText;
import versewind.sheet.Wording;
import versewind.sound.Balance;
import versewind.sound.EarSeats;
import versewind.sound.Estimate;

/** The status bar: who sings and how it is played, the live levels, what has to be moved, what the program says. */
final class StatusView {

    /** From this width on it is said which verse was heard. */
    private static final int WIDE = 100;

    /** Rows that the moves may take where the notes leave some blank; on a high screen there are more. */
    private static final int MOST_MOVE_ROWS = 6;

    /** The same where they are heard, and must not be shortened. */
    private static final int MOST_SPOKEN_ROWS = 8;

    private StatusView() {}

    /**
     * Draws it but for its last row, and returns its first; upward into rows that are blank, as far as what is advised
     * needs them.
     */
    static int paint(Frame frame, State state, PlanEdit work, List<Estimate> estimates, String page) {
        int least = Layout.adviceRows(frame.height());
        int wanted =
                work.verse().isPresent() && frame.isWhole() ? AdviceLine.rows(state, work, frame.width() - 2) : least;
        int blank = Layout.blankRows(frame, state);
        int more = Math.max(0, Math.min(wanted - least, blank));
        int moveRows = Layout.moveRows(frame.height());
        List<String> moves = frame.isWhole()
                ? MovesLine.of(state, work, frame.width() - 2, Math.min(mostMoveRows(state), moveRows + blank - more))
                : List.of();
        int further = Math.max(0, moves.size() - moveRows);
        int y = Layout.of(state).statusTop() - more - further;
        frame.clear(0, y, frame.width(), more + further);
        paintRule(frame, y, page);
        if (work.verse().isPresent()) {
            Verse verse = work.verse().get();
            Estimate estimate = estimates.get(work.place().verse());
            int limit = frame.width() - (page.isEmpty() ? 1 : Text.columns(page) + 3);
            paintPlaying(frame, work, verse, estimate, y, limit);
            paintLevels(frame, state, work, verse, estimate, y + 1);
            if (!frame.isWhole()) {
                return y;
            }
            int adviceRows = least + more;
            if (adviceRows > 0) {
                AdviceLine.paint(frame, state, work, y + 2, adviceRows);
            }
            paintMoves(frame, state, work, moves, y + 2 + adviceRows);
        }
        return y;
    }

    private static int mostMoveRows(State state) {
        return state.isSpoken() ? MOST_SPOKEN_ROWS : MOST_MOVE_ROWS;
    }

    /** Rows that it needs over its own to say in full what is advised and moved. */
    static int furtherRows(Frame frame, State state, PlanEdit work) {
        if (work.verse().isEmpty() || !frame.isWhole()) {
            return 0;
        }
        int columns = frame.width() - 2;
        int advice = AdviceLine.rows(state, work, columns) - Layout.adviceRows(frame.height());
        int moves = MovesLine.of(state, work, columns, mostMoveRows(state)).size() - Layout.moveRows(frame.height());
        return Math.max(0, advice) + Math.max(0, moves);
    }

    private static void paintRule(Frame frame, int y, String page) {
        frame.write(0, y, frame.mark(Mark.RULE).repeat(frame.width()), Style.FAINT);
        if (!page.isEmpty()) {
            frame.write(frame.width() - Text.columns(page) - 2, y, " " + page + " ", Style.FAINT);
        }
    }

    /** Who sings and how it is played, in the rule, before a column. */
    private static void paintPlaying(Frame frame, PlanEdit work, Verse verse, Estimate estimate, int y, int limit) {
        List<String> parts = new ArrayList<>();
        parts.add(verse.label());
        parts.addAll(Wording.whoAndHands(verse, work.plan().heading().people(), estimate, work.instrument()));
        Optional<String> heard = heard(work, verse, frame.width() >= WIDE);
        if (heard.isPresent()) {
            parts.add(heard.get());
        }
        if (verse.isOptional()) {
            parts.add("may be left out");
        }
        if (!verse.piston().isBlank()) {
            parts.add("piston " + verse.piston());
        }
        if (verse.locks().kept() != Locks.Kept.NOTHING) {
            parts.add(verse.locks().kept().word() + " locked");
        }
        if (verse.mood() != Mood.PLAIN) {
            parts.add("to sound " + verse.mood().word());
        }
        if (frame.marks() == Marks.WORDS) {
            frame.write(1, y, frame.fit(String.join("; ", parts), limit - 1), Style.TEXT);
            return;
        }
        for (UnaryOperator<String> shorter : List.<UnaryOperator<String>>of(Wording::shortHands, Wording::shortWho)) {
            if (parts.stream().mapToInt(part -> Text.columns(part) + 3).sum() > limit) {
                parts.replaceAll(shorter);
            }
        }
        int x = 1;
        for (int i = 0; i < parts.size(); i++) {
            String part = " " + parts.get(i) + " ";
            int room = limit - x;
            boolean isNeeded = i < 3 && room > 8;
            if (Text.columns(part) <= room || isNeeded) {
                x = frame.write(x, y, frame.fit(part, room), i == 0 ? Style.STRONG : Style.TEXT) + 1;
            }
        }
    }

    /** The feedback on a verse, or on one that sounded and was sung just so before, with its name if there is room. */
    private static Optional<String> heard(PlanEdit work, Verse verse, boolean isWide) {
        if (verse.answer().isPresent()) {
            return Optional.of("was " + verse.answer().get().heard().word());
        }
        Optional<HeardRegistration> before = work.organ()
                .experience()
                .lastHeard(work.sound(), verse, work.plan().heading().people());
        if (before.isEmpty()) {
            return Optional.empty();
        }
        String whose = isWide ? before.get().name() + " " : "";
        return Optional.of(whose + "was " + before.get().heard().word());
    }

    /** The levels in as many words as fit; the verdict always, and beside it the usual registration if it can be. */
    private static void paintLevels(Frame frame, State state, PlanEdit work, Verse verse, Estimate estimate, int y) {
        Optional<Piece> usual = !frame.isWhole()
                ? Optional.empty()
                : UsualLine.of(work, verse).map(text -> new Piece(text, Style.TEXT));
        Optional<Otherwise> other =
                !frame.isWhole() ? Optional.empty() : Advice.on(work.sound()).otherwise(verse, estimate.balance());
        List<Piece> fitting = List.of();
        for (Optional<Piece> beside : List.of(usual, Optional.<Piece>empty())) {
            for (Length length : Length.values()) {
                if (fitting.isEmpty() || columns(fitting) > frame.width() - 2) {
                    fitting = levels(state, verse, estimate, other, length);
                    beside.ifPresent(fitting::add);
                }
            }
        }
        int x = 1;
        for (Piece piece : fitting) {
            if (x > 1) {
                x = frame.write(x, y, state.marks().between(), Style.FAINT);
            }
            x = frame.write(x, y, piece.text(), piece.style());
        }
    }

    /** How much is said of a verse, from all to the least. */
    private enum Length {
        FULL,
        WITHOUT_ODDS,
        WITHOUT_READY,
        SHORT
    }

    private record Piece(String text, Style style) {}

    private static int columns(List<Piece> pieces) {
        return pieces.stream().mapToInt(piece -> Text.columns(piece.text()) + 3).sum() - 3;
    }

    private static List<Piece> levels(
            State state, Verse verse, Estimate estimate, Optional<Otherwise> other, Length length) {
        List<Piece> pieces = new ArrayList<>();
        if (!verse.isPlayed()) {
            pieces.add(new Piece("Nobody plays", Style.TEXT));
            return pieces;
        }
        String silence = verse.registration().stops().isEmpty() ? "nothing is drawn" : "nothing that is drawn sounds";
        pieces.add(organ(estimate, silence, length));
        Balance balance = estimate.balance();
        String mark = ShortWords.mark(state.marks(), balance);
        pieces.add(new Piece((mark + " " + Wording.verdict(balance)).strip(), ShortWords.style(balance.verdict())));
        Wording.share(balance).ifPresent(share -> pieces.add(new Piece(share, Style.TEXT)));
        if (length.compareTo(Length.WITHOUT_READY) < 0) {
            other.map(each -> length == Length.FULL ? each.words() : each.shortWords())
                    .ifPresent(words -> pieces.add(new Piece(words, Style.TEXT)));
        }
        return pieces;
    }

    private static Piece organ(Estimate estimate, String silence, Length length) {
        return estimate.dynamic().isPresent()
                ? new Piece(
                        (length == Length.WITHOUT_ODDS ? "" : "Organ ")
                                + estimate.dynamic().get().word(),
                        Style.STRONG)
                : new Piece(length == Length.SHORT ? "Organ silent" : "Organ silent: " + silence, Style.TEXT);
    }

    /** The levels behind the verdict: "Organ 86±4 dB(A), 71±15 sone, 101±3 phon; singing 84±3 dB(A)". */
    static State figures(State state, PlanEdit work, Verse verse) {
        Estimate estimate = work.estimate(verse);
        List<String> figures = new ArrayList<>();
        if (!estimate.isSilent()) {
            figures.add("Organ " + LevelText.organ(estimate).replace("±", Mark.PLUS_MINUS.in(state.marks())));
        }
        if (estimate.singersDba().isPresent()) {
            figures.add("singing "
                    + level(state, estimate.singersDba(), estimate.plusMinus().singersDb()));
        }
        EarSeats.Levels ears =
                new EarSeats(work.sound()).during(verse, work.plan().heading().people(), estimate);
        ears.organist().ifPresent(dba -> figures.add("console " + whole(dba)));
        ears.choir().ifPresent(dba -> figures.add("choir " + whole(dba)));
        figures.add("lag " + whole(estimate.lagMs()) + " ms");
        return state.says(String.join("; ", figures) + ".");
    }

    private static String level(State state, OptionalDouble dba, double plusMinusDb) {
        return whole(dba.orElseThrow()) + plusMinus(state, plusMinusDb) + " dB(A)";
    }

    static String plusMinus(State state, double plusMinusDb) {
        return Mark.PLUS_MINUS.in(state.marks()) + Math.max(1, Math.round(plusMinusDb));
    }

    private static String whole(double number) {
        return Long.toString(Math.round(number));
    }

    static String signed(State state, double db) {
        long rounded = Math.round(db);
        return (rounded > 0 ? Mark.PLUS.in(state.marks()) : rounded < 0 ? Mark.MINUS.in(state.marks()) : "")
                + Math.abs(rounded);
    }

    private static void paintMoves(Frame frame, State state, PlanEdit work, List<String> lines, int y) {
        int rows = Math.max(lines.size(), Layout.moveRows(frame.height()));
        for (int row = 0; row < lines.size(); row++) {
            frame.write(1, y + row, lines.get(row), Style.TEXT);
        }
        List<String> note = Text.wrapped(VerseListView.noteNotShown(work, Layout.ofPanels(state)), frame.width() - 2);
        Box.write(frame, 1, y + lines.size(), note, Math.max(0, rows - lines.size()), Style.MESSAGE);
    }
}
