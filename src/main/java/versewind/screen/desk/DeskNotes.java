package versewind.screen.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Registration;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.DynamicStep;
import versewind.rules.DynamicSteps;
import versewind.screen.state.Effect;
import versewind.screen.state.PlanEdit;

/**
 * What is known at the desk during a service and is not written to the plan.
 *
 * @param opened from where
 * @param counted how many are present, if that is not the number planned
 * @param ladders what has been found so far of what makes verses stronger and softer
 * @param stepped verses that are played stronger or softer than planned
 * @param leaving whether it is to be left
 */
record DeskNotes(
        Opened opened,
        OptionalInt counted,
        Map<VersePlace, Found> ladders,
        Map<VersePlace, Stepped> stepped,
        Leaving leaving) {

    /** From where the desk was opened. */
    enum Opened {
        /** By its own command: there is nothing to come back to. */
        ALONE,
        /** From a plan that was saved. */
        FROM_SAVED,
        /** From a plan with changes that are not saved. */
        FROM_UNSAVED
    }

    /** Whether the desk is to be left. */
    enum Leaving {
        NO,
        /** The key was pressed once. */
        ASKED
    }

    /**
     * A ladder that was found.
     *
     * @param of which verse, and for how many people
     * @param ladder its steps
     */
    record Found(Effect.LadderOf of, DynamicSteps ladder) {}

    /**
     * A verse that is played otherwise than planned.
     *
     * @param steps how many steps stronger; negative for softer, never 0
     * @param ladder on which
     */
    record Stepped(int steps, DynamicSteps ladder) {}

    DeskNotes {
        ladders = Map.copyOf(ladders);
        stepped = Map.copyOf(stepped);
    }

    static DeskNotes of(Opened opened) {
        return new DeskNotes(opened, OptionalInt.empty(), Map.of(), Map.of(), Leaving.NO);
    }

    /** How many are present. */
    int people(PlanEdit work) {
        return counted.orElse(work.plan().heading().people());
    }

    DeskNotes counting(int people) {
        return new DeskNotes(opened, OptionalInt.of(people), ladders, stepped, leaving);
    }

    DeskNotes with(Found found) {
        Map<VersePlace, Found> more = new HashMap<>(ladders);
        more.put(found.of().place(), found);
        return new DeskNotes(opened, counted, more, stepped, leaving);
    }

    DeskNotes with(Leaving other) {
        return new DeskNotes(opened, counted, ladders, stepped, other);
    }

    /** With a verse played so many steps stronger than planned. */
    DeskNotes stepping(VersePlace place, int steps, DynamicSteps ladder) {
        Map<VersePlace, Stepped> other = new HashMap<>(stepped);
        if (steps == 0) {
            other.remove(place);
        } else {
            other.put(place, new Stepped(steps, ladder));
        }
        return new DeskNotes(opened, counted, ladders, other, leaving);
    }

    /** What is to be found out to make a verse stronger or softer. */
    Effect.LadderOf ladderOf(PlanEdit work, VersePlace place) {
        return new Effect.LadderOf(
                place,
                work.plan().verse(place),
                people(work),
                work.plan().hymn(place).tempo());
    }

    /** The ladder of a verse: the one it was played on, or else the one that was found for as many as are present. */
    Optional<DynamicSteps> ladder(PlanEdit work, VersePlace place) {
        if (stepped.containsKey(place)) {
            return Optional.of(stepped.get(place).ladder());
        }
        return Optional.ofNullable(ladders.get(place))
                .filter(found -> found.of().equals(ladderOf(work, place)))
                .map(Found::ladder);
    }

    /** How many steps stronger than planned a verse is played. */
    int steps(VersePlace place) {
        return stepped.containsKey(place) ? stepped.get(place).steps() : 0;
    }

    /** What is drawn for a verse, if not what is planned. */
    Optional<Registration> otherwise(PlanEdit work, VersePlace place) {
        return stepped.containsKey(place) ? Optional.of(drawn(work, place)) : Optional.empty();
    }

    /** What is drawn for a verse. */
    private Registration drawn(PlanEdit work, VersePlace place) {
        Verse verse = work.plan().verse(place);
        return stepped.containsKey(place)
                ? drawn(stepped.get(place).ladder(), verse, steps(place))
                : verse.registration();
    }

    /** The plan as it is played: before as many as are present, with what is drawn otherwise than planned. */
    Plan played(PlanEdit work) {
        Plan plan = work.plan().withHeading(work.plan().heading().withPeople(people(work)));
        for (VersePlace place : stepped.keySet()) {
            Verse verse = plan.verse(place).withRegistration(drawn(work, place));
            plan = plan.withVerse(place, verse);
        }
        return plan;
    }

    /** What is drawn so many steps stronger than planned. */
    static Registration drawn(DynamicSteps ladder, Verse verse, int steps) {
        if (steps == 0) {
            return verse.registration();
        }
        List<DynamicStep> rungs = steps > 0 ? ladder.stronger() : ladder.softer();
        return rungs.get(Math.abs(steps) - 1).registration();
    }

    /** How much louder a step to so many steps is than the one nearer to the plan, in dB. */
    static double changeDb(DynamicSteps ladder, int steps) {
        List<DynamicStep> rungs = steps > 0 ? ladder.stronger() : ladder.softer();
        return rungs.get(Math.abs(steps) - 1).changeDb();
    }

    /** The step of the order of building up that is reached with some steps; empty as planned, and off the order. */
    static Optional<String> reached(DynamicSteps ladder, int steps) {
        List<DynamicStep> rungs = steps > 0 ? ladder.stronger() : ladder.softer();
        return steps == 0 ? Optional.empty() : rungs.get(Math.abs(steps) - 1).reached();
    }

    /** Whether there is a step of a ladder so many above what is planned. */
    static boolean reaches(DynamicSteps ladder, int steps) {
        return steps >= -ladder.softer().size() && steps <= ladder.stronger().size();
    }
}
