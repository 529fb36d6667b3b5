package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.sound.OrganSound;

class AssessmentTest {

    private static Instrument organ;
    private static OrganSound sound;

    @BeforeAll
    static void open() {
        organ = Shipped.instrument("st-tethwin");
        sound = OrganSound.open(organ);
    }

    private static Verse silent() {
        return Verses.blank(organ, VerseKind.VERSE);
    }

    private static Verse full() {
        return silent().withRegistration(Registration.full(organ));
    }

    private static Hymn hymn(Verse... verses) {
        return new Hymn("1", "The first", "", "", "", OptionalInt.of(90), "", List.of(verses));
    }

    private static Assessment assessed(Hymn... hymns) {
        Plan plan = new Plan(new ServiceHeading("A service", Optional.empty(), 200, ""), "st-tethwin", List.of(hymns));
        return Assessment.of(plan, sound);
    }

    @Test
    void every_verse_is_estimated_with_the_people_of_the_service_and_the_tempo_of_its_hymn() {
        Verse verse = full();
        Assessment assessment = assessed(hymn(), hymn(silent(), verse));

        assertThat(assessment.at(new VersePlace(1, 1)).verse()).isEqualTo(verse);
        assertThat(assessment.at(new VersePlace(1, 1)).estimate())
                .isEqualTo(sound.estimate(verse, 200, OptionalInt.of(90)));
    }

    @Test
    void the_verses_that_want_attention_are_named_in_their_order() {
        Assessment assessment = assessed(hymn(full(), silent()), hymn(), hymn(silent()));

        assertThat(assessment.wantingAttention()).containsExactly(new VersePlace(0, 1), new VersePlace(2, 0));
    }

    @Test
    void a_verse_in_which_nobody_sings_and_nothing_is_drawn_wants_no_attention() {
        Assessment assessment = assessed(hymn(silent().withKind(VerseKind.INTERLUDE)));

        assertThat(assessment.wantingAttention()).isEmpty();
        assertThat(assessment.loudestDba()).isEmpty();
    }

    @Test
    void the_loudest_may_be_the_singing() {
        Assessment assessment = assessed(hymn(silent().withSinging(Singing.FULL_VOICE), silent()));

        assertThat(assessment.loudestDba())
                .isEqualTo(assessment.at(new VersePlace(0, 0)).estimate().singersDba())
                .isPresent();
    }

    @Test
    void the_loudest_may_be_the_organ_where_the_choir_stands() {
        Assessment assessment = assessed(hymn(full().withMode(Mode.SMALL_CHOIR)));

        assertThat(assessment.loudestDba().getAsDouble())
                .isEqualTo(assessment
                        .at(new VersePlace(0, 0))
                        .estimate()
                        .organAmongSingersDba()
                        .getAsDouble())
                .isGreaterThan(assessment
                        .at(new VersePlace(0, 0))
                        .estimate()
                        .organDba()
                        .getAsDouble());
    }
}
