package versewind.screen;

import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.plan.History;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.OrganSound;

/**
 * A plan being worked on, and where.
 *
 * @param id name of its file without the ending
 * @param instrument the instrument it is for
 * @param sound how that sounds
 * @param history the plan and its edits
 * @param place the hymn and verse where we are
 * @param side what has the keys
 * @param item the knob where we are, in the order of {@link StopGridLayout#items()}
 * @param draft unsaved work that was found and not yet taken up or forgotten
 * @param unheeded how the instrument sounds by itself, where {@code sound} takes into account what was said of the verses
 */
record PlanEdit(
        String id,
        Instrument instrument,
        OrganSound sound,
        History history,
        VersePlace place,
        Side side,
        int item,
        Optional<Plan> draft,
        Optional<OrganSound> unheeded) {

    PlanEdit(
            String id,
            Instrument instrument,
            OrganSound sound,
            History history,
            VersePlace place,
            Side side,
            int item,
            Optional<Plan> draft) {
        this(id, instrument, sound, history, place, side, item, draft, Optional.empty());
    }

    /** The two sides of the screen. */
    enum Side {
        STOPS,
        VERSES
    }

    Plan plan() {
        return history.plan();
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
        return new PlanEdit(id, instrument, sound, history, other.within(plan()), side, item, draft, unheeded);
    }

    PlanEdit at(int otherItem) {
        return new PlanEdit(id, instrument, sound, history, place, side, otherItem, draft, unheeded);
    }

    PlanEdit on(Side other) {
        return new PlanEdit(id, instrument, sound, history, place, other, item, draft, unheeded);
    }

    PlanEdit with(History other) {
        PlanEdit after =
                new PlanEdit(id, instrument, sound, other, place.within(other.plan()), side, item, draft, unheeded);
        boolean isSaidAnew = isHeeding() && !other.plan().answered().equals(plan().answered());
        return isSaidAnew ? after.unheeding().heeding() : after;
    }

    /** Whether what was said of the verses is taken into account. */
    boolean isHeeding() {
        return unheeded.isPresent();
    }

    /** With what was said of the verses taken into account. */
    PlanEdit heeding() {
        return new PlanEdit(
                id, instrument, sound.heeding(plan()), history, place, side, item, draft, Optional.of(sound));
    }

    /** Without it. */
    PlanEdit unheeding() {
        return new PlanEdit(id, instrument, unheeded.orElse(sound), history, place, side, item, draft);
    }

    /** In another file. */
    PlanEdit under(String otherId, History other) {
        return new PlanEdit(otherId, instrument, sound, other, place, side, item, Optional.empty(), unheeded);
    }

    /** On the same organ, of which more is known. */
    PlanEdit hearing(OrganSound other) {
        return new PlanEdit(id, other.organ(), other, history, place, side, item, draft);
    }

    PlanEdit withoutDraft() {
        return new PlanEdit(id, instrument, sound, history, place, side, item, Optional.empty(), unheeded);
    }
}
