package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.plan.SmallPlan.labels;
import static versewind.plan.SmallPlan.verse;
import static versewind.plan.SmallPlan.verses;

import java.util.List;
import org.junit.jupiter.api.Test;

class VersesTest {

    @Test
    void a_plain_verse_is_labelled_with_its_number_among_the_plain_verses() {
        assertThat(Verses.usualLabel(verses("Intro V1 Refr V2 Inter V3"), 5)).isEqualTo("V3");
    }

    @Test
    void other_verses_are_labelled_by_their_kind() {
        assertThat(Verses.usualLabel(verses("Intro V1 Last"), 2)).isEqualTo("Last");
    }

    @Test
    void a_verse_put_in_gets_its_number() {
        assertThat(labels(Verses.inserted(verses("Intro V1"), 2, verse("anything"))))
                .isEqualTo("Intro V1 V2");
    }

    @Test
    void verses_after_one_put_in_count_on() {
        assertThat(labels(Verses.inserted(verses("Intro V1 V2 V3"), 2, verse("new"))))
                .isEqualTo("Intro V1 V2 V3 V4");
    }

    @Test
    void a_label_of_its_own_stays_when_a_verse_is_put_in_before_it() {
        assertThat(labels(Verses.inserted(verses("V1 women V3"), 0, verse("new"))))
                .isEqualTo("V1 V2 women V4");
    }

    @Test
    void one_label_of_its_own_does_not_keep_the_others_from_counting_on() {
        assertThat(labels(Verses.inserted(verses("V1 Refrain V2 Refrain"), 2, verse("new"))))
                .isEqualTo("V1 Refrain V2 V3 Refrain");
    }

    @Test
    void verses_after_one_that_is_not_sung_keep_their_numbers() {
        assertThat(labels(Verses.removed(verses("Intro V1 V2 V3 Last"), 2))).isEqualTo("Intro V1 V3 Last");
    }

    @Test
    void the_copy_of_a_numbered_verse_gets_the_next_number() {
        assertThat(labels(Verses.duplicated(verses("Intro V1 V2"), 1))).isEqualTo("Intro V1 V2 V3");
    }

    @Test
    void the_copy_of_a_verse_with_a_label_of_its_own_has_it_too() {
        assertThat(labels(Verses.duplicated(verses("V1 Refrain V2"), 1))).isEqualTo("V1 Refrain Refrain V2");
    }

    @Test
    void the_copy_follows_its_original() {
        List<Verse> verses = List.of(verse("V1").withNote("softly"), verse("V2"));
        assertThat(Verses.duplicated(verses, 0)).extracting(Verse::note).containsExactly("softly", "softly", "");
    }

    @Test
    void verses_that_change_places_change_their_numbers() {
        List<Verse> verses = List.of(verse("V1").withNote("first"), verse("V2").withNote("second"));
        assertThat(Verses.swapped(verses, 0))
                .extracting(verse -> verse.label() + " " + verse.note())
                .containsExactly("V1 second", "V2 first");
    }

    @Test
    void a_label_of_its_own_moves_with_its_verse() {
        assertThat(labels(Verses.swapped(verses("V1 women"), 0))).isEqualTo("women V2");
    }

    @Test
    void a_verse_of_another_kind_gets_the_label_of_that_kind() {
        assertThat(labels(Verses.withKind(verses("V1 V2 V3"), 1, VerseKind.REFRAIN)))
                .isEqualTo("V1 Refr V2");
    }

    @Test
    void a_verse_of_another_kind_keeps_a_label_of_its_own() {
        assertThat(labels(Verses.withKind(verses("V1 women"), 1, VerseKind.REFRAIN)))
                .isEqualTo("V1 women");
    }

    @Test
    void a_change_of_kind_changes_nothing_but_kind_and_label() {
        Verse verse = verse("V1").withNote("softly").withPiston("G3");
        assertThat(Verses.withKind(List.of(verse), 0, VerseKind.AMEN))
                .containsExactly(verse.withKind(VerseKind.AMEN).withLabel("Amen"));
    }
}
