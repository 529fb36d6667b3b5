package versewind.screen.state;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Experience;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Undo;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;

/**
 * A plan being worked on, and where.
 *
 * @param id name of its file without the ending
 * @param instrument the instrument it is for
 * @param organ the sound of the instrument and what it rests on
 * @param history the plan and its edits
 * @param place the hymn and verse where we are
 * @param side what has the keys
 * @param item the knob where we are, in the order of {@link StopGridLayout#items()}
 * @param access whether it may be edited
 * @param learned what was learned of the organ last
 */
public record PlanEdit(
        String id,
        Instrument instrument,
        CalibratedOrgan organ,
        Undo<Plan> history,
        VersePlace place,
        Side side,
        int item,
        Access access,
        Optional<Learned> learned) {

    public PlanEdit(
            String id,
            Instrument instrument,
            CalibratedOrgan organ,
            Undo<Plan> history,
            VersePlace place,
            Side side,
            int item,
            Access access) {
        this(id, instrument, organ, history, place, side, item, access, Optional.empty());
    }

    /**
     * Something that was learned of the organ.
     *
     * @param plan as it was then
     * @param before what was known before
     */
    record Learned(Plan plan, Experience before) {}

    /** The two sides of the screen. */
    public enum Side {
        STOPS,
        VERSES
    }

    /** Whether a plan may be edited. */
    public enum Access {
        EDITED,
        LOOKED_AT
    }

    /** Asked of an organ of which nothing is known but its stop list. */
    public static final String USUAL_QUESTION = "What do you draw for an ordinary hymn, and for how many?";

    /** The question about an organ of which nothing is known yet; blank where something is. */
    public static String usualAsked(Experience known) {
        return known.all().isEmpty() ? USUAL_QUESTION + " Press R to say." : "";
    }

    /** How a verse of the current hymn sounds. */
    public Estimate estimate(Verse verse) {
        OptionalInt tempo = hymn().map(Hymn::tempo).orElse(OptionalInt.empty());
        return sound().estimate(verse, plan().heading().people(), tempo);
    }

    /** The sound of the organ. */
    public OrganSound sound() {
        return organ.sound();
    }

    public Plan plan() {
        return history.now();
    }

    /** The hymn where we are; none in a plan without hymns. */
    public Optional<Hymn> hymn() {
        return place.hymn() < plan().hymns().size() ? Optional.of(plan().hymn(place)) : Optional.empty();
    }

    /** The verses of the hymn where we are. */
    public List<Verse> verses() {
        return hymn().map(Hymn::verses).orElse(List.of());
    }

    /** The verse where we are; none in a hymn without verses. */
    public Optional<Verse> verse() {
        return place.verse() < verses().size() ? Optional.of(verses().get(place.verse())) : Optional.empty();
    }

    /** The verse played before the one where we are: in this hymn, or the last of a hymn before. */
    public Optional<Verse> before() {
        return plan().before(place).stream().map(plan()::verse).findFirst();
    }

    public PlanEdit at(VersePlace other) {
        return new PlanEdit(id, instrument, organ, history, other.within(plan()), side, item, access, learned);
    }

    public PlanEdit at(int otherItem) {
        return new PlanEdit(id, instrument, organ, history, place, side, otherItem, access, learned);
    }

    public PlanEdit on(Side other) {
        return new PlanEdit(id, instrument, organ, history, place, other, item, access, learned);
    }

    public PlanEdit with(Undo<Plan> other) {
        return new PlanEdit(id, instrument, organ, other, place.within(other.now()), side, item, access, learned);
    }

    /** In another file. */
    public PlanEdit under(String otherId, Undo<Plan> other) {
        return new PlanEdit(otherId, instrument, organ, other, place, side, item, Access.EDITED, learned);
    }

    /** On the same organ after a calibration. */
    public PlanEdit on(CalibratedOrgan other) {
        return new PlanEdit(id, other.sound().organ(), other, history, place, side, item, access);
    }

    /** On the same organ after its organist has learned something more of it, or has forgotten it again. */
    public PlanEdit on(CalibratedOrgan other, Optional<Experience> before) {
        Optional<Learned> since = before.map(known -> new Learned(plan(), known));
        return new PlanEdit(id, other.sound().organ(), other, history, place, side, item, access, since);
    }

    /** What was known before something was learned, if that is what was done last: undo goes back to it. */
    public Optional<Experience> beforeLearning() {
        return learned.filter(last -> last.plan().equals(plan())).map(Learned::before);
    }

    /** Only to be looked at. */
    public PlanEdit lookedAt() {
        return new PlanEdit(id, instrument, organ, history, place, side, item, Access.LOOKED_AT, learned);
    }
}
