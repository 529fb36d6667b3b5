package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** How a verse is to sound where the plan does not say. Common practice, no source. */
class MoodOfVerseTest {

    private static final VersePlace FIRST = new VersePlace(0, 1);
    private static final LocalDate ORDINARY = LocalDate.of(2026, 7, 19);
    private static final LocalDate ASH_WEDNESDAY = LocalDate.of(2027, 2, 10);

    private Plan plan;

    @BeforeEach
    void open() throws Exception {
        plan = Shipped.plan("ordinary-sunday").plan();
    }

    private Plan on(LocalDate date, Singing singing, Mood mood) {
        Verse verse = plan.hymns().get(0).verses().get(1).withSinging(singing).withMood(mood);
        ServiceHeading heading = new ServiceHeading("Service", Optional.of(date), 100, "");
        return plan.withVerse(new VersePlace(0, 1), verse).withHeading(heading);
    }

    @Test
    void people_who_sing_gently_have_a_gentle_verse() {
        assertThat(Shape.mood(on(ORDINARY, Singing.GENTLE, Mood.PLAIN), FIRST)).isEqualTo(Mood.GENTLE);
        assertThat(Shape.mood(on(ORDINARY, Singing.ORDINARY, Mood.PLAIN), FIRST))
                .isEqualTo(Mood.PLAIN);
    }

    @Test
    void a_day_of_penance_is_gentle_where_nothing_else_is_said() {
        assertThat(Shape.mood(on(ASH_WEDNESDAY, Singing.ORDINARY, Mood.PLAIN), FIRST))
                .isEqualTo(Mood.GENTLE);
    }

    @Test
    void what_the_plan_says_holds() {
        assertThat(Shape.mood(on(ASH_WEDNESDAY, Singing.GENTLE, Mood.FESTAL), FIRST))
                .isEqualTo(Mood.FESTAL);
    }
}
