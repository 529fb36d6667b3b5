package versewind.sound;

import java.util.Optional;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Singing;

/**
 * A reading of a sound-level meter, or of a phone that serves as one: the mean level while a hymn is played.
 *
 * @param date the day it was taken, as "2026-10-04"; blank if not known
 * @param registration what was drawn
 * @param hands where hands and feet played
 * @param seat where the meter stood
 * @param present number of people in the room, 0 or more
 * @param sung who sang with the organ, if anybody did
 * @param dba the level in dB(A), 20 to 130
 */
public record MeterReading(
        String date,
        Registration registration,
        HandsAndFeet hands,
        Seat seat,
        int present,
        Optional<Sung> sung,
        double dba) {

    /** Standard deviation in dB of one reading: of the meter, of its place, of the playing. An estimate. */
    public static final double NOISE_SD_DB = 2;

    /** The lowest level in dB(A) that can be a reading. */
    public static final double LOWEST_DBA = 20;

    /** The highest level in dB(A) that can be a reading. */
    public static final double HIGHEST_DBA = 130;

    /**
     * Who sang.
     *
     * @param singers how many, 2 or more
     * @param strength how strongly
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
}
