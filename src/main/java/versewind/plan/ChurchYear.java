package versewind.plan;

import static java.time.temporal.ChronoUnit.DAYS;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The church year of the western churches: the season and feast of each day of one civil year.
 *
 * <p>Sundays are named as in the Revised Common Lectionary (Consultation on Common Texts, 1992), with the numbers of
 * its propers, of which 29 is the last before Advent and 4 falls on 29 May to 4 June (liturgytools.net and the
 * Liturgy wiki agree; the other names are from memory); after Pentecost they are counted after Trinity, as Anglicans
 * and Lutherans count them, and the last four before Advent, as in Common Worship (Church of England, 2000; from
 * memory). A church that counts after Pentecost adds one; where Sundays "in ordinary time" are
 * counted, the proper plus five is the number.
 *
 * <p>A feast of a fixed day gives way to the Sundays of Advent, Lent and Easter, to Holy Week and to Easter Week; the
 * Annunciation alone is then moved, to the Monday after, and from Holy Week and Easter Week to the Monday after the
 * Second Sunday of Easter.
 *
 * <p>Checked against: {@code ChurchYearTest}.
 */
public final class ChurchYear {

    private static final List<String> ORDINALS = List.of(
            "First",
            "Second",
            "Third",
            "Fourth",
            "Fifth",
            "Sixth",
            "Seventh",
            "Eighth",
            "Ninth",
            "Tenth",
            "Eleventh",
            "Twelfth",
            "Thirteenth",
            "Fourteenth",
            "Fifteenth",
            "Sixteenth",
            "Seventeenth",
            "Eighteenth",
            "Nineteenth",
            "Twentieth",
            "Twenty-first",
            "Twenty-second",
            "Twenty-third",
            "Twenty-fourth",
            "Twenty-fifth",
            "Twenty-sixth",
            "Twenty-seventh");
    private static final int LAST_PROPER = 29;

    /** Weeks from the Sunday of 30 October to 5 November, on which All Saints may be kept, to Advent. */
    private static final int ALL_SAINTS = 4;

    private final LocalDate epiphany;
    private final LocalDate ashWednesday;
    private final LocalDate easter;
    private final LocalDate trinity;
    private final LocalDate advent;
    private final LocalDate christmas;

    private ChurchYear(int year) {
        epiphany = LocalDate.of(year, Month.JANUARY, 6);
        easter = Easter.western(year);
        ashWednesday = easter.minusDays(46);
        trinity = easter.plusDays(56);
        christmas = LocalDate.of(year, Month.DECEMBER, 25);
        advent = christmas.with(TemporalAdjusters.previous(DayOfWeek.SUNDAY)).minusWeeks(3);
    }

    /** The day in the church year; empty before {@link Easter#FIRST_YEAR}. */
    public static Optional<ChurchDay> day(LocalDate date) {
        return date.getYear() < Easter.FIRST_YEAR
                ? Optional.empty()
                : Optional.of(new ChurchYear(date.getYear()).of(date));
    }

    private ChurchDay of(LocalDate date) {
        Season season = season(date);
        Optional<ChurchDay> movable = movable(date, season);
        Optional<FixedFeast> feast = feast(date, season);
        String orthodox = date.equals(Easter.orthodox(date.getYear())) ? "Orthodox Easter Day" : "";
        if (movable.isPresent()) {
            return also(movable.get(), orthodox);
        }
        String plain = isSunday(date) ? sunday(date, season) : weekday(date, season);
        ChurchDay day = new ChurchDay(season, plain, Optional.empty(), usual(season));
        if (feast.isEmpty()) {
            return also(day, date.equals(advent.minusWeeks(ALL_SAINTS)) ? "All Saints’ Sunday" : orthodox);
        }
        String title = feast.get().title();
        ChurchDay kept =
                new ChurchDay(season, title, Optional.empty(), feast.get().occasion());
        if (!isSunday(date)) {
            return also(kept, orthodox);
        }
        return switch (feast.get().rank()) {
            case ALONE -> kept;
            case HIGH -> also(kept, plain);
            case LOW -> also(day, title);
        };
    }

    private static ChurchDay also(ChurchDay day, String other) {
        return other.isEmpty() ? day : new ChurchDay(day.season(), day.name(), Optional.of(other), day.occasion());
    }

    private Season season(LocalDate date) {
        if (date.isBefore(epiphany) || !date.isBefore(christmas)) {
            return Season.CHRISTMAS;
        }
        if (date.isBefore(ashWednesday)) {
            return Season.EPIPHANY;
        }
        if (date.isBefore(easter.minusWeeks(1))) {
            return Season.LENT;
        }
        if (date.isBefore(easter)) {
            return Season.HOLY_WEEK;
        }
        if (!date.isAfter(easter.plusWeeks(7))) {
            return Season.EASTER;
        }
        return date.isBefore(advent) ? Season.AFTER_PENTECOST : Season.ADVENT;
    }

    private static Occasion usual(Season season) {
        return switch (season) {
            case ADVENT -> Occasion.EXPECTANT;
            case CHRISTMAS, EASTER -> Occasion.JOYFUL;
            case EPIPHANY, AFTER_PENTECOST -> Occasion.ORDINARY;
            case LENT -> Occasion.PENITENTIAL;
            case HOLY_WEEK -> Occasion.SOLEMN;
        };
    }

    /** Days whose date depends on Easter or Advent and that take precedence over all others. */
    private Optional<ChurchDay> movable(LocalDate date, Season season) {
        if (date.equals(advent.minusWeeks(1))) {
            return Optional.of(new ChurchDay(season, "Christ the King", Optional.of(after(date)), Occasion.FESTAL));
        }
        return switch ((int) DAYS.between(easter, date)) {
            case -46 -> named(season, "Ash Wednesday", Occasion.PENITENTIAL);
            case -7 -> named(season, "Palm Sunday", Occasion.SOLEMN);
            case -3 -> named(season, "Maundy Thursday", Occasion.SOLEMN);
            case -2 -> named(season, "Good Friday", Occasion.SOLEMN);
            case -1 -> named(season, "Easter Eve", Occasion.SOLEMN);
            case 0 -> named(season, "Easter Day", Occasion.FESTAL);
            case 39 -> named(season, "Ascension Day", Occasion.FESTAL);
            case 49 -> named(season, "Pentecost", Occasion.FESTAL);
            case 56 -> named(season, "Trinity Sunday", Occasion.FESTAL);
            case 60 -> named(season, "Corpus Christi", Occasion.JOYFUL);
            default -> Optional.empty();
        };
    }

    private static Optional<ChurchDay> named(Season season, String name, Occasion occasion) {
        return Optional.of(new ChurchDay(season, name, Optional.empty(), occasion));
    }

    /** The fixed feast kept on a date: neither displaced from it nor moved away. */
    private Optional<FixedFeast> feast(LocalDate date, Season season) {
        if (date.equals(annunciation())) {
            return Optional.of(FixedFeast.ANNUNCIATION);
        }
        return FixedFeast.on(date)
                .filter(feast -> feast != FixedFeast.ANNUNCIATION)
                .filter(feast -> feast == FixedFeast.CHRISTMAS_EVE || !givesWay(date, season));
    }

    private LocalDate annunciation() {
        LocalDate day = LocalDate.of(easter.getYear(), Month.MARCH, 25);
        if (!day.isBefore(easter.minusWeeks(1)) && !day.isAfter(easter.plusWeeks(1))) {
            return easter.plusDays(8);
        }
        return givesWay(day, season(day)) ? day.plusDays(1) : day;
    }

    private boolean givesWay(LocalDate date, Season season) {
        return switch (season) {
            case ADVENT, LENT -> isSunday(date);
            case HOLY_WEEK -> true;
            case EASTER -> isSunday(date) || date.isBefore(easter.plusWeeks(1));
            case CHRISTMAS, EPIPHANY, AFTER_PENTECOST -> false;
        };
    }

    private String sunday(LocalDate date, Season season) {
        return switch (season) {
            case ADVENT -> ordinal(weeks(advent, date)) + " Sunday of Advent";
            case CHRISTMAS ->
                (date.getMonth() == Month.DECEMBER || date.getDayOfMonth() == 1 ? "First" : "Second")
                        + " Sunday after Christmas";
            case EPIPHANY ->
                date.isAfter(ashWednesday.minusWeeks(1))
                        ? "Last Sunday after Epiphany"
                        : ordinal((int) (DAYS.between(epiphany, date) - 1) / 7) + " Sunday after Epiphany";
            case LENT -> ordinal(weeks(ashWednesday, date)) + " Sunday in Lent";
            case HOLY_WEEK -> "Palm Sunday";
            case EASTER -> ordinal(weeks(easter, date)) + " Sunday of Easter";
            case AFTER_PENTECOST -> after(date);
        };
    }

    private String after(LocalDate date) {
        int left = weeks(date, advent);
        String name =
                switch (left) {
                    case 1 -> "Sunday next before Advent";
                    case 2, 3, ALL_SAINTS -> ordinal(left - 1) + " Sunday before Advent";
                    case ALL_SAINTS + 1 -> "Last Sunday after Trinity";
                    default -> ordinal(weeks(trinity, date) - 1) + " Sunday after Trinity";
                };
        return name + ", Proper " + (LAST_PROPER + 1 - left);
    }

    private String weekday(LocalDate date, Season season) {
        String day = date.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        if (season == Season.CHRISTMAS) {
            return day + " in Christmastide";
        }
        if (season == Season.HOLY_WEEK) {
            return day + " in Holy Week";
        }
        if (season == Season.EASTER && date.isBefore(easter.plusWeeks(1))) {
            return day + " in Easter Week";
        }
        LocalDate before = date.with(TemporalAdjusters.previous(DayOfWeek.SUNDAY));
        if (before.isBefore(epiphany)) {
            return day + " after Epiphany";
        }
        if (season == Season.LENT && before.isBefore(ashWednesday)) {
            return day + " after Ash Wednesday";
        }
        ChurchDay sunday = of(before);
        boolean isCounted = ORDINALS.stream().anyMatch(sunday.name()::startsWith)
                || sunday.name().startsWith("Last");
        return day + " after " + (isCounted ? "the " : "") + sunday.name();
    }

    private static boolean isSunday(LocalDate date) {
        return date.getDayOfWeek() == DayOfWeek.SUNDAY;
    }

    private static int weeks(LocalDate from, LocalDate to) {
        return (int) DAYS.between(from, to) / 7;
    }

    /** "First" for 0. */
    private static String ordinal(int index) {
        return ORDINALS.get(index);
    }

    /**
     * Feasts with a fixed date that most western churches keep on the same day. From memory. Feasts with differing
     * dates (St Thomas, the Visitation), or kept by one church or country only, are left out.
     */
    private enum FixedFeast {
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
}
