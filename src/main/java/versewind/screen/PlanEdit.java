package versewind.screen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.calibration.CalibratedOrgan;
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
 * @param organ the sound of the instrument and its calibration
 * @param history the plan and its edits
 * @param place the hymn and verse where we are
 * @param side what has the keys
 * @param item the knob where we are, in the order of {@link StopGridLayout#items()}
 * @param draft unsaved work that was found and not yet taken up or forgotten
 * @param organWithoutFeedback the organ by itself, if {@code organ} takes the feedback on the verses into account
 */
record PlanEdit(
        String id,
        Instrument instrument,
        CalibratedOrgan organ,
        Undo<Plan> history,
        VersePlace place,
        Side side,
        int item,
        Optional<Plan> draft,
        Optional<CalibratedOrgan> organWithoutFeedback) {

    PlanEdit(
            String id,
            Instrument instrument,
            CalibratedOrgan organ,
            Undo<Plan> history,
            VersePlace place,
            Side side,
            int item,
            Optional<Plan> draft) {
        this(id, instrument, organ, history, place, side, item, draft, Optional.empty());
    }

    /** The two sides of the screen. */
    enum Side {
        STOPS,
        VERSES
    }

    /** How a verse of the current hymn sounds. */
    Estimate estimate(Verse verse) {
        OptionalInt tempo = hymn().map(Hymn::tempo).orElse(OptionalInt.empty());
        return sound().estimate(verse, plan().heading().people(), tempo);
    }

    /** The sound of the organ. */
    OrganSound sound() {
        return organ.sound();
    }

    Plan plan() {
        return history.now();
    }

    /** The hymn where we are; none in a plan without hymns. */
    Optional<Hymn> hymn() {
        return place.hymn() < plan().hymns().size() ? Optional.of(plan().hymns().get(place.hymn())) : Optional.empty();
    }

    /** The verses of the hymn where we are. */
    List<Verse> verses() {
        return hymn().map(Hymn::verses).orElse(List.of());
    }

    /** The verse where we are; none in a hymn without verses. */
    Optional<Verse> verse() {
        return place.verse() < verses().size() ? Optional.of(verses().get(place.verse())) : Optional.empty();
    }

    /** The verse played before the one where we are: in this hymn, or the last of a hymn before. */
    Optional<Verse> before() {
        if (place.verse() > 0) {
            return Optional.of(verses().get(place.verse() - 1));
        }
        for (int hymn = place.hymn() - 1; hymn >= 0; hymn--) {
            List<Verse> verses = plan().hymns().get(hymn).verses();
            if (!verses.isEmpty()) {
                return Optional.of(verses.get(verses.size() - 1));
            }
        }
        return Optional.empty();
    }

    PlanEdit at(VersePlace other) {
        return new PlanEdit(
                id, instrument, organ, history, other.within(plan()), side, item, draft, organWithoutFeedback);
    }

    PlanEdit at(int otherItem) {
        return new PlanEdit(id, instrument, organ, history, place, side, otherItem, draft, organWithoutFeedback);
    }

    PlanEdit on(Side other) {
        return new PlanEdit(id, instrument, organ, history, place, other, item, draft, organWithoutFeedback);
    }

    PlanEdit with(Undo<Plan> other) {
        PlanEdit after = new PlanEdit(
                id, instrument, organ, other, place.within(other.now()), side, item, draft, organWithoutFeedback);
        boolean isSaidAnew = isWithFeedback() && !other.now().answered().equals(plan().answered());
        return isSaidAnew ? after.withoutFeedback().withFeedback() : after;
    }

    /** True if estimates take the feedback on the verses into account. */
    boolean isWithFeedback() {
        return organWithoutFeedback.isPresent();
    }

    /** The plan whose feedback is taken into account, if it is. */
    Optional<Plan> heard() {
        return isWithFeedback() ? Optional.of(plan()) : Optional.empty();
    }

    PlanEdit withFeedback() {
        CalibratedOrgan heard = organ.withFeedback(plan());
        return new PlanEdit(id, instrument, heard, history, place, side, item, draft, Optional.of(organ));
    }

    PlanEdit withoutFeedback() {
        return new PlanEdit(id, instrument, organWithoutFeedback.orElse(organ), history, place, side, item, draft);
    }

    /** In another file. */
    PlanEdit under(String otherId, Undo<Plan> other) {
        return new PlanEdit(
                otherId, instrument, organ, other, place, side, item, Optional.empty(), organWithoutFeedback);
    }

    /** On the same organ after a calibration. */
    PlanEdit on(CalibratedOrgan other) {
        return new PlanEdit(id, other.sound().organ(), other, history, place, side, item, draft);
    }

    PlanEdit withoutDraft() {
        return new PlanEdit(id, instrument, organ, history, place, side, item, Optional.empty(), organWithoutFeedback);
    }
}
