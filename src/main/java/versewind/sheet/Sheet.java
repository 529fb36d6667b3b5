package versewind.sheet;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Count;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Pressed;
import versewind.organ.Registration;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.Assessment;
import versewind.rules.Caution;
import versewind.rules.ChangeRule;
import versewind.rules.DynamicStep;
import versewind.rules.DynamicSteps;
import versewind.rules.Finding;
import versewind.rules.NoiseExposure;
import versewind.rules.StopChanges;
import versewind.rules.StopChangesByDivision;
import versewind.rules.Touch;
import versewind.sound.EarSeats;
import versewind.sound.OrganSound;

/**
 * What lies on the music desk for a service, before it is set as HTML or as text.
 *
 * @param heading what stands over the service
 * @param organ the instrument
 * @param hymns in the order they are sung
 * @param pistons what is set before the service
 * @param turns the registrant's stop changes; swell boxes are the organist's
 * @param cautions sentences to end with
 * @param wishes what is wanted of it
 */
public record Sheet(
        ServiceHeading heading,
        Instrument organ,
        List<HymnSheet> hymns,
        List<PistonSetting> pistons,
        List<Turn> turns,
        List<String> cautions,
        SheetOptions wishes) {

    public Sheet {
        hymns = List.copyOf(hymns);
        pistons = List.copyOf(pistons);
        turns = List.copyOf(turns);
        cautions = List.copyOf(cautions);
    }

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

    /**
     * What the registrant does before a verse.
     *
     * @param verse where: "208 V1"
     * @param changes knobs to put in and to draw
     */
    public record Turn(String verse, List<ChangeRow> changes) {

        public Turn {
            changes = List.copyOf(changes);
        }
    }

    private static List<Turn> turns(List<HymnSheet> hymns) {
        List<Turn> turns = new ArrayList<>();
        for (HymnSheet hymn : hymns) {
            for (VerseSheet verse : hymn.verses()) {
                List<ChangeRow> knobs = verse.changes().stream()
                        .filter(row -> row.kind() != ChangeRow.Kind.BOX)
                        .toList();
                if (!knobs.isEmpty()) {
                    turns.add(new Turn(hymn.placed(verse), knobs));
                }
            }
        }
        return turns;
    }

    /** All that it says, page by page. */
    public List<SheetPage> pages() {
        return SheetPages.of(this);
    }

    /** "Sunday 4 October 2026"; blank without a date. */
    public String date() {
        return heading.date().map(DATE::format).orElse("");
    }

    /** The organ, the people, and whether the feet rest: "St Tethwin, Averstoke. 180 people expected." */
    public String setting() {
        int people = heading.people();
        return organ + ". " + people + (people == 1 ? " person" : " people") + " expected."
                + (heading.player() == Player.MANUALS_ONLY ? " Manuals only." : "");
    }

    /**
     * The sheet of a plan.
     *
     * @param plan a plan that can be played on the instrument
     * @param sound the instrument
     * @param wishes what is wanted of it
     */
    public static Sheet of(Plan plan, OrganSound sound, SheetOptions wishes) {
        Assessment assessment = Assessment.of(plan, sound);
        Instrument organ = sound.organ();
        Advice advice = Advice.on(sound);
        List<HymnSheet> hymns = new ArrayList<>();
        for (Assessment.OfHymn hymn : assessment.hymns()) {
            List<VerseSheet> verses = new ArrayList<>();
            for (Assessment.OfVerse each : hymn.verses()) {
                VersePlace place = new VersePlace(hymns.size(), verses.size());
                List<String> played = PlayingNotes.of(advice, plan, place);
                verses.add(verse(each, plan, place, played, sound, wishes.steps()));
            }
            hymns.add(new HymnSheet(hymn.hymn(), verses, PlayingNotes.breath(advice, plan, hymns.size())));
        }
        return new Sheet(
                plan.heading(),
                organ,
                hymns,
                PistonSetting.of(organ, hymns),
                turns(hymns),
                cautions(plan, assessment, sound),
                wishes);
    }

    private static List<String> cautions(Plan plan, Assessment assessment, OrganSound sound) {
        NoiseExposure ears = NoiseExposure.of(plan, assessment, new EarSeats(sound));
        return Stream.concat(Stream.of(Caution.ESTIMATE), ears.caution().stream())
                .toList();
    }

    private static VerseSheet verse(
            Assessment.OfVerse of,
            Plan plan,
            VersePlace place,
            List<String> played,
            OrganSound sound,
            SheetOptions.Steps steps) {
        Instrument organ = sound.organ();
        int people = plan.heading().people();
        OptionalInt tempo = plan.hymn(place).tempo();
        Verse verse = of.verse();
        List<Verse> before =
                verse.isPlayed() ? plan.before(place).stream().map(plan::verse).toList() : List.of();
        List<ChangeRow> changes = changes(sound, before.stream().findFirst(), verse);
        DynamicSteps ladder =
                switch (steps) {
                    case LEFT_OUT -> new DynamicSteps(List.of(), List.of());
                    case SHOWN -> DynamicSteps.of(sound, verse, people, tempo, DynamicSteps.PRINTED);
                };
        return new VerseSheet(
                verse,
                of.estimate(),
                verse.mode() == Mode.MELODY_SOLOED ? Optional.empty() : sound.rightBand(verse, people),
                Wording.playing(verse, people, of.estimate(), organ),
                verse.isPlayed()
                        ? DivisionLine.of(
                                organ, verse.registration(), sound.sounding(verse.registration(), verse.hands()))
                        : List.of(),
                before.stream().map(Verse::label).findFirst(),
                changes,
                IntStream.range(1, before.size())
                        .mapToObj(i -> new VerseSheet.LeftOut(
                                labels(before.subList(0, i)), changes(sound, Optional.of(before.get(i)), verse)))
                        .filter(other -> !other.changes().equals(changes))
                        .toList(),
                played,
                steps(organ, ladder.stronger()),
                steps(organ, ladder.softer()));
    }

    private static String labels(List<Verse> latestFirst) {
        List<String> labels = new ArrayList<>();
        latestFirst.forEach(verse -> labels.add(0, verse.label()));
        return String.join(" and ", labels);
    }

    private static List<ChangeRow> changes(OrganSound sound, Optional<Verse> before, Verse verse) {
        if (!verse.isPlayed()) {
            return List.of();
        }
        Instrument organ = sound.organ();
        Registration from = before.map(Verse::registration).orElse(Registration.silent(organ));
        StopChanges byHand = StopChanges.between(from, verse.registration())
                .beyond(Pressed.of(organ, verse.piston()).reach(organ));
        IndexSet sounding = sound.sounding(verse.registration(), verse.hands());
        return ChangeRow.of(
                StopChangesByDivision.of(organ, byHand.sounding(sounding)),
                StopChangesByDivision.of(organ, byHand.waiting(sounding)));
    }

    private static List<VerseSheet.Step> steps(Instrument organ, List<DynamicStep> rungs) {
        return rungs.stream()
                .map(rung -> new VerseSheet.Step(ChangeRow.of(StopChangesByDivision.of(organ, rung.moves())), rung))
                .toList();
    }

    /** How a verse is played, in the few words that can be read at the console. */
    private static final class PlayingNotes {

        private PlayingNotes() {}

        /**
         * How to touch the keys, "Detached, notes held 3/4 of the beat.", where that differs from the last verse of the
         * hymn that was played; and whether what is moved before the verse takes longer than the breath.
         *
         * @param advice a colleague who knows the instrument
         * @param plan a plan that can be played on it
         * @param place a verse of the plan
         */
        static List<String> of(Advice advice, Plan plan, VersePlace place) {
            if (!plan.verse(place).isPlayed()) {
                return List.of(advice.touch(plan, place).sentence());
            }
            String touch = words(advice.touch(plan, place));
            Optional<String> before = Stream.iterate(place.verse() - 1, i -> i >= 0, i -> i - 1)
                    .map(i -> new VersePlace(place.hymn(), i))
                    .filter(other -> plan.verse(other).isPlayed())
                    .findFirst()
                    .map(other -> words(advice.touch(plan, other)));
            return Stream.concat(
                            Stream.of(touch).filter(words -> !before.equals(Optional.of(words))),
                            place.verse() > 0 ? breathless(advice, plan, place) : Stream.empty())
                    .toList();
        }

        private static String words(Touch touch) {
            String manner = touch.manner().word();
            String capital = Character.toUpperCase(manner.charAt(0)) + manner.substring(1);
            String held = touch.manner() == Touch.Manner.LEGATO
                    ? ""
                    : ", notes held " + touch.manner().hold();
            return capital + held + "." + (touch.isLastMeans() ? Touch.LAST_MEANS : "");
        }

        private static Stream<String> breathless(Advice advice, Plan plan, VersePlace place) {
            return advice.mentions(plan, place).stream()
                    .filter(finding -> finding.rule() == ChangeRule.TOO_MANY_MOVES)
                    .map(Finding::sentence)
                    .limit(1);
        }

        /** How long to breathe between the verses of a hymn: "breathe 2 beats"; blank where there is one verse. */
        static String breath(Advice advice, Plan plan, int hymn) {
            if (plan.hymns().get(hymn).verses().size() < 2) {
                return "";
            }
            int beats = advice.touch(plan, new VersePlace(hymn, 0)).breathBeats();
            return "breathe " + Count.of(beats, "beat");
        }
    }
}
