package versewind.sound;

import versewind.acoustics.ThirdOctaves;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;

/**
 * The margin of one verse for one registration after another: what a search asks, and nothing besides. What the singers and
 * the room make is worked out once. It uses its instrument's scratch paper and belongs to the same thread.
 *
 * <p>Checked against: {@code WeighingTest}, the margins of {@link OrganSound#estimate}.
 */
public final class MarginEvaluator {

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
    private final double[] heardMost = new double[ThirdOctaves.COUNT];
    private final double[] disturbingMost = new double[ThirdOctaves.COUNT];
    private final double[] disturbing = new double[ThirdOctaves.COUNT];

    MarginEvaluator(Mode mode, PeoplePresent people, Seats seats, double[] voice, OrganPower power, Hearing hearing) {
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
        hear(heard, disturbing);
        return marginDb();
    }

    /**
     * Between what bounds the margin of every registration lies that draws at least and at most so much, in dB.
     *
     * @param least what is drawn at least, with no box farther open
     * @param most what is drawn at most, with the same couplers, and no box less open
     * @param hands how it is played
     */
    public Interval marginDb(Registration least, Registration most, HandsAndFeet hands) {
        power.compute(least, hands);
        boolean isMelodySilent = power.isMelodySilent();
        boolean isSilent = power.isSilent();
        hear(heard, disturbing);
        power.compute(most, hands);
        hear(heardMost, disturbingMost);
        return switch (mode) {
            case SMALL_CHOIR, SOLO_VOICE ->
                new Interval(
                        hearing.wordsDb(singing, heardMost), isSilent ? ALWAYS_DB : hearing.wordsDb(singing, heard));
            case CONGREGATION, MELODY_SOLOED -> {
                if (power.isMelodySilent()) {
                    yield new Interval(NEVER_DB, NEVER_DB);
                }
                Interval music = hearing.musicDb(heard, heardMost, disturbing, disturbingMost);
                yield isMelodySilent ? new Interval(NEVER_DB, music.highDb()) : music;
            }
        };
    }

    /** Lets what sounds now arrive: what should be heard or covers a voice, and what disturbs a melody. */
    private void hear(double[] organ, double[] other) {
        switch (mode) {
            case CONGREGATION -> {
                pass(power.all(), toSingers, organ);
                System.arraycopy(singing, 0, other, 0, other.length);
            }
            case SMALL_CHOIR, SOLO_VOICE -> pass(power.all(), toNave, organ);
            case MELODY_SOLOED -> {
                pass(power.melody(), toNave, organ);
                pass(power.rest(), toNave, other);
            }
        }
    }

    /** The margin of what arrived. */
    private double marginDb() {
        return switch (mode) {
            case CONGREGATION, MELODY_SOLOED -> power.isMelodySilent() ? NEVER_DB : hearing.musicDb(heard, disturbing);
            case SMALL_CHOIR, SOLO_VOICE -> power.isSilent() ? ALWAYS_DB : hearing.wordsDb(singing, heard);
        };
    }

    private static void pass(double[] from, double[] path, double[] to) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            to[band] = from[band] * path[band];
        }
    }
}
