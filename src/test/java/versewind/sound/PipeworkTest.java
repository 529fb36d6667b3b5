package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Action;
import versewind.organ.BoxPosition;
import versewind.organ.Coupler;
import versewind.organ.Coupler.Kind;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.SwellBox;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;

/** One rank of 8 ft in a box that is also drawn at 16, 4 and 2 2/3 ft and from the pedal. */
class PipeworkTest {

    private static final HandsAndFeet ON_THE_MANUAL = HandsAndFeet.on(Layout.FOUR_PARTS, 0);

    private static Stop flute(String name, String footage, Optional<StopName> lender, double trimDb) {
        return new Stop(
                name,
                Footage.parse(footage),
                Family.FLUTE,
                Pipe.OPEN,
                1,
                List.of(),
                trimDb,
                Stop.Enclosure.AS_ITS_DIVISION,
                lender,
                "");
    }

    private static Instrument unit(int keys, double trimDb) {
        Optional<StopName> rank = Optional.of(new StopName("Manual", "Flute 8"));
        return new Instrument(
                "Unit organ",
                "St Anne, Millbrook",
                Action.ELECTRIC,
                0,
                List.of(
                        new Division(
                                "Manual",
                                OptionalInt.of(1),
                                keys,
                                Optional.of(new SwellBox(0)),
                                List.of(
                                        flute("Flute", "8", Optional.empty(), trimDb),
                                        flute("Bourdon", "16", rank, 0),
                                        flute("Octave Flute", "4", rank, 0),
                                        flute("Nazard", "2 2/3", rank, 0),
                                        flute("Flute transmitted", "8", rank, 0),
                                        flute("Own Flute", "4", Optional.empty(), 0))),
                        new Division(
                                "Pedal",
                                OptionalInt.empty(),
                                30,
                                Optional.empty(),
                                List.of(flute("Bass Flute", "8", rank, 0)))),
                List.of(
                        new Coupler("Octave", "Manual", "Manual", Kind.OCTAVE),
                        new Coupler("Sub-octave", "Manual", "Manual", Kind.SUB_OCTAVE),
                        new Coupler("Manual to Pedal", "Manual", "Pedal", Kind.UNISON),
                        new Coupler("Unison Off", "Manual", "Manual", Kind.UNISON_OFF)),
                List.of(),
                Pistons.NONE,
                TrialOrgan.ROOM);
    }

    private static double[] power(String... drawn) {
        return power(unit(61, 0), ON_THE_MANUAL, drawn);
    }

    private static double[] power(Instrument organ, HandsAndFeet hands, String... drawn) {
        OrganPower power = new OrganPower(organ);
        power.compute(TrialOrgan.draw(organ, drawn), hands);
        return power.all().clone();
    }

    private static double sum(double[] power) {
        double sum = 0;
        for (double band : power) {
            sum += band;
        }
        return sum;
    }

    private static void assertAlike(double[] one, double[] other) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            assertThat(one[band]).isCloseTo(other[band], within(1e-9 * other[band] + 1e-30));
        }
    }

    @Test
    void a_transmission_of_a_speaking_rank_adds_nothing() {
        assertThat(power("Manual: Flute 8", "Manual: Flute transmitted 8")).containsExactly(power("Manual: Flute 8"));
    }

    @Test
    void a_pedal_stop_borrowed_from_the_manual_adds_nothing_to_the_manual_coupled_down() {
        String[] coupled = {"Manual: Flute 8", "Manual to Pedal"};
        assertThat(power(TrialOrgan.and(coupled, "Pedal: Bass Flute 8"))).containsExactly(power(coupled));
    }

    @Test
    void an_extension_is_the_rank_an_octave_higher_so_that_its_octave_coupler_adds_nothing() {
        assertAlike(power("Manual: Flute 8", "Manual: Octave Flute 4"), power("Manual: Flute 8", "Octave"));
        assertThat(sum(power("Manual: Flute 8", "Manual: Own Flute 4", "Octave")))
                .isGreaterThan(sum(power("Manual: Flute 8", "Octave")) * 1.2);
    }

    @Test
    void a_nazard_from_an_8_ft_rank_plays_its_tempered_nineteenth_key() {
        double[] nazard = power("Manual: Nazard 2 2/3");
        double shareDb = ThirdOctaves.powerToDb(sum(nazard) / sum(power("Manual: Flute 8")));
        assertThat(shareDb).isCloseTo(-2.7 * 19 / 12, within(0.6));
    }

    @Test
    void an_extension_has_its_own_pipes_where_a_coupler_finds_no_keys() {
        HandsAndFeet bassInHand = HandsAndFeet.on(Layout.MANUALS_ONLY, 0);
        double[] sixteen = power(unit(61, 0), bassInHand, "Manual: Bourdon 16");
        double[] coupled = power(unit(61, 0), bassInHand, "Manual: Flute 8", "Sub-octave", "Unison Off");
        int lowest = ThirdOctaves.bandOf(40).orElseThrow();
        assertThat(sixteen[lowest]).isGreaterThan(coupled[lowest] * 100);
        int tenor = ThirdOctaves.bandOf(160).orElseThrow();
        assertThat(coupled[tenor]).isCloseTo(sixteen[tenor], within(sixteen[tenor] * 0.01));
    }

    @Test
    void the_sub_octave_adds_to_a_16_ft_extension_only_what_the_extension_does_not_speak() {
        double[] both = power("Manual: Flute 8", "Manual: Bourdon 16", "Unison Off", "Sub-octave");
        double[] apart = power("Manual: Flute 8", "Unison Off", "Sub-octave");
        double[] sixteen = power("Manual: Bourdon 16", "Unison Off", "Sub-octave");
        assertThat(sum(both)).isLessThan((sum(apart) + sum(sixteen)) * (1 + 1e-12));
        assertAlike(power("Manual: Flute 8", "Manual: Bourdon 16", "Sub-octave"), union());
    }

    /** What the two stops of the rank speak at 8, 16 and 32 ft, each once. */
    private static double[] union() {
        double[] sixteenAndLower = power("Manual: Bourdon 16", "Sub-octave");
        double[] eight = power("Manual: Flute 8");
        double[] union = new double[ThirdOctaves.COUNT];
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            union[band] = sixteenAndLower[band] + eight[band];
        }
        return union;
    }

    @Test
    void an_octave_coupler_is_silent_above_the_top_of_a_short_keyboard() {
        HandsAndFeet hands = HandsAndFeet.on(Layout.MANUALS_ONLY, 0);
        double longKeys = sum(power(unit(61, 0), hands, "Manual: Flute 8", "Octave", "Unison Off"));
        double shortKeys = sum(power(unit(42, 0), hands, "Manual: Flute 8", "Octave", "Unison Off"));
        assertThat(shortKeys).isPositive().isLessThan(longKeys * 0.8);
    }

    @Test
    void the_pipes_of_a_borrowed_stop_stand_and_sound_where_its_lender_does() {
        Instrument organ = unit(61, 6);
        Registration open = TrialOrgan.draw(organ, "Pedal: Bass Flute 8");
        OrganPower power = new OrganPower(organ);
        power.compute(open, ON_THE_MANUAL);
        double opened = sum(power.all());
        power.compute(open.withBox(0, BoxPosition.CLOSED), ON_THE_MANUAL);
        assertThat(ThirdOctaves.powerToDb(opened / sum(power.all()))).isGreaterThan(5);
        double untrimmed = sum(power(unit(61, 0), ON_THE_MANUAL, "Pedal: Bass Flute 8"));
        assertThat(ThirdOctaves.powerToDb(opened / untrimmed)).isCloseTo(6, within(1e-9));
    }

    @Test
    void a_stop_outside_the_box_of_its_division_is_not_softened() {
        Stop free = new Stop(
                "Flute",
                Footage.parse("8"),
                Family.FLUTE,
                Pipe.OPEN,
                1,
                List.of(),
                0,
                Stop.Enclosure.OUTSIDE_THE_BOX,
                Optional.empty(),
                "");
        Division division = new Division("Manual", OptionalInt.of(1), 61, Optional.of(new SwellBox(0)), List.of(free));
        Instrument organ = new Instrument(
                "Chapel organ",
                "The Hospital",
                Action.MECHANICAL,
                0,
                List.of(division),
                List.of(),
                List.of(),
                Pistons.NONE,
                TrialOrgan.ROOM);
        OrganPower power = new OrganPower(organ);
        Registration drawn = TrialOrgan.draw(organ, "Manual: Flute 8");
        power.compute(drawn, ON_THE_MANUAL);
        double[] open = power.all().clone();
        power.compute(drawn.withBox(0, BoxPosition.CLOSED), ON_THE_MANUAL);
        assertThat(power.all()).containsExactly(open);
    }

    @Test
    void the_melody_and_the_rest_are_kept_apart_and_make_up_the_whole() {
        OrganPower power = new OrganPower(unit(61, 0));
        power.compute(TrialOrgan.draw(unit(61, 0), "Manual: Flute 8"), ON_THE_MANUAL);
        assertThat(sum(power.melody()) + sum(power.rest())).isCloseTo(sum(power.all()), within(1.0));
        assertThat(sum(power.rest())).isGreaterThan(sum(power.melody()));
        assertThat(power.isSilent()).isFalse();
        power.compute(TrialOrgan.draw(unit(61, 0), "Pedal: Bass Flute 8"), ON_THE_MANUAL);
        assertThat(power.isMelodySilent()).isTrue();
        assertThat(power.isSilent()).isFalse();
    }
}
