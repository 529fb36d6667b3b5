package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static versewind.sound.TrialOrgan.GREAT;
import static versewind.sound.TrialOrgan.SWELL;
import static versewind.sound.TrialOrgan.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.acoustics.StationaryLoudness;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Action;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

class OrganSoundTest {

    private static final HandsAndFeet ON_THE_GREAT = HandsAndFeet.on(Layout.FOUR_PARTS, GREAT);

    private final OrganSound sound = OrganSound.open(TrialOrgan.instrument(Action.MECHANICAL));
    private final Instrument organ = sound.organ();

    private Estimate estimate(Verse verse) {
        return sound.estimate(verse, 100, OptionalInt.empty());
    }

    private Verse verse(Mode mode, String... drawn) {
        return TrialOrgan.verse(mode, Singing.ORDINARY, ON_THE_GREAT, draw(organ, drawn));
    }

    private double[] heard(HandsAndFeet hands, Registration drawn) {
        return estimate(TrialOrgan.verse(Mode.CONGREGATION, Singing.ORDINARY, hands, drawn))
                .bands()
                .power();
    }

    private static void assertNoBandIsLower(double[] than, double[] power) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            assertThat(power[band]).isGreaterThanOrEqualTo(than[band] * (1 - 1e-12));
        }
    }

    /** Some stops, couplers and boxes, from nothing to nearly all, hands together and apart. */
    private List<Registration> registrations() {
        List<Registration> some = new ArrayList<>();
        for (int stride = 1; stride <= 9; stride++) {
            Registration drawn = Registration.silent(organ).withBox(SWELL, BoxPosition.values()[stride % 5]);
            for (int stop = stride % 4; stop < organ.stops().size(); stop += stride) {
                drawn = drawn.toggleStop(stop);
            }
            for (int coupler = 0; coupler < organ.couplers().size(); coupler++) {
                drawn = (stride >> coupler % 3 & 1) == 1 ? drawn.toggleCoupler(coupler) : drawn;
            }
            some.add(drawn);
        }
        return some;
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void adding_a_stop_never_lowers_any_band(Layout layout) {
        HandsAndFeet hands = new HandsAndFeet(layout, GREAT, SWELL);
        for (Registration drawn : registrations()) {
            double[] before = heard(hands, drawn);
            for (int stop = 0; stop < organ.stops().size(); stop++) {
                assertNoBandIsLower(
                        before, heard(hands, drawn.withStops(drawn.stops().with(stop))));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Layout.class)
    void adding_a_coupler_never_lowers_any_band(Layout layout) {
        HandsAndFeet hands = new HandsAndFeet(layout, SWELL, GREAT);
        for (Registration drawn : registrations()) {
            double[] before = heard(hands, drawn);
            for (int coupler = 0; coupler < organ.couplers().size(); coupler++) {
                assertNoBandIsLower(
                        before, heard(hands, drawn.withCouplers(drawn.couplers().with(coupler))));
            }
        }
    }

    @Test
    void a_wider_box_never_lowers_any_band() {
        for (Registration drawn : registrations()) {
            BoxPosition position = drawn.boxes().get(SWELL);
            assertNoBandIsLower(
                    heard(ON_THE_GREAT, drawn), heard(ON_THE_GREAT, drawn.withBox(SWELL, position.wider())));
        }
    }

    @Test
    void coupling_what_is_already_played_changes_nothing() {
        HandsAndFeet hands = HandsAndFeet.on(Layout.MANUALS_ONLY, SWELL);
        double[] alone = heard(hands, draw(organ, "Swell: Open Diapason 8"));
        double[] coupled = heard(hands, draw(organ, "Swell: Open Diapason 8", "Swell to Great"));
        assertThat(coupled).containsExactly(alone);
    }

    @Test
    void an_estimate_does_not_depend_on_what_was_estimated_before() {
        Verse verse = verse(Mode.CONGREGATION, "Great: Open Diapason 8", "Great to Pedal");
        Estimate first = estimate(verse);
        sound.estimate(verse(Mode.MELODY_SOLOED, "Swell: Oboe 8", "Swell to Great"), 700, OptionalInt.of(90));
        sound.estimate(verse(Mode.SOLO_VOICE), 3, OptionalInt.of(90));
        assertThat(sound.compute(verse, 100, OptionalInt.empty())).isEqualTo(first);
    }

    /** Verses of which each differs from one in a single thing, and those that differ in what is not heard. */
    private static Stream<Verse> variants(Verse verse) {
        return Stream.of(
                        Stream.of(VerseKind.values()).map(verse::withKind),
                        Stream.of(SungBy.values()).map(verse::withSungBy),
                        Stream.of(Singing.values()).map(verse::withSinging),
                        Stream.of(Layout.values())
                                .flatMap(layout -> Stream.of(
                                        new HandsAndFeet(layout, GREAT, SWELL), new HandsAndFeet(layout, SWELL, GREAT)))
                                .map(verse::withHands),
                        IntStream.range(0, 4)
                                .mapToObj(index -> verse.registration().toggleCoupler(index))
                                .map(verse::withRegistration),
                        Stream.of(BoxPosition.values())
                                .map(box -> verse.registration().withBox(SWELL, box))
                                .map(verse::withRegistration),
                        Stream.of(
                                verse.withPeople(OptionalInt.of(70)),
                                verse.withShare(OptionalInt.of(3)),
                                verse.withRegistration(verse.registration().toggleStop(3)),
                                verse.withNote("Wait for the children.")))
                .flatMap(each -> each);
    }

    @Test
    void an_estimate_that_is_kept_is_only_given_for_what_sounds_the_same() {
        Verse verse = verse(Mode.CONGREGATION, "Great: Open Diapason 8", "Swell: Oboe 8", "Great to Pedal");
        for (int people : new int[] {100, 101}) {
            for (OptionalInt tempo : List.of(OptionalInt.empty(), OptionalInt.of(90))) {
                assertThat(variants(verse)).allSatisfy(each -> assertThat(sound.estimate(each, people, tempo))
                        .isEqualTo(OrganSound.open(organ).compute(each, people, tempo)));
            }
        }
        Estimate first = estimate(verse);
        assertThat(estimate(verse.withNote("Wait for the children."))).isSameAs(first);
    }

    @ParameterizedTest
    @CsvSource({"CONGREGATION, LOST", "SMALL_CHOIR, CLEAR", "SOLO_VOICE, CLEAR", "MELODY_SOLOED, BURIED"})
    void nothing_drawn_is_silence_and_no_doubt(Mode mode, Verdict verdict) {
        Estimate silence = estimate(verse(mode));
        assertThat(silence.isSilent()).isTrue();
        assertThat(silence.organDba()).isEmpty();
        assertThat(silence.organAmongSingersDba()).isEmpty();
        assertThat(silence.sone()).isZero();
        assertThat(silence.phon()).isEmpty();
        assertThat(silence.dynamic()).isEmpty();
        assertThat(silence.bands().levelDb(16)).isEmpty();
        assertThat(silence.balance().odds().isEmpty()).isTrue();
        assertThat(silence.balance().verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @EnumSource(
            value = VerseKind.class,
            names = {"INTRODUCTION", "INTERLUDE"})
    void where_nobody_sings_the_organ_is_alone(VerseKind kind) {
        for (Mode mode : new Mode[] {Mode.CONGREGATION, Mode.SMALL_CHOIR, Mode.SOLO_VOICE}) {
            Estimate estimate = estimate(verse(mode, "Great: Open Diapason 8").withKind(kind));
            assertThat(estimate.balance().verdict()).isEqualTo(Verdict.ORGAN_ALONE);
            assertThat(estimate.balance().kind()).isEqualTo(Balance.Kind.ORGAN_ALONE);
            assertThat(estimate.balance().share()).isEmpty();
            assertThat(estimate.singers()).isZero();
            assertThat(estimate.singersDba()).isEmpty();
            assertThat(estimate.organDba()).isPresent();
        }
    }

    @Test
    void a_melody_soloed_in_an_introduction_is_judged_all_the_same() {
        Estimate estimate =
                estimate(verse(Mode.MELODY_SOLOED, "Great: Open Diapason 8").withKind(VerseKind.INTRODUCTION));
        assertThat(estimate.balance().kind()).isEqualTo(Balance.Kind.SOLO_LINE);
        assertThat(estimate.balance().share()).isPresent();
    }

    @Test
    void the_number_of_singers_follows_from_the_mode() {
        assertThat(estimate(verse(Mode.CONGREGATION)).singers()).isEqualTo(80);
        assertThat(estimate(verse(Mode.CONGREGATION).withPeople(OptionalInt.of(300)))
                        .singers())
                .isEqualTo(240);
        assertThat(estimate(verse(Mode.SMALL_CHOIR)).singers()).isEqualTo(16);
        assertThat(estimate(verse(Mode.SMALL_CHOIR).withPeople(OptionalInt.of(8)))
                        .singers())
                .isEqualTo(8);
        assertThat(estimate(verse(Mode.SOLO_VOICE).withPeople(OptionalInt.of(8)))
                        .singers())
                .isEqualTo(1);
        assertThat(estimate(verse(Mode.MELODY_SOLOED)).singers()).isZero();
    }

    @Test
    void twice_the_voices_of_a_choir_are_3_dB_louder_but_for_what_they_absorb() {
        double eight = estimate(verse(Mode.SMALL_CHOIR).withPeople(OptionalInt.of(8)))
                .singersDba()
                .orElseThrow();
        double sixteen = estimate(verse(Mode.SMALL_CHOIR).withPeople(OptionalInt.of(16)))
                .singersDba()
                .orElseThrow();
        assertThat(sixteen - eight).isBetween(2.9, 3.0103);
    }

    @Test
    void more_people_drown_the_same_organ() {
        double before = Double.POSITIVE_INFINITY;
        for (int people : new int[] {20, 60, 200, 600}) {
            Estimate estimate = sound.estimate(
                    verse(Mode.CONGREGATION, "Great: Open Diapason 8", "Great: Principal 4"),
                    people,
                    OptionalInt.empty());
            assertThat(estimate.balance().share().orElseThrow()).isLessThan(before);
            before = estimate.balance().share().orElseThrow();
        }
    }

    @Test
    void the_lag_is_told_in_milliseconds_and_in_beats() {
        Estimate estimate = sound.estimate(verse(Mode.CONGREGATION), 100, OptionalInt.of(120));
        assertThat(estimate.lagMs()).isCloseTo(35 / 0.343, within(1e-9));
        assertThat(estimate.lagBeats().orElseThrow()).isCloseTo(35 / 343.0 * 2, within(1e-9));
        assertThat(estimate(verse(Mode.CONGREGATION)).lagBeats()).isEmpty();
        assertThat(estimate(verse(Mode.SOLO_VOICE)).lagMs()).isCloseTo(12 / 0.343, within(1e-9));
    }

    @Test
    void the_singers_at_the_choir_hear_the_organ_where_they_stand() {
        Estimate choir = estimate(verse(Mode.SMALL_CHOIR, "Great: Open Diapason 8"));
        Estimate people = estimate(verse(Mode.CONGREGATION, "Great: Open Diapason 8"));
        assertThat(choir.organAmongSingersDba().orElseThrow())
                .isGreaterThan(choir.organDba().orElseThrow() + 0.3);
        assertThat(people.organAmongSingersDba()).isEqualTo(people.organDba());
    }

    @Test
    void full_organ_is_fff_and_the_softest_stop_in_its_closed_box_is_pp() {
        Verse full = TrialOrgan.verse(Mode.CONGREGATION, Singing.ORDINARY, ON_THE_GREAT, Registration.full(organ));
        assertThat(estimate(full).dynamic()).contains(Dynamic.FFF);
        Verse softest = TrialOrgan.verse(
                Mode.CONGREGATION,
                Singing.ORDINARY,
                HandsAndFeet.on(Layout.MANUALS_ONLY, SWELL),
                draw(organ, "Swell: Lieblich Gedackt 8", "Swell closed"));
        assertThat(estimate(softest).dynamic()).contains(Dynamic.PP);
        assertThat(sound.estimate(softest, 900, OptionalInt.empty()).dynamic()).contains(Dynamic.PP);
    }

    @Test
    void the_whole_instruments_trim_moves_its_level_by_as_much() {
        Instrument louder = new Instrument(
                organ.name(),
                organ.place(),
                organ.action(),
                5,
                organ.divisions(),
                organ.couplers(),
                List.of(),
                organ.pistons(),
                organ.room());
        Verse verse = verse(Mode.CONGREGATION, "Great: Open Diapason 8", "Swell: Oboe 8", "Swell to Great");
        double trimmed = OrganSound.open(louder)
                .estimate(verse, 100, OptionalInt.empty())
                .organDba()
                .orElseThrow();
        assertThat(trimmed - estimate(verse).organDba().orElseThrow()).isCloseTo(5, within(1e-9));
    }

    /** The loudness method ends at 120 dB; an organ with every trim at its end must still be shown. */
    @Test
    void an_organ_beyond_the_loudness_method_is_still_estimated() {
        Instrument deafening = new Instrument(
                organ.name(),
                organ.place(),
                organ.action(),
                20,
                organ.divisions().stream().map(OrganSoundTest::loudest).toList(),
                organ.couplers(),
                List.of(),
                organ.pistons(),
                TrialOrgan.room(20, 0.5));
        Verse full = TrialOrgan.verse(Mode.CONGREGATION, Singing.ORDINARY, ON_THE_GREAT, Registration.full(organ));
        Estimate estimate = OrganSound.open(deafening).estimate(full, 100, OptionalInt.empty());
        assertThat(StationaryLoudness.isWithinRange(estimate.bands().power())).isFalse();
        assertThat(estimate.sone()).isFinite().isGreaterThan(200);
        assertThat(estimate.dynamic()).isEqualTo(Optional.of(Dynamic.FFF));
    }

    private static Division loudest(Division division) {
        List<Stop> stops = division.stops().stream()
                .map(stop -> new Stop(
                        stop.name(),
                        stop.footage(),
                        stop.family(),
                        stop.pipe(),
                        stop.ranks(),
                        stop.composition(),
                        20,
                        stop.enclosure(),
                        stop.borrowed(),
                        ""))
                .toList();
        return new Division(division.name(), division.manual(), division.keys(), division.box(), stops);
    }
}
