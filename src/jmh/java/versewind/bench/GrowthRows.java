package versewind.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.StringJoiner;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.sound.OrganSound;
import versewind.store.BadFile;
import versewind.store.Library;

/** How time grows with the organ and with the service. */
final class GrowthRows {

    private static final int[] STOPS = {10, 30, 100, 300};
    private static final int[] HYMNS = {1, 10, 100};
    private static final int VERSES = 5;
    private static final int WARMING = 2_000;
    private static final int TIMES = 1_000;

    private final Library library;
    private final ResultTable table;

    GrowthRows(Library library, ResultTable table) {
        this.library = library;
        this.table = table;
    }

    void print() throws BadFile {
        organs();
        services();
    }

    private void organs() throws BadFile {
        StringJoiner opening = new StringJoiner(", ");
        StringJoiner toggle = new StringJoiner(", ");
        for (int stops : STOPS) {
            Instrument organ = ofStops(library.openInstrument("st-tethwin"), stops);
            long start = System.nanoTime();
            OrganSound sound = OrganSound.open(organ);
            opening.add(String.format("%.1f", (System.nanoTime() - start) / 1e6));
            toggle.add(String.format("%.0f", toggleUs(sound, stops)));
        }
        table.row("opening organs of 10, 30, 100, 300 stops, ms", "", opening.toString(), "a curve", "");
        table.row("toggle and estimate on them, us", "", toggle.toString(), "flat", "");
    }

    private static double toggleUs(OrganSound sound, int stops) {
        Verse verse = Verses.blank(sound.organ(), VerseKind.VERSE)
                .withHands(HandsAndFeet.on(
                        HandsAndFeet.Layout.FOUR_PARTS, sound.organ().mainDivision()))
                .withRegistration(Registration.full(sound.organ()));
        long start = 0;
        for (int i = 0; i < WARMING + TIMES; i++) {
            if (i == WARMING) {
                start = System.nanoTime();
            }
            verse = verse.withRegistration(verse.registration().toggleStop(i % stops));
            // another number of people each time, so that no estimate is one that was kept
            sound.estimate(verse, 400, OptionalInt.of(20 + i));
        }
        return (System.nanoTime() - start) / 1e3 / TIMES;
    }

    /** An organ with so many stops: those of another, again and again under other names. */
    private static Instrument ofStops(Instrument like, int count) {
        List<Division> divisions = new ArrayList<>();
        int stops = like.stops().size();
        for (int at = 0; at < like.divisions().size(); at++) {
            Division division = like.divisions().get(at);
            List<Stop> more = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                if (like.stops().get(i % stops).division() == at) {
                    more.add(named(like.stops().get(i % stops).stop(), i / stops));
                }
            }
            divisions.add(division.withStops(more));
        }
        return new Instrument(
                like.name(),
                like.place(),
                like.action(),
                like.trimDb(),
                divisions,
                like.couplers(),
                like.tremulants(),
                like.pistons(),
                like.room());
    }

    private static Stop named(Stop stop, int copy) {
        return new Stop(
                copy == 0 ? stop.name() : stop.name() + " no. " + copy,
                stop.footage(),
                stop.family(),
                stop.pipe(),
                stop.ranks(),
                stop.composition(),
                // every copy has a trim of its own, and so is another rank
                stop.trimDb() - copy / 10.0,
                stop.enclosure(),
                Optional.empty(),
                stop.note());
    }

    private void services() throws BadFile {
        OrganSound sound = OrganSound.open(library.openInstrument("st-tethwin"));
        StringJoiner proposals = new StringJoiner(", ");
        for (int hymns : HYMNS) {
            Plan plan = Programs.blank(sound.organ(), hymns, VERSES);
            RegistrationProposer proposer = RegistrationProposer.of(sound);
            proposer.forService(Programs.blank(sound.organ(), 1, VERSES), SearchProgress.PATIENT);
            long start = System.nanoTime();
            proposer.forService(plan, SearchProgress.PATIENT);
            proposals.add(String.format("%.0f", (System.nanoTime() - start) / 1e6));
        }
        table.row("proposals for 6, 60, 600 verses, ms", "", proposals.toString(), "linear in verses", "");
    }
}
