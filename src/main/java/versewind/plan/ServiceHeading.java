package versewind.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The heading of a service: title, date, people, notes, and who plays.
 *
 * @param title "Harvest Thanksgiving"
 * @param date the day, if set
 * @param people number of people expected, 1 to 50000
 * @param notes notes for the desk; may be blank
 * @param moveS time in s for one stop change by hand, or one swell box by foot, 0.1 to 5
 * @param player who plays
 */
public record ServiceHeading(
        String title, Optional<LocalDate> date, int people, String notes, double moveS, Player player) {

    /** The usual time for one change, in s; an estimate. */
    public static final double USUAL_MOVE_S = 0.6;

    /** The shortest time for one change, in s. */
    public static final double SHORTEST_MOVE_S = 0.1;

    /** The longest time for one change, in s. */
    public static final double LONGEST_MOVE_S = 5;

    public ServiceHeading {
        if (people < 1 || people > Verse.MOST_PEOPLE) {
            throw new IllegalArgumentException("the people expected are 1 to 50000");
        }
        if (!(moveS >= SHORTEST_MOVE_S && moveS <= LONGEST_MOVE_S)) {
            throw new IllegalArgumentException("a movement takes 0.1 to 5 s");
        }
    }

    /** A heading with the usual time for one change, and a player with pedals. */
    public ServiceHeading(String title, Optional<LocalDate> date, int people, String notes) {
        this(title, date, people, notes, USUAL_MOVE_S, Player.WITH_PEDALS);
    }

    /** With another title. */
    public ServiceHeading withTitle(String other) {
        return new ServiceHeading(other, date, people, notes, moveS, player);
    }

    /** On another date. */
    public ServiceHeading withDate(Optional<LocalDate> other) {
        return new ServiceHeading(title, other, people, notes, moveS, player);
    }

    /** With another number of people. */
    public ServiceHeading withPeople(int other) {
        return new ServiceHeading(title, date, other, notes, moveS, player);
    }

    /** With other notes. */
    public ServiceHeading withNotes(String other) {
        return new ServiceHeading(title, date, people, other, moveS, player);
    }

    /** With another time for one change, in s. */
    public ServiceHeading withMoveS(double other) {
        return new ServiceHeading(title, date, people, notes, other, player);
    }

    /** Played by another. */
    public ServiceHeading withPlayer(Player other) {
        return new ServiceHeading(title, date, people, notes, moveS, other);
    }
}
