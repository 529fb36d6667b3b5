package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.store.Library;

/** What a search asks of a registration: beside the whole estimate, and its bounds. */
class MarginEvaluatorTest {

    private static final int PEOPLE = 180;
    private static final double HAIR_DB = 1e-9;

    @ParameterizedTest
    @CsvSource({
        "st-tethwin, CONGREGATION", "st-tethwin, SMALL_CHOIR", "st-tethwin, MELODY_SOLOED",
        "oudervaart, CONGREGATION", "oudervaart, SOLO_VOICE", "montefalda, CONGREGATION"
    })
    void a_margin_is_that_of_the_whole_estimate(String id, Mode mode) throws Exception {
        OrganSound sound = OrganSound.open(new Library(Path.of("")).openInstrument(id));
        RandomOrgans random = new RandomOrgans(21);
        Verse verse = verse(sound.organ(), mode);
        for (int i = 0; i < 40; i++) {
            Registration drawn = random.registration(sound.organ());
            HandsAndFeet hands = hands(sound.organ(), mode, random);
            Margin margin = sound.estimate(verse.withRegistration(drawn).withHands(hands), PEOPLE, OptionalInt.empty())
                    .margin();

            double foundDb = sound.marginEvaluator(verse, PEOPLE).marginDb(drawn, hands);

            if (margin.db().isPresent()) {
                assertThat(foundDb).isCloseTo(margin.db().getAsDouble(), within(1e-12));
            } else {
                assertThat(Math.abs(foundDb)).isEqualTo(Margin.CLEAR_DB);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "little-corvening, CONGREGATION", "st-tethwin, CONGREGATION", "ambrelow, CONGREGATION",
                "harlan-falls, CONGREGATION",
        "st-tethwin, SMALL_CHOIR", "ambrelow, SOLO_VOICE", "st-tethwin, MELODY_SOLOED",
                "ostmere-cathedral, MELODY_SOLOED"
    })
    void whatever_is_drawn_between_the_least_and_the_most_has_a_margin_within_the_bounds(String id, Mode mode)
            throws Exception {
        OrganSound sound = OrganSound.open(new Library(Path.of("")).openInstrument(id));
        Instrument organ = sound.organ();
        RandomOrgans random = new RandomOrgans(22);
        MarginEvaluator evaluator = sound.marginEvaluator(verse(organ, mode), PEOPLE);
        for (int i = 0; i < 60; i++) {
            Registration drawn = random.registration(organ);
            HandsAndFeet hands = hands(organ, mode, random);
            IndexSet fewer = drawn.stops().minus(random.registration(organ).stops());
            IndexSet more = drawn.stops().plus(random.registration(organ).stops());
            Registration least = boxed(organ, drawn, BoxPosition.CLOSED).withStops(fewer);
            Registration most = boxed(organ, drawn, BoxPosition.OPEN).withStops(more);

            MarginEvaluator.Bounds bounds = evaluator.boundsDb(least, most, hands);

            assertThat(evaluator.marginDb(drawn, hands)).isBetween(bounds.lowDb() - HAIR_DB, bounds.highDb() + HAIR_DB);
        }
    }

    @ParameterizedTest
    @CsvSource({"CONGREGATION", "SMALL_CHOIR", "MELODY_SOLOED"})
    void where_nothing_is_open_the_bounds_are_the_margin(Mode mode) throws Exception {
        OrganSound sound = OrganSound.open(new Library(Path.of("")).openInstrument("st-tethwin"));
        RandomOrgans random = new RandomOrgans(23);
        MarginEvaluator evaluator = sound.marginEvaluator(verse(sound.organ(), mode), PEOPLE);
        Registration drawn = random.registration(sound.organ());
        HandsAndFeet hands = hands(sound.organ(), mode, random);

        MarginEvaluator.Bounds bounds = evaluator.boundsDb(drawn, drawn, hands);

        assertThat(List.of(bounds.lowDb(), bounds.highDb()))
                .allSatisfy(db -> assertThat(db).isCloseTo(evaluator.marginDb(drawn, hands), within(HAIR_DB)));
    }

    private static Verse verse(Instrument organ, Mode mode) {
        return Verses.blank(organ, VerseKind.VERSE).withMode(mode).withPeople(OptionalInt.of(PEOPLE));
    }

    private static HandsAndFeet hands(Instrument organ, Mode mode, RandomOrgans random) {
        List<Integer> manuals = organ.manualDivisions();
        return mode == Mode.MELODY_SOLOED
                ? new HandsAndFeet(Layout.MELODY_SOLOED, manuals.get(1), manuals.get(0))
                : random.hands(organ);
    }

    private static Registration boxed(Instrument organ, Registration drawn, BoxPosition position) {
        Registration boxed = drawn;
        for (int division = 0; division < organ.divisions().size(); division++) {
            boxed = organ.divisions().get(division).isEnclosed() ? boxed.withBox(division, position) : boxed;
        }
        return boxed;
    }
}
