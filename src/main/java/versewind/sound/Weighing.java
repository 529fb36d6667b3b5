package versewind.sound;

import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;

/**
 * The margin of one verse for one registration after another: what a search asks, and nothing besides. What the singers and
 * the room make is worked out once. It uses its instrument's scratch paper and belongs to the same thread.
 *
 * <p>Checked against: {@code WeighingTest}, the margins of {@link OrganSound#estimate}.
 */
public final class Weighing {

    /** The margin in dB of what is not heard at all. */
    public static final double NEVER_DB = -15;

    /** The margin in dB of what nothing disturbs. */
    public static final double ALWAYS_DB = 15;

    private final Mode mode;
    private final OrganPower power;
    private final Hearing hearing;
    private final double[] toNave;
    private final double[] toSingers;
    private final double[] singing = new double[ThirdOctaves.COUNT];
    private final double[] heard = new double[ThirdOctaves.COUNT];
    private final double[] disturbing = new double[ThirdOctaves.COUNT];

    Weighing(Mode mode, Assembly people, Seats seats, double[] voice, OrganPower power, Hearing hearing) {
        this.mode = mode;
        this.power = power;
        this.hearing = hearing;
        toNave = seats.organInNave();
        toSingers = seats.organAmong(people.place());
        seats.singing(people, voice, singing);
    }

    /**
     * The margin in dB, -15 to 15, of a registration: of the lead for a congregation, of the words for a choir or a
     * soloist, of the melody where it is soloed. -15 where nothing leads, 15 where nothing covers the words.
     *
     * @param drawn what is drawn
     * @param hands how it is played
     */
    public double marginDb(Registration drawn, HandsAndFeet hands) {
        power.compute(drawn, hands);
        return switch (mode) {
            case CONGREGATION -> leadDb();
            case SMALL_CHOIR, SOLO_VOICE -> wordsDb();
            case MELODY_SOLOED -> soloLineDb();
        };
    }

    private double leadDb() {
        if (power.isMelodySilent()) {
            return NEVER_DB;
        }
        pass(power.all(), toSingers, heard);
        return hearing.musicDb(heard, singing);
    }

    private double wordsDb() {
        if (power.isSilent()) {
            return ALWAYS_DB;
        }
        pass(power.all(), toNave, heard);
        return hearing.wordsDb(singing, heard);
    }

    private double soloLineDb() {
        if (power.isMelodySilent()) {
            return NEVER_DB;
        }
        pass(power.melody(), toNave, heard);
        pass(power.rest(), toNave, disturbing);
        return hearing.musicDb(heard, disturbing);
    }

    private static void pass(double[] from, double[] path, double[] to) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            to[band] = from[band] * path[band];
        }
    }
}
