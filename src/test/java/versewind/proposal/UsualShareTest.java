package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.RegistrationText;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

class UsualShareTest {

    private static final VersePlace V1 = new VersePlace(0, 1);

    private final Plan plan;
    private final OrganSound sound;

    UsualShareTest() throws Exception {
        var open = Shipped.plan("ordinary-sunday");
        plan = open.plan();
        sound = OrganSound.open(open.instrument());
    }

    private double proposed(UsualShare usual) {
        Verse verse = plan.hymns().get(0).verses().get(1);
        Proposal best = RegistrationProposer.of(sound, usual, IndexSet.EMPTY)
                .forVerse(plan, V1)
                .proposals()
                .get(0);
        return sound.estimate(best.on(verse), plan.heading().people(), OptionalInt.empty())
                .balance()
                .share()
                .orElseThrow();
    }

    @Test
    void a_proposal_for_those_who_usually_come_is_as_strong_as_what_is_usual() {
        double wanted = 0.36;
        double before = proposed(UsualShare.NONE);
        double after = proposed((verse, people) -> OptionalDouble.of(wanted));

        assertThat(Math.abs(after - wanted)).isLessThan(Math.abs(before - wanted));
        assertThat(after).isCloseTo(wanted, within(0.06));
    }

    @Test
    void what_is_usual_moves_the_target_as_long_as_it_leads_and_is_not_too_strong() {
        Target plain = Target.of(Mode.CONGREGATION, Mood.PLAIN);
        assertThat(plain.asUsual(0.3).centre()).isCloseTo(0.3, within(1e-9));
        assertThat(plain.asUsual(0.05).low()).isCloseTo(Verdict.LEADS.from(Mode.CONGREGATION), within(1e-9));
        assertThat(plain.asUsual(0.9).high()).isLessThan(Verdict.TOO_STRONG.from(Mode.CONGREGATION));
    }

    @Test
    void what_is_usually_drawn_comes_before_others_of_its_kind() throws Exception {
        var open = Shipped.plan("easter-cathedral");
        Verse verse = open.plan().verse(V1).withSinging(Singing.ORDINARY);
        Plan plain = open.plan().withVerse(V1, verse);
        IndexSet usual = open.organ().experience().usualStops();
        OrganSound cathedral = open.organ().sound();

        assertThat(drawn(RegistrationProposer.of(cathedral), plain, open.instrument()))
                .contains("Diapason II 8")
                .doesNotContain("Diapason I 8");
        assertThat(drawn(RegistrationProposer.of(cathedral, UsualShare.NONE, usual), plain, open.instrument()))
                .contains("Diapason I 8")
                .doesNotContain("Diapason II 8");
    }

    private static String drawn(RegistrationProposer proposer, Plan plan, Instrument organ) {
        return new RegistrationText(organ)
                .format(proposer.forVerse(plan, V1).proposals().get(0).registration());
    }
}
