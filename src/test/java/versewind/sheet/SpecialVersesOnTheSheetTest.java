package versewind.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.store.BadFile;

/** Verses that may be left out, and those that nobody accompanies, as the sheet has them. */
class SpecialVersesOnTheSheetTest {

    private static Registration drawn(String division, String name) throws BadFile {
        int stop = Sheets.organ().stops().stream()
                .map(knob -> knob.name().toString())
                .toList()
                .indexOf(division + ": " + name);
        return Registration.silent(Sheets.organ()).toggleStop(stop);
    }

    @Test
    void after_a_verse_that_may_be_left_out_both_ways_are_told() throws BadFile {
        Registration principal = drawn("Great", "Principal 4");
        Registration flute = drawn("Great", "Open Flute 4");
        String html = SheetHtml.of(Sheets.of(Sheets.hymn(
                "1",
                Sheets.verse("V1", "", principal),
                Sheets.verse("V2", "", flute).withOptional(true),
                Sheets.verse("V3", "", principal))));

        assertThat(html).contains("four parts on Great; may be left out", "With V2 left out: no changes.");
    }

    @Test
    void an_unaccompanied_verse_has_neither_stops_nor_changes_and_the_next_is_set_from_the_one_before() throws BadFile {
        Registration principal = drawn("Great", "Principal 4");
        Sheet sheet = Sheets.of(Sheets.hymn(
                "1",
                Sheets.verse("V1", "", principal),
                Sheets.verse("V2", "", drawn("Great", "Mixture III")).withSungBy(SungBy.UNACCOMPANIED),
                Sheets.verse("V3", "", principal)));
        VerseSheet silent = sheet.hymns().get(0).verses().get(1);
        VerseSheet next = sheet.hymns().get(0).verses().get(2);

        assertThat(silent.playing()).isEqualTo("unaccompanied");
        assertThat(silent.played()).containsExactly("Nobody plays: give the note first.");
        assertThat(silent.drawn()).isEmpty();
        assertThat(silent.changes()).isEmpty();
        assertThat(next.before()).hasValue("V1");
        assertThat(next.changes()).isEmpty();
    }

    @Test
    void what_is_drawn_for_a_later_verse_is_said_not_to_be_heard_yet() throws BadFile {
        Registration great = drawn("Great", "Principal 4");
        Registration both =
                great.withStops(great.stops().plus(drawn("Swell", "Oboe 8").stops()));
        String html =
                SheetHtml.of(Sheets.of(Sheets.hymn("1", Sheets.verse("V1", "", great), Sheets.verse("V2", "", both))));
        assertThat(html).contains("Swell: Oboe&#160;8 (not heard here)");
    }

    @Test
    void the_same_stops_played_elsewhere_say_what_is_heard() throws BadFile {
        Registration both = drawn("Great", "Principal 4")
                .withStops(drawn("Great", "Principal 4")
                        .stops()
                        .plus(drawn("Swell", "Oboe 8").stops()));
        Verse great = Sheets.verse("V1", "", both);
        Verse swell = Sheets.verse("V2", "", both)
                .withHands(HandsAndFeet.on(great.hands().layout(), 1));
        assertThat(SheetHtml.of(Sheets.of(Sheets.hymn("1", great, swell, Sheets.verse("V3", "", both)))))
                .contains("Stops as in V1; heard here: Swell: Oboe&#160;8.", "Stops as in V1.");
    }
}
