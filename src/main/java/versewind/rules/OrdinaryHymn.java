package versewind.rules;

import java.util.List;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/**
 * A guess at what is drawn for an ordinary hymn: the first rung of the {@link BuildingLine} that leads, on the main
 * manual with the pedal.
 *
 * @param verse a verse so played
 * @param people present
 */
public record OrdinaryHymn(Verse verse, int people) {

    /** People at an ordinary service in a church that holds them. An estimate. */
    private static final int USUAL_PEOPLE = 150;

    /** The guess for an organ: for 150 people, or half the seats where those are fewer. */
    public static OrdinaryHymn of(OrganSound sound) {
        Instrument organ = sound.organ();
        int people = people(organ);
        HandsAndFeet.Layout layout =
                organ.pedalDivision().isPresent() ? HandsAndFeet.Layout.FOUR_PARTS : HandsAndFeet.Layout.MANUALS_ONLY;
        Verse silent = Verses.blank(organ, VerseKind.VERSE).withHands(HandsAndFeet.on(layout, organ.mainDivision()));
        List<Registration> rungs = new BuildingLine(OrganFacts.of(sound), silent.hands(), IndexSet.EMPTY)
                .rungs().stream()
                        .map(rung ->
                                silent.registration().withStops(rung.stops()).withCouplers(rung.couplers()))
                        .toList();
        Verse last = silent;
        for (Registration rung : rungs) {
            last = silent.withRegistration(rung);
            if (sound.clearShare(last, people).of(last.registration(), last.hands())
                    >= Verdict.LEADS.from(last.mode())) {
                break;
            }
        }
        return new OrdinaryHymn(last, people);
    }

    /** People at an ordinary service where an organ stands, if nothing else is known. */
    public static int people(Instrument organ) {
        int seats = organ.room().seats();
        return seats == 0 ? USUAL_PEOPLE : Math.max(1, Math.min(USUAL_PEOPLE, seats / 2));
    }
}
