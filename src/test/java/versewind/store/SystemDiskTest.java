package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SystemDiskTest {

    @TempDir
    Path folder;

    private SaveOutcome save(Path file, String text) {
        return new SafeFile(new SystemDisk(), folder)
                .save(file, SmallOrgan.bytes(text), now -> true, SafeFile.Durability.FORCED);
    }

    @Test
    void a_file_is_made_with_the_folders_it_lies_in_and_replaced() throws IOException {
        Path file = folder.resolve("new/plans/lent.json");

        assertThat(save(file, "one")).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(save(file, "two")).isInstanceOf(SaveOutcome.Saved.class);

        assertThat(file).hasContent("two");
        assertThat(new SystemDisk().list(file.getParent())).containsExactly(file);
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_file_keeps_its_permissions() throws IOException {
        Path file = folder.resolve("lent.json");
        Files.writeString(file, "one");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));

        save(file, "two");

        assertThat(file).hasContent("two");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw----");
    }

    @Test
    void a_file_keeps_whom_its_access_list_lets_in_and_its_extended_attributes() throws Exception {
        Path file = Files.writeString(folder.resolve("lent.json"), "a longer one");
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/setfacl")), "needs setfacl");
        assumeTrue(said("setfacl", "-m", "u:daemon:rw", file.toString()).isEmpty(), "a disk without access lists");
        Files.setAttribute(file, "user:hymnal", ByteBuffer.wrap(new byte[] {7}));

        save(file, "two");

        assertThat(file).hasContent("two");
        assertThat(said("getfacl", "--omit-header", "--absolute-names", file.toString()))
                .contains("user:daemon:rw-");
        assertThat(Files.getAttribute(file, "user:hymnal")).isEqualTo(new byte[] {7});
    }

    private static String said(String... command) throws IOException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_new_file_has_the_permissions_that_any_new_file_has() throws IOException {
        Path usual = Files.createFile(folder.resolve("usual"));

        save(folder.resolve("lent.json"), "one");

        assertThat(Files.getPosixFilePermissions(folder.resolve("lent.json")))
                .isEqualTo(Files.getPosixFilePermissions(usual));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_link_stays_a_link_and_the_file_it_leads_to_is_replaced() throws IOException {
        Path real = Files.createDirectory(folder.resolve("elsewhere")).resolve("real.json");
        Files.writeString(real, "one");
        Path middle = Files.createSymbolicLink(folder.resolve("middle.json"), Path.of("elsewhere/real.json"));
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), middle);

        assertThat(save(link, "two")).isInstanceOf(SaveOutcome.Saved.class);

        assertThat(real).hasContent("two");
        assertThat(link).isSymbolicLink();
        assertThat(middle).isSymbolicLink();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_link_that_leads_to_no_file_yet_has_it_made() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("later.json"));

        save(link, "one");

        assertThat(folder.resolve("later.json")).hasContent("one");
        assertThat(link).isSymbolicLink();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_link_that_leads_back_to_itself_is_told_so() throws IOException {
        Path one = folder.resolve("one.json");
        Files.createSymbolicLink(one, Files.createSymbolicLink(folder.resolve("two.json"), one));

        assertThat(save(one, "text"))
                .isEqualTo(new SaveOutcome.NotSaved(
                        one, "The file is a link that leads back to itself. Save under another name."));
    }

    @Test
    void a_folder_in_the_place_of_a_file_is_left() throws IOException {
        Path file = Files.createDirectory(folder.resolve("lent.json"));

        assertThat(save(file, "text")).isInstanceOf(SaveOutcome.NotSaved.class);

        assertThat(file).isEmptyDirectory();
        assertThat(new SystemDisk().list(folder)).containsExactly(file);
    }

    @Test
    void a_folder_that_is_a_file_is_told_so() throws IOException {
        Path file = Files.writeString(folder.resolve("plans"), "a file");

        assertThat(save(file.resolve("lent.json"), "text")).isInstanceOf(SaveOutcome.NotSaved.class);

        assertThat(file).hasContent("a file");
    }
}
