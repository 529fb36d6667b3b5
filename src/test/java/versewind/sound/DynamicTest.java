package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Shipped;
import versewind.agreement.RandomInstruments;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;
import versewind.plan.Singing;

class DynamicTest {

    @ParameterizedTest
    @CsvSource({"0.1, pp", "0.4, p", "0.82, p", "0.83, mp", "1, mf", "1.1, f", "1.27, ff", "1.52, fff", "3, fff"})
    void a_word_begins_at_its_loudness_over_that_of_the_principals(double overPrincipals, String word) {
        assertThat(Dynamic.of(overPrincipals, 1.4).word()).isEqualTo(word);
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "P, Great: Stopped Flute 8 + Great: Open Flute 4",
        "MF, Great: Open Diapason 8 + Great: Principal 4",
        "F, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2",
        "FF, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2 + Great: Mixture III"
                + " + Swell: Open Diapason 8 + Swell: Principal 4 + Swell: Fifteenth 2 + Swell to Great",
        "FFF, Great: Open Diapason 8 + Great: Principal 4 + Great: Fifteenth 2 + Great: Mixture III + Great: Trumpet 8"
                + " + Swell: Open Diapason 8 + Swell: Principal 4 + Swell: Fifteenth 2 + Swell: Cornopean 8"
                + " + Swell to Great"
    })
    void the_words_follow_the_order_of_building_up(Dynamic dynamic, String drawn) throws Exception {
        Instrument organ = Shipped.instrument("st-tethwin");
        HandsAndFeet hands = HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, 0);
        String eight = dynamic == Dynamic.P ? "Pedal: Bass Flute 8" : "Pedal: Principal 8";
        String[] knobs = TrialOrgan.and(drawn.split(" \\+ "), "Pedal: Bourdon 16", eight, "Great to Pedal");
        assertThat(OrganSound.open(organ)
                        .estimate(
                                TrialOrgan.verse(
                                        Mode.CONGREGATION, Singing.ORDINARY, hands, TrialOrgan.draw(organ, knobs)),
                                150,
                                OptionalInt.empty())
                        .dynamic())
                .contains(dynamic);
    }

    /**
     * On every shipped organ and on organs drawn at random, where the main division has what is asked for. Common
     * practice, no source.
     */
    @ParameterizedTest
    @MethodSource
    void on_organs_of_every_size_the_words_follow_the_order_of_building_up(Instrument organ) throws Exception {
        follow(new Ladder(organ, HandsAndFeet.Layout.MANUALS_ONLY));
        follow(new Ladder(organ, HandsAndFeet.Layout.FOUR_PARTS));
    }

    private static void follow(Ladder ladder) {
        if (ladder.has(Family.PRINCIPAL, 8, 4)) {
            assertThat(ladder.dynamic(ladder.principals(8, 4))).isEqualTo(Dynamic.MF);
            if (ladder.has(Family.FLUTE, 8)) {
                assertThat(ladder.dynamic(ladder.some(Family.FLUTE, 8, 4))).isEqualTo(Dynamic.P);
            }
            if (ladder.has(Family.PRINCIPAL, 2)) {
                IndexSet chorus = ladder.principals(8, 4, 2);
                assertThat(ladder.dynamic(chorus)).isEqualTo(Dynamic.F);
                chorus = chorus.plus(ladder.all(Family.MIXTURE));
                if (ladder.hasAny(Family.MIXTURE)) {
                    assertThat(ladder.dynamic(chorus)).isEqualTo(Dynamic.FF);
                }
                if (ladder.hasAny(Family.CHORUS_REED)) {
                    assertThat(ladder.dynamic(chorus.plus(ladder.all(Family.CHORUS_REED))))
                            .isEqualTo(Dynamic.FFF);
                }
            }
        }
        assertThat(ladder.ofChoruses()).isLessThan(Dynamic.FFF);
        assertThat(ladder.dynamic(ladder.everything())).isGreaterThanOrEqualTo(Dynamic.MF);
    }

    static Stream<Instrument> on_organs_of_every_size_the_words_follow_the_order_of_building_up() {
        return Stream.concat(
                RandomInstruments.all().stream(), Shipped.ORGANS.stream().map(Shipped::instrument));
    }

    /** What can be drawn on the main division of an organ, in the hands alone or with the pedal coupled to it. */
    private static final class Ladder {
        private final Instrument organ;
        private final OrganSound sound;
        private final HandsAndFeet.Layout layout;
        private final IndexSet feet;
        private final IndexSet coupled;

        Ladder(Instrument organ, HandsAndFeet.Layout layout) {
            this.organ = organ;
            this.layout = layout;
            sound = OrganSound.open(organ);
            boolean hasFeet = layout.usesPedal() && organ.pedalDivision().isPresent();
            feet = hasFeet ? first(organ.pedalDivision().getAsInt(), Family.FLUTE, 16, 8) : IndexSet.EMPTY;
            coupled = IndexSet.of(IntStream.range(0, organ.couplers().size())
                    .filter(coupler -> hasFeet && isMainToPedal(organ.couplers().get(coupler))));
        }

        private boolean isMainToPedal(Coupler coupler) {
            return coupler.kind() == Coupler.Kind.UNISON
                    && organ.division(coupler.source()).getAsInt() == organ.mainDivision()
                    && organ.division(coupler.keyboard()).equals(organ.pedalDivision());
        }

        private IntStream stops(int division, Family family) {
            return IntStream.range(0, organ.stops().size())
                    .filter(stop -> organ.stops().get(stop).division() == division)
                    .filter(stop -> organ.stops().get(stop).stop().family() == family);
        }

        private IndexSet first(int division, Family family, int... feet) {
            return IndexSet.of(IntStream.of(feet).flatMap(pitch -> stops(division, family)
                    .filter(stop -> organ.stops().get(stop).stop().footage().equals(Optional.of(Footage.of(pitch))))
                    .limit(1)));
        }

        IndexSet some(Family family, int... feet) {
            return first(organ.mainDivision(), family, feet);
        }

        IndexSet principals(int... feet) {
            return some(Family.PRINCIPAL, feet);
        }

        boolean has(Family family, int... feet) {
            return some(family, feet).stream().count() == feet.length;
        }

        IndexSet all(Family family) {
            return IndexSet.of(stops(organ.mainDivision(), family));
        }

        boolean hasAny(Family family) {
            return !all(family).isEmpty();
        }

        IndexSet everything() {
            return Stream.of(Family.values()).map(this::all).reduce(IndexSet.EMPTY, IndexSet::plus);
        }

        /** Of the principals and mixtures of all divisions, with all unison couplers. */
        Dynamic ofChoruses() {
            IndexSet unisons = IndexSet.of(IntStream.range(0, organ.couplers().size())
                    .filter(coupler -> organ.couplers().get(coupler).kind() == Coupler.Kind.UNISON));
            IndexSet flues = IndexSet.of(IntStream.range(0, organ.divisions().size())
                    .flatMap(division ->
                            IntStream.concat(stops(division, Family.PRINCIPAL), stops(division, Family.MIXTURE))));
            return dynamic(flues, unisons);
        }

        Dynamic dynamic(IndexSet drawn) {
            return dynamic(drawn.plus(feet), coupled);
        }

        private Dynamic dynamic(IndexSet drawn, IndexSet couplers) {
            Registration registration =
                    Registration.silent(organ).withStops(drawn).withCouplers(couplers);
            return sound.estimate(
                            TrialOrgan.verse(
                                    Mode.CONGREGATION,
                                    Singing.ORDINARY,
                                    HandsAndFeet.on(layout, organ.mainDivision()),
                                    registration),
                            100,
                            OptionalInt.empty())
                    .dynamic()
                    .orElseThrow();
        }
    }
}
