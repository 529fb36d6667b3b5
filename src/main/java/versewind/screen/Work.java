package versewind.screen;

import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.plan.History;
import versewind.plan.Hymn;
import versewind.plan.Place;
import versewind.plan.Plan;
import versewind.plan.Verse;
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
 * @param item the knob where we are, in the order of {@link Jamb#items()}
 * @param draft unsaved work that was found and not yet taken up or forgotten
 * @param unheeded how the instrument sounds by itself, where {@code sound} takes into account what was said of the verses
 */
record Work(
        String id,
        Instrument instrument,
        OrganSound sound,
        History history,
        Place place,
        Side side,
        int item,
        Optional<Plan> draft,
        Optional<OrganSound> unheeded) {

    Work(
            String id,
            Instrument instrument,
            OrganSound sound,
            History history,
            Place place,
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

    Work at(Place other) {
        return new Work(id, instrument, sound, history, other.within(plan()), side, item, draft, unheeded);
    }

    Work at(int otherItem) {
        return new Work(id, instrument, sound, history, place, side, otherItem, draft, unheeded);
    }

    Work on(Side other) {
        return new Work(id, instrument, sound, history, place, other, item, draft, unheeded);
    }

    Work with(History other) {
        Work after = new Work(id, instrument, sound, other, place.within(other.plan()), side, item, draft, unheeded);
        boolean isSaidAnew = isHeeding() && !other.plan().answered().equals(plan().answered());
        return isSaidAnew ? after.unheeding().heeding() : after;
    }

    /** Whether what was said of the verses is taken into account. */
    boolean isHeeding() {
        return unheeded.isPresent();
    }

    /** With what was said of the verses taken into account. */
    Work heeding() {
        return new Work(id, instrument, sound.heeding(plan()), history, place, side, item, draft, Optional.of(sound));
    }

    /** Without it. */
    Work unheeding() {
        return new Work(id, instrument, unheeded.orElse(sound), history, place, side, item, draft);
    }

    /** In another file. */
    Work under(String otherId, History other) {
        return new Work(otherId, instrument, sound, other, place, side, item, Optional.empty(), unheeded);
    }

    /** On the same organ, of which more is known. */
    Work hearing(OrganSound other) {
        return new Work(id, other.organ(), other, history, place, side, item, draft);
    }

    Work withoutDraft() {
        return new Work(id, instrument, sound, history, place, side, item, Optional.empty(), unheeded);
    }
}
