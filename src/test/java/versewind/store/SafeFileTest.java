package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {
    private static final Path FOLDER = Path.of("/desk/plans").toAbsolutePath();
    private static final Path FILE = FOLDER.resolve("lent.json");
    private static final byte[] OLD = SmallOrgan.bytes("what was planned before");
    private static final byte[] NEW = SmallOrgan.bytes("what is planned now");
    private static final byte[] NEXT = SmallOrgan.bytes("what is planned next");
    private static final int FEWEST_STEPS = 8;

    private static SaveOutcome save(Disk disk, byte[] bytes) {
        return new SafeFile(disk, FOLDER).save(FILE, bytes, now -> true, SafeFile.Durability.FORCED);
    }

    private static void assertRecovers(Map<Path, byte[]> state) {
        PowerCutDisk after = PowerCutDisk.working(state);

        assertThat(save(after, NEXT)).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(after.seen()).containsOnlyKeys(FILE);
        assertThat(after.seen().get(FILE)).isEqualTo(NEXT);
    }

    /** Cuts the power after every number of steps, until a save comes through; the number of steps it took. */
    private static int cutEverywhere(Map<Path, byte[]> before) {
        for (int steps = 0; ; steps++) {
            PowerCutDisk disk = PowerCutDisk.cutAfter(steps, before);
            try {
                save(disk, NEW);
            } catch (PowerCutDisk.PowerCut cut) {
                assertThat(disk.hasStopped()).isTrue();
            }
            for (Map<Path, byte[]> state : disk.possible()) {
                if (!disk.hasStopped()) {
                    assertThat(state).containsOnlyKeys(FILE);
                    assertThat(state.get(FILE)).isEqualTo(NEW);
                } else if (state.containsKey(FILE)) {
                    assertThat(state.get(FILE)).as("cut after %d steps", steps).isIn(OLD, NEW);
                } else {
                    assertThat(before).doesNotContainKey(FILE);
                }
                assertRecovers(state);
            }
            if (!disk.hasStopped()) {
                return steps;
            }
        }
    }

    @Test
    void wherever_the_power_is_cut_the_file_is_the_old_or_the_new_one_and_nothing_is_left_over_after_the_next_save() {
        assertThat(cutEverywhere(Map.of(FILE, OLD))).isGreaterThan(FEWEST_STEPS);
    }

    @Test
    void wherever_the_power_is_cut_a_file_that_is_new_is_not_there_or_whole() {
        assertThat(cutEverywhere(Map.of())).isGreaterThan(FEWEST_STEPS);
    }

    @Test
    void wherever_the_program_ends_a_file_written_quickly_is_the_old_or_the_new_one() {
        boolean stopped = true;
        for (int steps = 0; stopped; steps++) {
            PowerCutDisk disk = PowerCutDisk.cutAfter(steps, Map.of(FILE, OLD));
            try {
                new SafeFile(disk, FOLDER).save(FILE, NEW, now -> true, SafeFile.Durability.QUICK);
            } catch (PowerCutDisk.PowerCut cut) {
                assertThat(disk.hasStopped()).isTrue();
            }
            stopped = disk.hasStopped();
            assertThat(disk.seen().get(FILE)).isIn(OLD, NEW);
            assertRecovers(disk.seen());
        }
    }

    @Test
    void whatever_the_disk_refuses_the_outcome_tells_what_is_in_the_file_and_nothing_is_left_over() {
        boolean stopped = true;
        for (int steps = 0; stopped; steps++) {
            PowerCutDisk disk = PowerCutDisk.refusingAfter(steps, Map.of(FILE, OLD));

            SaveOutcome outcome = save(disk, NEW);

            stopped = disk.hasStopped();
            assertThat(disk.seen()).as("refused after %d steps", steps).containsOnlyKeys(FILE);
            if (outcome instanceof SaveOutcome.Saved) {
                assertThat(disk.seen().get(FILE)).isEqualTo(NEW);
            } else {
                String why = ((SaveOutcome.NotSaved) outcome).why();
                boolean isWritten = why.contains("; the file is written, but may be lost if the power goes");
                assertThat(why)
                        .startsWith("The disk reports: No space left on device")
                        .endsWith(". Make room, or save in another place.");
                assertThat(disk.seen().get(FILE)).isEqualTo(isWritten ? NEW : OLD);
            }
        }
    }

    @Test
    void on_a_disk_that_is_read_only_making_room_is_no_advice() {
        assertThat(SafeFile.sentence(new FileSystemException("bin", null, "Read-only file system")))
                .isEqualTo("Nothing can be written on this disk: it is read-only. Use a folder on another one.");
    }

    @Test
    void a_file_that_may_not_be_replaced_is_left_and_nothing_beside_it() {
        PowerCutDisk disk = PowerCutDisk.working(Map.of(FILE, OLD));

        SaveOutcome outcome =
                new SafeFile(disk, FOLDER).save(FILE, NEW, Fingerprint.of(NEXT)::equals, SafeFile.Durability.FORCED);

        assertThat(outcome).isEqualTo(new SaveOutcome.ChangedOnDisk(FILE));
        assertThat(disk.seen()).containsOnlyKeys(FILE);
        assertThat(disk.seen().get(FILE)).isEqualTo(OLD);
    }

    @Test
    void a_file_protected_against_writing_is_left() {
        PowerCutDisk disk = PowerCutDisk.working(Map.of(FILE, OLD)).protecting(FILE);

        assertThat(save(disk, NEW))
                .isEqualTo(new SaveOutcome.NotSaved(
                        FILE,
                        "The file or its folder is write-protected. Ask its owner for the permission, or save"
                                + " under another name or in another library."));
        assertThat(disk.seen().get(FILE)).isEqualTo(OLD);
    }

    @Test
    void a_temporary_file_that_another_program_is_still_writing_is_left_to_it() {
        long alive = ProcessHandle.current().parent().orElseThrow().pid();
        Path ofTheLiving = FOLDER.resolve(".lent.json." + alive + "-0123abcd-1.saving");
        Path ofTheDead = FOLDER.resolve(".lent.json.999999999-0123abcd-1.saving");
        Path ofAnotherPlan = FOLDER.resolve(".lent2.json.999999999-0123abcd-1.saving");
        PowerCutDisk disk = PowerCutDisk.working(Map.of(ofTheLiving, NEW, ofTheDead, NEW, ofAnotherPlan, NEW));

        save(disk, NEW);

        assertThat(disk.seen()).containsOnlyKeys(FILE, ofTheLiving, ofAnotherPlan);
    }

    @Test
    void a_temporary_file_of_another_computer_is_left_to_it_even_if_its_process_has_our_number(@TempDir Path plans)
            throws IOException {
        List<Path> others = new ArrayList<>();
        for (long process : new long[] {ProcessHandle.current().pid(), 999_999_999}) {
            for (String random : List.of("-0123abcd-1", "-1")) {
                others.add(Files.createFile(plans.resolve(".lent.json." + process + random + ".saving")));
            }
        }

        new SafeFile(new SystemDisk(), plans)
                .save(plans.resolve("lent.json"), NEW, now -> true, SafeFile.Durability.FORCED);

        assertThat(others).allMatch(Files::exists);
    }

    @Test
    void nobody_saves_before_another_who_is_slow_and_nobody_takes_its_turn_away() throws IOException {
        Path turn = FOLDER.resolve(".lent.json.turn.saving");
        PowerCutDisk disk = PowerCutDisk.working(Map.of(FILE, OLD));
        disk.create(turn, Optional.empty());
        Disk.Turn slow = disk.hold(turn).orElseThrow();

        assertThat(save(disk, NEW))
                .isEqualTo(new SaveOutcome.NotSaved(FILE, "Another program is saving this file. Save again."));
        assertThat(disk.seen()).containsOnlyKeys(FILE, turn);
        assertThat(disk.seen().get(FILE)).isEqualTo(OLD);

        slow.giveBack();
        assertThat(save(disk, NEW)).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(disk.seen()).containsOnlyKeys(FILE);
    }

    @Test
    void a_fingerprint_knows_no_file_from_an_empty_one() {
        assertThat(Fingerprint.NO_FILE).isNotEqualTo(Fingerprint.of(new byte[0]));
        assertThat(Fingerprint.of(OLD)).isEqualTo(Fingerprint.of(OLD.clone())).isNotEqualTo(Fingerprint.of(NEW));
    }
}
