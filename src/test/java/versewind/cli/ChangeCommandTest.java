package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.store.BadFile;
import versewind.store.Journal;
import versewind.store.Library;

class ChangeCommandTest {

    private static final VersePlace SECOND = new VersePlace(0, 2);

    @TempDir
    Path folder;

    @BeforeEach
    void a_library_with_one_plan() throws IOException {
        Typing.makeLibrary(folder, Files.readString(Path.of("plans/harvest-festival.json")));
    }

    private Reply change(String... options) {
        List<String> all = new ArrayList<>(List.of("change", "odd", "--library", folder.toString()));
        all.addAll(List.of(options));
        return typed(all.toArray(String[]::new));
    }

    private Verse second() throws BadFile {
        return new Library(folder).openPlan("odd").plan().verse(SECOND);
    }

    @Test
    void what_is_named_is_changed_and_the_rest_stays() throws BadFile {
        Verse before = second();

        Reply reply = change(
                "--hymn",
                "208",
                "--verse",
                "V2",
                "--draw",
                "Great: open 8, princ",
                "--add",
                "Swell: oboe",
                "--put-in",
                "Great: princ",
                "--box",
                "Swell=shut",
                "--mode",
                "soloist");

        assertThat(reply.words())
                .isEqualTo("versewind: The version before is kept: Ctrl-V in the library restores it.\n");
        assertThat(reply.results()).isEqualTo("""
            V2: Great: Open Diapason 8; Swell: Oboe 8; Swell closed; four parts on Great;
                soloist, ordinary.
                p 71\u00b14 dB(A), words covered, 7 in 10.
            """);
        assertThat(second()).isEqualTo(before.withSungBy(SungBy.SOLO_VOICE).withRegistration(second().registration()));
        assertThat(folder.resolve("plans/.versions/odd")).isNotEmptyDirectory();
    }

    @Test
    void a_verse_that_is_no_longer_what_its_piston_holds_is_named() {
        assertThat(change("--hymn", "211", "--verse", "V1", "--put-in", "Great: Mixture III")
                        .results())
                .contains("\n    Piston G4 holds something else since 208 V1. Free for it: --piston \"");
        assertThat(change("--hymn", "208", "--verse", "V1", "--put-in", "Great: Mixture III")
                        .results())
                .doesNotContain("Piston G4")
                .contains("\n    No longer what their piston holds: 208 Inter, ");
        assertThat(change("--hymn", "208", "--verse", "V2", "--put-in", "Great: Mixture III")
                        .results())
                .doesNotContain("iston");
    }

    @Test
    void the_version_that_is_kept_is_the_one_from_before() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve("plans/odd.json"));
        change("--hymn", "208", "--verse", "V2", "--mode", "soloist");

        try (Stream<Path> versions = Files.list(folder.resolve("plans/.versions/odd"))) {
            assertThat(versions).singleElement().satisfies(version -> assertThat(version)
                    .hasBinaryContent(before));
        }
    }

    @Test
    void what_is_so_already_is_no_mistake() throws BadFile {
        change("--hymn", "208", "--verse", "V2", "--put-in", "Great: Mixture III");
        Verse before = second();

        Reply again = change("--hymn", "208", "--verse", "V2", "--put-in", "Great: Mixture III");

        assertThat(again.status()).isEqualTo(Reply.GOOD);
        assertThat(again.words()).isEqualTo("versewind: Nothing was changed: V2 is so already.\n");
        assertThat(second()).isEqualTo(before);
    }

    @Test
    void feedback_that_goes_with_its_stops_is_named() {
        assertThat(change("--hymn", "208", "--verse", "V2", "--heard", "too strong")
                        .words())
                .doesNotContain("feedback");
        assertThat(change("--hymn", "208", "--verse", "V2", "--add", "Swell: oboe")
                        .words())
                .contains("versewind: The feedback went with what it was given for: 208 V2.\n");
    }

    @Test
    void a_label_that_two_verses_have_is_refused_with_their_places() throws IOException {
        Path plan = folder.resolve("plans/odd.json");
        Files.writeString(plan, Files.readString(plan).replace("\"V3\"", "\"V2\""));
        byte[] before = Files.readAllBytes(plan);

        assertThat(change("--hymn", "208", "--verse", "v2", "--mode", "soloist").words())
                .isEqualTo("versewind: The hymn has \"V2\" 2 times. Name the place instead:"
                        + " --verse 3 or --verse 4.\n");
        assertThat(plan).hasBinaryContent(before);
        assertThat(change("--hymn", "208", "--verse", "4", "--singing", "gentle", "--mode", "soloist")
                        .status())
                .isEqualTo(Reply.GOOD);
    }

    @Test
    void who_has_the_plan_open_is_told() throws BadFile {
        Library library = new Library(folder);
        Journal journal = library.journal(library.openPlan("odd"));
        String words =
                change("--hymn", "208", "--verse", "V2", "--mode", "soloist").words();
        journal.close();

        assertThat(words)
                .contains("This plan is open in another window since ")
                .endsWith(". There it is merged when the plan is saved next.\n");
        assertThat(change("--hymn", "208", "--verse", "V2", "--mode", "descant").words())
                .doesNotContain("is open");
    }

    @Test
    void a_plan_with_unsaved_work_or_without_a_file_is_not_written_to() throws IOException {
        Path plan = folder.resolve("plans/odd.json");
        Files.writeString(
                folder.resolve("plans/.odd.unsaved.json"),
                Files.readString(plan).replace("\"label\": \"V2\"", "\"label\": \"second\""));

        assertThat(change("--hymn", "208", "--verse", "V2", "--mode", "soloist").words())
                .isEqualTo("versewind: " + plan + " has unsaved work. Restore or discard it first, with" + " versewind "
                        + plan + ".\n");
        assertThat(Typing.typed("change", "-", "--hymn", "208").words()).contains("standard input");
    }

    @Test
    void feedback_is_recorded_for_those_present_or_expected() throws BadFile {
        change("--hymn", "1", "--verse", "V2", "--heard", "too soft", "--present", "60");
        assertThat(second().answer()).contains(new Feedback(HeardAs.TOO_SOFT, 60));

        change("--hymn", "1", "--verse", "V2", "--heard", "right");
        assertThat(second().answer()).contains(new Feedback(HeardAs.RIGHT, 480));
    }

    @Test
    void nothing_is_written_where_it_is_not_clear_what() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve("plans/odd.json"));

        assertThat(change("--mode", "soloist").words()).contains("Say which verse, with --hymn and --verse.");
        assertThat(change("--hymn", "1", "--verse", "V2").words()).contains("Nothing is to be changed.");
        assertThat(change("--hymn", "1", "--verse", "V2", "--present", "60").words())
                .contains("with --heard.");
        assertThat(change("--hymn", "1", "--verse", "V2", "--add", "Great: Flugel 8")
                        .words())
                .contains("Great has no stop \"Flugel 8\"");
        assertThat(folder.resolve("plans/odd.json")).hasBinaryContent(before);
    }

    @Test
    void a_choir_larger_than_the_church_is_said_and_taken() throws BadFile {
        assertThat(change("--hymn", "208", "--verse", "V2", "--mode", "small choir", "--people", "9000")
                        .results())
                .contains("A choir of 9000 is more than the 520 seats of the church.");
        assertThat(second().people()).hasValue(9000);
    }

    @Test
    void a_plan_with_too_large_a_choir_opens_and_says_so() throws IOException {
        Path plan = folder.resolve("plans/odd.json");
        change("--hymn", "208", "--verse", "V2", "--mode", "small choir", "--people", "40");
        Files.writeString(plan, Files.readString(plan).replace("\"people\": 40,", "\"people\": 9000,"));

        assertThat(typed("assess", "odd", "--library", folder.toString()).results())
                .contains("A choir of 9000 is more than the 520 seats of the church.");
    }

    @Test
    void a_soloist_may_still_be_called_a_solo_voice() throws IOException {
        Path plan = folder.resolve("plans/odd.json");
        change("--hymn", "1", "--verse", "V2", "--mode", "solo voice");
        String today = Files.readString(plan);
        assertThat(today).contains("\"soloist\"");

        Files.writeString(plan, today.replace("\"soloist\"", "\"solo voice\""));
        change("--hymn", "1", "--verse", "V1", "--mode", "descant");
        assertThat(plan).content().contains("\"soloist\"").doesNotContain("solo voice");
    }
}
