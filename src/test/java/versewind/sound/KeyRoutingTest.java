package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Coupler.Kind;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Pipe;
import versewind.organ.Pistons;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;

/** Rules of common practice. Parts are written S A T, b in the hand, B on the pedal; ' an octave up, , down. */
class KeyRoutingTest {

    private static final int GREAT = 0;
    private static final int SWELL = 1;
    private static final int CHOIR = 2;
    private static final int ECHO = 3;
    private static final int PEDAL = 4;

    private static final HandsAndFeet ON_THE_GREAT = HandsAndFeet.on(Layout.FOUR_PARTS, GREAT);
    private static final HandsAndFeet ON_THE_SWELL = HandsAndFeet.on(Layout.FOUR_PARTS, SWELL);

    private static final List<Coupler> COUPLERS = List.of(
            new Coupler("Swell to Great", "Swell", "Great", Kind.UNISON),
            new Coupler("Swell Octave to Great", "Swell", "Great", Kind.OCTAVE),
            new Coupler("Choir to Swell", "Choir", "Swell", Kind.UNISON),
            new Coupler("Choir Octave to Swell", "Choir", "Swell", Kind.OCTAVE),
            new Coupler("Great to Choir", "Great", "Choir", Kind.UNISON),
            new Coupler("Great to Pedal", "Great", "Pedal", Kind.UNISON),
            new Coupler("Swell Octave", "Swell", "Swell", Kind.OCTAVE),
            new Coupler("Swell Sub-octave", "Swell", "Swell", Kind.SUB_OCTAVE),
            new Coupler("Swell Unison Off", "Swell", "Swell", Kind.UNISON_OFF),
            new Coupler("Great Octave", "Great", "Great", Kind.OCTAVE),
            new Coupler("Echo Octave to Swell", "Echo", "Swell", Kind.OCTAVE));

    /** The Echo shares the Swell's keyboard. */
    private static Instrument organ(Action action) {
        return new Instrument(
                "Three manuals",
                "St Mary, Underhill",
                action,
                0,
                List.of(
                        division("Great", OptionalInt.of(2)),
                        division("Swell", OptionalInt.of(3)),
                        division("Choir", OptionalInt.of(1)),
                        division("Echo", OptionalInt.of(3)),
                        new Division("Pedal", OptionalInt.empty(), 30, Optional.empty(), List.of())),
                COUPLERS,
                List.of(),
                Pistons.NONE,
                TrialOrgan.ROOM);
    }

    private static Division division(String name, OptionalInt manual) {
        return new Division(
                name, manual, 61, Optional.empty(), List.of(Stop.of("Flute", "8", Family.FLUTE, Pipe.OPEN)));
    }

    private static String heard(int division, Action action, HandsAndFeet hands, String... couplers) {
        return heard(organ(action), division, hands, couplers);
    }

    private static String heard(Instrument organ, int division, HandsAndFeet hands, String... couplers) {
        IndexSet drawn = IndexSet.EMPTY;
        for (String coupler : couplers) {
            drawn = drawn.with(organ.coupler(coupler).orElseThrow());
        }
        int[] received = new int[organ.divisions().size()];
        received[0] = -1;
        new KeyRouting(organ).route(hands, drawn, received);
        return written(received[division]);
    }

    private static String written(int received) {
        List<String> parts = new ArrayList<>();
        for (VoicePart part : VoicePart.values()) {
            for (int octave = -1; octave <= 1; octave++) {
                if ((received & 1 << KeyRouting.bit(part, octave)) != 0) {
                    parts.add("SATbB".charAt(part.ordinal())
                            + List.of(",", "", "'").get(octave + 1));
                }
            }
        }
        return String.join(" ", parts);
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void in_four_parts_the_hands_play_three_and_the_feet_the_bass(Action action) {
        HandsAndFeet apart = new HandsAndFeet(Layout.FOUR_PARTS, GREAT, CHOIR);
        assertThat(heard(GREAT, action, apart)).isEqualTo("S A");
        assertThat(heard(CHOIR, action, apart)).isEqualTo("T");
        assertThat(heard(PEDAL, action, apart)).isEqualTo("B");
        assertThat(heard(SWELL, action, apart)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void coupled_down_is_played_as_four_parts_are(Action action) {
        HandsAndFeet hands = HandsAndFeet.on(Layout.PEDAL_BY_COUPLER, GREAT);
        assertThat(heard(PEDAL, action, hands, "Great to Pedal")).isEqualTo("B");
        assertThat(heard(GREAT, action, hands, "Great to Pedal")).isEqualTo("S A T B");
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void with_manuals_only_the_left_hand_plays_tenor_and_bass(Action action) {
        HandsAndFeet apart = new HandsAndFeet(Layout.MANUALS_ONLY, GREAT, CHOIR);
        assertThat(heard(GREAT, action, apart, "Great to Pedal")).isEqualTo("S A");
        assertThat(heard(CHOIR, action, apart)).isEqualTo("T b");
        assertThat(heard(PEDAL, action, apart)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void a_soloed_melody_is_alone_in_the_right_hand(Action action) {
        HandsAndFeet apart = new HandsAndFeet(Layout.MELODY_SOLOED, CHOIR, GREAT);
        assertThat(heard(CHOIR, action, apart)).isEqualTo("S");
        assertThat(heard(GREAT, action, apart)).isEqualTo("A T");
        assertThat(heard(PEDAL, action, apart)).isEqualTo("B");
    }

    @Test
    void without_a_pedal_the_left_hand_plays_the_bass() {
        Instrument chamber = new Instrument(
                "Chamber organ",
                "The Old School",
                Action.MECHANICAL,
                0,
                List.of(division("Manual", OptionalInt.of(1))),
                List.of(),
                List.of(),
                Pistons.NONE,
                TrialOrgan.ROOM);
        for (Layout layout : Layout.values()) {
            assertThat(heard(chamber, 0, HandsAndFeet.on(layout, 0))).isEqualTo("S A T b");
        }
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void divisions_that_share_a_manual_sound_together(Action action) {
        assertThat(heard(ECHO, action, ON_THE_SWELL)).isEqualTo("S A T");
        assertThat(heard(SWELL, action, HandsAndFeet.on(Layout.FOUR_PARTS, ECHO)))
                .isEqualTo("S A T");
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void a_coupler_plays_only_from_its_own_keyboard(Action action) {
        assertThat(heard(SWELL, action, ON_THE_GREAT, "Swell to Great")).isEqualTo("S A T");
        assertThat(heard(GREAT, action, ON_THE_SWELL, "Swell to Great")).isEmpty();
    }

    @Test
    void a_mechanical_coupler_moves_the_whole_keyboard_and_an_electric_one_reads_for_one_division() {
        assertThat(heard(ECHO, Action.MECHANICAL, ON_THE_GREAT, "Swell to Great"))
                .isEqualTo("S A T");
        assertThat(heard(ECHO, Action.ELECTRIC, ON_THE_GREAT, "Swell to Great")).isEmpty();
    }

    @Test
    void only_a_mechanical_coupler_carries_the_next_along() {
        String[] chain = {"Great to Pedal", "Swell to Great", "Choir to Swell"};
        assertThat(heard(CHOIR, Action.MECHANICAL, ON_THE_GREAT, chain)).isEqualTo("S A T B");
        assertThat(heard(SWELL, Action.MECHANICAL, ON_THE_GREAT, chain)).isEqualTo("S A T B");
        assertThat(heard(CHOIR, Action.ELECTRIC, ON_THE_GREAT, chain)).isEmpty();
        assertThat(heard(SWELL, Action.ELECTRIC, ON_THE_GREAT, chain)).isEqualTo("S A T");
    }

    @Test
    void only_a_mechanical_coupler_carries_a_divisions_own_octaves_along() {
        String[] drawn = {"Swell to Great", "Swell Octave", "Swell Sub-octave"};
        assertThat(heard(SWELL, Action.MECHANICAL, ON_THE_GREAT, drawn)).isEqualTo("S, S S' A, A A' T, T T'");
        assertThat(heard(SWELL, Action.ELECTRIC, ON_THE_GREAT, drawn)).isEqualTo("S A T");
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void a_divisions_own_octaves_sound_from_its_own_keys(Action action) {
        String[] drawn = {"Swell Octave", "Swell Sub-octave"};
        assertThat(heard(SWELL, action, ON_THE_SWELL, drawn)).isEqualTo("S, S S' A, A A' T, T T'");
        assertThat(heard(ECHO, action, ON_THE_SWELL, drawn)).isEqualTo("S A T");
    }

    @Test
    void a_path_goes_through_one_octave_coupler_at_most() {
        String[] drawn = {"Swell Octave to Great", "Choir to Swell", "Choir Octave to Swell", "Swell Octave"};
        assertThat(heard(SWELL, Action.MECHANICAL, ON_THE_GREAT, drawn)).isEqualTo("S' A' T'");
        assertThat(heard(CHOIR, Action.MECHANICAL, ON_THE_GREAT, drawn)).isEqualTo("S' A' T'");
        assertThat(heard(CHOIR, Action.ELECTRIC, ON_THE_GREAT, drawn)).isEmpty();
    }

    @Test
    void a_path_visits_no_keyboard_twice() {
        String[] circle = {"Swell Octave to Great", "Choir to Swell", "Great to Choir"};
        assertThat(heard(GREAT, Action.MECHANICAL, ON_THE_GREAT, circle)).isEqualTo("S A T");
        assertThat(heard(CHOIR, Action.MECHANICAL, ON_THE_GREAT, circle)).isEqualTo("S' A' T'");
    }

    @Test
    void a_divisions_own_octave_is_not_carried_to_another_keyboard() {
        String[] drawn = {"Great Octave", "Swell to Great"};
        assertThat(heard(GREAT, Action.MECHANICAL, ON_THE_GREAT, drawn)).isEqualTo("S S' A A' T T'");
        assertThat(heard(SWELL, Action.MECHANICAL, ON_THE_GREAT, drawn)).isEqualTo("S A T");
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void unison_off_takes_only_a_divisions_own_pitch_from_its_own_keyboard(Action action) {
        String[] drawn = {"Swell Unison Off", "Swell Octave", "Swell to Great"};
        assertThat(heard(SWELL, action, ON_THE_SWELL, drawn)).isEqualTo("S' A' T'");
        assertThat(heard(ECHO, action, ON_THE_SWELL, drawn)).isEqualTo("S A T");
        assertThat(heard(SWELL, action, ON_THE_GREAT, "Swell Unison Off", "Swell to Great"))
                .isEqualTo("S A T");
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void an_octave_coupler_between_divisions_of_one_keyboard_plays_its_source(Action action) {
        assertThat(heard(ECHO, action, ON_THE_SWELL, "Echo Octave to Swell")).isEqualTo("S S' A A' T T'");
        assertThat(heard(SWELL, action, ON_THE_SWELL, "Echo Octave to Swell")).isEqualTo("S A T");
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void what_is_already_played_is_not_played_twice(Action action) {
        HandsAndFeet both = new HandsAndFeet(Layout.FOUR_PARTS, GREAT, SWELL);
        assertThat(heard(SWELL, action, both, "Swell to Great")).isEqualTo("S A T");
    }
}
