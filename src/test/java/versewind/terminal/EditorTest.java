package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.organ.BoxPosition;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.store.BadFile;
import versewind.store.Library;

/** A service is planned in a real terminal, from the shell to the file and back. */
@Tag("slow")
class EditorTest {

    @TempDir
    Path folder;

    private Pane pane;

    @BeforeAll
    static void tmux() {
        assumeTrue(Pane.isPossible(), "tmux is not here, so no terminal can be played");
    }

    @BeforeEach
    void open() throws IOException {
        for (String shelf : new String[] {"instruments", "plans"}) {
            Files.createDirectories(folder.resolve(shelf));
            try (Stream<Path> files = Files.list(Path.of(shelf))) {
                for (Path file : files.filter(
                                each -> !each.getFileName().toString().startsWith("."))
                        .toList()) {
                    Files.copy(file, folder.resolve(shelf).resolve(file.getFileName()));
                }
            }
        }
        pane = new Pane(folder);
    }

    @AfterEach
    void close() throws IOException {
        pane.close();
    }

    private void start(String plan) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Path arguments = folder.resolve("arguments");
        Files.writeString(arguments, "-cp \"" + System.getProperty("java.class.path") + "\" versewind.Main");
        pane.command(java + " @arguments " + plan + "; echo status $?");
        pane.await("Hymn 1 of");
    }

    private Plan saved(String plan) throws BadFile {
        return new Library(folder).openPlan(plan).plan();
    }

    @Test
    void a_service_is_planned_saved_left_and_opened_again() throws Exception {
        start("plans/harvest-festival.json");
        pane.type("n", "/", "t", "r", "u", "m", "p", "e", "t", "Enter", "Space");
        pane.await("● Trumpet       8");
        pane.type("2", "+", ">", ">");
        pane.await("box 1/2");
        pane.type("I", "9", "9", "Tab");
        pane.type("-l", "The barn is full");
        pane.type("Enter");
        pane.await("Hymn 2 of 5  99 The barn is full");
        pane.type("Home", "Space", "&", "Enter", "s");
        pane.await("Saved.");
        pane.type("q");
        pane.await("status 0");

        Plan plan = saved("harvest-festival");
        Verse changed = plan.hymns().get(0).verses().get(1);
        assertThat(changed.mode()).isEqualTo(Mode.SMALL_CHOIR);
        assertThat(changed.registration().boxes()).contains(BoxPosition.HALF);
        Hymn added = plan.hymns().get(1);
        assertThat(added.title()).isEqualTo("The barn is full");
        assertThat(added.verses()).extracting(Verse::label).containsExactly("Intro", "V1", "V2", "V3", "Last");
        assertThat(added.verses())
                .allSatisfy(
                        verse -> assertThat(verse.registration().stops().size()).isEqualTo(1));

        pane.command("clear");
        start("plans/harvest-festival.json");
        pane.type("]");
        pane.await("99 The barn is full");
        pane.type("q");
        pane.await("status 0");
    }

    @Test
    void work_on_a_dropped_line_is_offered_again() throws Exception {
        start("plans/ordinary-sunday.json");
        pane.type("n", "0");
        pane.await("unsaved");
        pane.close();
        assertThat(journals()).hasSize(1);
        pane = new Pane(folder);
        start("plans/ordinary-sunday.json");
        pane.await("restore");
        pane.type("Enter");
        pane.await("Restored");
        pane.type("n");
        pane.await("Organ silent");
        pane.type("s");
        pane.await("Saved.");
        pane.type("q");
        pane.await("status 0");
        assertThat(saved("ordinary-sunday")
                        .hymns()
                        .get(0)
                        .verses()
                        .get(1)
                        .registration()
                        .stops()
                        .isEmpty())
                .isTrue();
        assertThat(journals()).isEmpty();
    }

    private List<Path> journals() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("plans"))) {
            return files.filter(file -> file.toString().endsWith(".journal")).toList();
        }
    }

    @Test
    void a_plan_that_cannot_be_read_is_told_before_any_screen_is_taken() throws Exception {
        Files.writeString(folder.resolve("plans/broken.json"), "{\n  \"format\": 1,\n");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Files.writeString(
                folder.resolve("arguments"), "-cp \"" + System.getProperty("java.class.path") + "\" versewind.Main");
        pane.command(java + " @arguments plans/broken.json; echo status $?");
        pane.await("status 2");
        assertThat(pane.screen().replace("\n", "")).contains("plans/broken.json, line");
    }
}
