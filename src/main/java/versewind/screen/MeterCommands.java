package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import versewind.plan.Verse;
import versewind.sound.Calibration;
import versewind.sound.Estimate;
import versewind.sound.MeterReading;
import versewind.sound.ReadingDesign;

/** Readings of a sound-level meter: taking one, looking at those taken, leaving one out. */
final class MeterCommands {

    private static final int PROPOSED = 2;

    private MeterCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.READING, Handler.verse(MeterCommands::take));
        handlers.put(Command.READINGS, Handler.work(MeterCommands::open));
        handlers.put(
                Command.READING_BELOW, readings((state, work, panel) -> toRow(state, work, panel, panel.at() + 1)));
        handlers.put(
                Command.READING_ABOVE, readings((state, work, panel) -> toRow(state, work, panel, panel.at() - 1)));
        handlers.put(Command.DROP_READING, readings(MeterCommands::drop));
        handlers.put(Command.CLOSE_READINGS, readings((state, work, panel) -> Transition.to(state.closed())));
    }

    @FunctionalInterface
    private interface OnReadings {
        Transition on(State state, PlanEdit work, Panel.Readings panel);
    }

    private static Handler readings(OnReadings handler) {
        return Handler.work((state, work) ->
                state.panel() instanceof Panel.Readings panel ? handler.on(state, work, panel) : Transition.to(state));
    }

    private static Transition take(State state, PlanEdit work, Verse verse) {
        int people = work.plan().heading().people();
        Estimate estimate = work.sound().estimate(verse, people, OptionalInt.empty());
        if (estimate.isSilent()) {
            return saysSilent(state);
        }
        String expected = "with " + people + " people "
                + Math.round(estimate.organDba().getAsDouble())
                + state.marks().plusMinus()
                + Math.round(estimate.plusMinus().organDb()) + " is expected";
        return Transition.to(state.with(MeterForm.of(verse.label(), expected)));
    }

    private static Transition saysSilent(State state) {
        return Transition.says(state, "Nothing drawn sounds here; draw what the meter is to read.");
    }

    /** A reading that was typed is added to those taken. */
    static Transition taken(State state, PlanEdit work, MeterReading reading) {
        if (work.sound().expectedDba(reading).isEmpty()) {
            return saysSilent(state);
        }
        List<MeterReading> readings = new ArrayList<>(work.sound().calibration().readings());
        readings.add(reading);
        return Transition.to(state, new Effect.Recalibrate(List.copyOf(readings)));
    }

    private static Transition open(State state, PlanEdit work) {
        return Transition.to(state.with(panel(work)));
    }

    private static Panel.Readings panel(PlanEdit work) {
        boolean isEmpty =
                work.plan().hymns().stream().allMatch(hymn -> hymn.verses().isEmpty());
        List<ReadingDesign.Proposed> next = isEmpty
                ? ReadingDesign.allRound(work.sound(), PROPOSED)
                : ReadingDesign.of(work.sound(), work.plan(), PROPOSED);
        return new Panel.Readings(lastRow(work), next);
    }

    private static int lastRow(PlanEdit work) {
        return Math.max(0, work.sound().calibration().kept().size() - 1);
    }

    private static Transition toRow(State state, PlanEdit work, Panel.Readings panel, int row) {
        return Transition.to(state.with(new Panel.Readings(Math.max(0, Math.min(row, lastRow(work))), panel.next())));
    }

    private static Transition drop(State state, PlanEdit work, Panel.Readings panel) {
        List<MeterReading> readings = new ArrayList<>(work.sound().calibration().readings());
        if (readings.isEmpty()) {
            return Transition.says(state, "There is no reading to leave out.");
        }
        readings.remove(panel.at());
        return Transition.to(state, new Effect.Recalibrate(List.copyOf(readings)));
    }

    /** The organ as it is known now takes the place of the one that was open. */
    static Transition recalibrated(State state, Event.Recalibrated recalibrated) {
        return state.work().map(work -> recalibrated(state, work, recalibrated)).orElseGet(() -> Transition.to(state));
    }

    private static Transition recalibrated(State state, PlanEdit work, Event.Recalibrated recalibrated) {
        List<Calibration.Kept> now = recalibrated.sound().calibration().kept();
        PlanEdit after = work.hearing(recalibrated.sound());
        State next = state.panel() instanceof Panel.Readings ? state.with(after).with(panel(after)) : state.with(after);
        if (now.size() < work.sound().calibration().kept().size()) {
            return Transition.says(next, "Left out; the organ's file is written.");
        }
        Calibration.Kept last = now.get(now.size() - 1);
        double expectedDba = work.sound().expectedDba(last.reading()).orElse(last.beforeDba());
        String told = "Read " + Math.round(last.reading().dba()) + " dB(A), expected " + Math.round(expectedDba)
                + "; now " + Math.round(last.afterDba()) + ". The organ's file is written.";
        boolean fitsNothing = recalibrated.outliers().contains(now.size() - 1);
        return fitsNothing
                ? Transition.to(next.with(Notice.warns(told + " It fits nothing else: M, then x, leaves it out.")))
                : Transition.says(next, told);
    }
}
