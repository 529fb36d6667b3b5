package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ConsoleProgressTest {

    private final List<String> line = new ArrayList<>();
    private final List<String> error = new ArrayList<>();

    @Test
    void progress_is_written_over_what_was_there_and_nothing_of_it_among_errors() {
        ConsoleProgress waiting = new ConsoleProgress(line::add, error::add);
        waiting.tell("1 of 2");
        waiting.tell("2 of 2");
        waiting.endLine();
        waiting.end();

        assertThat(line).containsExactly("\r1 of 2", "\r2 of 2", "\n");
        assertThat(error).isEmpty();
    }

    @Test
    void where_nothing_was_told_no_line_is_ended() {
        ConsoleProgress waiting = new ConsoleProgress(line::add, error::add);
        waiting.begin();
        waiting.endLine();
        waiting.end();

        assertThat(line).isEmpty();
    }
}
