package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.rules.Loft.CATHEDRAL;
import static versewind.rules.RuleCase.great;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

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

        assertThat(finding.sentence().replaceAll("\\d+ (dB|%)", "N $1")).isEqualTo(each.sentence());
        assertThat(finding.mend().map(Mend::words).orElse(RuleCase.NO_MEND)).isEqualTo(each.mend());
        assertThat(finding.severity()).isEqualTo(each.rule().head().severity());
    }

    @ParameterizedTest
    @MethodSource("kept")
    void a_near_miss_is_not_found(RuleCase each) {
        assertThat(each.found()).isEmpty();
    }

    @Test
    void what_a_choir_or_the_organ_alone_may_want_is_a_remark_and_costs_half() {
        Verse gap = great("Great: Diapason II 8", "Great: Fifteenth 2");
        Verse hollow = great("Great: Principal 4", "Great: Fifteenth 2");

        assertHalf(gap, gap.withMode(Mode.SMALL_CHOIR));
        assertHalf(hollow, hollow.withKind(VerseKind.INTERLUDE));
    }

    private static void assertHalf(Verse cautioned, Verse remarked) {
        List<ChorusFault> cautions = CATHEDRAL.faults().in(cautioned);
        List<ChorusFault> remarks = CATHEDRAL.faults().in(remarked);

        assertThat(remarks.get(0).severity()).isEqualTo(Severity.REMARK);
        assertThat(remarks.get(0).weight()).isEqualTo(cautions.get(0).weight() / 2);
    }
}
