package versewind.plan;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Optional;

/**
 * Feasts with a fixed date that most western churches keep on the same day. From memory. Feasts with differing dates
 * (St Thomas, the Visitation), or kept by one church or country only, are left out.
 */
enum FixedFeast {
    NAMING(1, 1, "Naming of Jesus", Occasion.JOYFUL, Rank.HIGH),
    EPIPHANY(1, 6, "Epiphany", Occasion.FESTAL, Rank.ALONE),
    CONVERSION_OF_PAUL(1, 25, "Conversion of St Paul", Occasion.JOYFUL, Rank.LOW),
    PRESENTATION(2, 2, "Presentation of Christ (Candlemas)", Occasion.JOYFUL, Rank.HIGH),
    JOSEPH(3, 19, "St Joseph", Occasion.JOYFUL, Rank.LOW),
    ANNUNCIATION(3, 25, "Annunciation", Occasion.JOYFUL, Rank.HIGH),
    MARK(4, 25, "St Mark", Occasion.JOYFUL, Rank.LOW),
    JOHN_THE_BAPTIST(6, 24, "Birth of St John the Baptist", Occasion.JOYFUL, Rank.LOW),
    PETER_AND_PAUL(6, 29, "St Peter and St Paul", Occasion.JOYFUL, Rank.LOW),
    MARY_MAGDALENE(7, 22, "St Mary Magdalene", Occasion.JOYFUL, Rank.LOW),
    JAMES(7, 25, "St James", Occasion.JOYFUL, Rank.LOW),
    TRANSFIGURATION(8, 6, "Transfiguration", Occasion.JOYFUL, Rank.HIGH),
    MARY(8, 15, "St Mary", Occasion.JOYFUL, Rank.LOW),
    BARTHOLOMEW(8, 24, "St Bartholomew", Occasion.JOYFUL, Rank.LOW),
    HOLY_CROSS(9, 14, "Holy Cross Day", Occasion.JOYFUL, Rank.LOW),
    MATTHEW(9, 21, "St Matthew", Occasion.JOYFUL, Rank.LOW),
    MICHAEL(9, 29, "St Michael and All Angels", Occasion.JOYFUL, Rank.LOW),
    LUKE(10, 18, "St Luke", Occasion.JOYFUL, Rank.LOW),
    SIMON_AND_JUDE(10, 28, "St Simon and St Jude", Occasion.JOYFUL, Rank.LOW),
    ALL_SAINTS(11, 1, "All Saints", Occasion.FESTAL, Rank.HIGH),
    ALL_SOULS(11, 2, "All Souls", Occasion.SOLEMN, Rank.LOW),
    ANDREW(11, 30, "St Andrew", Occasion.JOYFUL, Rank.LOW),
    CHRISTMAS_EVE(12, 24, "Christmas Eve", Occasion.FESTAL, Rank.HIGH),
    CHRISTMAS_DAY(12, 25, "Christmas Day", Occasion.FESTAL, Rank.ALONE),
    STEPHEN(12, 26, "St Stephen", Occasion.JOYFUL, Rank.LOW),
    JOHN(12, 27, "St John", Occasion.JOYFUL, Rank.LOW),
    HOLY_INNOCENTS(12, 28, "Holy Innocents", Occasion.SOLEMN, Rank.LOW);

    /** How a feast and a Sunday are named together where they fall on one day. */
    enum Rank {
        /** The Sunday is not named. */
        ALONE,
        /** The feast goes before. */
        HIGH,
        /** The Sunday goes before. */
        LOW
    }

    private final MonthDay day;
    private final String title;
    private final Occasion occasion;
    private final Rank rank;

    FixedFeast(int month, int day, String title, Occasion occasion, Rank rank) {
        this.day = MonthDay.of(month, day);
        this.title = title;
        this.occasion = occasion;
        this.rank = rank;
    }

    String title() {
        return title;
    }

    Occasion occasion() {
        return occasion;
    }

    Rank rank() {
        return rank;
    }

    /** The feast that stands on a day of the month, wherever it may be moved to. */
    static Optional<FixedFeast> on(LocalDate date) {
        return Arrays.stream(values())
                .filter(feast -> feast.day.equals(MonthDay.from(date)))
                .findFirst();
    }
}
