package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.plan.Plan;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.proposal.ServiceProposal;
import versewind.screen.plan.PlanEvent;
import versewind.screen.plan.PlanScreen;
import versewind.screen.plan.ProposalsScreen;
import versewind.screen.plan.SearchScreen;
import versewind.screen.toolkit.Letters;

class ProposalCommandsTest {

    private final Desk desk = Desk.with("ordinary-sunday", 80, 24);

    private ServiceProposal found(OptionalInt hymn) {
        RegistrationProposer registrant = RegistrationProposer.of(
                Desk.sound(Shipped.plan("ordinary-sunday").instrument()));
        return hymn.isPresent()
                ? registrant.forHymn(desk.plan(), hymn.getAsInt(), SearchProgress.PATIENT)
                : registrant.forService(desk.plan(), SearchProgress.PATIENT);
    }

    @Test
    void a_proposal_that_is_taken_is_drawn_and_can_be_undone() {
        Plan before = desk.plan();
        desk.press("n", "P");
        assertThat(desk.state().top()).isInstanceOf(ProposalsScreen.class);
        ProposalsScreen panel = (ProposalsScreen) desk.state().top();
        desk.press("<Down>", "<Enter>");

        assertThat(desk.plan().hymns().get(0).verses().get(1).registration())
                .isEqualTo(panel.list().rows().get(1).registration());
        assertThat(desk.state().top()).isInstanceOf(PlanScreen.class);
        assertThat(desk.press("u").plan()).isEqualTo(before);
    }

    @Test
    void what_is_taken_is_said_with_its_level_its_verdict_and_its_piston_where_that_changed() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n", "P");
        assertThat(desk.press("<Down>", "<Enter>").said())
                .matches("Taken for V1: f+, leads, \\d in 10 \\(u to undo\\)\\. Now on piston (\\d/)?G\\d\\.");
        desk.press("e", "<Tab>", "<Tab>", "<Tab>", "<Backspace>", "<Enter>", "P", "<Enter>");
        assertThat(desk.said()).startsWith("Taken for V1: ").endsWith(" (u to undo).");
        assertThat(desk.press("P", "<Enter>").said()).isEqualTo("No change: it is the same already.");
    }

    @Test
    void a_hymn_is_searched_outside_and_comes_back_as_one_edit() {
        Plan before = desk.plan();
        desk.press("n", "P", "P", "<Enter>");
        assertThat(desk.effects()).contains(Wanted.of("propose", before, OptionalInt.of(0)));
        desk.answer(new PlanEvent.Searched(3, 5));
        assertThat(desk.state().top()).isEqualTo(new SearchScreen(3, 5));
        ServiceProposal found = found(OptionalInt.of(0));
        desk.answer(new PlanEvent.Proposed(before, found));

        assertThat(desk.plan()).isEqualTo(found.on(before));
        assertThat(desk.state().notice().text()).contains("Changed 4 verses and 1 introduction");
        assertThat(desk.press("u").plan()).isEqualTo(before);
    }

    @Test
    void where_nobody_plays_the_hymn_or_the_service_is_proposed() {
        Plan before = desk.press("n", "8").plan();
        desk.press("P", "<Enter>");
        assertThat(desk.effects()).contains(Wanted.of("propose", before, OptionalInt.of(0)));
        desk.answer(new PlanEvent.Proposed(before, found(OptionalInt.of(0))));
        desk.press("P", "P");
        assertThat(desk.effects()).contains(Wanted.of("propose", desk.plan(), OptionalInt.empty()));
    }

    @Test
    void a_search_is_stopped_by_a_key_and_keeps_what_it_has() {
        desk.press("P", "P", "P", "<Esc>");
        assertThat(desk.effects()).contains(Wanted.of("stopProposing"));
        desk.answer(new PlanEvent.Proposed(desk.plan(), ServiceProposal.NOTHING));

        assertThat(desk.state().notice().text()).contains("Nothing is proposed.");
        assertThat(desk.state().top()).isInstanceOf(PlanScreen.class);
    }

    @Test
    void what_was_found_for_another_plan_is_not_taken() {
        ServiceProposal found = found(OptionalInt.empty());
        Plan before = desk.plan();
        desk.press("P", "P", "P");
        desk.answer(new PlanEvent.Proposed(found.on(before), found));

        assertThat(desk.plan()).isEqualTo(before);
    }

    @Test
    void a_service_that_was_proposed_is_heard_in_one_sentence() {
        desk.lettered(Letters.SPOKEN).press("P", "P", "P");
        desk.answer(new PlanEvent.Proposed(desk.plan(), found(OptionalInt.empty())));

        assertThat(desk.said())
                .startsWith("Done. ")
                .contains(" verses lead", ". Softest: ", ". Strongest: ", " Esc closes")
                .doesNotContain("Changed", " dB", "Curve");
    }
}
