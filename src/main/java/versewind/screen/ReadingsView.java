package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import versewind.organ.RegistrationText;
import versewind.sound.Calibration;
import versewind.sound.MeterReading;
import versewind.sound.ReadingDesign;

/** The readings that the organ's trims rest on, and those to take next, over the plan. */
final class ReadingsView {

    private static final int WIDTH = 76;
    private static final int FIXED_ROWS = 2;

    private ReadingsView() {}

    static void paint(Frame frame, State state, PlanEdit work, Panel.Readings panel) {
        Box box = Box.open(frame, state, "Readings of " + work.instrument().name(), WIDTH, frame.height() - 4);
        List<Calibration.Kept> kept = work.sound().calibration().kept();
        List<String> below = below(state, work, panel, kept, box.width());
        int space = box.height() - FIXED_ROWS;
        int room = Math.max(Math.min(kept.size(), 3), space - below.size());
        frame.write(box.x(), box.y(), "    read  expected   now  where   drawn", Style.FAINT);
        int top = Math.max(0, Math.min(panel.at() - room / 2, kept.size() - room));
        int rows = Math.min(kept.size() - top, room);
        for (int i = top; i < top + rows; i++) {
            int y = box.y() + 1 + i - top;
            frame.write(box.x(), y, row(state, work, kept.get(i), i, box.width()), Style.TEXT);
            if (i == panel.at()) {
                frame.paint(box.x(), y, box.width(), Style.CURSOR);
            }
        }
        if (kept.isEmpty()) {
            frame.write(box.x(), box.y() + 1, "None yet: every level is an estimate from the stop list.", Style.TEXT);
            rows = 1;
        }
        for (int i = 0; i < Math.min(below.size(), space - rows); i++) {
            frame.write(box.x(), box.y() + 1 + rows + i, below.get(i), Style.TEXT);
        }
        KeyRow.paint(
                frame,
                box.x(),
                box.y() + box.height() - 1,
                box.end(),
                Command.READING_BELOW,
                Command.DROP_READING,
                Command.CLOSE_READINGS);
    }

    private static String row(State state, PlanEdit work, Calibration.Kept kept, int index, int width) {
        MeterReading reading = kept.reading();
        String numbers = String.format(
                Locale.ROOT,
                "%3d %4d  %8d  %4d  %-8s",
                index + 1,
                Math.round(reading.dba()),
                Math.round(kept.beforeDba()),
                Math.round(kept.afterDba()),
                reading.seat().word());
        return Text.fit(
                numbers + new RegistrationText(work.instrument()).format(reading.registration()),
                width,
                state.marks().cut());
    }

    /** The marked reading in full, and what to read next. */
    private static List<String> below(
            State state, PlanEdit work, Panel.Readings panel, List<Calibration.Kept> kept, int width) {
        List<String> lines = new ArrayList<>();
        if (panel.at() < kept.size()) {
            MeterReading marked = kept.get(panel.at()).reading();
            String sung = marked.sung()
                    .map(sing -> ", " + sing.singers() + " singing, "
                            + sing.strength().word())
                    .orElse("");
            lines.add("");
            lines.addAll(Text.wrapped(
                    (marked.date() + "  " + new RegistrationText(work.instrument()).format(marked.registration()))
                                    .strip()
                            + sung,
                    width));
        }
        String head = "To read next: ";
        for (ReadingDesign.Proposed each : panel.next()) {
            lines.add("");
            lines.addAll(Text.wrapped(head + proposed(state, work, each), width));
            head = "Then: ";
        }
        return lines;
    }

    private static String proposed(State state, PlanEdit work, ReadingDesign.Proposed proposed) {
        MeterReading reading = proposed.reading();
        return new RegistrationText(work.instrument()).format(reading.registration()) + "; "
                + reading.hands().layout().word() + " on "
                + work.instrument().divisions().get(reading.hands().right()).name() + gain(state, proposed);
    }

    private static String gain(State state, ReadingDesign.Proposed proposed) {
        long before = Math.round(proposed.beforeDb());
        long after = Math.round(proposed.afterDb());
        String sign = state.marks().plusMinus();
        return before == after
                ? ". It adds little now."
                : ". It takes the mean from " + sign + before + " to " + sign + after + " dB.";
    }
}
