package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.CalibratedOrgan.LastHeard;
import versewind.calibration.Calibration;
import versewind.calibration.Experience;
import versewind.calibration.HeardRegistration;
import versewind.calibration.RightShare;
import versewind.organ.IndexSet;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.rules.BuildingLine;
import versewind.rules.OrganFacts;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.PlanEvent;
import versewind.screen.plan.ProposalsScreen;
import versewind.screen.plan.UsualLine;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;
import versewind.store.OpenPlan;

class UsualScreenTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24);

    /** What was wanted kept, which is kept. */
    private Experience kept() {
        Experience experience = desk.effects().stream()
                .filter(wanted -> wanted.is("keepExperience"))
                .map(wanted -> wanted.argument(0, Experience.class))
                .reduce((first, last) -> last)
                .orElseThrow();
        CalibratedOrgan organ = desk.work().organ();
        Optional<Experience> before = Optional.of(organ.experience());
        desk.answer(new PlanEvent.UsualKept(
                new CalibratedOrgan(organ.sound(), organ.calibration(), experience, List.of(), LastHeard.none()),
                before));
        return experience;
    }

    @Test
    void an_organ_of_which_nothing_is_known_is_asked_about_in_a_line_that_the_next_key_takes_away() {
        assertThat(desk.said()).isEqualTo("What do you draw for an ordinary hymn, and for how many? Press R to say.");
        desk.press("n");
        assertThat(desk.said()).isEmpty();
    }

    @Test
    void the_form_of_the_first_holds_a_guess_that_leads_as_many_as_usually_come() {
        desk.press("R", "<Enter>");
        HeardRegistration guess = kept().usual("ordinary").orElseThrow();
        Verse verse = guess.verse();

        assertThat(guess.people()).isEqualTo(150);
        assertThat(desk.work()
                        .sound()
                        .estimate(verse, 150, OptionalInt.empty())
                        .balance()
                        .verdict())
                .isEqualTo(Verdict.LEADS);
        assertThat(desk.said()).startsWith("Kept \"ordinary\" with the organ");
        desk.press("q");
    }

    @Test
    void what_is_drawn_is_kept_and_recalled_into_another_verse_with_its_hands() {
        desk.press("n", "*", "^U", "'feast'", "<Enter>");
        Verse drawn = desk.verse();
        HeardRegistration feast = kept().usual("feast").orElseThrow();
        desk.press("]", "n", "0", "R", "<Enter>");

        assertThat(feast)
                .isEqualTo(new HeardRegistration(
                        "feast",
                        SungBy.CONGREGATION,
                        drawn.singing(),
                        480,
                        OptionalInt.empty(),
                        drawn.hands(),
                        drawn.registration(),
                        HeardAs.RIGHT));
        assertThat(desk.verse().registration()).isEqualTo(drawn.registration());
        assertThat(desk.verse().hands()).isEqualTo(drawn.hands());
        assertThat(desk.said()).isEqualTo("Recalled \"feast\" (u to undo).");
    }

    @Test
    void an_introduction_is_kept_as_what_people_would_sing_to() {
        assertThat(desk.verse().kind()).isEqualTo(VerseKind.INTRODUCTION);
        desk.press("*", "<Enter>");
        assertThat(kept().usual())
                .singleElement()
                .extracting(HeardRegistration::mode)
                .isEqualTo(Mode.CONGREGATION);
    }

    @Test
    void one_is_edited_under_another_name_and_removed() {
        desk.press("R", "<Enter>");
        kept();
        desk.press(
                "R", "e", "^U", "'gentle'", "<Tab>", "<Tab>", "<Tab>", "<Tab>", "<Tab>", "^U", "'gentle'", "<Enter>");
        assertThat(kept().usual()).singleElement().satisfies(usual -> assertThat(List.of(usual.name(), usual.singing()))
                .isEqualTo(List.of("gentle", Singing.GENTLE)));
        desk.press("x");
        assertThat(kept()).isEqualTo(Experience.NONE);
        assertThat(desk.said()).isEqualTo("Removed \"gentle\" (u to undo).");
    }

    @Test
    void a_stop_that_the_organ_does_not_have_is_named_in_the_form() {
        desk.press("R", "<Tab>", "^U", "'Great: Sackbut 8'", "<Enter>");
        assertThat(desk.form().complaint()).contains("Great has no stop \"Sackbut 8\"");
        assertThat(desk.effects()).isEmpty();
    }

    @Test
    void a_verse_of_a_hymn_with_a_long_title_keeps_its_label() {
        Desk titled = Desk.with(
                "harvest-festival",
                plan -> plan.withHymn(0, Desk.unnumbered(plan.hymns().get(0))));
        HeardRegistration heard =
                HeardRegistration.of(titled.press("n", "y").plan()).get(0);
        CalibratedOrgan organ = titled.work().organ();
        Experience known = new Experience(List.of(), List.of(heard));
        titled.answer(new PlanEvent.UsualKept(
                new CalibratedOrgan(organ.sound(), organ.calibration(), known, List.of(), LastHeard.none()),
                Optional.empty()));
        assertThat(titled.press("R", "<Enter>").screen()).containsPattern("Come, carry in t\u2026 V1 ");
    }

    @Test
    void silence_is_not_kept() {
        desk.press("0", "*");
        assertThat(desk.said()).isEqualTo("Nothing sounds here. Draw a registration first.");
    }

    @Test
    void a_verse_is_measured_by_the_usual_registration() {
        desk.press("R", "<Enter>");
        kept();
        desk.press("n", "R", "<Enter>");
        assertThat(desk.characters()).contains(" as loud as your usual\n");
        Verse usual = desk.verse();
        OrganSound sound = desk.work().sound();
        BuildingLine line = new BuildingLine(OrganFacts.of(sound), usual.hands(), IndexSet.EMPTY);
        for (BuildingLine.Rung rung : line.rungs()) {
            Verse other = usual.withRegistration(
                    usual.registration().withStops(rung.stops()).withCouplers(rung.couplers()));
            long db = Math.round(sound.step(usual, other, 480).orElseThrow().db());

            assertThat(UsualLine.of(desk.work(), other))
                    .contains(
                            db == 0
                                    ? "as loud as your usual"
                                    : Math.abs(db) + " dB " + (db > 0 ? "above" : "below") + " your usual");
        }
    }

    @Test
    void an_earlier_plan_that_later_feedback_has_changed_says_so_when_it_is_opened() {
        OpenPlan open = Shipped.plan("harvest-festival");
        Verse verse = open.plan().verse(new VersePlace(0, 1));
        List<HeardRegistration> answers = IntStream.range(0, 12)
                .mapToObj(i -> HeardRegistration.of("2026-11-15, 1 V" + i, verse, new Feedback(HeardAs.TOO_SOFT, 480)))
                .toList();
        CalibratedOrgan organ = CalibratedOrgan.of(
                OrganSound.open(open.instrument()), Calibration.NONE, new Experience(List.of(), answers));
        desk.answer(new FileEvent.PlanOpened("a-plan", open.plan(), open.instrument(), organ, Optional.empty()));
        assertThat(desk.said()).isEqualTo("Verdicts have changed since the feedback of Sun 15 Nov 2026.");

        Plan later = open.plan().withHeading(open.plan().heading().withDate(Optional.of(LocalDate.of(2026, 11, 22))));
        desk.answer(new FileEvent.PlanOpened("a-plan", later, open.instrument(), organ, Optional.empty()));
        assertThat(desk.said()).isEmpty();
    }

    @Test
    void of_several_the_one_for_the_nearest_level_of_singing_is_the_measure() {
        HeardRegistration ordinary =
                HeardRegistration.of("ordinary", desk.press("n").verse(), new Feedback(HeardAs.RIGHT, 150));
        HeardRegistration feast = HeardRegistration.of("feast", desk.verse(), new Feedback(HeardAs.RIGHT, 450));
        Experience both = new Experience(List.of(ordinary, feast), List.of());
        Verse verse = desk.verse();

        assertThat(both.nearest(verse, 200)).hasValue(ordinary);
        assertThat(both.nearest(verse, 350)).hasValue(feast);
        assertThat(both.nearest(verse.withSinging(Singing.STRONG), 200)).hasValue(feast);
        assertThat(both.nearest(verse.withMode(Mode.SOLO_VOICE), 200)).isEmpty();
    }

    @Test
    void the_share_that_is_right_is_that_of_what_is_usual_for_singing_of_the_same_strength() {
        Verse verse = desk.press("n").verse();
        HeardRegistration ordinary = HeardRegistration.of("ordinary", verse, new Feedback(HeardAs.RIGHT, 150));
        HeardRegistration feast =
                HeardRegistration.of("feast", verse.withSinging(Singing.STRONG), new Feedback(HeardAs.RIGHT, 450));
        HeardRegistration soft =
                HeardRegistration.of("gentle", verse.withSinging(Singing.GENTLE), new Feedback(HeardAs.TOO_SOFT, 60));
        Experience known = new Experience(List.of(ordinary, feast, soft), List.of());
        OrganSound sound = desk.work().sound();
        RightShare right = new RightShare(known, sound);

        for (HeardRegistration each : List.of(ordinary, feast)) {
            assertThat(right.of(each.verse(), 400))
                    .isEqualTo(sound.estimate(each.verse(), each.people(), OptionalInt.empty())
                            .balance()
                            .share());
        }
        assertThat(right.of(soft.verse(), 60)).isEqualTo(right.of(verse, 60));
        assertThat(new RightShare(new Experience(List.of(soft), List.of()), sound).of(soft.verse(), 60))
                .isEmpty();
    }

    @Test
    void what_is_usual_is_proposed_first_where_it_is_right_and_may_be_drawn() {
        desk.press("n", "#", "^U", "'150'", "<Enter>", "R", "<Enter>");
        HeardRegistration usual = kept().usual("ordinary").orElseThrow();
        desk.press("P");
        ProposalsScreen offered = (ProposalsScreen) desk.state().top();
        assertThat(offered.list().rows().stream().map(Proposal::registration)).contains(usual.registration());
        assertThat(desk.characters()).doesNotContain("As your usual");
        assertThat(usuallyProposed()).extracting(Proposal::registration).containsExactly(usual.registration());
        desk.press("<Esc>", "#", "^U", "'480'", "<Enter>", "+", "+");
        assertThat(usuallyProposed()).isEmpty();
    }

    private List<Proposal> usuallyProposed() {
        return ProposalsScreen.of(
                        desk.work(),
                        new RegistrationProposer.OfVerse(desk.work().place(), List.of()))
                .list()
                .rows();
    }
}
