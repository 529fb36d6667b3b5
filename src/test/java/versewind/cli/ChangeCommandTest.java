package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.store.BadFile;
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
                "--push-in",
                "Great: princ",
                "--box",
                "Swell=shut",
                "--mode",
                "soloist");

        assertThat(reply.words()).isEmpty();
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
        assertThat(change("--hymn", "211", "--verse", "V1", "--push-in", "Great: Mixture III")
                        .results())
                .contains("\n    Piston G4 holds something else since 208 V1.\n");
        assertThat(change("--hymn", "208", "--verse", "V1", "--push-in", "Great: Mixture III")
                        .results())
                .doesNotContain("Piston G4")
                .contains("\n    No longer what their piston holds: 208 Inter, ");
        assertThat(change("--hymn", "208", "--verse", "V2", "--push-in", "Great: Mixture III")
                        .results())
                .doesNotContain("iston");
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
