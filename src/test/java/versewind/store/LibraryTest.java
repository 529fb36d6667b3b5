package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.schema.KnownOrgan;
import versewind.schema.RandomWorks;

class LibraryTest {

    @TempDir
    Path folder;

    private Path plans;
    private Path instruments;
    private Library library;

    @BeforeEach
    void a_library_with_one_organ_and_one_plan() throws IOException {
        plans = Files.createDirectory(folder.resolve("plans"));
        instruments = Files.createDirectory(folder.resolve("instruments"));
        Files.writeString(instruments.resolve("nether-wick.json"), SmallOrgan.FILE);
        Files.writeString(plans.resolve("lent.json"), SmallOrgan.PLAN);
        library = new Library(folder);
    }

    private static Plan entitled(Plan plan, String title) {
        return plan.withHeading(plan.heading().withTitle(title));
    }

    private static SaveOutcome save(Library library, OpenPlan open) {
        return library.savePlan(open, WhenChanged.REFUSE);
    }

    @Test
    void plans_are_listed_with_title_and_date_even_if_the_rest_cannot_be_read() throws BadFile, IOException {
        Files.writeString(plans.resolve("broken.json"), "{\"title\": \"Half a plan\", \"hymns\": [{{{");
        Files.writeString(plans.resolve("empty.json"), "");
        Files.writeString(plans.resolve("notes.txt"), "not a plan");
        Files.writeString(plans.resolve(".lent.json.12-1.saving"), "left over");

        List<PlanEntry> listed = library.catalogue().read();

        assertThat(listed).extracting(entry -> entry.file().id()).containsExactly("broken", "empty", "lent");
        assertThat(listed)
                .extracting(PlanEntry::title)
                .containsExactly("Half a plan", "empty", "Second Sunday of Lent");
        assertThat(listed).extracting(PlanEntry::hasHead).containsExactly(false, false, true);
        assertThat(listed.get(2).date()).hasValue(LocalDate.of(2027, 2, 21));
        assertThat(listed.get(2).instrument()).isEqualTo("nether-wick");
    }

    @Test
    void the_files_of_plans_come_those_edited_last_first() throws BadFile, IOException {
        for (int day = 1; day <= 3; day++) {
            Path file = Files.writeString(plans.resolve("day-" + day + ".json"), "");
            Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2020-01-0" + day + "T00:00:00Z")));
        }

        assertThat(library.catalogue().files())
                .extracting(PlanFile::id)
                .containsExactly("lent", "day-3", "day-2", "day-1");
    }

    @Test
    void the_head_of_a_file_that_has_changed_is_read_again() throws BadFile, IOException {
        Catalogue catalogue = library.catalogue();
        assertThat(catalogue.read()).extracting(PlanEntry::title).containsExactly("Second Sunday of Lent");
        Path file = Files.writeString(plans.resolve("lent.json"), SmallOrgan.PLAN.replace("Second", "Third"));
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));

        assertThat(catalogue.read()).extracting(PlanEntry::title).containsExactly("Third Sunday of Lent");
    }

    @Test
    void an_instrument_that_has_changed_is_read_again() throws BadFile, IOException {
        library.openPlan("lent");
        Files.writeString(
                instruments.resolve("nether-wick.json"), SmallOrgan.FILE.replace("St Osyn", "St Osyn the Less"));

        assertThat(library.openPlan("lent").instrument().name()).isEqualTo("St Osyn the Less");
    }

    @Test
    void who_plays_new_plans_is_kept_in_the_library() throws BadFile, IOException {
        assertThat(library.player()).isEqualTo(Player.WITH_PEDALS);
        library.savePlayer(Player.MANUALS_ONLY);
        assertThat(new Library(folder).player()).isEqualTo(Player.MANUALS_ONLY);
        assertThat(folder.resolve("player.json")).hasContent("{\n  \"format\": 1,\n  \"player\": \"manuals only\"\n}");

        Files.writeString(folder.resolve("player.json"), "{\"format\": 1, \"player\": \"hands\"}");
        assertThatThrownBy(library::player)
                .isInstanceOf(BadFile.class)
                .hasMessageContaining("player.json")
                .hasMessageContaining("Use with pedals or manuals only.");
    }

    @Test
    void a_library_is_made_on_first_use_and_left_alone_from_then_on() throws BadFile, IOException {
        Path own = folder.resolve("data").resolve("versewind");

        Library made = Library.founded(own, Optional.of(folder));
        assertThat(made.openPlan("lent").plan())
                .isEqualTo(library.openPlan("lent").plan());
        Files.delete(own.resolve("plans/lent.json"));
        assertThat(Library.founded(own, Optional.of(folder)).catalogue().read()).isEmpty();
        try (Stream<Path> beside = Files.list(own.getParent())) {
            assertThat(beside).containsExactly(own);
        }
    }

    @Test
    void a_library_that_cannot_be_made_is_told_with_a_way_out() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");

        assertThatThrownBy(() -> Library.founded(file.resolve("versewind"), Optional.of(folder)))
                .isInstanceOf(BadFile.class)
                .hasMessageContaining("the folder for your plans could not be made")
                .hasMessageEndingWith("Name another with --library.");
    }

    @Test
    void instruments_are_listed_with_name_and_place() throws BadFile {
        assertThat(library.instruments())
                .containsExactly(new InstrumentEntry(
                        "nether-wick", instruments.resolve("nether-wick.json"), "St Osyn", "Nether Wick"));
    }

    @Test
    void a_library_that_is_not_there_yet_is_empty() throws BadFile {
        Library none = new Library(folder.resolve("none"));

        assertThat(none.catalogue().read()).isEmpty();
        assertThat(none.instruments()).isEmpty();
    }

    @Test
    void a_plan_opens_by_its_id_and_by_its_path_with_its_instrument() throws BadFile {
        OpenPlan byId = library.openPlan("lent");
        OpenPlan byPath = new Library(Path.of("nowhere"))
                .openPlan(plans.resolve("lent.json").toString());

        assertThat(byId.plan()).isEqualTo(SmallOrgan.readPlan(SmallOrgan.PLAN).plan());
        assertThat(byId.instrument()).isEqualTo(SmallOrgan.organ());
        assertThat(byId.draft()).isEmpty();
        assertThat(byPath).isEqualTo(byId);
    }

    @Test
    void a_plan_that_lies_elsewhere_finds_its_instrument_in_the_library() throws BadFile, IOException {
        Path elsewhere = Files.writeString(folder.resolve("copy.json"), SmallOrgan.PLAN);

        assertThat(library.openPlan(elsewhere).instrument()).isEqualTo(SmallOrgan.organ());
    }

    @Test
    void an_id_that_does_not_exist_is_told_with_those_that_do() {
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan("lend"))
                .withMessage(plans + ": there is no \"lend\" here. Did you mean \"lent\"?");
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openInstrument("../etc"))
                .withMessage("../etc: there is no such file. "
                        + "Look for it in another folder, or restore it from a copy.");
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan("a\0b"))
                .withMessage(plans + ": there is no \"a b\" here. There are \"lent\".");
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan("a\0b.json"))
                .withMessage("a b.json: no file can have this name. Check the name.");
    }

    @Test
    void an_instrument_that_is_missing_is_told_with_the_places_where_it_was_looked_for() throws IOException {
        Path other = Files.createDirectories(folder.resolve("other/plans")).resolve("lent.json");
        Files.writeString(other, SmallOrgan.with(SmallOrgan.PLAN, "nether-wick", "nether-wyck"));

        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan(other))
                .withMessage(other + ", line 5, instrument: the instrument \"nether-wyck\" is missing: there is no "
                        + folder.resolve("other/instruments/nether-wyck.json") + " and no "
                        + instruments.resolve("nether-wyck.json") + ". Did you mean \"nether-wick\"?");
    }

    @Test
    void an_instrument_that_a_link_leads_to_is_read_only_within_the_folder_of_instruments() throws Exception {
        Path organ = folder.resolve("instruments/nether-wick.json");
        Path inside = Files.move(organ, folder.resolve("instruments/renamed.json"));
        Files.createSymbolicLink(organ, inside.getFileName());
        assertThat(library.openPlan("lent").instrument().name()).isNotNull();
        Files.delete(organ);
        Path outside = Files.move(inside, folder.resolve("letter.json"));
        Files.createSymbolicLink(organ, outside);

        assertThatThrownBy(() -> library.openPlan("lent"))
                .isInstanceOf(BadFile.class)
                .hasMessage(
                        organ + ": this link leads out of the folder, to " + outside + ". Put the file itself here.");
        Files.delete(organ);
        Files.createSymbolicLink(organ, organ);
        assertThatThrownBy(() -> library.openPlan("lent")).isInstanceOf(BadFile.class);
    }

    @Test
    void a_mistake_in_the_instrument_of_a_plan_is_told_in_the_instruments_file() throws IOException {
        Path file = instruments.resolve("nether-wick.json");
        Files.writeString(file, SmallOrgan.with(SmallOrgan.FILE, "\"seats\": 160", "\"seats\": true"));

        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan("lent"))
                .withMessage(file + ", line 8, room.seats: expected a number, found true. "
                        + "Enter a whole number from 0 to 50000.");
    }

    @Test
    void a_folder_a_missing_file_and_one_that_is_too_large_are_told_so() throws IOException {
        Path large = Files.write(plans.resolve("large.json"), new byte[JsonTree.LARGEST_FILE + 1]);

        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan(plans))
                .withMessage(plans + ": this is a folder. Name a file in it.");
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan(Path.of("/")))
                .withMessage("/: this is a folder. Name a file in it.");
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan(plans.resolve("none.json")))
                .withMessage(plans.resolve("none.json")
                        + ": there is no such file. Look for it in another folder, or restore it from a copy.");
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan(large))
                .withMessage(large + ", line 1: the file is larger than 8 MB. Check that it is the right file.");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_device_is_not_read() {
        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan(Path.of("/dev/null")))
                .withMessage("/dev/null: this is a device, not a file. Name a file.");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_link_to_a_file_that_is_gone_is_told_so() throws IOException {
        Path link = Files.createSymbolicLink(plans.resolve("easter.json"), Path.of("gone.json"));

        assertThatExceptionOfType(BadFile.class)
                .isThrownBy(() -> library.openPlan("easter"))
                .withMessage(link + ": this link leads to no file. "
                        + "Look for it in another folder, or restore it from a copy.");
    }

    @Test
    void a_plan_that_would_not_open_again_is_not_saved() throws BadFile {
        OpenPlan open = library.openPlan("lent");
        ServiceHeading endless = new ServiceHeading("x".repeat(JsonTree.LARGEST_FILE), Optional.empty(), 1, "");
        ServiceHeading farAway = new ServiceHeading("x", Optional.of(LocalDate.of(12_026, 1, 1)), 1, "");

        assertThat(save(library, open.with(open.plan().withHeading(endless))))
                .isEqualTo(new SaveOutcome.NotSaved(
                        open.path(),
                        "It could not be opened again: the file is larger than 8 MB. "
                                + "Check that it is the right file."));
        assertThat(save(library, open.with(open.plan().withHeading(farAway))))
                .isEqualTo(new SaveOutcome.NotSaved(
                        open.path(),
                        "It could not be opened again: \"+12026-01-01\" is not a date. "
                                + "Enter a date, such as 20 Dec 2026 or 2026-12-20."));
        assertThat(open.path()).hasContent(SmallOrgan.PLAN);
    }

    @Test
    void an_id_that_leads_out_of_the_library_is_refused() throws BadFile {
        OpenPlan open = library.openPlan("lent");

        assertThatIllegalArgumentException().isThrownBy(() -> library.newPlan("../lent", open.plan(), open.organ()));
        assertThatIllegalArgumentException().isThrownBy(() -> library.newInstrument(".hidden"));
    }

    @Test
    void a_plan_is_saved_again_and_again() throws BadFile {
        OpenPlan open = library.openPlan("lent");
        for (String title : List.of("One", "Two", "Three")) {
            OpenPlan changed = open.with(entitled(open.plan(), title));
            SaveOutcome outcome = save(library, changed);

            assertThat(outcome).isInstanceOf(SaveOutcome.Saved.class);
            open = changed.after((SaveOutcome.Saved) outcome);
            assertThat(library.openPlan("lent")).isEqualTo(open);
        }
    }

    @Test
    void a_plan_that_somebody_else_has_changed_is_not_written_over_unless_told_so() throws BadFile, IOException {
        OpenPlan open = library.openPlan("lent");
        OpenPlan mine = open.with(entitled(open.plan(), "Mine"));
        save(library, open.with(entitled(open.plan(), "Theirs")));

        assertThat(save(library, mine)).isEqualTo(new SaveOutcome.ChangedOnDisk(open.path()));
        assertThat(library.openPlan("lent").plan().heading().title()).isEqualTo("Theirs");

        assertThat(library.savePlan(mine, WhenChanged.OVERWRITE)).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(library.openPlan("lent").plan().heading().title()).isEqualTo("Mine");
    }

    @Test
    void a_plan_that_somebody_else_has_taken_away_is_not_written_unless_told_so() throws BadFile, IOException {
        OpenPlan open = library.openPlan("lent");
        Files.delete(open.path());

        assertThat(save(library, open)).isEqualTo(new SaveOutcome.ChangedOnDisk(open.path()));
        assertThat(open.path()).doesNotExist();

        assertThat(library.savePlan(open, WhenChanged.OVERWRITE)).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(open.path()).hasContent(SmallOrgan.PLAN);
    }

    @Test
    void a_file_that_cannot_be_read_is_never_written_over() throws BadFile, IOException {
        OpenPlan open = library.openPlan("lent");
        Files.writeString(open.path(), "half of somebody's work");

        assertThat(save(library, open)).isEqualTo(new SaveOutcome.ChangedOnDisk(open.path()));
        assertThat(library.savePlan(open, WhenChanged.OVERWRITE))
                .isEqualTo(new SaveOutcome.NotSaved(
                        open.path(),
                        "The file there now cannot be read, so it was not overwritten. Save under another name."));
        assertThat(open.path()).hasContent("half of somebody's work");
    }

    @Test
    void a_new_plan_is_written_when_it_is_saved_and_not_over_another() throws BadFile {
        OpenPlan lent = library.openPlan("lent");
        String id = library.freePlanId("Harvest: All Souls' (evening)");
        OpenPlan fresh = library.newPlan(id, entitled(lent.plan(), "Harvest"), lent.organ());

        assertThat(id).isEqualTo("harvest-all-souls-evening");
        assertThat(fresh.path()).doesNotExist();
        assertThat(save(library, fresh)).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(library.openPlan(id).plan()).isEqualTo(fresh.plan());
        assertThat(save(library, fresh)).isEqualTo(new SaveOutcome.ChangedOnDisk(fresh.path()));
        assertThat(library.freePlanId("Harvest, All Souls Evening")).isEqualTo("harvest-all-souls-evening-2");
    }

    @Test
    void a_plan_for_another_instrument_is_a_mistake_of_the_program() throws BadFile {
        OpenPlan open = library.openPlan("lent");
        OpenPlan misfit = new OpenPlan(
                open.plan(),
                KnownOrgan.of(new RandomWorks(1).instrument()),
                open.path(),
                open.fingerprint(),
                Optional.empty());

        assertThatIllegalArgumentException().isThrownBy(() -> save(library, misfit));
        assertThat(open.path()).hasContent(SmallOrgan.PLAN);
    }

    @Test
    void a_new_instrument_is_written_but_not_over_another() throws BadFile {
        SaveOutcome first = library.saveNewInstrument(
                library.newInstrument(library.freeInstrumentId("St Osyn")), SmallOrgan.organ());

        assertThat(first).isInstanceOf(SaveOutcome.Saved.class);
        assertThat(library.openInstrument("st-osyn")).isEqualTo(SmallOrgan.organ());
        assertThat(library.saveNewInstrument(library.newInstrument("st-osyn"), SmallOrgan.organ()))
                .isEqualTo(new SaveOutcome.ChangedOnDisk(instruments.resolve("st-osyn.json")));
        assertThat(library.freeInstrumentId("St. Osyn")).isEqualTo("st-osyn-2");
    }
}
