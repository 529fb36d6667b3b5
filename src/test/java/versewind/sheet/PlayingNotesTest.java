package versewind.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import versewind.organ.Registration;
import versewind.store.BadFile;

class PlayingNotesTest {

    private static String breath(VerseSheet verse) {
        return verse.played().size() == 1 ? "-" : verse.played().get(1);
    }

    @Test
    void the_breath_is_told_once_in_a_hymn_and_not_where_there_is_nothing_between() throws BadFile {
        Registration silent = Registration.silent(Sheets.organ());
        Sheet sheet = Sheets.of(
                Sheets.hymn("1", Sheets.verse("V1", "", silent), Sheets.verse("V2", "", silent)),
                Sheets.hymn("2", Sheets.verse("V1", "", silent)));
        assertThat(sheet.hymns().get(0).verses())
                .extracting(PlayingNotesTest::breath)
                .containsExactly("Breathe 2 beats between verses.", "-");
        assertThat(breath(sheet.hymns().get(1).verses().get(0))).isEqualTo("-");
    }

    @Test
    void more_moves_than_the_breath_has_room_for_are_told_at_their_verse() throws BadFile {
        Sheet sheet = Sheets.of(Sheets.hymn(
                "1",
                Sheets.verse("V1", "", Registration.silent(Sheets.organ()).toggleStop(0)),
                Sheets.verse("V2", "", Registration.full(Sheets.organ()))));
        assertThat(sheet.hymns().get(0).verses().get(1).played()).anySatisfy(told -> assertThat(told)
                .matches("\\d+ changes from V1 need [\\d.]+ s; the breath is 1\\.3 s.*\\."));
    }

    @Test
    void the_touch_says_how_long_notes_are_held_unless_they_are_held_whole() throws BadFile {
        Sheet thin = Sheets.shipped("advent-candlelight", Sheets.LARGE);
        assertThat(thin.hymns().get(0).verses().get(0).played()).contains("Legato.");
        Sheet full = Sheets.shipped("easter-cathedral", Sheets.LARGE);
        assertThat(full.hymns().get(0).verses().get(7).played()).contains("Detached, notes held 3/4 of the beat.");
    }
}
