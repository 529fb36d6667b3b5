package versewind.agreement;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever the program says of a registration agrees with the teacher and with itself, on the shipped organs, in
 * thirteen situations. {@link ManyOrgansAgreeTest} asks the same of many more.
 */
class AgreementTest {

    private static final CaseCounts COUNTS = Measurement.of(Subject::isShipped, "", Measurement.Extent.ONE_VERSE);

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void agreement_holds(int agreement) {
        Agreed.assertHolds(COUNTS, agreement);
    }
}
