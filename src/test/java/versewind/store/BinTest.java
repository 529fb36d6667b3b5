package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.plan.ServiceHeading;

class BinTest {

    @TempDir
    Path folder;

    private Path plans;
    private Library library;

    @BeforeEach
    void a_library_with_a_plan_and_work_on_it() throws IOException {
        plans = Files.createDirectory(folder.resolve("plans"));
        Files.createDirectory(folder.resolve("instruments"));
        Files.writeString(folder.resolve("instruments/nether-wick.json"), SmallOrgan.FILE);
        Files.writeString(plans.resolve("lent.json"), SmallOrgan.PLAN);
        library = new Library(folder);
    }

    @Test
    void a_plan_in_the_bin_is_whole_and_comes_back_with_the_work_on_it() throws BadFile, IOException {
        Files.writeString(plans.resolve(".lent.unsaved.json"), "work");

        Bin.Binned binned = library.bin().put("lent");
        assertThat(plans).isEmptyDirectory();
        assertThat(Files.readString(binned.path())).isEqualTo(SmallOrgan.PLAN);
        assertThat(library.bin().bringBack(binned)).isEqualTo("lent");
        assertThat(Files.readString(plans.resolve("lent.json"))).isEqualTo(SmallOrgan.PLAN);
        assertThat(Files.readString(plans.resolve(".lent.unsaved.json"))).isEqualTo("work");
    }

    @Test
    void nothing_in_the_bin_and_nothing_among_the_plans_is_written_over() throws BadFile, IOException {
        Bin.Binned first = library.bin().put("lent");
        Files.writeString(plans.resolve("lent.json"), "another");
        Bin.Binned second = library.bin().put("lent");

        assertThat(second.path()).isNotEqualTo(first.path());
        Files.writeString(plans.resolve("lent.json"), "a third");
        assertThat(library.bin().bringBack(first)).isEqualTo("lent-2");
        assertThat(Files.readString(plans.resolve("lent.json"))).isEqualTo("a third");
        assertThat(Files.readString(second.path())).isEqualTo("another");
    }

    @Test
    void a_renamed_plan_keeps_its_seconds_a_move() throws BadFile {
        OpenPlan open = library.openPlan("lent");
        ServiceHeading was = open.plan().heading();
        ServiceHeading slow = was.withMoveS(1.2);
        library.savePlan(open.with(open.plan().withHeading(slow)), WhenChanged.REFUSE);
        library.renamePlan("lent", "Lent, at noon");

        assertThat(library.openPlan("lent-at-noon").plan().heading()).isEqualTo(slow.withTitle("Lent, at noon"));
    }

    @Test
    void a_plan_is_renamed_with_its_file() throws BadFile {
        assertThat(library.renamePlan("lent", "Lent, at noon")).isEqualTo(new Renaming("lent-at-noon", ""));
        assertThat(library.openPlan("lent-at-noon").plan().heading().title()).isEqualTo("Lent, at noon");
        assertThat(plans.resolve("lent.json")).doesNotExist();
        assertThat(library.renamePlan("lent-at-noon", "Lent at Noon").id()).isEqualTo("lent-at-noon");
    }

    @Test
    void a_plan_with_unsaved_work_keeps_its_name() throws BadFile, IOException {
        Files.writeString(plans.resolve(".lent.unsaved.json"), "work");

        assertThat(library.renamePlan("lent", "Other").trouble()).startsWith("It has unsaved changes.");
        assertThat(plans.resolve("lent.json")).exists();
    }
}
