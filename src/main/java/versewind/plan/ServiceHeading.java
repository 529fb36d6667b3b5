package versewind.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The heading of a service: title, date, people, notes, and who plays.
 *
 * @param title "Harvest Thanksgiving"
 * @param date the day, if set
 * @param given the occasion, where it is not that of the day
 * @param people number of people expected, 1 to 50000
 * @param inTen how many in ten of them sing, 1 to 10
 * @param notes notes for the desk; may be blank
 * @param moveS time in s for one stop change by hand, or one swell box by foot, 0.1 to 5
 * @param player who plays
 */
public record ServiceHeading(
        String title,
        Optional<LocalDate> date,
        Optional<Occasion> given,
        int people,
        int inTen,
        String notes,
        double moveS,
        Player player) {

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
        Share.require(inTen);
        if (!(moveS >= SHORTEST_MOVE_S && moveS <= LONGEST_MOVE_S)) {
            throw new IllegalArgumentException("a movement takes 0.1 to 5 s");
        }
    }

    /** A heading with the usual time for one change, and a player with pedals. */
    public ServiceHeading(String title, Optional<LocalDate> date, int people, String notes) {
        this(title, date, Optional.empty(), people, Share.USUAL_IN_TEN, notes, USUAL_MOVE_S, Player.WITH_PEDALS);
    }

    /** With another title. */
    public ServiceHeading withTitle(String other) {
        return new ServiceHeading(other, date, given, people, inTen, notes, moveS, player);
    }

    /** On another date. */
    public ServiceHeading withDate(Optional<LocalDate> other) {
        return new ServiceHeading(title, other, given, people, inTen, notes, moveS, player);
    }

    /** On another occasion than that of the day. */
    public ServiceHeading withGiven(Optional<Occasion> other) {
        return new ServiceHeading(title, date, other, people, inTen, notes, moveS, player);
    }

    /** With another share of those who sing. */
    public ServiceHeading withInTen(int other) {
        return new ServiceHeading(title, date, given, people, other, notes, moveS, player);
    }

    /** With another number of people. */
    public ServiceHeading withPeople(int other) {
        return new ServiceHeading(title, date, given, other, inTen, notes, moveS, player);
    }

    /** With other notes. */
    public ServiceHeading withNotes(String other) {
        return new ServiceHeading(title, date, given, people, inTen, other, moveS, player);
    }

    /** With another time for one change, in s. */
    public ServiceHeading withMoveS(double other) {
        return new ServiceHeading(title, date, given, people, inTen, notes, other, player);
    }

    /** Played by another. */
    public ServiceHeading withPlayer(Player other) {
        return new ServiceHeading(title, date, given, people, inTen, notes, moveS, other);
    }

    /** The day and the occasion, where either is known: "Good Friday: solemn"; "wedding". */
    public Optional<String> summary() {
        Optional<ChurchDay> day = date.flatMap(ChurchYear::day);
        return day.isPresent()
                ? Optional.of(day.get().names() + ": "
                        + given.orElse(day.get().occasion()).word())
                : given.map(Occasion::word);
    }

    /** The occasion: the one given, else that of the day, else an ordinary one. */
    public Occasion occasion() {
        return given.or(() -> date.flatMap(ChurchYear::day).map(ChurchDay::occasion))
                .orElse(Occasion.ORDINARY);
    }
}
