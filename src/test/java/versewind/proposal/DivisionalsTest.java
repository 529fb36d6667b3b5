package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import versewind.organ.Knobs;
import versewind.organ.Piston;
import versewind.organ.Pressed;
import versewind.organ.Registration;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.ChangeRule;
import versewind.rules.StopChanges;

/** A service on an organ with divisional pistons and no generals. */
class DivisionalsTest {

    private static final ProposalTrial CONSOLE = ProposalTrial.shipped("harlan-falls");
    private static Plan drawn;

    @BeforeAll
    static void propose() {
        Verse gentle = CONSOLE.verse(Mode.CONGREGATION, Mood.GENTLE);
        Verse plain = CONSOLE.verse(Mode.CONGREGATION, Mood.PLAIN);
        Verse festal = CONSOLE.verse(Mode.CONGREGATION, Mood.FESTAL)
                .withKind(VerseKind.LAST_VERSE)
                .withSinging(Singing.STRONG);
        Plan plan = ProposalTrial.plan(200, plain, gentle, festal);
        drawn = CONSOLE.proposer().forService(plan, SearchProgress.PATIENT).on(plan);
    }

    private static List<Verse> verses() {
        return drawn.hymns().get(0).verses();
    }

    @Test
    void divisionals_are_pressed_and_no_general() {
        assertThat(verses()).anySatisfy(verse -> assertThat(verse.piston()).isNotBlank());
        assertThat(verses()).allSatisfy(verse -> {
            Pressed pressed = Pressed.read(CONSOLE.organ(), verse.piston());
            assertThat(pressed.pistons()).noneMatch(Piston::isGeneral);
        });
    }

    @Test
    void a_divisional_holds_one_setting_of_its_division() {
        Map<Piston, Knobs> held = new HashMap<>();
        for (Verse verse : verses()) {
            for (Piston piston : Pressed.of(CONSOLE.organ(), verse.piston()).pistons()) {
                Knobs setting = Knobs.drawn(verse.registration()).and(piston.reach(CONSOLE.organ()));
                assertThat(Optional.ofNullable(held.putIfAbsent(piston, setting))
                                .orElse(setting))
                        .isEqualTo(setting);
            }
        }
    }

    @Test
    void the_pistons_and_the_hand_together_set_every_verse() {
        Registration before = Registration.silent(CONSOLE.organ());
        for (Verse verse : verses()) {
            Pressed pressed = Pressed.of(CONSOLE.organ(), verse.piston());
            Registration after = pressed.press(CONSOLE.organ(), before, verse.registration());
            StopChanges besides =
                    StopChanges.between(before, verse.registration()).beyond(pressed.reach(CONSOLE.organ()));
            assertThat(StopChanges.between(after, verse.registration())).isEqualTo(besides);
            before = verse.registration();
        }
    }

    @Test
    void no_change_takes_longer_than_the_breath() {
        assertThat(Advice.on(CONSOLE.sound()).findings(drawn))
                .noneMatch(finding -> finding.rule() == ChangeRule.TOO_MANY_MOVES
                        || finding.rule() == ChangeRule.PISTON_TWICE
                        || finding.rule() == ChangeRule.PISTON_MISSING
                        || finding.rule() == ChangeRule.PISTONS_ALIKE);
    }

    @Test
    void a_verse_drawn_otherwise_gets_a_divisional_of_its_own_where_others_need_the_old_one() {
        VersePlace place = new VersePlace(0, 0);
        Verse first = drawn.verse(place).withPiston("Great 1");
        Plan shared = drawn.withVerse(place, first).withVerse(new VersePlace(0, 2), first);
        Verse other = first.withRegistration(Registration.full(CONSOLE.organ()));
        Verse redrawn = versewind.rules.PistonChoice.redrawn(shared, place, other, CONSOLE.organ());
        assertThat(redrawn.piston()).startsWith("Great ").isNotEqualTo("Great 1");
    }
}
