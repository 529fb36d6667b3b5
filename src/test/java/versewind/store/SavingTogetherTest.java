package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** Programs that save one plan at the same moment: none writes over what another has just saved. */
class SavingTogetherTest {

    private static final VersePlace PLACE = new VersePlace(0, 1);
    private static final int SAVES = Integer.getInteger("versewind.saves", 20);

    @TempDir
    private Path folder;

    /** A program of its own: adds one mark after another to a note, each to what is in the file then. */
    static final class Saver {
        private Saver() {}

        public static void main(String[] arguments) throws Exception {
            Library library = new Library(Path.of(arguments[0]));
            for (int i = 0; i < Integer.parseInt(arguments[2]); i++) {
                String mark = " " + arguments[1] + i;
                SaveOutcome outcome = new SaveOutcome.ChangedOnDisk(Path.of(""));
                while (outcome instanceof SaveOutcome.ChangedOnDisk) {
                    OpenPlan open = library.openPlan("wedding");
                    Verse verse = open.plan().verse(PLACE);
                    Plan marked = open.plan().withVerse(PLACE, verse.withNote((verse.note() + mark).strip()));
                    outcome = library.savePlan(open.with(marked), WhenChanged.REFUSE);
                }
                if (!(outcome instanceof SaveOutcome.Saved)) {
                    throw new IllegalStateException(outcome.toString());
                }
            }
        }
    }

    @Test
    void every_change_is_in_the_file() throws Exception {
        begin();
        saveTogether(SAVES);
    }

    @Test
    void every_change_is_in_the_file_where_all_find_the_turn_of_one_that_was_stopped() throws Exception {
        begin();
        Files.createFile(folder.resolve("plans/.wedding.json.turn.saving"));
        saveTogether(1);
    }

    private void begin() throws Exception {
        for (Path file : List.of(Path.of("plans/wedding.json"), Path.of("instruments/ambrelow.json"))) {
            Files.createDirectories(folder.resolve(file).getParent());
            Files.write(folder.resolve(file), Files.readAllBytes(file));
        }
        clearNote();
    }

    private void saveTogether(int saves) throws Exception {
        List<Process> savers = new ArrayList<>();
        for (String who : List.of("a", "b", "c")) {
            savers.add(saver(who, saves));
        }
        for (Process saver : savers) {
            assertThat(saver.waitFor()).isZero();
        }
        String[] marks = new Library(folder)
                .openPlan("wedding")
                .plan()
                .verse(PLACE)
                .note()
                .split(" ");
        assertThat(marks)
                .containsExactlyInAnyOrderElementsOf(IntStream.range(0, saves)
                        .boxed()
                        .flatMap(i -> List.of("a" + i, "b" + i, "c" + i).stream())
                        .toList());
        try (var files = Files.list(folder.resolve("plans"))) {
            assertThat(files.filter(file -> file.toString().endsWith(".saving")))
                    .isEmpty();
        }
    }

    private void clearNote() throws BadFile {
        Library library = new Library(folder);
        OpenPlan open = library.openPlan("wedding");
        Plan plan = open.plan();
        SaveOutcome outcome = library.savePlan(
                open.with(plan.withVerse(PLACE, plan.verse(PLACE).withNote(""))), WhenChanged.REFUSE);
        assertThat(outcome).isInstanceOf(SaveOutcome.Saved.class);
    }

    private Process saver(String who, int saves) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Saver.class.getName(),
                        folder.toString(),
                        who,
                        Integer.toString(saves))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
