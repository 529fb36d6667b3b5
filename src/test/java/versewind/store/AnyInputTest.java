package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.plan.Plan;
import versewind.plan.Undo;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganDraft;
import versewind.sound.OrganSound;
import versewind.stoplist.StopList;

/**
 * Whatever is read is read or refused, with no other exception and within a second: changed from what is shipped, with
 * very long texts, and put together from the words of its kind. {@code -Dfuzz.count=1000000} tries so many.
 */
class AnyInputTest {

    private static final int ALL = Integer.getInteger("fuzz.count", 20_000);

    /** Reading a stop list takes longer than anything else. */
    private static final int STOP_LISTS = ALL / 40;

    private static final int OTHERS = (ALL - STOP_LISTS) / 6;
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final long SECOND_NS = TimeUnit.SECONDS.toNanos(1);
    private static final int LONG = 5000;

    /** Four divisions of a table, a hundred cells pasted one a line. */
    private static final String CELLS = "Great\nSwell\nChoir\nPedal\n"
            + "Open Diapason 8\nGedackt 8\nDulciana 8\nBourdon 16\nPrincipal 4\n".repeat(20);

    private static final List<String> PIECES = List.of(
            "\"",
            ",",
            ";",
            ":",
            "\n",
            "\t",
            "{",
            "}",
            "[",
            "]",
            "'",
            "=",
            "-1",
            "1e999",
            "NaN",
            "\u202E",
            "\u0000",
            "\uD834",
            "é",
            "2 2/3",
            "III",
            "Great",
            "Open Diapason 8",
            "null",
            "true",
            "|",
            "/",
            " ",
            "..",
            "~");

    @FunctionalInterface
    private interface Reading {
        void read(String text) throws BadFile, BadRows;
    }

    private static String changed(String whole, Random random) {
        StringBuilder text = new StringBuilder(whole);
        for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
            int at = random.nextInt(text.length() + 1);
            int end = Math.min(text.length(), at + random.nextInt(30));
            String piece = PIECES.get(random.nextInt(PIECES.size()));
            text.replace(at, random.nextBoolean() ? at : end, random.nextInt(40) == 0 ? piece.repeat(LONG) : piece);
        }
        return text.toString();
    }

    private static String made(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(200); i > 0; i--) {
            text.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return text.toString();
    }

    private static void tryAll(List<String> wholes, int count, Reading reading) throws BadFile, BadRows {
        Random random = new Random(5);
        for (String whole : wholes) {
            reading.read(whole);
        }
        for (int i = 0; i < count; i++) {
            String text = i % 10 == 0 ? made(random) : changed(wholes.get(random.nextInt(wholes.size())), random);
            long start = CLOCK.getCurrentThreadCpuTime();
            try {
                reading.read(text);
            } catch (BadFile | BadRows refused) {
                assertThat(refused.getMessage()).isNotBlank();
            } catch (RuntimeException | StackOverflowError fault) {
                throw new AssertionError("input " + i + ": " + text.substring(0, Math.min(2000, text.length())), fault);
            }
            assertThat(CLOCK.getCurrentThreadCpuTime() - start)
                    .as("input %d: %s", i, text)
                    .isLessThan(SECOND_NS);
        }
    }

    private static List<String> texts(Stream<Path> files) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : files.toList()) {
            texts.add(Files.readString(file));
        }
        return texts;
    }

    @Test
    void any_plan() throws Exception {
        KnownOrgan organ = new Library(Path.of("")).openPlan("ash-wednesday").organ();
        tryAll(
                texts(Stream.of(Path.of("plans/ash-wednesday.json"))),
                OTHERS,
                text -> PlanJson.read(Path.of("plan"), text.getBytes(StandardCharsets.UTF_8), (id, found) -> organ));
    }

    @Test
    void any_instrument() throws Exception {
        tryAll(
                texts(Shipped.instrumentFiles().stream().limit(3)),
                OTHERS,
                text -> InstrumentJson.read(Path.of("organ"), text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void any_spreadsheet() throws Exception {
        OpenPlan open = new Library(Path.of("")).openPlan("ash-wednesday");
        tryAll(
                List.of(PlanCsv.of(open.plan(), open.instrument())),
                OTHERS,
                text -> PlanCsv.read(text, id -> open.organ()));
    }

    @Test
    void any_table_of_readings() throws Exception {
        OrganSound sound =
                new Library(Path.of("")).openPlan("harvest-festival").organ().sound();
        String table = """
            draw,box,people,dBA
            "Swell: Gedackt 8, Flute 4; couplers: Swell to Great",Swell=closed,0,58.5
            Great: Open Diapason 8,,120,71
            # a remark
            Pedal: Bourdon 16,Swell=half,,55.25
            """;
        tryAll(List.of(table), OTHERS, text -> ReadingsCsv.read(text, sound));
    }

    @Test
    void any_draft_of_an_organ() throws Exception {
        OpenOrgan organ = new Library(Path.of("")).openOrgan("little-corvening");
        OrganDraft draft = OrganDraft.of(organ.organ().instrument());
        byte[] bytes = OrganHold.OrganDraftFile.bytes(draft, organ.fingerprint());
        tryAll(
                List.of(new String(bytes, StandardCharsets.UTF_8)),
                OTHERS,
                text -> OrganHold.OrganDraftFile.read(
                        Path.of("draft"), text.getBytes(StandardCharsets.UTF_8), organ.fingerprint()));
    }

    @Test
    void any_stop_list() throws Exception {
        try (Stream<Path> lists = Files.list(Path.of("src/test/resources/stoplists"))) {
            List<String> texts =
                    new ArrayList<>(texts(lists.filter(each -> each.toString().endsWith(".txt"))));
            texts.add(CELLS);
            tryAll(texts, STOP_LISTS, StopList::read);
        }
    }

    @Test
    void any_journal() throws Exception {
        OpenPlan open = new Library(Path.of("")).openPlan("ash-wednesday");
        Undo<Plan> history = Undo.of(open.plan())
                .to(open.plan().withPeople(3))
                .to(open.plan().withPeople(4))
                .undo();
        String text = new String(
                        JournalText.head(new Presence("anna", "vestry", 1, Instant.EPOCH)), StandardCharsets.UTF_8)
                + new String(
                        JournalText.start("", PlanJson.text(open.plan(), open.instrument())), StandardCharsets.UTF_8)
                + new String(
                        JournalText.edit(
                                PlanJson.text(open.plan(), open.instrument()),
                                PlanJson.text(history.now(), open.instrument())),
                        StandardCharsets.UTF_8)
                + new String(JournalText.undo(), StandardCharsets.UTF_8);
        tryAll(List.of(text), OTHERS, changed -> {
            byte[] bytes = changed.getBytes(StandardCharsets.UTF_8);
            JournalText.replay(bytes);
            JournalText.presence(bytes, "", Instant.EPOCH);
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {2000, 8000})
    void a_very_long_text_anywhere_is_read_or_refused(int length) throws Exception {
        KnownOrgan organ = new Library(Path.of("")).openPlan("ash-wednesday").organ();
        for (String kind : List.of("a ", "1 1/2 ", "Great: ", "'(a), ")) {
            String lengthy = kind.repeat(length / kind.length());
            for (Path file : List.of(Path.of("plans/ash-wednesday.json"), Path.of("instruments/ambrelow.json"))) {
                String text = Files.readString(file);
                String[] parts = text.split("(?<!\\\\)\"", -1);
                for (int i = 1; i < Math.min(parts.length, 40); i += 2) {
                    String[] other = parts.clone();
                    other[i] = lengthy;
                    byte[] bytes = String.join("\"", other).getBytes(StandardCharsets.UTF_8);
                    try {
                        if (file.startsWith("plans")) {
                            PlanJson.read(file, bytes, (id, found) -> organ);
                        } else {
                            InstrumentJson.read(file, bytes);
                        }
                    } catch (BadFile refused) {
                        assertThat(refused.getMessage()).hasSizeLessThan(2000);
                    } catch (RuntimeException | StackOverflowError fault) {
                        throw new AssertionError(Arrays.toString(parts).substring(0, 10) + i + kind + parts[i], fault);
                    }
                }
            }
        }
    }
}
