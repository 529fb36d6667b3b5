package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * For every rule of the book a case that breaks it, with the exact sentence and mend, and a near miss. Common practice,
 * no source.
 */
class RuleBookTest {

    private static Stream<Rule> rules() {
        return Stream.of(Rule.values());
    }

    private static Stream<RuleCase> broken() {
        return Stream.concat(ChorusCases.broken(), PlanCases.broken());
    }

    private static Stream<RuleCase> kept() {
        return Stream.concat(ChorusCases.kept(), PlanCases.kept());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void every_rule_has_a_case_that_breaks_it_and_a_near_miss(Rule rule) {
        assertThat(broken()).anyMatch(each -> each.rule() == rule);
        assertThat(kept()).anyMatch(each -> each.rule() == rule);
        assertThat(Rule.ofWord(rule.word())).contains(rule);
    }

    @ParameterizedTest
    @MethodSource("broken")
    void a_broken_rule_is_found_in_its_own_words_with_its_mend(RuleCase each) {
        Finding finding = each.found().get(0);

        assertThat(finding.sentence().replaceAll("\\d+( dB|%)", "N$1")).isEqualTo(each.sentence());
        assertThat(finding.mend().map(Mend::words).orElse(RuleCase.NO_MEND)).isEqualTo(each.mend());
    }

    @ParameterizedTest
    @MethodSource("kept")
    void a_near_miss_is_not_found(RuleCase each) {
        assertThat(each.found()).isEmpty();
    }
}
