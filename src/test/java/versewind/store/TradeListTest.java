package versewind.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Golden;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.schema.RandomWorks;
import versewind.stoplist.StopList;
import versewind.stoplist.TradeList;

/** An instrument printed as a stop list, and read again. */
class TradeListTest {

    static List<String> shipped() {
        return Shipped.instrumentFiles().stream().map(JsonFolder::idOf).toList();
    }

    private static Instrument organ(String id) throws BadFile {
        return new Library(Path.of("")).openInstrument(id);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void a_shipped_instrument_is_printed_and_read_as_the_same(String id) throws BadFile {
        String text = TradeList.of(organ(id));

        if (Golden.names("show").contains(id + ".txt")) {
            Golden.check("show/" + id + ".txt", text);
        }
        assertThat(TradeList.isOne(text)).isTrue();
        assertThat(TradeList.read(text).objections()).isEmpty();
        assertThat(TradeList.read(text).instrument()).contains(organ(id));
    }

    /**
     * The list itself is one that anybody could have published: the reader of such lists finds everything in it, though
     * it takes a point at the end of a name for none of it.
     */
    @ParameterizedTest
    @MethodSource("shipped")
    void the_reader_of_published_lists_finds_every_stop_and_coupler(String id) throws BadFile {
        Instrument organ = organ(id);
        StopList list = StopList.read(TradeList.withoutParticulars(TradeList.of(organ)));

        assertThat(list.divisions())
                .extracting(division -> division.name())
                .containsExactlyElementsOf(
                        organ.divisions().stream().map(each -> each.name()).toList());
        assertThat(list.stops().map(stop -> stop.name().replace(".", "") + " " + stop.feet()))
                .containsExactlyElementsOf(organ.stops().stream()
                        .map(knob -> knob.stop().name().replace(".", "") + " "
                                + knob.stop().footage().map(Object::toString).orElse(""))
                        .toList());
        assertThat(list.couplers()).hasSameSizeAs(organ.couplers());
        assertThat(list.doubts()).isEmpty();
    }

    @Test
    void any_instrument_that_can_be_is_printed_and_read_as_the_same() {
        for (int seed = 0; seed < 300; seed++) {
            Instrument organ = new RandomWorks(seed).instrument();
            TradeList.Read read = TradeList.read(TradeList.of(organ));
            assertThat(read.objections()).as("seed %d", seed).isEmpty();
            assertThat(read.instrument()).as("seed %d", seed).contains(organ);
        }
    }

    @Test
    void what_is_changed_in_the_list_is_changed_in_the_instrument() throws BadFile {
        String text = TradeList.of(organ("st-tethwin")).replaceFirst("Fifteenth", "Doublette");

        assertThat(TradeList.read(text).instrument().orElseThrow().stops())
                .anySatisfy(knob -> assertThat(knob.name()).hasToString("Great: Doublette 2"));
    }

    @Test
    void words_of_lists_that_were_printed_before_are_read() throws BadFile {
        Instrument organ = organ("st-tethwin");
        String before = TradeList.of(organ).replace("Affects \"", "Shakes \"").replace("Played on \"", "Played \"");

        assertThat(before).contains("Shakes \"Swell\"", "Played \"Swell\"");
        assertThat(TradeList.read(before).instrument()).contains(organ);
    }

    @Test
    void what_cannot_be_read_is_told_with_its_line() throws BadFile {
        String text =
                TradeList.of(organ("little-corvening")) + "  Stop \"Manual: Ophicleide 16\": Trim \"2\"\n  brrr\n";

        TradeList.Read read = TradeList.read(text);
        assertThat(read.instrument()).isEmpty();
        assertThat(read.objections())
                .anySatisfy(sentence -> assertThat(sentence).contains("the list above has no such stop"))
                .anySatisfy(sentence -> assertThat(sentence).endsWith("it names no part of an organ: brrr"));
    }
}
