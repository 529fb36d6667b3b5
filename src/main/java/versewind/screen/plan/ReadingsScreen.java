package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import versewind.calibration.Calibration;
import versewind.calibration.MeterReading;
import versewind.calibration.ReadingDesign;
import versewind.organ.RegistrationText;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Listing;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/**
 * The readings that the organ's trims rest on, over the plan, and those to take next.
 *
 * @param list the readings in the order they were taken
 * @param next what to read next
 */
public record ReadingsScreen(ListBox<Calibration.Kept> list, List<ReadingDesign.Proposed> next)
        implements Listing<Calibration.Kept> {

    public static final KeyTable<ReadingsScreen> KEYS = KeyTable.<ReadingsScreen>under("Feedback and readings")
            .list("reading")
            .key("x, Delete", "delete the reading", ReadingsScreen::drop)
            .key("Esc, q", "close", (screen, state) -> state.close());

    private static final int WIDTH = 76;
    private static final int FIXED_ROWS = 2;
    private static final int LEAST_LIST_ROWS = 3;

    /** How many readings are proposed. */
    private static final int PROPOSED = 2;

    /** The readings of the open plan's organ, the last of them marked. */
    static ReadingsScreen of(PlanEdit work) {
        boolean isEmpty =
                work.plan().hymns().stream().allMatch(hymn -> hymn.verses().isEmpty());
        List<ReadingDesign.Proposed> next = isEmpty
                ? ReadingDesign.allRound(work.sound(), PROPOSED)
                : ReadingDesign.of(work.sound(), work.plan(), PROPOSED);
        return new ReadingsScreen(
                new ListBox<>(work.organ().calibration().kept(), Integer.MAX_VALUE), List.copyOf(next));
    }

    private State drop(State state) {
        if (list.isEmpty()) {
            return state.says("There is no reading to leave out.");
        }
        List<MeterReading> readings = new ArrayList<>(
                list.rows().stream().map(Calibration.Kept::reading).toList());
        readings.remove(list.marked());
        return state.wants(effects -> effects.recalibrate(List.copyOf(readings)));
    }

    /** The organ as it is known now takes the place of the one that was open. */
    static State recalibrated(State state, PlanEvent.Recalibrated recalibrated) {
        return state.work().map(work -> recalibrated(state, work, recalibrated)).orElse(state);
    }

    private static State recalibrated(State state, PlanEdit work, PlanEvent.Recalibrated recalibrated) {
        List<Calibration.Kept> now = recalibrated.organ().calibration().kept();
        PlanEdit after = work.on(recalibrated.organ());
        State next = state.with(after).update(ReadingsScreen.class, screen -> of(after));
        if (now.size() < work.organ().calibration().kept().size()) {
            return next.says("Left out; the organ's file is written.");
        }
        Calibration.Kept last = now.get(now.size() - 1);
        double expectedDba = last.reading().expectedDba(work.sound()).orElse(last.beforeDba());
        String told = "Read " + Math.round(last.reading().dba()) + " dB(A), expected " + Math.round(expectedDba)
                + "; now " + Math.round(last.afterDba()) + ". The organ's file is written.";
        boolean fitsNothing = recalibrated.outliers().contains(now.size() - 1);
        return fitsNothing
                ? next.warns(told + " It does not fit the others: M, then x, leaves it out.")
                : next.says(told);
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public Screen marking(int row) {
        return new ReadingsScreen(list.mark(row), next);
    }

    @Override
    public String words(Calibration.Kept kept, State state) {
        return state.work().map(work -> words(kept, work)).orElse("");
    }

    /** "77 dB(A) read, 75 expected, 76 now, nave: Great: Principal 8". */
    private static String words(Calibration.Kept kept, PlanEdit work) {
        MeterReading reading = kept.reading();
        return Math.round(reading.dba()) + " dB(A) read, " + Math.round(kept.beforeDba()) + " expected, "
                + Math.round(kept.afterDba()) + " now, " + reading.seat().word() + ": "
                + new RegistrationText(work.instrument()).format(reading.registration());
    }

    @Override
    public String spoken(State before, State now) {
        return list.isEmpty()
                ? "No readings yet; the screen says what to measure next."
                : Listing.super.spoken(before, now);
    }

    @Override
    public String name(State state) {
        return state.work().map(ReadingsScreen::title).orElse("");
    }

    @Override
    public void paint(Frame frame, State state) {
        state.work().ifPresent(work -> paint(frame, work));
    }

    private void paint(Frame frame, PlanEdit work) {
        Box box = Box.open(frame, title(work), WIDTH, frame.height() - 4);
        List<String> below = below(work, box.width());
        int space = box.height() - FIXED_ROWS;
        int room = Math.max(Math.min(list.size(), LEAST_LIST_ROWS), space - below.size());
        if (frame.marks() != Marks.WORDS) {
            frame.write(box.x(), box.y(), "    read  expected   now  where   drawn", Style.FAINT);
        }
        list.paint(
                frame,
                box.rows(1, room),
                kept -> words(kept, work),
                (kept, index, y) -> frame.write(box.x(), y, row(frame, work, kept, index, box.width()), Style.TEXT));
        list.paintPosition(frame, box, room, "reading");
        if (list.isEmpty()) {
            frame.write(box.x(), box.y() + 1, "None yet: all levels are estimates from the stop list.", Style.TEXT);
        }
        int rows = list.isEmpty() ? 1 : Math.min(list.size(), room);
        box.write(frame, box.y() + 1 + rows, below.subList(0, Math.min(below.size(), space - rows)), Style.TEXT);
        KEYS.hints(frame, box, "Down below", "x delete", "Esc");
    }

    private static String row(Frame frame, PlanEdit work, Calibration.Kept kept, int index, int width) {
        MeterReading reading = kept.reading();
        String numbers = String.format(
                Locale.ROOT,
                "%3d %4d  %8d  %4d  %-8s",
                index + 1,
                Math.round(reading.dba()),
                Math.round(kept.beforeDba()),
                Math.round(kept.afterDba()),
                reading.seat().word());
        return frame.fit(numbers + new RegistrationText(work.instrument()).format(reading.registration()), width);
    }

    /** The marked reading in full, and what to read next. */
    private List<String> below(PlanEdit work, int width) {
        List<String> lines = new ArrayList<>();
        list.current().map(Calibration.Kept::reading).ifPresent(marked -> {
            String sung = marked.sung()
                    .map(sing -> ", " + sing.singers() + " singing, "
                            + sing.strength().word())
                    .orElse("");
            String drawn = new RegistrationText(work.instrument()).format(marked.registration());
            lines.add("");
            lines.addAll(Text.wrapped((marked.date() + "  " + drawn).strip() + sung, width));
        });
        String head = "Measure next: ";
        for (ReadingDesign.Proposed each : next) {
            lines.add("");
            lines.addAll(Text.wrapped(head + each.words(work.instrument()) + ". " + each.gain(), width));
            head = "Then: ";
        }
        if (next.isEmpty()) {
            lines.addAll(List.of("", ReadingDesign.NONE_IS_WORTH_IT));
        }
        return lines;
    }

    private static String title(PlanEdit work) {
        return "Readings of " + work.instrument().name();
    }
}
