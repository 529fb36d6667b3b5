package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LockedTurnTest {

    private final Disk disk = new SystemDisk();

    @TempDir
    private Path folder;

    private Path turn;

    /** A program that takes a turn, says so, and does not end by itself. */
    static final class Owner {
        private Owner() {}

        public static void main(String[] arguments) throws IOException {
            System.out.write(new SystemDisk().hold(Path.of(arguments[0])).isPresent() ? 'y' : 'n');
            System.out.flush();
            System.in.read();
        }
    }

    @BeforeEach
    void make() throws IOException {
        turn = folder.resolve(".lent.json.turn.saving");
        disk.create(turn, Optional.empty());
    }

    @Test
    void a_turn_that_is_given_back_is_gone() throws IOException {
        disk.hold(turn).orElseThrow().giveBack();

        assertThat(folder).isEmptyDirectory();
        assertThat(disk.hold(turn)).isEmpty();
    }

    @Test
    void an_owner_that_has_lost_its_turn_leaves_that_of_the_next() throws IOException {
        Disk.Turn slow = disk.hold(turn).orElseThrow();
        Files.delete(turn);
        disk.create(turn, Optional.empty());
        Disk.Turn next = disk.hold(turn).orElseThrow();

        slow.giveBack();

        assertThat(turn).exists();
        next.giveBack();
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void of_two_that_find_a_turn_left_over_one_has_it_and_the_other_takes_no_fresh_one_away() throws IOException {
        Disk.Turn first = disk.hold(turn).orElseThrow();
        assertThat(disk.hold(turn)).isEmpty();
        first.giveBack();
        disk.create(turn, Optional.empty());
        Disk.Turn fresh = disk.hold(turn).orElseThrow();

        assertThat(disk.hold(turn)).isEmpty();

        assertThat(turn).exists();
        fresh.giveBack();
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_turn_is_its_owners_until_the_owner_ends_however_it_ends() throws Exception {
        Process owner = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Owner.class.getName(),
                        turn.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertThat(owner.getInputStream().read()).isEqualTo('y');

        assertThat(disk.hold(turn)).isEmpty();

        owner.destroyForcibly().waitFor();
        disk.hold(turn).orElseThrow().giveBack();
        assertThat(folder).isEmptyDirectory();
    }
}
