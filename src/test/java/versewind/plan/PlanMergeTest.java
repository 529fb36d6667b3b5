package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;

class PlanMergeTest {

    private static final Plan BASE = Shipped.plan("harvest-festival").plan();

    private static Plan noted(Plan plan, int hymn, int verse, String note) {
        VersePlace place = new VersePlace(hymn, verse);
        return plan.withVerse(place, plan.verse(place).withNote(note));
    }

    private static Plan edited(Plan plan, Random random, String who, int hymn) {
        return switch (random.nextInt(3)) {
            case 0 -> noted(plan, hymn, random.nextInt(2), who + random.nextInt());
            case 1 -> {
                List<Verse> verses = new ArrayList<>(plan.hymns().get(hymn).verses());
                verses.add(random.nextInt(verses.size()), verses.get(0).withLabel(who + random.nextInt()));
                yield plan.withVerses(hymn, verses);
            }
            default -> {
                List<Verse> verses = new ArrayList<>(plan.hymns().get(hymn).verses());
                verses.remove(verses.size() - 1);
                yield plan.withVerses(hymn, verses);
            }
        };
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void what_each_changed_alone_is_in_the_result(int seed) {
        Random random = new Random(seed);
        Plan mine = edited(edited(BASE, random, "mine", 0), random, "mine", 2);
        Plan theirs = edited(edited(BASE, random, "theirs", 1), random, "theirs", 3);

        PlanMerge merge = PlanMerge.of(BASE, mine, theirs);

        assertThat(merge.conflicts()).isEmpty();
        assertThat(merge.plan().hymns().get(0)).isEqualTo(mine.hymns().get(0));
        assertThat(merge.plan().hymns().get(1)).isEqualTo(theirs.hymns().get(1));
        assertThat(merge.plan().hymns().get(2)).isEqualTo(mine.hymns().get(2));
        assertThat(merge.plan().hymns().get(3)).isEqualTo(theirs.hymns().get(3));
        assertThat(PlanMerge.of(BASE, mine, BASE).plan()).isEqualTo(mine);
        assertThat(PlanMerge.of(BASE, BASE, theirs).plan()).isEqualTo(theirs);
        assertThat(PlanMerge.of(BASE, mine, mine).plan()).isEqualTo(mine);
    }

    @Test
    void two_verses_of_one_hymn_changed_by_two_people_are_both_changed() {
        PlanMerge merge = PlanMerge.of(BASE, noted(BASE, 0, 1, "mine"), noted(BASE, 0, 2, "theirs"));

        assertThat(merge.conflicts()).isEmpty();
        assertThat(merge.plan()).isEqualTo(noted(noted(BASE, 0, 1, "mine"), 0, 2, "theirs"));
    }

    @Test
    void a_verse_that_both_changed_is_a_conflict_and_either_version_of_it_can_be_had() {
        Plan mine = noted(BASE.inserting(0, BASE.hymns().get(3)), 1, 1, "mine");
        Plan theirs = noted(BASE, 0, 1, "theirs").withPeople(77);

        PlanMerge merge = PlanMerge.of(BASE, mine, theirs);

        assertThat(merge.plan()).isEqualTo(mine.withPeople(77));
        PlanMerge.Conflict conflict = merge.conflicts().get(0);
        assertThat(merge.conflicts()).hasSize(1);
        assertThat(conflict.taken(merge.plan())).isEqualTo(noted(mine.withPeople(77), 1, 1, "theirs"));
    }

    @Test
    void a_hymn_moved_here_and_changed_there_is_moved_and_changed() {
        assertThat(PlanMerge.of(BASE, BASE.swapping(0), noted(BASE, 0, 1, "theirs"))
                        .plan())
                .isEqualTo(noted(BASE, 0, 1, "theirs").swapping(0));
        assertThat(PlanMerge.of(BASE, noted(BASE, 0, 1, "mine"), BASE.swapping(0))
                        .plan())
                .isEqualTo(noted(BASE, 0, 1, "mine").swapping(0));
    }

    @Test
    void a_hymn_deleted_here_and_changed_there_stays() {
        Plan changed = noted(BASE, 1, 1, "theirs");
        assertThat(PlanMerge.of(BASE, BASE.removing(1), changed).plan()).isEqualTo(changed);
        assertThat(PlanMerge.of(BASE, changed, BASE.removing(1)).plan()).isEqualTo(changed);
        assertThat(PlanMerge.of(BASE, BASE.removing(1), BASE).plan()).isEqualTo(BASE.removing(1));
    }

    @Test
    void titles_changed_by_both_are_a_conflict_of_the_details() {
        Plan mine = BASE.withHeading(BASE.heading().withTitle("Mine"));
        Plan theirs = BASE.withHeading(BASE.heading().withTitle("Theirs"));

        PlanMerge merge = PlanMerge.of(BASE, mine, theirs);

        assertThat(merge.plan()).isEqualTo(mine);
        assertThat(merge.conflicts().get(0).taken(mine)).isEqualTo(theirs);
    }
}
