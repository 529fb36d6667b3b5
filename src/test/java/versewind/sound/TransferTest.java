package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.store.Library;

/** What becomes of what is drawn on an organ of two manuals on one that has a single manual. */
class TransferTest {

    private OrganSound from;
    private OrganSound to;

    @BeforeEach
    void open() throws Exception {
        from = OrganSound.open(new Library(Path.of("")).openInstrument("st-tethwin"));
        to = OrganSound.open(new Library(Path.of("")).openInstrument("little-corvening"));
    }

    private List<Verse> moved(String... drawn) {
        List<Verse> verses = Stream.of(drawn).map(this::verse).toList();
        Hymn hymn = new Hymn("1", "A hymn", "", "", "", OptionalInt.empty(), "", verses);
        return new Transfer(from, to, 60).of(hymn).hymn().verses();
    }

    private Verse verse(String drawn) {
        try {
            return Verses.blank(from.organ(), VerseKind.VERSE)
                    .withHands(HandsAndFeet.on(HandsAndFeet.Layout.MANUALS_ONLY, 0))
                    .withRegistration(new RegistrationText(from.organ()).parse(drawn));
        } catch (Exception unread) {
            throw new AssertionError(unread);
        }
    }

    private String drawn(Verse verse) {
        return new RegistrationText(to.organ()).format(verse.registration());
    }

    @Test
    void what_is_drawn_and_silent_stays_behind() {
        String alone = drawn(moved("Great: Stopped Flute 8").get(0));

        assertThat(drawn(moved("Great: Stopped Flute 8; Swell: Open Diapason 8, Principal 4")
                        .get(0)))
                .isEqualTo(alone);
        assertThat(alone).doesNotContain(",");
    }

    @Test
    void a_hymn_that_rises_does_not_fall_where_that_can_be_had() {
        List<Verse> verses = moved("Great: Open Diapason 8, Principal 4", "Great: Trumpet 8");

        assertThat(from.step(verse("Great: Open Diapason 8, Principal 4"), verse("Great: Trumpet 8"), 60)
                        .orElseThrow()
                        .db())
                .isPositive();
        assertThat(to.step(verses.get(0), verses.get(1), 60).orElseThrow().db()).isNotNegative();
    }
}
