package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;

/** What an estimate leaves to be swept up must not grow with the organ, whether Java has got into its stride or not. */
class AllocationTest {

    private static final int TIMES = 300;

    /** What an estimate is made of, before Java leaves out what it finds needless. */
    private static final long MOST_BYTES = 2500;

    /** An array with an entry a stop would be 800 bytes more on an organ of 100. */
    private static final long MOST_MORE_BYTES = 200;

    private static long bytesAnEstimate(String instrument, Mode mode) {
        Instrument organ = Shipped.instrument(instrument);
        OrganSound sound = OrganSound.open(organ);
        Verse full = Verses.blank(organ, VerseKind.VERSE)
                .withMode(mode)
                .withHands(HandsAndFeet.on(Layout.FOUR_PARTS, organ.mainDivision()))
                .withRegistration(Registration.full(organ));
        Verse less = full.withRegistration(full.registration().toggleStop(1));
        estimate(sound, full, less);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(thread);
        for (int i = 0; i < TIMES; i++) {
            estimate(sound, full, less);
        }
        return (threads.getThreadAllocatedBytes(thread) - before) / (2 * TIMES);
    }

    private static void estimate(OrganSound sound, Verse full, Verse less) {
        sound.compute(full, 500, OptionalInt.of(90));
        sound.compute(less, 500, OptionalInt.of(90));
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void an_estimate_on_a_large_organ_allocates_no_more_than_on_a_small_one(Mode mode) {
        long small = bytesAnEstimate("little-corvening", mode);
        long large = bytesAnEstimate("ostmere-cathedral", mode);

        assertThat(large).isLessThan(MOST_BYTES);
        assertThat(large - small).isLessThan(MOST_MORE_BYTES);
    }
}
