package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.plan.HandsAndFeet.Layout;

/** A player without pedals plays everything with the hands. */
class PlayerTest {

    private static Plan played(Layout layout, Player player) {
        Verse verse = SmallPlan.verse("V1").withHands(new HandsAndFeet(layout, 1, 0));
        Plan plan = SmallPlan.with(SmallPlan.hymn("A hymn", verse));
        return plan.withHeading(plan.heading().withPlayer(player));
    }

    private static HandsAndFeet hands(Plan plan) {
        return plan.hymns().get(0).verses().get(0).hands();
    }

    @ParameterizedTest
    @CsvSource({
        "FOUR_PARTS, MANUALS_ONLY",
        "PEDAL_BY_COUPLER, MANUALS_ONLY",
        "MANUALS_ONLY, MANUALS_ONLY",
        "MELODY_SOLOED, SOLOED_WITHOUT_PEDAL",
        "SOLOED_WITHOUT_PEDAL, SOLOED_WITHOUT_PEDAL"
    })
    void a_player_without_pedals_keeps_the_manuals_and_rests_the_feet(Layout before, Layout after) {
        assertThat(hands(played(before, Player.MANUALS_ONLY))).isEqualTo(new HandsAndFeet(after, 1, 0));
    }

    @ParameterizedTest
    @EnumSource
    void a_player_with_pedals_plays_everything_as_it_is_written(Layout layout) {
        assertThat(hands(played(layout, Player.WITH_PEDALS))).isEqualTo(new HandsAndFeet(layout, 1, 0));
    }

    @Test
    void a_verse_that_comes_into_such_a_plan_is_played_with_the_hands_too() {
        Plan plan = played(Layout.MANUALS_ONLY, Player.MANUALS_ONLY);
        Plan more = plan.inserting(1, SmallPlan.hymn("Another", SmallPlan.verse("V1")));
        assertThat(more.hymns().get(1).verses().get(0).hands().layout()).isEqualTo(Layout.MANUALS_ONLY);
    }
}
