package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.schema.DraftChange;
import versewind.schema.DraftLine;
import versewind.schema.InstrumentFields;
import versewind.schema.OrganDraft;
import versewind.schema.RowKind;
import versewind.screen.Update;
import versewind.screen.View;
import versewind.screen.library.LibraryEvent;
import versewind.screen.organ.OrganEvent;
import versewind.screen.organ.SavingScreen;
import versewind.screen.plan.FileEvent;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.screen.state.State;
import versewind.screen.state.Transition;
import versewind.screen.toolkit.Marks;
import versewind.sheet.SheetHtml;
import versewind.store.Autosave;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.SaveOutcome;
import versewind.store.WhenChanged;

class EffectRunnerTest {

    private static final String SHEET = "<!DOCTYPE html>" + SheetHtml.MADE_BY;

    @TempDir
    private Path folder;

    private List<Event> written(String html) throws IOException, BadFile {
        return written("wedding.html", html);
    }

    private List<Event> written(String name, String html) throws IOException, BadFile {
        for (Path file : List.of(Path.of("plans/wedding.json"), Path.of("instruments/ambrelow.json"))) {
            Files.createDirectories(folder.resolve(file).getParent());
            Files.write(folder.resolve(file), Files.readAllBytes(file));
        }
        Library library = new Library(folder);
        try (JournalWriter journal = new JournalWriter(library, told -> {});
                Browsing browsing = new Browsing(library, told -> {});
                BackgroundSearch proposing = new BackgroundSearch(input -> {})) {
            EffectRunner outside = new EffectRunner(library, journal, browsing, proposing, event -> {}, () -> {});
            OpenPlan wedding = library.openPlan("wedding");
            outside.read(wedding);
            outside.begun(wedding);
            return outside.writeSheet(name, html, SheetHtml.MADE_BY);
        }
    }

    @Test
    void the_sheet_is_written_beside_the_plan() throws IOException, BadFile {
        Path sheet = folder.resolve("plans/wedding.html");
        assertThat(written(SHEET)).containsExactly(new Event.Done(new Delivery(System.getenv()).words(sheet)));
        assertThat(sheet).hasContent(SHEET);
        assertThat(written(SHEET + "again")).hasSize(1);
        assertThat(sheet).hasContent(SHEET + "again");
    }

    @Test
    void the_library_is_named_where_the_open_plan_lies_elsewhere() throws BadFile {
        Library library = new Library(folder);
        try (JournalWriter journal = new JournalWriter(library, told -> {});
                Browsing browsing = new Browsing(library, told -> {});
                BackgroundSearch proposing = new BackgroundSearch(input -> {})) {
            EffectRunner outside = new EffectRunner(library, journal, browsing, proposing, event -> {}, () -> {});
            assertThat(outside.listPlans()).isEmpty();
            outside.read(library.openPlan("plans/wedding.json"));
            assertThat(outside.listPlans())
                    .containsExactly(new Event.Done("These are the plans in " + folder.resolve("plans")
                            + "; the one that is open lies elsewhere."));
        }
    }

    @Test
    void no_folder_is_made_for_a_sheet() throws IOException, BadFile {
        Path there = folder.resolve("nosuch/wedding.html");

        assertThat(written(there.toString(), SHEET))
                .containsExactly(new Event.Failed("The sheet is not written to " + there + ": There is no folder "
                        + there.getParent() + ". Create it first, or choose another name."));
        assertThat(there.getParent()).doesNotExist();
    }

    @Test
    void a_file_that_is_no_sheet_is_left_as_it_is() throws IOException, BadFile {
        Path page = folder.resolve("plans/wedding.html");
        Files.createDirectories(page.getParent());
        Files.writeString(page, "the order of service");
        assertThat(written(SHEET))
                .containsExactly(new Event.Failed("The sheet is not written to " + page
                        + ": A file of another kind has this name. Choose another name."));
        assertThat(page).hasContent("the order of service");
    }

    @Test
    void without_a_plan_there_is_no_sheet() throws IOException {
        Library library = new Library(folder);
        try (JournalWriter journal = new JournalWriter(library, told -> {});
                Browsing browsing = new Browsing(library, told -> {});
                BackgroundSearch proposing = new BackgroundSearch(input -> {})) {
            assertThat(new EffectRunner(library, journal, browsing, proposing, event -> {}, () -> {})
                            .writeSheet("wedding.html", SHEET, SheetHtml.MADE_BY))
                    .containsExactly(new Event.Failed("No plan is open."));
        }
    }

    @Test
    void whoever_plays_a_new_plan_plays_the_next_one_too_for_as_many_people() throws IOException, BadFile {
        Library library = Library.founded(folder.resolve("own"), Optional.of(Path.of("")));
        ServiceHeading heading = new ServiceHeading("Evensong", Optional.empty(), 30, "");
        try (JournalWriter journal = new JournalWriter(library, told -> {});
                Browsing browsing = new Browsing(library, told -> {});
                BackgroundSearch proposing = new BackgroundSearch(input -> {})) {
            EffectRunner outside = new EffectRunner(library, journal, browsing, proposing, event -> {}, () -> {});
            outside.createPlan(heading, "st-tethwin");
            assertThat(outside.beginPlan("st-tethwin"))
                    .containsExactly(new LibraryEvent.PlanBegun("st-tethwin", "St Tethwin", Player.WITH_PEDALS, 30));
            outside.createPlan(heading.withPeople(44).withPlayer(Player.MANUALS_ONLY), "st-tethwin");
            assertThat(outside.beginPlan("st-tethwin"))
                    .containsExactly(new LibraryEvent.PlanBegun("st-tethwin", "St Tethwin", Player.MANUALS_ONLY, 44));
        }
    }

    @Test
    void a_service_is_moved_found_by_its_tune_and_offered_for_the_same_tune()
            throws IOException, InterruptedException, BadFile {
        Library library = Library.founded(folder.resolve("own"), Optional.of(Path.of("")));
        BlockingQueue<Event> told = new LinkedBlockingQueue<>();
        try (JournalWriter journal = new JournalWriter(library, event -> {});
                Browsing browsing = new Browsing(library, told::add);
                BackgroundSearch proposing = new BackgroundSearch(input -> {})) {
            EffectRunner outside = new EffectRunner(library, journal, browsing, proposing, event -> {}, () -> {});
            List<Event> moved = outside.movePlan("harvest-festival", "little-corvening");
            assertThat(moved).hasSize(2);
            assertThat(moved.get(0)).isInstanceOfSatisfying(FileEvent.PlanOpened.class, opened -> {
                assertThat(opened.instrument().name()).isEqualTo("All Hallows");
                assertThat(opened.plan().hymns()).hasSize(4);
            });
            assertThat(((LibraryEvent.ServiceMoved) moved.get(1)).replaced())
                    .anyMatch(each -> each.becomes().isEmpty());

            outside.searchPlans("corvening");
            assertThat(told.poll(20, TimeUnit.SECONDS))
                    .isInstanceOfSatisfying(LibraryEvent.PlansFound.class, found -> assertThat(found.where())
                            .containsEntry("harvest-festival", "CORVENING"));
            Hymn like = new Hymn("", "Another title", "corvening", "", "", OptionalInt.empty(), "", List.of());
            outside.findHymn("another-plan", like, Effect.Telling.LISTED);
            assertThat(told.poll(20, TimeUnit.SECONDS))
                    .isInstanceOfSatisfying(LibraryEvent.HymnsFound.class, found -> assertThat(found.found())
                            .extracting(Chooser.Row::id)
                            .contains("harvest-festival\n0"));
        }
    }

    @Test
    void of_many_saved_versions_the_last_ten_are_kept_and_the_first_of_them_is_restored_as_an_edit() throws Exception {
        Library library = Library.founded(folder.resolve("own"), Optional.of(Path.of("")));
        OpenPlan open = library.openPlan("wedding");
        for (int people = 101; people <= 112; people++) {
            OpenPlan wanted = open.with(open.plan().withPeople(people));
            open = wanted.after((SaveOutcome.Saved) library.savePlan(wanted, WhenChanged.REFUSE));
        }
        try (JournalWriter journal = new JournalWriter(library, told -> {});
                Browsing browsing = new Browsing(library, told -> {});
                BackgroundSearch proposing = new BackgroundSearch(input -> {})) {
            EffectRunner outside = new EffectRunner(library, journal, browsing, proposing, event -> {}, () -> {});
            LibraryEvent.VersionsListed listed = (LibraryEvent.VersionsListed)
                    outside.listVersions("wedding").get(0);
            List<Event> restored = outside.openVersion("wedding", 9);

            assertThat(listed.versions()).hasSize(10);
            State state = Update.empty(80, 24, Marks.UNICODE, LocalDate.of(2027, 5, 1));
            for (Event event : restored) {
                Transition step = Update.step(state, event);
                state = step.state();
                step.effects().forEach(effect -> assertThat(effect.by(outside)).isEmpty());
            }
            assertThat(state.work().orElseThrow().plan()).isEqualTo(open.plan().withPeople(102));
            assertThat(state.work().orElseThrow().history().undo().now()).isEqualTo(open.plan());
        }
        assertThat(library.openPlan("wedding").draft())
                .get()
                .isInstanceOfSatisfying(
                        Autosave.Kept.class,
                        kept -> assertThat(kept.plan().heading().people()).isEqualTo(102));
        assertThat(library.openPlan("wedding").plan()).isEqualTo(open.plan());
    }

    @Test
    void a_stop_renamed_in_many_plans_leaves_the_keys_free_and_can_be_stopped() throws Exception {
        Library library = Library.founded(folder.resolve("own"), Optional.of(Path.of("")));
        byte[] wedding = Files.readAllBytes(folder.resolve("own/plans/wedding.json"));
        for (int i = 0; i < 30; i++) {
            Files.write(folder.resolve("own/plans/wedding-" + i + ".json"), wedding);
        }
        Instrument organ = library.openOrgan("ambrelow").organ().instrument();
        OrganDraft draft = OrganDraft.of(organ);
        DraftLine stop = draft.lines().stream()
                .filter(line -> line.part() == RowKind.STOP)
                .findFirst()
                .orElseThrow();
        OrganDraft renamed = draft.with(
                draft.lines().indexOf(stop),
                stop.with(InstrumentFields.NAME, "Another Name").values());
        BlockingQueue<Event> told = new LinkedBlockingQueue<>();
        try (JournalWriter journal = new JournalWriter(library, event -> {});
                Browsing browsing = new Browsing(library, event -> {});
                BackgroundSearch proposing = new BackgroundSearch(input -> {})) {
            List<EffectRunner> runner = new ArrayList<>();
            EffectRunner outside = new EffectRunner(
                    library,
                    journal,
                    browsing,
                    proposing,
                    event -> {
                        told.add(event);
                        if (event instanceof OrganEvent.Rewriting) {
                            runner.get(0).stopSaving();
                        }
                    },
                    () -> {});
            runner.add(outside);
            State state = Update.empty(80, 24, Marks.UNICODE, LocalDate.of(2027, 5, 1));
            for (Event event : outside.openOrgan("ambrelow")) {
                state = Update.step(state, event).state();
            }
            for (Event event : outside.saveOrgan(
                    renamed.instrument().orElseThrow(),
                    DraftChange.of(organ, renamed).names(),
                    List.of())) {
                state = Update.step(state, event).state();
            }
            assertThat(state.top()).isEqualTo(new SavingScreen(0, 0));
            Event event = told.poll(10, TimeUnit.SECONDS);
            assertThat(event).isInstanceOf(OrganEvent.Rewriting.class);
            state = Update.step(state, event).state();
            assertThat(View.paint(state).row(11)).contains("9 of 31 plans are up to date.");

            state = Update.step(state, told.poll(10, TimeUnit.SECONDS)).state();

            assertThat(state.notice().text()).contains("stopped with 22 plans to go");
            assertThat(state.top()).isNotInstanceOf(SavingScreen.class);
        }
        assertThat(library.openPlan("wedding-9")
                        .instrument()
                        .stops()
                        .get(0)
                        .name()
                        .toString())
                .contains("Another Name");
    }
}
