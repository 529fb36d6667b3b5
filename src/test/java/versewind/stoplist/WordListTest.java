package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of words, the tokens of a line, and forms of tokens. */
class WordListTest {

    @Test
    void every_kind_of_words_in_the_table_is_asked_for_by_the_program() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/java/versewind/stoplist"))) {
            String code = files.map(WordListTest::text).collect(Collectors.joining());
            assertThat(WordList.kinds()).allSatisfy(kind -> {
                String counted = kind.replaceFirst("\\d+$", "");
                assertThat(code.contains("\"" + counted + "\"") || code.contains("<" + kind.replace(' ', '_') + ">"))
                        .as(kind)
                        .isTrue();
            });
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    @Test
    void every_word_is_spelled_as_words_are_asked_for() {
        assertThat(WordTable.rows("words.csv")).allSatisfy(row -> assertThat(WordTable.names(row.get(2)))
                .allSatisfy(entry -> assertThat(Spelling.words(entry.replace("*", "")))
                        .isEqualTo(List.of(entry.replace("*", "").split(" ", -1)))));
    }

    @Test
    void a_kind_that_is_not_in_the_table_is_refused() {
        assertThatThrownBy(() -> WordList.of("bagpipes")).hasMessageContaining("bagpipes");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '"',
            value = {
                "3. Mixtur 4-5f. 1 1/3';NUMBER SIGN WORD NUMBER SIGN NUMBER WORD SIGN NUMBER QUOTE",
                "III/P (ab c\u00b0);ROMAN SIGN WORD OPEN WORD WORD SIGN CLOSE",
                "Quint 22/3 XIX;WORD NUMBER ROMAN"
            })
    void a_line_is_taken_apart_into_tokens(String text, String kinds) {
        assertThat(new Line(text).tokens().stream().map(each -> each.kind().name()))
                .containsExactly(kinds.split(" "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '"',
            value = {
                "pitch [-]? <feet> ~[.]?;8-foot;3",
                "pitch [-]? <feet> ~[.]?;8 ft .;2",
                "pitch quote ~quote?;8 x;0",
                "count [-/] count|word;II-IV;3",
                "word _word*;a b c;3",
                "<lent_by> <lent_of>?;extension of Great;2"
            })
    void a_form_takes_as_many_tokens_as_fit(String form, String text, int length) {
        assertThat(TokenForm.of(form).at(new Line(text), 0)).isEqualTo(length);
    }
}
