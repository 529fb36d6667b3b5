package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.ChangeRule;

/** What the occasion, the singers and their share make of proposals. */
class OccasionTest {

    private static final ProposalTrial TETHWIN = ProposalTrial.shipped("st-tethwin");
    private static final int PEOPLE = 120;

    private static Plan plan(Verse... verses) {
        return ProposalTrial.plan(PEOPLE, verses);
    }

    private static Plan on(Occasion occasion) {
        Plan plan = plan(TETHWIN.verse(Mode.CONGREGATION, Mood.PLAIN)
                .withKind(VerseKind.LAST_VERSE)
                .withSinging(Singing.STRONG));
        return plan.withHeading(plan.heading().withGiven(Optional.of(occasion)));
    }

    private static double levelDba(Plan plan) {
        Proposal best = TETHWIN.proposer()
                .forVerse(plan, new VersePlace(0, 0))
                .proposals()
                .get(0);
        return TETHWIN.sound().levelDba(best.registration(), best.hands());
    }

    private static double levelDba(Verse verse) {
        return TETHWIN.sound().levelDba(verse.registration(), verse.hands());
    }

    @Test
    void a_funeral_is_quieter_than_a_wedding_and_a_wedding_than_a_feast() {
        assertThat(levelDba(on(Occasion.FUNERAL))).isLessThan(levelDba(on(Occasion.WEDDING)) - 1);
        assertThat(levelDba(on(Occasion.WEDDING))).isLessThanOrEqualTo(levelDba(on(Occasion.FESTAL)));
    }

    @Test
    void the_occasion_that_is_given_goes_before_that_of_the_day() {
        Plan easter = on(Occasion.FUNERAL);
        easter = easter.withHeading(easter.heading().withDate(Optional.of(LocalDate.of(2027, 3, 28))));
        assertThat(easter.heading().occasion()).isEqualTo(Occasion.FUNERAL);
        assertThat(easter.heading().summary()).hasValue("Easter Day: funeral");
        assertThat(easter.heading().withGiven(Optional.empty()).occasion()).isEqualTo(Occasion.FESTAL);
    }

    @Test
    void where_few_sing_less_is_drawn() {
        Plan plan = plan(TETHWIN.verse(Mode.CONGREGATION, Mood.PLAIN));
        assertThat(levelDba(plan.withHeading(plan.heading().withInTen(2)))).isLessThan(levelDba(plan) - 1);
    }

    @Test
    void trebles_alone_have_less_than_a_choir() {
        Verse choir = TETHWIN.verse(Mode.SMALL_CHOIR, Mood.PLAIN);
        assertThat(levelDba(plan(choir.withSungBy(SungBy.TREBLES)))).isLessThan(levelDba(plan(choir)));
    }

    @Test
    void under_a_descant_no_more_is_drawn_than_without() {
        Verse last = TETHWIN.verse(Mode.CONGREGATION, Mood.FESTAL);
        assertThat(levelDba(plan(last.withSungBy(SungBy.DESCANT)))).isLessThanOrEqualTo(levelDba(plan(last)));
    }

    @ParameterizedTest
    @EnumSource(
            value = Singing.class,
            names = {"ORDINARY", "STRONG", "FULL_VOICE"})
    void a_last_verse_with_a_descant_is_no_softer_than_the_verse_before(Singing singing) {
        Verse verse = TETHWIN.verse(Mode.CONGREGATION, Mood.PLAIN).withSinging(singing);
        Verse last = verse.withKind(VerseKind.LAST_VERSE).withSungBy(SungBy.DESCANT);
        Plan plan = plan(verse, verse, last);

        List<Verse> drawn = TETHWIN.proposer()
                .forService(plan, SearchProgress.PATIENT)
                .on(plan)
                .hymns()
                .get(0)
                .verses();
        assertThat(levelDba(drawn.get(2))).isGreaterThanOrEqualTo(levelDba(drawn.get(1)));
        assertThat(levelDba(drawn.get(2))).isGreaterThan(levelDba(drawn.get(0)));
    }

    @Test
    void where_nobody_plays_nothing_is_proposed() {
        Verse silent = TETHWIN.verse(Mode.CONGREGATION, Mood.PLAIN).withSungBy(SungBy.UNACCOMPANIED);
        Verse sung = TETHWIN.verse(Mode.CONGREGATION, Mood.PLAIN).withShare(OptionalInt.of(8));
        Plan plan = plan(sung, silent, sung);

        RegistrationProposer.OfVerse found = TETHWIN.proposer().forVerse(plan, new VersePlace(0, 1));
        assertThat(found.proposals()).isEmpty();
        assertThat(found.none(plan)).hasValue("Nobody plays in this verse.");

        ServiceProposal service = TETHWIN.proposer().forService(plan, SearchProgress.PATIENT);
        assertThat(service.verses().stream().map(ServiceProposal.OfVerse::place))
                .containsExactlyElementsOf(List.of(new VersePlace(0, 0), new VersePlace(0, 2)));
        assertThat(service.unsearched()).isZero();
    }

    @Test
    void a_service_can_be_played_with_a_verse_and_without_it() {
        Verse gentle = TETHWIN.verse(Mode.CONGREGATION, Mood.GENTLE);
        Verse plain = TETHWIN.verse(Mode.CONGREGATION, Mood.PLAIN);
        Verse last = TETHWIN.verse(Mode.CONGREGATION, Mood.FESTAL)
                .withKind(VerseKind.LAST_VERSE)
                .withSinging(Singing.STRONG);
        Plan plan = plan(gentle, plain.withOptional(true), last, gentle, last.withOptional(true), last);

        Plan drawn = TETHWIN.proposer().forService(plan, SearchProgress.PATIENT).on(plan);
        assertThat(Advice.on(TETHWIN.sound()).findings(drawn))
                .noneMatch(finding -> finding.rule() == ChangeRule.TOO_MANY_MOVES);
    }
}
