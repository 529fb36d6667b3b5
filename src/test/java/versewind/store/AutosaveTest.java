package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.plan.Plan;

class AutosaveTest {

    @TempDir
    Path folder;

    private Path plans;
    private Library library;
    private OpenPlan changed;

    @BeforeEach
    void a_plan_that_was_changed() throws IOException, BadFile {
        plans = Files.createDirectory(folder.resolve("plans"));
        Path instruments = Files.createDirectory(folder.resolve("instruments"));
        Files.writeString(instruments.resolve("nether-wick.json"), SmallOrgan.FILE);
        Files.writeString(plans.resolve("lent.json"), SmallOrgan.PLAN);
        library = new Library(folder);
        OpenPlan open = library.openPlan("lent");
        Plan shorter = open.plan().withHymns(List.of());
        changed = open.with(shorter);
    }

    private static Autosave.Kept kept(OpenPlan open) {
        return (Autosave.Kept) open.draft().orElseThrow();
    }

    @Test
    void work_that_was_kept_is_offered_when_the_plan_is_opened_again() throws BadFile {
        assertThat(library.keepDraft(changed)).isInstanceOf(SaveOutcome.Saved.class);

        OpenPlan again = library.openPlan("lent");

        assertThat(plans.resolve(".lent.unsaved.json")).exists();
        assertThat(again.plan()).isEqualTo(SmallOrgan.readPlan(SmallOrgan.PLAN).plan());
        assertThat(kept(again).plan()).isEqualTo(changed.plan());
        assertThat(library.catalogue().files())
                .extracting(PlanFile::unsavedWork)
                .containsExactly(true);
    }

    @Test
    void work_that_was_kept_is_gone_once_the_plan_is_saved_or_the_work_is_dropped() throws BadFile {
        library.keepDraft(changed);
        library.savePlan(changed, WhenChanged.REFUSE);
        assertThat(library.draftOf(changed.path())).isEmpty();

        library.keepDraft(changed);
        library.dropDraft(changed.path());
        assertThat(library.draftOf(changed.path())).isEmpty();
        assertThat(library.catalogue().files())
                .extracting(PlanFile::unsavedWork)
                .containsExactly(false);
    }

    @Test
    void work_stays_kept_when_the_plan_could_not_be_saved() throws BadFile, IOException {
        library.keepDraft(changed);
        Files.writeString(changed.path(), SmallOrgan.PLAN + "\n");

        assertThat(library.savePlan(changed, WhenChanged.REFUSE)).isInstanceOf(SaveOutcome.ChangedOnDisk.class);

        assertThat(library.draftOf(changed.path())).isPresent();
    }

    @Test
    void work_that_is_in_the_file_already_is_not_offered() throws BadFile, IOException {
        library.savePlan(changed, WhenChanged.REFUSE);
        Files.copy(changed.path(), plans.resolve(".lent.unsaved.json"));

        assertThat(library.openPlan("lent").draft()).isEmpty();
    }

    @Test
    void work_on_a_plan_that_was_never_saved_is_listed_and_opened() throws BadFile {
        OpenPlan fresh = library.newPlan("fresh", changed.plan(), changed.organ());
        library.keepDraft(fresh);

        OpenPlan opened = new Library(folder).openPlan("fresh");

        assertThat(library.catalogue().files()).extracting(PlanFile::id).containsExactlyInAnyOrder("fresh", "lent");
        assertThat(library.freePlanId("Fresh")).isEqualTo("fresh-2");
        assertThat(opened.plan()).isEqualTo(fresh.plan());
        assertThat(kept(opened).plan()).isEqualTo(fresh.plan());
        assertThat(library.savePlan(opened, WhenChanged.REFUSE)).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(library.openPlan("fresh").draft()).isEmpty();
    }

    @Test
    void work_that_cannot_be_read_is_told_and_never_written_over() throws BadFile, IOException {
        Path draft = Files.writeString(plans.resolve(".lent.unsaved.json"), "{\"format\": 1, \"tit");

        assertThat(library.openPlan("lent").draft().orElseThrow())
                .isInstanceOfSatisfying(Autosave.Unreadable.class, unreadable -> assertThat(unreadable.why())
                        .hasMessage(draft + ", line 1: the file ends too soon. "
                                + "It was cut off: restore it from a copy, or write what is missing."));

        library.keepDraft(library.openPlan("lent").with(changed.plan()));
        assertThat(plans.resolve(".lent.unreadable-1.json")).hasContent("{\"format\": 1, \"tit");
        assertThat(kept(library.openPlan("lent")).plan()).isEqualTo(changed.plan());

        Files.writeString(draft, "again");
        library.keepDraft(library.openPlan("lent").with(changed.plan()));
        assertThat(plans.resolve(".lent.unreadable-1.json")).hasContent("{\"format\": 1, \"tit");
        assertThat(plans.resolve(".lent.unreadable-2.json")).hasContent("again");
    }
}
