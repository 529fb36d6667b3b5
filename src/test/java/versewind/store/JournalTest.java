package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.plan.Plan;
import versewind.plan.Undo;
import versewind.plan.VersePlace;

class JournalTest {

    private static final Path FOLDER = Path.of("/desk").toAbsolutePath();
    private static final Path PLAN = FOLDER.resolve("plans/lent.json");
    private static final Map<Path, byte[]> FILES = Map.of(
            FOLDER.resolve("instruments/nether-wick.json"),
            SmallOrgan.bytes(SmallOrgan.FILE),
            PLAN,
            SmallOrgan.bytes(SmallOrgan.PLAN));

    @TempDir
    Path folder;

    private Library library;

    @BeforeEach
    void a_library() throws IOException {
        Files.createDirectory(folder.resolve("plans"));
        Files.createDirectory(folder.resolve("instruments"));
        Files.writeString(folder.resolve("instruments/nether-wick.json"), SmallOrgan.FILE);
        Files.writeString(folder.resolve("plans/lent.json"), SmallOrgan.PLAN);
        library = new Library(folder);
    }

    private static Undo<Plan> step(Undo<Plan> history, Random random) {
        Plan plan = history.now();
        return switch (random.nextInt(6)) {
            case 0 -> history.undo();
            case 1 -> history.redo();
            case 2 -> history.to(plan.withPeople(1 + random.nextInt(900)));
            case 3 ->
                history.to(
                        plan.hymns().size() > 1
                                ? plan.removing(0)
                                : plan.inserting(0, plan.hymns().get(0)));
            default ->
                history.to(plan.withVerse(
                        new VersePlace(0, random.nextInt(2)),
                        plan.hymns().get(0).verses().get(1).withNote(note(random))));
        };
    }

    private static String note(Random random) {
        return random.ints(random.nextInt(6), 0, 4)
                .mapToObj(i -> List.of("a", "\uD834\uDD1E", "\"\\", "\n\u00e9").get(i))
                .reduce("", String::concat);
    }

    private static Plan now(Library after) throws BadFile {
        OpenPlan open = after.openPlan("lent");
        return open.draft().map(each -> ((Autosave.Kept) each).plan()).orElse(open.plan());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void every_step_comes_back_with_all_that_can_be_undone_and_redone(int seed) throws BadFile, IOException {
        Random random = new Random(seed);
        PowerCutDisk disk = PowerCutDisk.working(FILES);
        Library first = new Library(FOLDER, disk);
        OpenPlan open = first.openPlan("lent");
        Journal journal = first.journal(open);
        Undo<Plan> history = Undo.of(open.plan());
        for (int i = 0; i < 40; i++) {
            history = step(history, random);
            journal.record(history);
            Library after = new Library(FOLDER, PowerCutDisk.working(disk.seen()));
            assertThat(now(after)).isEqualTo(history.now());
        }

        OpenPlan again = new Library(FOLDER, PowerCutDisk.working(disk.seen())).openPlan("lent");
        Undo<Plan> kept = ((Autosave.Kept) again.draft().orElseThrow()).history();
        assertThat(kept.past()).isEqualTo(history.past());
        assertThat(kept.future()).isEqualTo(history.future());
    }

    /** What is undone behind a save was not undone before it: the file begins anew there. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void every_step_comes_back_also_behind_saves(int seed) throws BadFile, IOException {
        Random random = new Random(seed);
        PowerCutDisk disk = PowerCutDisk.working(FILES);
        Library first = new Library(FOLDER, disk);
        OpenPlan open = first.openPlan("lent");
        Journal journal = first.journal(open);
        Undo<Plan> history = Undo.of(open.plan());
        for (int i = 0; i < 60; i++) {
            if (random.nextInt(5) == 0) {
                OpenPlan wanted = open.with(history.now());
                open = wanted.after((SaveOutcome.Saved) first.savePlan(wanted, WhenChanged.REFUSE));
                journal.clear(open);
                history = history.savedAs(history.now());
            } else {
                history = random.nextInt(3) > 0 ? history.undo() : step(history, random);
                journal.record(history);
            }
            Library after = new Library(FOLDER, PowerCutDisk.working(disk.seen()));
            assertThat(now(after)).as("step %d", i).isEqualTo(history.now());
        }
    }

    @Test
    void steps_go_on_in_another_file_when_somebody_takes_the_journal_away() throws BadFile, IOException {
        OpenPlan open = library.openPlan("lent");
        Journal journal = library.journal(open);
        Undo<Plan> history = Undo.of(open.plan()).to(open.plan().withPeople(12));
        journal.record(history);
        Files.delete(journal.path().orElseThrow());

        journal.record(history.to(open.plan().withPeople(13)));
        journal.close();

        Undo<Plan> kept = ((Autosave.Kept) library.openPlan("lent").draft().orElseThrow()).history();
        assertThat(kept.now().heading().people()).isEqualTo(13);
        assertThat(kept.undo().now()).isEqualTo(history.now());
    }

    @Test
    void work_that_another_version_wrote_in_another_way_goes_on_rightly() throws BadFile, IOException {
        String other = SmallOrgan.PLAN.replace(": ", ":  ");
        String fewer = other.replace("70", "20");
        byte[] start = JournalText.start(SmallOrgan.PLAN, other);
        byte[] edit = JournalText.edit(other, fewer);
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        lines.writeBytes(JournalText.head(new Presence("anna", "", 1, Instant.EPOCH)));
        lines.writeBytes(start);
        lines.writeBytes(edit);
        Files.write(folder.resolve("plans/.lent.4711-00000000.journal"), lines.toByteArray());
        OpenPlan open = library.openPlan("lent");
        Journal journal = library.journal(open);
        Undo<Plan> history = ((Autosave.Kept) open.draft().orElseThrow()).history();
        library.restore(open, (Autosave.Kept) open.draft().orElseThrow(), journal);

        journal.record(history.undo());
        journal.record(history.undo().to(open.plan().withPeople(21)));
        journal.close();

        assertThat(history.now().heading().people()).isEqualTo(20);
        assertThat(now(library)).isEqualTo(open.plan().withPeople(21));
    }

    @Test
    void wherever_the_power_goes_no_forced_step_is_lost_and_the_plan_is_the_old_or_the_new_one() throws BadFile {
        int looked = 0;
        boolean stopped = true;
        for (int steps = 0; stopped; steps++) {
            PowerCutDisk disk = PowerCutDisk.cutAfter(steps, FILES);
            List<Plan> since =
                    new ArrayList<>(List.of(SmallOrgan.readPlan(SmallOrgan.PLAN).plan()));
            try {
                work(new Library(FOLDER, disk), since);
            } catch (PowerCutDisk.PowerCut | IOException end) {
                assertThat(disk.hasStopped()).isTrue();
            }
            stopped = disk.hasStopped();
            for (Map<Path, byte[]> left : disk.possible()) {
                Library after = new Library(FOLDER, PowerCutDisk.working(left));
                assertThat(now(after)).as("cut after %d steps", steps).isIn(since);
                assertThat(after.openPlan("lent").plan()).isIn(since);
                looked++;
            }
        }
        assertThat(looked).isGreaterThan(100);
    }

    /** Two edits, forced, a third, saved, a fourth. What may be found on the disk is put into the list. */
    private static void work(Library library, List<Plan> possible) throws BadFile, IOException {
        OpenPlan open = library.openPlan("lent");
        Journal journal = library.journal(open);
        Undo<Plan> history = Undo.of(open.plan());
        for (int i = 1; i <= 2; i++) {
            history = history.to(open.plan().withPeople(100 + i));
            possible.add(history.now());
            journal.record(history);
        }
        journal.force();
        possible.subList(0, 2).clear();
        history = history.to(open.plan().withPeople(103));
        possible.add(0, open.plan());
        possible.add(history.now());
        journal.record(history);
        OpenPlan wanted = open.with(history.now());
        if (library.savePlan(wanted, WhenChanged.REFUSE) instanceof SaveOutcome.Saved saved) {
            journal.clear(wanted.after(saved));
            history = history.to(open.plan().withPeople(104));
            possible.add(history.now());
            journal.record(history);
        }
    }

    @Test
    void whatever_the_disk_refuses_is_told_and_the_next_step_brings_all_with_it() throws BadFile, IOException {
        boolean stopped = true;
        for (int steps = 0; stopped; steps++) {
            PowerCutDisk disk = PowerCutDisk.refusingAfter(steps, FILES);
            Library first = new Library(FOLDER, disk);
            OpenPlan open = new OpenPlan(
                    SmallOrgan.readPlan(SmallOrgan.PLAN).plan(),
                    SmallOrgan.readPlan(SmallOrgan.PLAN).organ(),
                    PLAN,
                    Fingerprint.ofText(SmallOrgan.PLAN),
                    Optional.empty());
            Journal journal = first.journal(open);
            Undo<Plan> history = Undo.of(open.plan());
            for (int i = 1; i <= 3; i++) {
                history = history.to(open.plan().withPeople(100 + i));
                boolean kept = true;
                try {
                    journal.record(history);
                } catch (IOException refused) {
                    kept = false;
                }
                Library after = new Library(FOLDER, PowerCutDisk.working(disk.seen()));
                if (kept) {
                    assertThat(now(after)).as("refused at %d", steps).isEqualTo(history.now());
                }
            }
            stopped = disk.hasStopped();
        }
    }

    @Test
    void a_step_that_cannot_be_kept_beside_the_plan_is_kept_elsewhere_and_found_there() throws Exception {
        Path elsewhere = folder.resolve("state");
        Library first = new Library(folder).keepingElsewhere(elsewhere);
        OpenPlan open = first.openPlan("lent");
        Files.move(folder.resolve("plans"), folder.resolve("away"));
        Files.writeString(folder.resolve("plans"), "no folder");
        Journal journal = first.journal(open);
        Undo<Plan> history = Undo.of(open.plan()).to(open.plan().withPeople(12));

        journal.record(history);

        assertThat(journal.isElsewhere()).isTrue();
        journal.close();
        Files.delete(folder.resolve("plans"));
        Files.move(folder.resolve("away"), folder.resolve("plans"));
        assertThat(now(new Library(folder).keepingElsewhere(elsewhere))).isEqualTo(history.now());
        assertThatThrownBy(() -> {
                    Files.move(folder.resolve("plans"), folder.resolve("away"));
                    Files.writeString(folder.resolve("plans"), "no folder");
                    library.journal(open).record(history);
                })
                .isInstanceOf(IOException.class);
    }

    @Test
    void work_taken_up_is_in_the_new_journal_before_the_old_one_goes() throws BadFile, IOException {
        OpenPlan open = library.openPlan("lent");
        Journal dead = library.journal(open);
        Undo<Plan> history = Undo.of(open.plan())
                .to(open.plan().withPeople(12))
                .to(open.plan().withPeople(13));
        dead.record(history);
        dead.close();

        OpenPlan again = library.openPlan("lent");
        Journal journal = library.journal(again);
        OpenPlan restored = library.restore(again, (Autosave.Kept) again.draft().orElseThrow(), journal);
        journal.record(history.undo());
        journal.close();

        assertThat(restored.fingerprint()).isEqualTo(open.fingerprint());
        assertThat(now(library)).isEqualTo(open.plan().withPeople(12));
        library.discard(library.openPlan("lent").draft().orElseThrow());
        assertThat(library.openPlan("lent").draft()).isEmpty();
        try (var files = Files.list(folder.resolve("bin"))) {
            assertThat(files).singleElement().asString().endsWith(".journal");
        }
    }

    @Test
    void work_that_an_older_version_kept_is_found_restored_and_discarded() throws BadFile, IOException {
        Path old = folder.resolve("plans/.lent.unsaved.json");
        String fewer = SmallOrgan.with(SmallOrgan.PLAN, "\"people\": 70", "\"people\": 20");
        Files.writeString(old, fewer);
        OpenPlan open = library.openPlan("lent");
        Autosave.Kept kept = (Autosave.Kept) open.draft().orElseThrow();
        Journal journal = library.journal(open);
        library.restore(open, kept, journal);
        journal.close();

        assertThat(kept.history().undo().now()).isEqualTo(open.plan());
        assertThat(old).doesNotExist();
        assertThat(now(library).heading().people()).isEqualTo(20);
    }

    @Test
    void work_that_cannot_be_read_is_told_and_left() throws BadFile, IOException {
        Path journal = folder.resolve("plans/.lent.4711-00000000.journal");
        Files.writeString(journal, "x\n".repeat(300));
        Path old = Files.writeString(folder.resolve("plans/.lent.unsaved.json"), "{\"format\": 1, \"tit");

        assertThat(library.openPlan("lent").draft()).get().isInstanceOf(Autosave.Unreadable.class);
        Files.delete(journal);
        assertThat(library.openPlan("lent").draft())
                .get()
                .isInstanceOfSatisfying(Autosave.Unreadable.class, unreadable -> assertThat(unreadable.why())
                        .hasMessage(old + ", line 1: the file ends too soon. It was cut off: restore it from a copy, or"
                                + " write what is missing."));
        assertThat(old).exists();
    }

    @Test
    void a_plan_is_open_as_long_as_its_process_lives_and_not_longer() throws Exception {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process other = new ProcessBuilder(
                        java.toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        OpenElsewhere.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            assertThat(other.getInputStream().read()).isEqualTo('o');
            OpenPlan open = library.openPlan("lent");
            Journal journal = library.journal(open);
            assertThat(open.draft()).isEmpty();
            assertThat(journal.others())
                    .singleElement()
                    .satisfies(each -> assertThat(each.process()).isEqualTo(other.pid()))
                    .satisfies(each ->
                            assertThat(each.sentence()).startsWith("This plan is open in another window since "));
            assertThatThrownBy(() -> library.bin().put("lent")).hasMessageContaining("open in another window");
            assertThat(new Presence("anna", "vestry", 1, Instant.now()).sentence())
                    .startsWith("anna has it open on vestry since ");
            other.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
            assertThat(journal.others()).isEmpty();
            journal.close();
        } finally {
            other.destroyForcibly();
        }
        assertThat(now(library).heading().people()).isEqualTo(33);
    }

    /** Another process, which has the plan open with one edit and never ends by itself. */
    static final class OpenElsewhere {
        private OpenElsewhere() {}

        public static void main(String[] arguments) throws Exception {
            Library library = new Library(Path.of(arguments[0]));
            OpenPlan open = library.openPlan("lent");
            library.journal(open).record(Undo.of(open.plan()).to(open.plan().withPeople(33)));
            System.out.write('o');
            System.out.flush();
            Thread.sleep(Long.MAX_VALUE);
        }
    }

    @Test
    void an_organ_that_is_open_to_be_changed_is_seen_by_others_until_it_is_closed() throws BadFile {
        OpenOrgan organ = library.openOrgan("nether-wick");
        OrganHold hold = library.hold(organ);
        try (OrganHold other = new Library(folder).hold(organ)) {
            assertThat(other.others()).hasSize(1);
            hold.close();
            assertThat(other.others()).isEmpty();
        }
        assertThat(folder.resolve("instruments").toFile().list()).containsExactly("nether-wick.json");
    }

    @Test
    void versions_that_a_link_leads_to_are_neither_made_nor_read_nor_moved() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path letter = Files.writeString(
                Files.createDirectory(elsewhere.resolve("lent")).resolve("2026-10-04T09-30-00Z.json"), "a letter");
        Files.createSymbolicLink(folder.resolve("plans/.versions"), elsewhere);
        OpenPlan open = library.openPlan("lent");

        assertThat(library.savePlan(open.with(open.plan().withPeople(12)), WhenChanged.REFUSE))
                .isInstanceOf(SaveOutcome.Saved.class);
        assertThat(library.versions("lent")).isEmpty();
        library.bin().put("lent");

        assertThat(letter).hasContent("a letter");
        assertThat(elsewhere.resolve("lent").toFile().list()).hasSize(1);
        assertThat(elsewhere.toFile().list()).containsExactly("lent");
    }

    @Test
    void in_a_shared_folder_nothing_is_written_through_a_link_or_read_from_a_pipe() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret"), "a letter");
        OpenPlan open = library.openPlan("lent");
        Journal journal = library.journal(open);
        Path there = journal.path().orElseThrow();
        Files.delete(there);
        Files.createSymbolicLink(there, secret);
        Path pipe = folder.resolve("plans/.lent.1-00000000.journal");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();

        journal.record(Undo.of(open.plan()).to(open.plan().withPeople(12)));

        assertThat(secret).hasContent("a letter");
        assertThat(library.openPlan("lent").plan()).isEqualTo(open.plan());
        Files.delete(folder.resolve("plans/lent.json"));
        assertThat(new ProcessBuilder(
                                "mkfifo", folder.resolve("plans/lent.json").toString())
                        .start()
                        .waitFor())
                .isZero();
        assertThatThrownBy(() -> library.openPlan("lent")).isInstanceOf(BadFile.class);
        assertThat(library.savePlan(open, WhenChanged.REFUSE)).isInstanceOf(SaveOutcome.NotSaved.class);
    }
}
