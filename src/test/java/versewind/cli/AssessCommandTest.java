package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.cli.Typing.typed;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Golden;
import versewind.screen.Text;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.PlanEntry;

class AssessCommandTest {

    static List<String> shippedPlans() throws BadFile {
        return new Library(Path.of("")).plans().stream().map(PlanEntry::id).toList();
    }

    @ParameterizedTest
    @MethodSource("shippedPlans")
    void every_shipped_plan_is_assessed_as_before(String plan) {
        Reply reply = typed("assess", plan);
        assertThat(reply.words()).isEmpty();
        Golden.check("assess/" + plan + ".txt", reply.results());
    }

    @Test
    void every_golden_assessment_belongs_to_a_shipped_plan() throws BadFile {
        assertThat(Golden.names("assess"))
                .containsExactlyElementsOf(
                        shippedPlans().stream().map(plan -> plan + ".txt").toList());
    }

    @ParameterizedTest
    @MethodSource("shippedPlans")
    void no_line_is_wider_than_the_screen(String plan) {
        assertThat(typed("assess", plan).results().lines())
                .allSatisfy(line -> assertThat(Text.columns(line)).isLessThanOrEqualTo(80));
    }
}
