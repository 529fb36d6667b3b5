package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Shipped;
import versewind.calibration.FeedbackUpdate;
import versewind.calibration.HeardRegistration;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.sound.OrganSound;

/** Proposals for a service like one that was played and judged. */
class HeardBeforeTest {

    private static final double HAIR_DB = 0.3;

    /** The last verses were too strong; of the others, softer ones were too soft or right. */
    @ParameterizedTest
    @CsvSource({"harvest-festival, 1", "harvest-festival, 2", "ordinary-sunday, 3", "ordinary-sunday, 4"})
    void a_last_verse_that_was_too_strong_is_not_proposed_louder(String id, int seed) throws Exception {
        var open = Shipped.plan(id);
        OrganSound before = OrganSound.open(open.instrument());
        Plan played = proposed(before, open.plan());
        Random random = new Random(seed);
        double softest = played.places().stream()
                .map(played::verse)
                .filter(HeardBeforeTest::isLast)
                .mapToDouble(verse -> levelDba(before, verse))
                .min()
                .orElseThrow();
        Plan judged = played;
        for (VersePlace place : played.places()) {
            Verse verse = played.verse(place);
            boolean isSofter = levelDba(before, verse) < softest;
            if (verse.isSung() && verse.mode() == Mode.CONGREGATION && (isLast(verse) || isSofter)) {
                HeardAs heard =
                        isLast(verse) ? HeardAs.TOO_STRONG : random.nextInt(4) > 0 ? HeardAs.TOO_SOFT : HeardAs.RIGHT;
                int people = open.plan().heading().people();
                judged = judged.withVerse(place, verse.withAnswer(Optional.of(new Feedback(heard, people))));
            }
        }
        OrganSound after = new FeedbackUpdate(before, HeardRegistration.of(judged)).sound();
        Plan next = proposed(after, open.plan());

        List<Double> louderDb = new ArrayList<>();
        for (VersePlace place : played.places()) {
            if (isLast(played.verse(place))) {
                louderDb.add(levelDba(before, next.verse(place)) - levelDba(before, played.verse(place)));
            }
        }
        assertThat(louderDb).isNotEmpty().allMatch(db -> db < HAIR_DB);
    }

    private static boolean isLast(Verse verse) {
        return verse.kind() == VerseKind.LAST_VERSE && verse.mode() == Mode.CONGREGATION;
    }

    private static Plan proposed(OrganSound sound, Plan plan) {
        return RegistrationProposer.of(sound)
                .forService(plan, SearchProgress.PATIENT)
                .on(plan);
    }

    private static double levelDba(OrganSound sound, Verse verse) {
        return sound.levelDba(verse.registration(), verse.hands());
    }
}
