package versewind.screen;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.store.OpenPlan;

/**
 * Does what the editor at a desk wants done outside, and tells it what came of it, as the disk would; but nothing is
 * written.
 */
final class Clerk {

    private static final Event.ListedPlan HARVEST = Desk.listed("harvest-festival", "Harvest Festival", "2026-10-04");
    private static final Event.ListedPlan WEDDING = Desk.listed("wedding", "Wedding", "2027-05-22");
    private static final Event.ListedPlan BROKEN = Desk.listed("broken", "broken", "");
    private static final Event.Listed VILLAGE = new Event.Listed("little-corvening", "All Hallows", "Little Corvening");

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
        Deque<Effect> wanted = new ArrayDeque<>(desk.effects());
        while (!wanted.isEmpty()) {
            outcome(wanted.removeFirst()).ifPresent(desk::answer);
            wanted.addAll(desk.effects());
        }
        return this;
    }

    private Optional<Event> outcome(Effect effect) {
        if (effect instanceof Effect.KeepDraft draft) {
            kept = Optional.of(draft.plan());
        } else if (effect instanceof Effect.DropDraft) {
            kept = Optional.empty();
        } else if (effect instanceof Effect.Quit) {
            left = true;
        } else if (effect instanceof Effect.Save save) {
            return Optional.of(save(save.plan(), save.then(), saving));
        } else if (effect instanceof Effect.SaveOver save) {
            return Optional.of(save(save.plan(), save.then(), Saving.WRITTEN));
        }
        return read(effect);
    }

    private Event save(Plan plan, List<Effect> then, Saving outcome) {
        return switch (outcome) {
            case WRITTEN -> {
                written = Optional.of(plan);
                kept = Optional.empty();
                yield new Event.Saved(plan, then);
            }
            case CHANGED_BY_OTHERS -> new Event.SaveRefused(plan, then);
            case DISK_FULL -> new Event.Failed("Not saved to plans/a-plan.json: The disk is full.");
        };
    }

    private static Optional<Event> read(Effect effect) {
        if (effect instanceof Effect.ListPlans) {
            return Optional.of(
                    new Event.PlansListed(List.of(HARVEST, WEDDING, BROKEN), 3, Event.PlansListed.Part.FIRST));
        }
        if (effect instanceof Effect.ListInstruments) {
            return Optional.of(new Event.InstrumentsListed(List.of(VILLAGE)));
        }
        if (effect instanceof Effect.OpenPlan open && open.id().equals(BROKEN.id())) {
            return Optional.of(new Event.Failed("plans/broken.json, line 3: this is no plan. Mend it by hand."));
        }
        if (effect instanceof Effect.OpenPlan open) {
            OpenPlan shipped = Desk.shipped(open.id());
            return Optional.of(opened(open.id(), shipped.plan(), shipped.instrument()));
        }
        if (effect instanceof Effect.OpenOrgan open) {
            return Optional.of(new Event.OrganOpened(open.id(), Desk.instrument(open.id()), "", Optional.empty()));
        }
        if (effect instanceof Effect.SaveOrgan save) {
            return Optional.of(new Event.OrganSaved(save.next(), "Saved.", save.then()));
        }
        if (effect instanceof Effect.MakeOrgan make) {
            return Optional.of(new Event.OrganOpened("new", make.organ(), "Made.", Optional.empty()));
        }
        if (effect instanceof Effect.CloseOrgan) {
            return Optional.of(new Event.OrganClosed());
        }
        if (effect instanceof Effect.CreatePlan create) {
            Plan plan = new Plan(create.heading(), create.instrument(), List.of());
            return Optional.of(opened("new", plan, Desk.instrument(create.instrument())));
        }
        if (effect instanceof Effect.CopyPlan copy) {
            OpenPlan from = Desk.shipped(copy.id());
            ServiceHeading heading = new ServiceHeading(
                    copy.title(),
                    copy.date(),
                    copy.people().orElse(from.plan().heading().people()),
                    copy.notes());
            return Optional.of(opened("new", from.plan().withHeading(heading), from.instrument()));
        }
        return Optional.empty();
    }

    private static Event opened(String id, Plan plan, Instrument instrument) {
        return new Event.PlanOpened(id, plan, instrument, Desk.organ(instrument), Optional.empty());
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
