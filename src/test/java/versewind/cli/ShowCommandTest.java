package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import versewind.schema.KnownOrgan;
import versewind.store.Library;

class ShowCommandTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @FieldSource("versewind.Shipped#ORGANS")
    void what_is_shown_is_read_into_the_same_instrument_of_which_nothing_else_is_known(String id) throws Exception {
        Path list = folder.resolve("list.txt");
        Path made = folder.resolve("made.json");
        Files.writeString(list, typed("show", id).results());

        Reply reply = typed("read-stops", list.toString(), "-o", made.toString());

        assertThat(reply.status()).isEqualTo(Reply.GOOD);
        Library library = new Library(Path.of(""));
        assertThat(library.openOrgan(made.toString()).organ()).isEqualTo(KnownOrgan.of(library.openInstrument(id)));
    }

    @Test
    void what_spoils_a_list_that_was_shown_is_told() throws Exception {
        Path list = folder.resolve("list.txt");
        String text = typed("show", "st-tethwin").results();
        Files.writeString(list, text.replace("Volume \"6000\"", "Volume \"much\""));

        Reply reply = typed(
                "read-stops", list.toString(), "-o", folder.resolve("made.json").toString());

        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.words()).contains("Volume: \"much\" is not a number. Enter a number from 50 to 500000.");
        assertThat(folder.resolve("made.json")).doesNotExist();
    }

    @Test
    void an_instrument_that_is_not_there_is_told() {
        assertThat(typed("show", "nowhere").status()).isEqualTo(Reply.BAD);
    }
}
