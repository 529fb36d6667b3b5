package versewind.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.organ.Registration;

class PlayingNotesTest {

    @Test
    void the_breath_stands_once_over_a_hymn_and_not_where_there_is_nothing_between() {
        Registration silent = Registration.silent(Sheets.organ());
        Sheet sheet = Sheets.of(
                Sheets.hymn("1", Sheets.verse("V1", "", silent), Sheets.verse("V2", "", silent)),
                Sheets.hymn("2", Sheets.verse("V1", "", silent)));
        assertThat(sheet.hymns()).extracting(HymnSheet::breath).containsExactly("breathe 2 beats", "");
    }

    @ParameterizedTest
    @MethodSource("versewind.Shipped#plans")
    void the_touch_is_said_first_and_again_only_where_it_changes(String plan) {
        for (HymnSheet hymn : Sheets.shipped(plan, SheetOptions.USUAL).hymns()) {
            List<String> touches = hymn.verses().stream()
                    .flatMap(verse -> verse.played().stream())
                    .filter(words -> words.matches("(Legato|Lightly|Detached|Well).*"))
                    .toList();
            assertThat(hymn.verses().get(0).played()).contains(touches.get(0));
            for (int i = 1; i < touches.size(); i++) {
                assertThat(touches.get(i)).isNotEqualTo(touches.get(i - 1));
            }
        }
    }

    @Test
    void more_moves_than_the_breath_has_room_for_are_told_at_their_verse() {
        Sheet sheet = Sheets.of(Sheets.hymn(
                "1",
                Sheets.verse("V1", "", Registration.silent(Sheets.organ()).toggleStop(0)),
                Sheets.verse("V2", "", Registration.full(Sheets.organ()))));
        assertThat(sheet.hymns().get(0).verses().get(1).played()).anySatisfy(told -> assertThat(told)
                .matches("\\d+ changes from V1 need [\\d.]+ s with both hands; the breath is 1\\.3 s.*\\."));
    }

    @Test
    void the_touch_says_how_long_notes_are_held_unless_they_are_held_whole() {
        Sheet thin = Sheets.shipped("advent-candlelight", Sheets.LARGE);
        assertThat(thin.hymns().get(0).verses().get(0).played()).contains("Legato.");
        Sheet full = Sheets.shipped("easter-cathedral", Sheets.LARGE);
        assertThat(full.hymns().get(0).verses())
                .anyMatch(verse -> verse.played().contains("Detached, notes held 3/4 of the beat."));
    }
}
