package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.organ.IndexSet;

class FeedbackTest {
    private static final Feedback SOFT = new Feedback(HeardAs.TOO_SOFT, 120);
    private static final Verse ANSWERED = SmallPlan.verse("V1").withAnswer(Optional.of(SOFT));

    static List<UnaryOperator<Verse>> what_was_played_or_sung() {
        return List.of(
                verse -> verse.withMode(Mode.SOLO_VOICE),
                verse -> verse.withSinging(Singing.FULL_VOICE),
                verse -> verse.withPeople(OptionalInt.of(7)),
                verse -> verse.withHands(HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, 1)),
                verse -> verse.withRegistration(verse.registration()
                        .withStops(verse.registration().stops().toggled(0))));
    }

    @ParameterizedTest
    @MethodSource("what_was_played_or_sung")
    void an_answer_falls_where_what_was_played_or_sung_changes(UnaryOperator<Verse> change) {
        assertThat(change.apply(ANSWERED)).isNotEqualTo(ANSWERED);
        assertThat(change.apply(ANSWERED).answer()).isEmpty();
    }

    @Test
    void an_answer_stays_where_only_words_change_or_nothing_does() {
        Stream.<UnaryOperator<Verse>>of(
                        verse -> verse.withNote("slower"),
                        verse -> verse.withLabel("V7"),
                        verse -> verse.withPiston("G1"),
                        verse -> verse.withMood(Mood.BRIGHT),
                        verse -> verse.withRegistration(verse.registration()))
                .forEach(change -> assertThat(change.apply(ANSWERED).answer()).contains(SOFT));
    }

    @Test
    void a_verse_played_once_more_was_not_heard_yet() {
        List<Verse> twice = Verses.duplicated(List.of(ANSWERED), 0);

        assertThat(twice).extracting(Verse::answer).containsExactly(Optional.of(SOFT), Optional.empty());
    }

    @Test
    void a_stop_is_locked_one_way() {
        Locks locks = Locks.NONE.withAlways(3).withNever(4).withNever(3);

        assertThat(locks).isEqualTo(new Locks(IndexSet.EMPTY, IndexSet.of(3, 4)));
        assertThat(locks.without(3).without(4)).isEqualTo(Locks.NONE);
        assertThatIllegalArgumentException().isThrownBy(() -> new Locks(IndexSet.of(1), IndexSet.of(1)));
    }
}
