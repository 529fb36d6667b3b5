package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReplyTest {

    @Test
    void a_mistake_of_the_program_is_called_so_and_shown() {
        Reply reply = Reply.unexpected(new IllegalStateException("the bellows are empty"), Optional.empty());

        assertThat(reply.status()).isEqualTo(Reply.BAD);
        assertThat(reply.results()).isEmpty();
        assertThat(reply.words())
                .startsWith("versewind: This is a fault in the program. Please report it with these lines:\n"
                        + "java.lang.IllegalStateException: the bellows are empty\n\tat versewind.cli.ReplyTest.")
                .endsWith("\n");
    }
}
