package versewind.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** What must hold of a measurement. */
final class Agreed {

    private Agreed() {}

    /** Nothing is broken of an agreement, 1 to 7, or of how good the proposals are by themselves, 0. */
    static void assertHolds(CaseCounts counts, int agreement) {
        List<CaseCounts.Row> broken = counts.rows(agreement);
        assertThat(counts.judged("verses proposed")).isPositive();
        assertThat(broken).as(counts.told(broken)).isEmpty();
    }
}
