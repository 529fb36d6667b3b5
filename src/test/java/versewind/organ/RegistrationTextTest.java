package versewind.organ;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;

class RegistrationTextTest {

    private static final int REGISTRATIONS_AN_ORGAN = 1_300;
    private static final Map<String, Instrument> ORGANS = new TreeMap<>();

    private static Instrument organ;
    private static RegistrationText text;

    @BeforeAll
    static void open() {
        Shipped.ORGANS.forEach(id -> ORGANS.put(id, Shipped.instrument(id)));
        organ = ORGANS.get("st-tethwin");
        text = new RegistrationText(organ);
        ORGANS.put("odd names", oddlyNamed());
    }

    /** An organ whose names hold every sign and word that means something in the notation. */
    private static Instrument oddlyNamed() {
        List<Stop> stops = List.of(
                Stop.of("all", "8", Family.PRINCIPAL, Pipe.OPEN),
                Stop.of("all but Flute", "4", Family.FLUTE, Pipe.OPEN),
                Stop.of("Gamba, soft; or \\: \"so\"", "8", Family.STRING, Pipe.OPEN));
        return new Instrument(
                "Odd",
                "Nowhere",
                Action.ELECTRIC,
                0,
                List.of(
                        new Division("couplers", OptionalInt.of(1), 61, Optional.of(box()), stops),
                        new Division("Boxes", OptionalInt.of(2), 61, Optional.empty(), stops),
                        new Division("A: b = c", OptionalInt.of(2), 61, Optional.of(box()), stops)),
                List.of(
                        new Coupler("A, to; couplers", "Boxes", "couplers", Coupler.Kind.UNISON),
                        new Coupler("all", "couplers", "Boxes", Coupler.Kind.UNISON)),
                List.of(new Tremulant("Wind\nshaker", "Boxes"), new Tremulant("half", "couplers")),
                Pistons.NONE,
                organ.room());
    }

    private static SwellBox box() {
        return organ.divisions().stream()
                .flatMap(division -> division.box().stream())
                .findFirst()
                .orElseThrow();
    }

    private static Registration random(Instrument on, Random random) {
        double share = random.nextDouble();
        return new Registration(
                some(on.stops().size(), share, random),
                some(on.couplers().size(), share, random),
                some(on.tremulants().size(), share, random),
                on.divisions().stream()
                        .map(division -> BoxPosition.values()[division.isEnclosed() ? random.nextInt(5) : 4])
                        .toList());
    }

    private static IndexSet some(int size, double share, Random random) {
        return IndexSet.of(IntStream.range(0, size).filter(each -> random.nextDouble() < share));
    }

    @Test
    void whatever_is_written_is_read_back_on_every_organ() throws NotationException {
        assertThat(ORGANS).hasSizeGreaterThan(8);
        Random random = new Random(7);
        for (Instrument on : ORGANS.values()) {
            RegistrationText notation = new RegistrationText(on);
            for (int i = 0; i < REGISTRATIONS_AN_ORGAN; i++) {
                Registration drawn = random(on, random);
                Registration silent = Registration.silent(on);
                assertThat(notation.parse(notation.format(drawn))).isEqualTo(drawn);
                assertThat(notation.stops(notation.stops(drawn.stops()))).isEqualTo(drawn.stops());
                assertThat(notation.readCouplers(notation.couplers(drawn.couplers())))
                        .isEqualTo(drawn.couplers());
                assertThat(notation.readTremulants(notation.tremulants(drawn.tremulants())))
                        .isEqualTo(drawn.tremulants());
                assertThat(notation.withBoxes(silent, notation.boxes(drawn)).boxes())
                        .isEqualTo(drawn.boxes());
            }
        }
    }

    @Test
    void the_parts_of_a_report_can_be_typed_back() throws NotationException {
        Random random = new Random(8);
        for (int i = 0; i < 200; i++) {
            Registration drawn = random(organ, random);
            String typed = String.join(
                    "; ",
                    text.parts(drawn).stream()
                            .map(part -> part.where() + ": " + part.text())
                            .toList());
            assertThat(text.parse(typed)).isEqualTo(drawn);
        }
    }

    @Test
    void a_division_is_written_by_what_is_not_drawn_where_that_is_shorter() throws NotationException {
        Registration drawn = text.parse("Great: all but Trumpet 8; couplers: Great to Pedal; Swell half; Trem drawn");
        assertThat(drawn.stops().size()).isEqualTo(8);
        assertThat(text.format(drawn))
                .isEqualTo("Great: all but Trumpet 8; couplers: Great to Pedal; Tremulant drawn; Swell half");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16; couplers: Great to Pedal; Swell closed",
                "gr:open 8,princ ;ped:bour;COUPLERS: gr to ped;swell=closed",
                "Gr: Open Diap 8\r\nGr: Princ 4\n\nPed: Bourdon\ncouplers: Great to Pedal\nboxes: Swell=cl",
                "Gt: Open Diapason 8, Principal 4; Ped: Bdn 16; couplers: Gt to Ped; Sw closed",
                "Great: Open Diapason 8', Principal 4 ft,; Pedal: Bourdon 16; couplers: Great to Pedal; Swell Closed;"
            })
    void names_may_be_shortened_and_separated_in_several_ways(String typed) throws NotationException {
        assertThat(text.format(text.parse(typed)))
                .isEqualTo("Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16; couplers: Great to Pedal; Swell"
                        + " closed");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "great to pedal | couplers: Great to Pedal",
                "Great to Pedal, tremulant | couplers: Great to Pedal; Tremulant drawn",
                "tremulant: trem; coupler: gr to ped | couplers: Great to Pedal; Tremulant drawn",
                "Swell: closed | Swell closed",
                "box: Swell half | Swell half",
                "Swell: open | Swell: Open Diapason 8",
            })
    void what_is_plain_by_itself_needs_no_head(String typed, String written) throws NotationException {
        assertThat(text.format(text.parse(typed))).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Great", "Swell to", "great to pedal, princ", "Great: closed", "tremulant: foo"})
    void what_is_not_plain_by_itself_is_refused(String typed) {
        assertThatThrownBy(() -> text.parse(typed)).isInstanceOf(NotationException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ;\n", "nothing drawn", "Swell open"})
    void nothing_drawn_is_read_as_such(String typed) throws NotationException {
        assertThat(text.parse(typed)).isEqualTo(Registration.silent(organ));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "Open Diapason 8 | \"Open Diapason 8\" has no colon."
                        + " Write a division, a colon and its stops, like \"Great: Open Diapason 8, Principal 4\".",
                ", , | \", ,\" has no colon."
                        + " Write a division, a colon and its stops, like \"Great: Open Diapason 8, Principal 4\".",
                "Great: | Nothing follows \"Great:\"."
                        + " Write a division, a colon and its stops, like \"Great: Open Diapason 8, Principal 4\".",
                "Grate: Principal 4 | The organ has no division \"Grate\". Did you mean \"Great\"?",
                "Swell: Vox 8 | Swell has no stop \"Vox 8\". Swell has \"Open Diapason 8\", \"Gedackt 8\",",
                "Great: Open Diapson 8 | Great has no stop \"Open Diapson 8\". Did you mean \"Open Diapason 8\"?",
                "couplers: Swell to Graet | The organ has no coupler \"Swell to Graet\"."
                        + " Did you mean \"Swell to Great\"?",
                "Great: Principal 4, princ | \"princ\" is drawn twice. Leave out one of them.",
                "Great closed | Great is not in a swell box. Leave out its position.",
                "boxes: Swell | \"Swell\" is no position of a box. Write it like \"Swell=closed\".",
                "boxes: Swell=slammed | There is no position \"slammed\"."
                        + " The positions are \"closed\", \"quarter\", \"half\", \"three quarters\", \"open\".",
                "tremulant: foo | The organ has no tremulant \"foo\". The tremulants are \"Tremulant\".",
                "Flutter drawn | The organ has no tremulant \"Flutter\". The tremulants are \"Tremulant\".",
            })
    void what_cannot_be_read_is_answered_with_a_sentence(String typed, String sentence) {
        assertThatThrownBy(() -> text.parse(typed))
                .isInstanceOf(NotationException.class)
                .hasMessageStartingWith(sentence);
    }

    @Test
    void a_hand_cannot_play_the_pedal() throws NotationException {
        assertThat(text.manual("Swell")).isEqualTo(1);
        assertThatThrownBy(() -> text.manual("Pedal"))
                .hasMessage("A hand cannot play the Pedal. Name the division of a manual.");
    }

    @Test
    void a_name_of_any_length_is_quoted_in_part() {
        assertThatThrownBy(() -> text.parse("Great: " + "x".repeat(500)))
                .message()
                .hasSizeLessThan(400);
    }
}
