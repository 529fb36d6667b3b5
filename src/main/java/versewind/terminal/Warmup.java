package versewind.terminal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Action;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Registration;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.schema.KnownOrgan;
import versewind.screen.Update;
import versewind.screen.View;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;

/**
 * Opens and paints a plan of one verse on an organ of two stops, which nobody sees, while the real plan is still being
 * read: afterwards the tables of the sound and the classes of the screen are there, and the first screen comes sooner.
 *
 * <p>Classes are made ready in two threads at once here, which is safe as long as none waits for itself in a circle
 * ({@code ClassCirclesTest}).
 */
final class Warmup implements Runnable {

    private static final int COLUMNS = 80;
    private static final int ROWS = 24;

    private final LocalDate today;

    private Warmup(LocalDate today) {
        this.today = today;
    }

    static void begin(LocalDate today) {
        Thread thread = new Thread(new Warmup(today), "warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void run() {
        Instrument organ = organ();
        Verse verse = Verses.blank(organ, VerseKind.VERSE)
                .withHands(HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, 0))
                .withRegistration(Registration.full(organ));
        Plan plan = new Plan(
                new ServiceHeading("", Optional.empty(), 1, ""),
                "",
                List.of(new Hymn("", "", "", "", "", OptionalInt.empty(), "", List.of(verse))));
        FileEvent opened =
                new FileEvent.PlanOpened("", plan, organ, KnownOrgan.of(organ).calibrated(), Optional.empty());
        State state = Update.step(Update.empty(COLUMNS, ROWS, Marks.UNICODE, today), opened)
                .state();
        View.paint(state, Frame.Extent.AT_ONCE);
    }

    private static Instrument organ() {
        List<Stop> stops = List.of(
                Stop.of("Diapason", "8", Family.PRINCIPAL, Pipe.OPEN),
                Stop.of("Principal", "4", Family.PRINCIPAL, Pipe.OPEN));
        Room room = new Room(
                1000,
                100,
                new Room.MeasuredTimes(List.of(2.0, 2.0, 2.0, 2.0, 2.0, 2.0)),
                new Room.Distances(10, 20, 5, 10, 2));
        return new Instrument(
                "Organ",
                "",
                Action.MECHANICAL,
                0,
                List.of(new Division("Great", OptionalInt.of(1), 56, Optional.empty(), stops)),
                List.of(),
                List.of(),
                Pistons.NONE,
                room);
    }
}
