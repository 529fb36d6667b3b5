package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import versewind.store.BadFile;
import versewind.store.Catalogue;
import versewind.store.Library;

class LookAheadTest {

    @Test
    void what_was_read_ahead_is_what_would_be_read() throws BadFile {
        Catalogue catalogue = new Library(Path.of("")).catalogue();

        assertThat(LookAhead.begin(catalogue, 2).files()).isEqualTo(catalogue.files());
    }
}
