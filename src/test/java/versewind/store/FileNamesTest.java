package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.KeyName;
import versewind.organ.Nearest;
import versewind.schema.FileFormat;

/** Names of keys, of files, and of what was probably meant. */
class FileNamesTest {

    /** The names are common practice, no source; middle c, c1, is the MIDI note 60. */
    @ParameterizedTest
    @CsvSource({"36, C", "37, C#", "47, B", "48, c", "59, b", "60, c1", "61, c#1", "72, c2", "93, a3", "108, c5"})
    void a_key_is_called_after_its_octave(int key, String name) {
        assertThat(KeyName.of(key)).isEqualTo(name);
        assertThat(KeyName.parse(name)).contains(key);
    }

    @Test
    void a_key_beyond_the_widest_manual_has_no_name() {
        assertThat(KeyName.parse("c#5")).isEmpty();
        assertThat(KeyName.parse("C1")).isEmpty();
        assertThat(KeyName.parse("h")).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> KeyName.of(35));
        assertThatIllegalArgumentException().isThrownBy(() -> KeyName.of(109));
    }

    @ParameterizedTest
    @CsvSource({
        "Harvest Thanksgiving, harvest-thanksgiving",
        "'  Évensong, 3rd of May  ', evensong-3rd-of-may",
        "Straße & Größe, strasse-grosse",
        "Søndag Œuvre, sondag-oeuvre",
        "St Mary's, st-marys",
        "../../etc/passwd, etc-passwd",
        "'A service with a title so long that nobody could want it whole as the name of a file', "
                + "a-service-with-a-title-so-long-that-nobody-could-want-it",
        "Con, con-1",
        "LPT1, lpt1-1",
        "Console, console"
    })
    void a_title_becomes_a_files_name(String title, String name) {
        assertThat(Slug.of(title)).contains(name);
        assertThat(FileFormat.isId(name)).isTrue();
    }

    @Test
    void a_title_without_a_latin_letter_becomes_none() {
        assertThat(Slug.of("管风琴")).isEmpty();
        assertThat(Slug.of("--")).isEmpty();
        assertThat(Slug.of("")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Open Diapson 8, Open Diapason 8", "principal 4, Principal 4", "Princ, Principal 4", "Graet, Great"})
    void a_name_that_is_nearly_right_is_known(String typed, String meant) {
        assertThat(Nearest.to(typed, List.of("Great", "Open Diapason 8", "Principal 4")))
                .contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"Trumpet 8", "Pr", "Great Open Diapason", "8"})
    void a_name_that_is_far_from_all_is_not_guessed(String typed) {
        assertThat(Nearest.to(typed, List.of("Great", "Open Diapason 8", "Principal 4")))
                .isEmpty();
    }

    @Test
    void a_long_list_of_names_is_cut() {
        List<String> names = List.of("a1", "b2", "c3", "d4", "e5", "f6", "g7", "h8", "i9", "j10", "k11", "l12", "m13");

        assertThat(Nearest.sentence("Trumpet 8", names, "Great has"))
                .startsWith("Great has \"a1\", \"b2\", ")
                .endsWith("\"l12\" and 1 more.");
        assertThat(Nearest.sentence("Trumpet 8", List.of(), "Great has")).isEqualTo("Great has none.");
    }

    @Test
    void half_of_a_character_is_not_written() {
        assertThat(JsonText.text("a\ud83cb\ud83c\udfb9")).isEqualTo("\"a\ufffdb\ud83c\udfb9\"");
    }
}
