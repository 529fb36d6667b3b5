package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.schema.KnownOrgan;

class FuzzTest {
    private static final int MUTATIONS = 2000;
    private static final byte[] JSON_BYTES = SmallOrgan.bytes("{}[]\",:\\0129.-eE \n\tunltrfas\u00e9");

    /** Reads a file and writes it again; a typed objection is as good, any other exception is not. */
    private interface Reading {
        byte[] rewritten(byte[] bytes) throws BadFile;
    }

    private static boolean reads(Reading reading, byte[] bytes) {
        try {
            byte[] rewritten = reading.rewritten(bytes);
            assertThat(reading.rewritten(rewritten)).isEqualTo(rewritten);
            return true;
        } catch (BadFile objection) {
            assertThat(objection.line()).as("%s", objection.getMessage()).isPresent();
            assertThat(objection.problem()).isNotBlank();
            assertThat(objection.remedy()).isNotBlank();
            assertThat(objection.getMessage()).hasSizeLessThan(2000).doesNotContain("\n");
            return false;
        }
    }

    private static Reading plan(Path file) throws BadFile {
        Instrument instrument = new Library(Path.of("")).openPlan(file).instrument();
        return bytes -> PlanJson.bytes(
                PlanJson.read(file, bytes, (id, found) -> KnownOrgan.of(instrument))
                        .plan(),
                instrument);
    }

    private static Reading instrument(Path file) {
        return bytes -> InstrumentJson.bytes(InstrumentJson.read(file, bytes));
    }

    private static void cutEverywhere(Path file, Reading reading) throws IOException {
        byte[] whole = Files.readAllBytes(file);
        for (int length = 0; length < whole.length - 1; length++) {
            assertThat(reads(reading, Arrays.copyOf(whole, length)))
                    .as("the first %d bytes", length)
                    .isFalse();
        }
        assertThat(reads(reading, Arrays.copyOf(whole, whole.length - 1))).isTrue();
    }

    private static void changeAtRandom(Path file, int mutations, Reading reading) throws IOException {
        byte[] whole = Files.readAllBytes(file);
        Random random = new Random(341);
        int refused = 0;
        for (int i = 0; i < mutations; i++) {
            refused += reads(reading, mutated(whole, random)) ? 0 : 1;
        }
        assertThat(refused).isBetween(mutations / 4, mutations);
    }

    private static byte[] mutated(byte[] whole, Random random) {
        byte[] bytes = whole.clone();
        for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
            int at = random.nextInt(bytes.length);
            byte other =
                    random.nextInt(4) == 0 ? (byte) random.nextInt(256) : JSON_BYTES[random.nextInt(JSON_BYTES.length)];
            int kind = random.nextInt(4);
            if (kind == 0) {
                bytes = spliced(bytes, at, at, new byte[] {other});
            } else if (kind == 1) {
                bytes = spliced(bytes, at, at + 1, new byte[0]);
            } else if (kind == 2) {
                int from = random.nextInt(bytes.length);
                byte[] piece = Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + random.nextInt(200)));
                bytes = spliced(bytes, at, at, piece);
            } else {
                bytes[at] = other;
            }
        }
        return bytes;
    }

    private static byte[] spliced(byte[] bytes, int from, int to, byte[] piece) {
        byte[] out = new byte[bytes.length - (to - from) + piece.length];
        System.arraycopy(bytes, 0, out, 0, from);
        System.arraycopy(piece, 0, out, from, piece.length);
        System.arraycopy(bytes, to, out, from + piece.length, bytes.length - to);
        return out;
    }

    @Test
    void a_plan_cut_off_at_any_byte_is_refused_with_a_line() throws IOException, BadFile {
        Path file = smallest(Shipped.planFiles());

        cutEverywhere(file, plan(file));
    }

    @Test
    void an_instrument_cut_off_at_any_byte_is_refused_with_a_line() throws IOException {
        Path file = smallest(Shipped.instrumentFiles());

        cutEverywhere(file, instrument(file));
    }

    @Test
    void a_plan_with_bytes_changed_at_random_is_read_or_refused_with_a_line() throws IOException, BadFile {
        for (Path file : Shipped.planFiles()) {
            changeAtRandom(file, MUTATIONS / Shipped.planFiles().size(), plan(file));
        }
    }

    @Test
    void an_instrument_with_bytes_changed_at_random_is_read_or_refused_with_a_line() throws IOException {
        for (Path file : Shipped.instrumentFiles()) {
            changeAtRandom(file, MUTATIONS / Shipped.instrumentFiles().size(), instrument(file));
        }
    }

    private static Path smallest(List<Path> files) {
        return files.stream()
                .min(Comparator.comparing(file -> file.toFile().length()))
                .orElseThrow();
    }
}
