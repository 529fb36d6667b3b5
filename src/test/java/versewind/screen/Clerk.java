package versewind.screen;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.Shipped;
import versewind.calibration.Experience;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Undo;
import versewind.screen.library.LibraryEvent;
import versewind.screen.organ.OrganEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.store.OpenPlan;

/**
 * Does what the editor at a desk wants done outside, and tells it what came of it, as the disk would; but nothing is
 * written.
 */
final class Clerk {

    private static final LibraryEvent.ListedPlan HARVEST =
            Desk.listed("harvest-festival", "Harvest Festival", "2026-10-04");
    private static final LibraryEvent.ListedPlan WEDDING = Desk.listed("wedding", "Wedding", "2027-05-22");
    private static final LibraryEvent.ListedPlan BROKEN = Desk.listed("broken", "broken", "");
    private static final Chooser.Row VILLAGE = new Chooser.Row("little-corvening", "All Hallows", "Little Corvening");

    /** What becomes of a plan that is to be written. */
    enum Saving {
        WRITTEN,
        CHANGED_BY_OTHERS,
        DISK_FULL
    }

    private final Desk desk;
    private Saving saving = Saving.WRITTEN;
    private Optional<Plan> written = Optional.empty();
    private Optional<Plan> kept = Optional.empty();
    private boolean left;

    private Clerk(Desk desk) {
        this.desk = desk;
    }

    static Clerk at(Desk desk) {
        return new Clerk(desk);
    }

    /** From now on this becomes of plans that are to be written. */
    Clerk saving(Saving other) {
        saving = other;
        return this;
    }

    /** Presses keys, and after each does what is wanted. */
    Clerk press(String... keys) {
        for (String key : keys) {
            desk.press(key);
            serve();
        }
        return this;
    }

    /** Does what is wanted, until nothing more is. */
    Clerk serve() {
        Deque<Effect> wanted = new ArrayDeque<>(desk.takeEffects());
        while (!wanted.isEmpty()) {
            wanted.removeFirst().by(Wanted.doneBy(this::done)).forEach(desk::answer);
            wanted.addAll(desk.takeEffects());
        }
        return this;
    }

    @SuppressWarnings("unchecked") // the argument of a save is a list of effects
    private List<Event> done(String name, Object[] arguments) {
        switch (name) {
            case "keepDraft" -> kept = Optional.of(((Undo<Plan>) arguments[0]).now());
            case "dropDraft" -> kept = Optional.empty();
            case "quit" -> left = true;
            case "save" -> {
                return List.of(save((Plan) arguments[0], (List<Effect>) arguments[1], saving));
            }
            case "saveOver" -> {
                return List.of(save((Plan) arguments[0], (List<Effect>) arguments[1], Saving.WRITTEN));
            }
            case "saveOrgan" -> {
                return List.of(
                        new OrganEvent.OrganSaved((Instrument) arguments[0], "Saved.", (List<Effect>) arguments[2]));
            }
            default -> {
                return read(name, arguments);
            }
        }
        return List.of();
    }

    private Event save(Plan plan, List<Effect> then, Saving outcome) {
        return switch (outcome) {
            case WRITTEN -> {
                written = Optional.of(plan);
                kept = Optional.empty();
                yield new FileEvent.Saved(plan, then, true);
            }
            case CHANGED_BY_OTHERS -> new FileEvent.SaveRefused(Desk.CHANGED_ELSEWHERE, plan, then);
            case DISK_FULL -> new Event.Failed("Not saved to plans/a-plan.json: The disk is full.");
        };
    }

    @SuppressWarnings("unchecked") // the argument of a copy is a date that may be left out
    private static List<Event> read(String name, Object[] arguments) {
        return switch (name) {
            case "listPlans" ->
                List.of(new LibraryEvent.PlansListed(
                        List.of(HARVEST, WEDDING, BROKEN), 3, LibraryEvent.PlansListed.Part.FIRST));
            case "listInstruments" -> List.of(new LibraryEvent.InstrumentsListed(List.of(VILLAGE)));
            case "openPlan" -> {
                String id = (String) arguments[0];
                if (id.equals(BROKEN.id())) {
                    yield List.of(new Event.Failed("plans/broken.json, line 3: this is no plan. Mend it by hand."));
                }
                OpenPlan shipped = Shipped.plan(id);
                yield List.of(opened(id, shipped.plan(), shipped.instrument()));
            }
            case "openOrgan" -> {
                String id = (String) arguments[0];
                yield List.of(
                        new OrganEvent.OrganOpened(id, Shipped.instrument(id), Experience.NONE, "", Optional.empty()));
            }
            case "makeOrgan" ->
                List.of(new OrganEvent.OrganOpened(
                        "new", (Instrument) arguments[0], Experience.NONE, "Made.", Optional.empty()));
            case "beginPlan" ->
                List.of(new LibraryEvent.PlanBegun(
                        (String) arguments[0], (String) arguments[0], Player.WITH_PEDALS, 100));
            case "createPlan" -> {
                String organ = (String) arguments[1];
                Plan plan = new Plan((ServiceHeading) arguments[0], organ, List.of());
                yield List.of(opened("new", plan, Shipped.instrument(organ)));
            }
            case "copyPlan" -> {
                OpenPlan from = Shipped.plan((String) arguments[0]);
                ServiceHeading heading = new ServiceHeading(
                        (String) arguments[1],
                        (Optional<LocalDate>) arguments[2],
                        ((OptionalInt) arguments[3])
                                .orElse(from.plan().heading().people()),
                        (String) arguments[4]);
                yield List.of(opened("new", from.plan().withHeading(heading), from.instrument()));
            }
            default -> List.of();
        };
    }

    private static Event opened(String id, Plan plan, Instrument instrument) {
        return new FileEvent.PlanOpened(id, plan, instrument, Desk.organ(instrument), Optional.empty());
    }

    /** The plan that was written last. */
    Optional<Plan> written() {
        return written;
    }

    /** The plan that is kept beside the file. */
    Optional<Plan> kept() {
        return kept;
    }

    /** Whether the program was left. */
    boolean hasLeft() {
        return left;
    }
}
