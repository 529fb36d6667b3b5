package versewind.calibration;

import java.util.Optional;
import java.util.OptionalDouble;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Singing;
import versewind.sound.OrganSound;
import versewind.sound.Seat;

/**
 * A reading of a sound-level meter, or of a phone used as one: the mean level while a hymn is played.
 *
 * @param date the day it was taken, as "2026-10-04"; blank if unknown
 * @param registration stops and couplers drawn
 * @param hands where hands and feet played
 * @param seat where the meter stood
 * @param present number of people in the room, 0 or more
 * @param sung the singers, if anybody sang with the organ
 * @param dba level in dB(A), 20 to 130
 */
public record MeterReading(
        String date,
        Registration registration,
        HandsAndFeet hands,
        Seat seat,
        int present,
        Optional<Sung> sung,
        double dba) {

    /** Standard deviation of one reading in dB, by position and playing, besides that of its device. An estimate. */
    public static final double NOISE_SD_DB = 1;

    /** Variance of one reading in dB2. */
    static final double NOISE_VARIANCE = NOISE_SD_DB * NOISE_SD_DB;

    /** Lowest level in dB(A) accepted as a reading. */
    public static final double LOWEST_DBA = 20;

    /** Highest level in dB(A) accepted as a reading. */
    public static final double HIGHEST_DBA = 130;

    /**
     * The singers heard in a reading.
     *
     * @param singers their number, 2 or more
     * @param strength how strongly they sang
     */
    public record Sung(int singers, Singing strength) {

        public Sung {
            require(singers >= 2, "a reading of singing needs two singers at least");
        }
    }

    public MeterReading {
        require(present >= 0, "the people in a room are 0 or more");
        require(dba >= LOWEST_DBA && dba <= HIGHEST_DBA, "a reading lies between 20 and 130 dB(A)");
        require(
                sung.isEmpty() || seat == Seat.NAVE || seat == Seat.FAR,
                "while people sing, the meter stands among them: in the nave or far");
        require(sung.isEmpty() || sung.get().singers() <= present, "not more people can sing than are in the room");
    }

    private static void require(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }

    /** The organ alone in the nave of the empty church, undated. */
    static MeterReading ofOrganAlone(Registration registration, HandsAndFeet hands, double dba) {
        return new MeterReading("", registration, hands, Seat.NAVE, 0, Optional.empty(), dba);
    }

    /** The same reading with another level in dB(A), within what can be read. */
    MeterReading reading(double otherDba) {
        double within = Math.max(LOWEST_DBA, Math.min(HIGHEST_DBA, otherDba));
        return new MeterReading(date, registration, hands, seat, present, sung, within);
    }

    /** The level in dB(A) that an organ is expected to give in this reading; empty if nothing sounds. */
    public OptionalDouble expectedDba(OrganSound sound) {
        return expectedDba(sound, new double[sound.parameters().count()]);
    }

    /**
     * As above, with the derivative of the level by the parameters.
     *
     * @param gradient receives the derivative in dB/dB; zeros if nothing sounds
     */
    OptionalDouble expectedDba(OrganSound sound, double[] gradient) {
        OptionalDouble organDba = sound.organDba(seat, present, registration, hands, gradient);
        if (sung.isEmpty()) {
            return organDba;
        }
        double[] ofSinging = new double[gradient.length];
        OptionalDouble singingDba =
                sound.singingDba(present, sung.get().singers(), sung.get().strength(), ofSinging);
        double organ = power(organDba);
        double singing = power(singingDba);
        double both = organ + singing;
        for (int place = 0; place < gradient.length; place++) {
            gradient[place] = (gradient[place] * organ + ofSinging[place] * singing) / both;
        }
        return OptionalDouble.of(ThirdOctaves.powerToDb(both));
    }

    /** As above, as the device shows it, whose error is common to all readings. */
    OptionalDouble shownDba(OrganSound sound, double[] gradient) {
        OptionalDouble expectedDba = expectedDba(sound, gradient);
        gradient[sound.parameters().device()] = 1;
        return expectedDba;
    }

    private static double power(OptionalDouble levelDb) {
        return levelDb.isPresent() ? ThirdOctaves.dbToPower(levelDb.getAsDouble()) : 0;
    }
}
