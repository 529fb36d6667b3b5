package versewind.screen.desk;

import versewind.plan.Verse;

/**
 * How many are present, as one sees it from the bench: round numbers a tenth to a quarter apart, which is less than 1
 * dB of singing, and the number planned among them.
 */
final class Present {

    private Present() {}

    /** The next number above. */
    static int more(int now, int planned) {
        int next = next(now);
        return Math.min(Verse.MOST_PEOPLE, planned > now && planned < next ? planned : next);
    }

    /** The next number below. */
    static int fewer(int now, int planned) {
        int next = 1;
        while (next(next) < now) {
            next = next(next);
        }
        return planned < now && planned > next ? planned : next;
    }

    private static int next(int now) {
        int step = step(now);
        return (now / step + 1) * step;
    }

    /**
     * 1 below 10; then in every decade 2, 5 and 10 tenths of its power of ten: 10, 12 ... 20, 25 ... 50, 60 ... 100,
     * 120.
     */
    private static int step(int now) {
        int ten = 1;
        while (now >= ten * 10) {
            ten *= 10;
        }
        if (ten == 1) {
            return 1;
        }
        int tenth = ten / 10;
        return now < 2 * ten ? 2 * tenth : now < 5 * ten ? 5 * tenth : 10 * tenth;
    }
}
