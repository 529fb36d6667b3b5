package versewind.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.Shipped;
import versewind.organ.FormerNames;

/** The pistons of older plans after a division has got another name. */
class PistonNamesTest {

    private static OrganNames names() {
        FormerNames former = new FormerNames(
                Map.of("Hauptwerk", FormerNames.Now.called("Great")), Map.of(), Map.of(), Map.of(), Set.of());
        return OrganNames.of(Shipped.instrument("st-tethwin"), former);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Hauptwerk 3, Swell 2 | Great 3, Swell 2 | true",
                "Great 3 | Great 3 | false",
                "G3 | G3 | false",
                "Banana | Banana | false",
                "Hauptwerk 9 | Hauptwerk 9 | false"
            })
    void a_divisional_follows_its_division_and_what_is_no_piston_stays(
            String written, String today, boolean isOutdated) {
        OrganNames names = names();
        assertThat(names.pistons(written)).isEqualTo(today);
        assertThat(names.isOutdated()).isEqualTo(isOutdated);
    }

    @Test
    void nothing_pressed_is_nothing() {
        assertThat(names().pistons("")).isEmpty();
    }
}
