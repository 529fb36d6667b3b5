package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.BoxPosition;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.store.BadFile;
import versewind.store.Library;

class RegistrationParserTest {

    private static Instrument organ;
    private static RegistrationParser knobs;

    @BeforeAll
    static void open() throws BadFile {
        organ = new Library(Path.of("")).openInstrument("st-tethwin");
        knobs = new RegistrationParser(organ);
    }

    private static List<String> stops(Registration drawn) {
        return drawn.stops().stream()
                .mapToObj(stop -> organ.stops().get(stop).name().toString())
                .toList();
    }

    private static List<String> couplers(Registration drawn) {
        return drawn.couplers().stream()
                .mapToObj(coupler -> organ.couplers().get(coupler).name())
                .toList();
    }

    @Test
    void stops_and_couplers_are_drawn_as_typed() throws UsageException {
        Registration drawn =
                knobs.drawn("Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16; couplers: Great to Pedal");

        assertThat(stops(drawn)).containsExactly("Great: Open Diapason 8", "Great: Principal 4", "Pedal: Bourdon 16");
        assertThat(couplers(drawn)).containsExactly("Great to Pedal");
        assertThat(drawn.fits(organ)).isTrue();
    }

    @Test
    void line_ends_part_divisions_as_semicolons_do() throws UsageException {
        assertThat(knobs.drawn("Great: Open Diapason 8\r\nPedal: Bourdon 16\n\ncouplers: Great to Pedal\n"))
                .isEqualTo(knobs.drawn("Great: Open Diapason 8; Pedal: Bourdon 16; couplers: Great to Pedal"));
    }

    @Test
    void a_division_may_be_named_twice() throws UsageException {
        assertThat(knobs.drawn("Great: Open Diapason 8; Great: Principal 4"))
                .isEqualTo(knobs.drawn("Great: Open Diapason 8, Principal 4"));
    }

    @Test
    void everything_may_be_shortened() throws UsageException {
        Registration drawn = knobs.drawn("gr:open 8,princ;ped:open wood;COUPLERS:swell octave, gr to ped");

        assertThat(stops(drawn)).containsExactly("Great: Open Diapason 8", "Great: Principal 4", "Pedal: Open Wood 16");
        assertThat(couplers(drawn)).containsExactly("Great to Pedal", "Swell Octave");
    }

    @Test
    void nothing_typed_draws_nothing() throws UsageException {
        assertThat(knobs.drawn(" ;\n")).isEqualTo(Registration.silent(organ));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "Open Diapason 8 | \"Open Diapason 8\" has no colon."
                        + " Write a division, a colon and its stops, like \"Great: Open Diapason 8, Principal 4\".",
                "Great: | Nothing stands after \"Great:\"."
                        + " Write a division, a colon and its stops, like \"Great: Open Diapason 8, Principal 4\".",
                "Grate: Principal 4 | The organ has no division \"Grate\". Did you mean \"Great\"?",
                "Great: Oboe 8 | Great has no stop \"Oboe 8\". Great has \"Bourdon 16\", \"Open Diapason 8\","
                        + " \"Stopped Flute 8\", \"Principal 4\", \"Open Flute 4\", \"Twelfth 2 2/3\", \"Fifteenth 2\","
                        + " \"Mixture III\", \"Trumpet 8\".",
                "Great: Open Diapson 8 | Great has no stop \"Open Diapson 8\". Did you mean \"Open Diapason 8\"?",
                "couplers: Swell to Graet | The organ has no coupler \"Swell to Graet\"."
                        + " Did you mean \"Swell to Great\"?",
                "Great: Principal 4, , Fifteenth 2"
                        + "| A name is missing between the commas of \"Principal 4, , Fifteenth 2\".",
                "Great: Principal 4, princ | \"princ\" is drawn twice. Leave out one of them.",
            })
    void what_cannot_be_drawn_is_answered_with_a_sentence(String typed, String sentence) {
        assertThatThrownBy(() -> knobs.drawn(typed))
                .isInstanceOf(UsageException.class)
                .hasMessage(sentence);
    }

    @Test
    void a_box_is_put_in_its_position() throws UsageException {
        Registration drawn = knobs.withBox(Registration.silent(organ), "swell=three-quarters");
        assertThat(drawn.boxes()).containsExactly(BoxPosition.OPEN, BoxPosition.THREE_QUARTERS, BoxPosition.OPEN);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "Swell | \"Swell\" is no position of a box. Write it like \"Swell=closed\".",
                "Great=closed | Great does not stand in a box. Leave out its position.",
                "Swell=shut | A box has no position \"shut\"."
                        + " The positions are \"closed\", \"quarter\", \"half\", \"three quarters\", \"open\".",
            })
    void a_box_that_cannot_be_moved_is_answered_with_a_sentence(String typed, String sentence) {
        assertThatThrownBy(() -> knobs.withBox(Registration.silent(organ), typed))
                .isInstanceOf(UsageException.class)
                .hasMessage(sentence);
    }

    @Test
    void a_tremulant_is_drawn_by_its_name() throws UsageException {
        Registration drawn = knobs.withTremulant(Registration.silent(organ), "trem");
        assertThat(drawn.tremulants().contains(0)).isTrue();
        assertThat(knobs.withTremulant(drawn, "Tremulant")).isEqualTo(drawn);
    }

    @Test
    void a_hand_cannot_play_the_pedal() throws UsageException {
        assertThat(knobs.manual("Swell")).isEqualTo(1);
        assertThatThrownBy(() -> knobs.manual("Pedal"))
                .hasMessage("A hand cannot play the Pedal. Name the division of a manual.");
    }
}
