package versewind.screen.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.screen.toolkit.Marks;
import versewind.sheet.DivisionLine;

class DrawnWordsTest {

    private final Instrument organ = Shipped.instrument("ostmere-cathedral");

    private String byTheRest(IndexSet notDrawn, String besides) throws NotationException {
        int swell = organ.division("Swell").orElseThrow();
        Registration rest = new RegistrationText(organ).parse(besides);
        IndexSet all = IndexSet.of(
                organ.stops().stream().filter(knob -> knob.division() == swell).mapToInt(knob -> organ.stops()
                        .indexOf(knob)));
        Registration drawn = rest.withStops(rest.stops().plus(all).minus(notDrawn));
        return new DrawnWords(Marks.WORDS, organ, DivisionLine.of(organ, drawn, drawn.stops()))
                .byTheRest()
                .text();
    }

    private IndexSet stops(String text) throws NotationException {
        return new RegistrationText(organ).parse(text).stops();
    }

    @Test
    void a_tremulant_is_named_before_all_the_stops_of_its_division() throws NotationException {
        assertThat(byTheRest(IndexSet.EMPTY, "tremulants: Swell Tremulant"))
                .isEqualTo("Swell, box open: Swell Tremulant, all");
    }

    @Test
    void a_tremulant_is_not_among_what_is_left_out() throws NotationException {
        assertThat(byTheRest(stops("Swell: Oboe 8"), "tremulants: Swell Tremulant"))
                .isEqualTo("Swell, box open: Swell Tremulant, all but Oboe 8");
    }

    @Test
    void without_a_tremulant_all_is_all() throws NotationException {
        assertThat(byTheRest(IndexSet.EMPTY, RegistrationText.NOTHING)).isEqualTo("Swell, box open: all");
    }
}
