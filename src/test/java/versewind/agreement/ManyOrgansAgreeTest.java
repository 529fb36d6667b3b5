package versewind.agreement;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever the program says of a registration agrees with the teacher and with itself, on every shipped organ and on
 * organs drawn at random, in thirteen situations. Prints a table of counts, also to {@code target/agreement.txt} with
 * the first cases in words.
 *
 * <p>{@code -Dagreement.organ=st-tethwin} (or {@code random-2-7}, or the beginning of names) and {@code
 * -Dagreement.situation=festival} measure one organ, verse by verse, or one situation.
 */
@Tag("slow")
class ManyOrgansAgreeTest {

    private static final String ORGAN = System.getProperty("agreement.organ", "");
    private static final CaseCounts COUNTS = Measurement.of(
            subject -> subject.id().startsWith(ORGAN),
            System.getProperty("agreement.situation", ""),
            ORGAN.isEmpty() ? Measurement.Extent.ONE_VERSE : Measurement.Extent.EVERY_VERSE);

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void agreement_holds(int agreement) {
        Agreed.assertHolds(COUNTS, agreement);
    }
}
