package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

final class AbsorptionTableTest {

    private final AbsorptionTable table = AbsorptionTable.load();

    /** The row as in the source named at the head of the table. */
    @Test
    void a_wall_of_limestone_has_the_sources_coefficients() {
        AbsorptionTable.Material wall = table.material("limestone wall").orElseThrow();

        assertThat(wall.per()).isEqualTo(AbsorptionTable.Per.SQUARE_METRE);
        assertThat(wall.absorption()).containsExactly(0.02, 0.02, 0.03, 0.04, 0.05, 0.05, 0.05);
    }

    @Test
    void a_person_has_an_area_and_no_coefficient() {
        AbsorptionTable.Material person =
                table.material("audience seated per person").orElseThrow();

        assertThat(person.per()).isEqualTo(AbsorptionTable.Per.PERSON);
        assertThat(person.absorption()).containsExactly(0.23, 0.37, 0.44, 0.45, 0.45, 0.45, 0.45);
    }

    @Test
    void where_a_source_stops_at_4_khz_8_khz_is_taken_as_4_khz() {
        List<Double> plaster =
                table.material("lime cement plaster").orElseThrow().absorption();

        assertThat(plaster.get(6)).isEqualTo(plaster.get(5)).isEqualTo(0.05);
    }

    @Test
    void every_row_is_complete_and_has_its_own_name() {
        assertThat(table.names()).hasSize(34).doesNotHaveDuplicates().allSatisfy(name -> {
            AbsorptionTable.Material material = table.material(name).orElseThrow();
            assertThat(material.name()).isEqualTo(name);
            assertThat(material.absorption()).hasSize(AbsorptionTable.OCTAVES_HZ.size());
        });
    }

    @Test
    void a_name_is_found_however_it_is_written() {
        assertThat(table.material("Limestone_wall")).isEqualTo(table.material(" limestone wall "));
    }

    @Test
    void a_material_that_is_not_there_is_not_found() {
        assertThat(table.material("papier mache")).isEmpty();
    }

    @Test
    void a_material_that_adds_sound_is_refused() {
        assertThatThrownBy(() -> new AbsorptionTable.Material(
                        "wonder", AbsorptionTable.Per.SQUARE_METRE, List.of(0.1, 0.1, -0.1, 0.1, 0.1, 0.1, 0.1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new AbsorptionTable.Material("half", AbsorptionTable.Per.PERSON, List.of(0.1)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
