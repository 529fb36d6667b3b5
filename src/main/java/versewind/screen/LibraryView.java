package versewind.screen;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;

/** The library, over the whole screen: plans with their dates and states, or organs. */
final class LibraryView {

    private static final int TOP = 3;
    private static final int FOOT = 3;
    private static final int DATE = 15;
    private static final int STATE = 16;
    private static final int EDITED = 10;
    private static final int GAP = 2;

    /** From this width on it is also said when a plan was last edited. */
    private static final int WIDE = 72;

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

    private LibraryView() {}

    /** How many rows of the list are shown at once. */
    static int room(State state) {
        return Math.max(1, state.rows() - TOP - FOOT);
    }

    static void paint(Frame frame, State state, LibraryState shelves) {
        frame.clear(0, 0, frame.width(), frame.height());
        frame.caret(-1, -1);
        paintHead(frame, state, shelves);
        int rows = shelves.side() == LibraryState.Side.PLANS
                ? paintPlans(frame, state, shelves)
                : paintOrgans(frame, state, shelves);
        if (rows == 0) {
            frame.write(1, TOP, none(shelves), Style.FAINT);
        }
        NoticeLine.paint(frame, state, frame.height() - FOOT + 1);
        paintKeys(frame, shelves);
    }

    private static void paintHead(Frame frame, State state, LibraryState shelves) {
        boolean plans = shelves.side() == LibraryState.Side.PLANS;
        String here = state.marks().here();
        int x = frame.write(1, 0, plans ? here + "Plans" : " Plans", plans ? Style.HEADING : Style.FAINT);
        int end = frame.write(x + GAP, 0, plans ? " Organs" : here + "Organs", plans ? Style.FAINT : Style.HEADING);
        frame.write(end + GAP, 0, Command.OTHER_SHELF.keys().get(0).name(), Style.KEY);
        String count = plans ? count(shelves) : "";
        frame.write(frame.width() - Text.columns(count) - 1, 0, count, Style.FAINT);
        int field = frame.write(1, 1, "Only with: ", Style.TEXT);
        shelves.filter().paint(frame, field, 1, frame.width() - field - 1, true);
        if (plans) {
            frame.write(1, 2, "date", Style.FAINT);
            frame.write(1 + DATE + GAP, 2, "service", Style.FAINT);
            frame.write(stateX(frame), 2, "state", Style.FAINT);
            if (isWide(frame)) {
                frame.write(frame.width() - 1 - EDITED, 2, "    edited", Style.FAINT);
            }
        }
    }

    private static String count(LibraryState shelves) {
        if (!shelves.isCounted()) {
            return "looking";
        }
        String plans = shelves.files() == 1 ? "1 plan" : shelves.files() + " plans";
        if (!shelves.isRead()) {
            return shelves.plans().size() + " of " + plans + " read";
        }
        return shelves.filter().text().isBlank()
                ? plans
                : shelves.fittingPlans().size() + " of " + plans;
    }

    private static String none(LibraryState shelves) {
        boolean isEmpty = shelves.side() == LibraryState.Side.PLANS
                ? shelves.plans().isEmpty()
                : shelves.organs().isEmpty();
        if (shelves.side() == LibraryState.Side.PLANS && !shelves.isRead()) {
            return isEmpty ? "The plans are being read." : "Nothing read so far fits what was typed.";
        }
        return isEmpty ? "There is none yet." : "Nothing fits what was typed.";
    }

    private static int paintPlans(Frame frame, State state, LibraryState shelves) {
        List<Event.ListedPlan> rows = shelves.fittingPlans();
        int at = shelves.at(rows.stream().map(Event.ListedPlan::id).toList());
        int top = LibraryState.top(at, rows.size(), room(state));
        for (int i = top; i < Math.min(rows.size(), top + room(state)); i++) {
            paintPlan(frame, state, shelves, rows.get(i), TOP + i - top);
            if (i == at) {
                frame.paint(1, TOP + i - top, frame.width() - 2, Style.CURSOR);
                String about = about(shelves, rows.get(i));
                frame.write(
                        1,
                        frame.height() - FOOT,
                        Text.fit(about, frame.width() - 2, state.marks().cut()),
                        Style.FAINT);
            }
        }
        return rows.size();
    }

    /** The file of the marked plan and its organ, or what is wrong with it. */
    private static String about(LibraryState shelves, Event.ListedPlan plan) {
        String trouble = Optional.ofNullable(shelves.assessed().get(plan.id()))
                .map(Event.PlanAssessed::trouble)
                .orElse("");
        return trouble.isEmpty() ? plan.id() + ", for " + plan.organ() : trouble;
    }

    private static void paintPlan(Frame frame, State state, LibraryState shelves, Event.ListedPlan plan, int y) {
        frame.write(1, y, plan.date().map(HeaderView::day).orElse("no date"), Style.TEXT);
        int title = 1 + DATE + GAP;
        int room = stateX(frame) - GAP - title;
        frame.write(title, y, Text.fit(plan.title(), room, state.marks().cut()), Style.TEXT);
        paintState(frame, shelves, plan, y);
        if (isWide(frame)) {
            String edited = edited(state, plan.edited());
            frame.write(frame.width() - 1 - edited.length(), y, edited, Style.FAINT);
        }
    }

    private static void paintState(Frame frame, LibraryState shelves, Event.ListedPlan plan, int y) {
        Optional<Event.PlanAssessed> assessed =
                Optional.ofNullable(shelves.assessed().get(plan.id()));
        int x = stateX(frame);
        if (plan.condition() == Event.ListedPlan.Condition.UNREADABLE
                || assessed.filter(each -> !each.trouble().isEmpty()).isPresent()) {
            frame.write(x, y, "cannot be read", Style.BAD);
        } else if (plan.condition() == Event.ListedPlan.Condition.UNSAVED_WORK) {
            frame.write(x, y, "unsaved work", Style.NEAR);
        } else if (assessed.isPresent() && assessed.get().verses() == 0) {
            frame.write(x, y, "no verse yet", Style.FAINT);
        } else if (assessed.isPresent()
                && assessed.get().wantingAttention() == 0
                && assessed.get().cautions() == 0) {
            frame.write(x, y, "all is well", Style.GOOD);
        } else if (assessed.isPresent() && assessed.get().wantingAttention() == 0) {
            int cautions = assessed.get().cautions();
            frame.write(x, y, cautions + (cautions == 1 ? " caution" : " cautions"), Style.NEAR);
        } else if (assessed.isPresent()) {
            int wanting = assessed.get().wantingAttention();
            frame.write(x, y, wanting + (wanting == 1 ? " wants care" : " want care"), Style.NEAR);
        }
    }

    private static int paintOrgans(Frame frame, State state, LibraryState shelves) {
        List<Chooser.Row> rows = shelves.fittingOrgans();
        int at = shelves.at(rows.stream().map(Chooser.Row::id).toList());
        Box window = new Box(1, TOP, frame.width() - 2, room(state));
        new ListBox<>(rows, at).paint(frame, window, (row, index, y) -> row.paint(frame, window, y));
        if (!rows.isEmpty()) {
            frame.write(
                    1,
                    frame.height() - FOOT,
                    "Enter makes a plan for it, Ctrl-E changes it, Ctrl-N makes a new one.",
                    Style.FAINT);
        }
        return rows.size();
    }

    private static boolean isWide(Frame frame) {
        return frame.width() >= WIDE;
    }

    private static int stateX(Frame frame) {
        return frame.width() - 1 - STATE - (isWide(frame) ? EDITED + GAP : 0);
    }

    /** The time of today, else the date. */
    private static String edited(State state, LocalDateTime edited) {
        return edited.toLocalDate().equals(state.today())
                ? TIME.format(edited)
                : edited.toLocalDate().toString();
    }

    private static void paintKeys(Frame frame, LibraryState shelves) {
        int y = frame.height() - 1;
        if (shelves.side() == LibraryState.Side.PLANS) {
            KeyRow.paint(
                    frame,
                    1,
                    y,
                    frame.width(),
                    Command.OPEN_MARKED,
                    Command.NEW_PLAN,
                    Command.NEW_FROM_OLD,
                    Command.RENAME_PLAN,
                    Command.BIN_PLAN);
        } else {
            KeyRow.paint(frame, 1, y, frame.width(), Command.OPEN_MARKED, Command.EDIT_ORGAN, Command.NEW_PLAN);
        }
    }
}
