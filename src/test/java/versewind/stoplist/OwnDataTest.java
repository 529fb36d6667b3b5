package versewind.stoplist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of invented organs as data, each with fields of its own. */
class OwnDataTest {

    private static List<String> stops(String data) {
        return StopList.read(data).divisions().stream()
                .flatMap(division -> division.stops().stream()
                        .map(stop -> division.name() + ": " + stop.name() + " " + stop.feet()
                                + (stop.ranks() > 1 ? " " + stop.ranks() : "")))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"""
        {"organ": "St Tethwin", "divisions": [
          {"name": "Great", "stops": [{"name": "Open Diapason", "pitch": "8"},
                                      {"name": "Mixture", "ranks": "III"}]},
          {"name": "Pedal", "stops": [{"name": "Bourdon", "pitch": 16}]}],
         "couplers": ["Great to Pedal"]}
        """, """
            {"Great": ["Open Diapason 8", "Mixture III"], "Pedal": ["Bourdon 16"], "couplers": ["GT/PED"]}
            """, """
                        {"manuals": {"Great": {"Open Diapason": 8, "Mixture": "III"}},
                         "Pedal": {"stops": [["Bourdon", 16]]},
                         "coupling": [{"from": "Great", "to": "Pedal"}]}
                        """, """
                        # an organ
                        manuals:
                          - name: Great
                            no: 1
                            stops:
                              - {n: Open Diapason, p: 8}
                              # - {n: Clarion, p: 4} never built
                              - {n: Mixture, r: III}
                        pedal:
                          stops:
                            - n: Bourdon
                              p: 16
                        couple: [GT/PED]
                        """, """
                        [{"keyboard": "Great", "tabs": ["Open Diapason 8'", "III Mixture"]},
                         {"keyboard": "Pedal", "tabs": ["Bourdon 16'"]},
                         {"couplers": ["Great to Pedal"]}]
                        """})
    void data_of_any_fields_is_read_as_the_list_that_it_holds(String data) {
        assertThat(stops(data))
                .map(each -> each.toLowerCase(java.util.Locale.ROOT).strip())
                .containsExactly("great: open diapason 8", "great: mixture  3", "pedal: bourdon 16");
        StopList list = StopList.read(data);
        assertThat(list.couplers()).singleElement().satisfies(coupler -> {
            assertThat(coupler.isWhole()).isTrue();
            assertThat(coupler.keyboard()).isEqualToIgnoringCase("Pedal");
        });
        assertThat(list.wantsAttention()).as("it is said that this was data").isTrue();
    }

    @Test
    void what_the_fields_say_besides_is_no_stop() {
        StopList list = StopList.read("""
            {"where": "Brannock Hollow", "op": 77, "ranks": {"TPT": "Trumpet, 61"},
             "keyboards": [{"id": 2, "label": "Solo", "tabs": ["8 Trumpet", "Xylophone"]}],
             "todo": ["add 8 Kinura?"]}
            """);
        assertThat(list.title()).isEqualTo("Brannock Hollow");
        assertThat(list.stops().map(ReadStop::name)).containsExactly("Trumpet");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"Great\": [\"Open Diapason 8\"",
                "[{\"name\": \"Great\", \"stops\": [\"Principal 4\"]",
                "{\"name\": \"Great\", \"stops\" [\"Principal 4\"]}"
            })
    void data_that_is_not_whole_is_refused_with_what_to_do(String data) {
        assertThat(StopList.refusal(data))
                .hasValueSatisfying(why ->
                        assertThat(why).contains("brackets do not match").contains("paste the list as it is printed"));
    }

    @Test
    void a_list_in_square_brackets_or_with_colons_is_no_data() {
        assertThat(OwnData.isOne("[Great]\nOpen Diapason 8")).isFalse();
        assertThat(OwnData.isOne("Great:\n- Open Diapason 8\n- Principal 4\nPedal:\n- Bourdon 16"))
                .isFalse();
        assertThat(OwnData.isOne("{| class=\"wikitable\"\n| Great")).isFalse();
    }
}
