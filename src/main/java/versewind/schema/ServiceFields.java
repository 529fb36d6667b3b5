package versewind.schema;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import versewind.plan.Hymn;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Share;
import versewind.schema.Field.Layout;

/** The fields of a service: its heading, its instrument and its hymns. */
public final class ServiceFields {

    /** A plan without its hymns, as in a row of a spreadsheet. */
    public static final Table<Plan> HEAD = Table.block("A service.", "people", ServiceFields::plan, ServiceFields::of);

    public static final Field<Plan, String> TITLE =
            HEAD.add("title", Kinds.TEXT, "the name of the service").column("service");

    public static final Field<Plan, Optional<LocalDate>> DATE = HEAD.ifAny("date", new Date(), "the day");

    public static final Field<Plan, Optional<Occasion>> OCCASION =
            HEAD.ifAny("occasion", Kinds.choice(Occasion.values()), "the occasion, if not that of the day");

    public static final Field<Plan, String> INSTRUMENT = HEAD.add(
            "instrument",
            new Kinds.Parsed<>(
                    "the name of an instrument's file",
                    "without its folder and \".json\"",
                    id -> FileFormat.isId(id) ? Optional.of(id) : Optional.empty(),
                    id -> id),
            "name of the instrument's file");

    public static final Field<Plan, Integer> PEOPLE =
            HEAD.add("people", VerseFields.PEOPLE_COUNT, "how many people are expected");

    public static final Field<Plan, Integer> IN_TEN = HEAD.add(
                    "in ten", VerseFields.IN_TEN_COUNT, "how many of every ten people present sing, 1 to 10")
            .orElse(Share.USUAL_IN_TEN)
            .label("Singing");

    public static final Field<Plan, Double> SECONDS_A_MOVE = HEAD.add(
                    "seconds a move",
                    Kinds.decimal(ServiceHeading.SHORTEST_MOVE_S, ServiceHeading.LONGEST_MOVE_S),
                    "seconds to change one stop, coupler or swell box")
            .orElse(ServiceHeading.USUAL_MOVE_S)
            .label("Seconds");

    public static final Field<Plan, Player> PLAYER = HEAD.add(
                    "player", Kinds.choice(Player.values()), "how every verse is played")
            .label("Pedals")
            .orElse(Player.WITH_PEDALS);

    public static final Field<Plan, String> NOTES =
            HEAD.text("notes", "notes for the desk").column("service notes");

    /** A plan, as in a file. */
    public static final Table<Plan> TABLE = Table.block(
            "A service planned on an instrument.",
            "people",
            values -> plan(values).withHymns(values.get(ServiceFields.HYMNS)),
            ServiceFields::of);

    public static final Field<Plan, List<Hymn>> HYMNS;

    static {
        TABLE.add(FileFormat.field());
        TABLE.addAll(HEAD);
        HYMNS = TABLE.add("hymns", Kinds.Items.of(HymnFields.TABLE), "the hymns, in the order they are sung")
                .laid(Layout.BLOCK);
    }

    private ServiceFields() {}

    private static Object of(Plan plan, String field) {
        return switch (field) {
            case FileFormat.FIELD -> FileFormat.NUMBER;
            case "title" -> plan.heading().title();
            case "date" -> plan.heading().date();
            case "occasion" -> plan.heading().given();
            case "instrument" -> plan.instrument();
            case "people" -> plan.heading().people();
            case "in ten" -> plan.heading().inTen();
            case "seconds a move" -> plan.heading().moveS();
            case "player" -> plan.heading().player();
            case "notes" -> plan.heading().notes();
            case "hymns" -> plan.hymns();
            default -> throw Table.without(field);
        };
    }

    /** A plan without its hymns. */
    public static Plan plan(Values values) throws Refused {
        ServiceHeading heading = new ServiceHeading(
                values.get(TITLE),
                values.get(DATE),
                values.get(OCCASION),
                values.get(PEOPLE),
                values.get(IN_TEN),
                values.get(NOTES),
                values.get(SECONDS_A_MOVE),
                values.get(PLAYER));
        return new Plan(heading, values.get(INSTRUMENT), List.of());
    }

    /** A day: 2026-10-04 in files, typed also as 4 Oct 2026, 4th October 2026 or 4.10.2026. */
    private static final class Date extends Kinds.Parsed<LocalDate> {
        private static final List<String> MONTHS = List.of(
                "january",
                "february",
                "march",
                "april",
                "may",
                "june",
                "july",
                "august",
                "september",
                "october",
                "november",
                "december");
        private static final int FEWEST_LETTERS = 3;
        private static final int LENGTH = 10;

        Date() {
            super("a date", "such as 20 Dec 2026 or 2026-12-20", Date::parsed, LocalDate::toString);
        }

        private static Optional<LocalDate> parsed(String written) {
            // without LocalDate.parse, which is slow when it is first called
            boolean isShaped = written.length() == LENGTH && written.charAt(4) == '-' && written.charAt(7) == '-';
            try {
                return isShaped
                        ? Optional.of(LocalDate.of(
                                digits(written.substring(0, 4)),
                                digits(written.substring(5, 7)),
                                digits(written.substring(8))))
                        : Optional.empty();
            } catch (DateTimeException notADay) {
                return Optional.empty();
            }
        }

        private static int digits(String number) {
            int value = 0;
            for (int i = 0; i < number.length(); i++) {
                int digit = number.charAt(i) - '0';
                if (digit < 0 || digit > 9) {
                    throw new DateTimeException("not a digit");
                }
                value = 10 * value + digit;
            }
            return value;
        }

        @Override
        Object shaped(String typed) {
            String[] words =
                    typed.strip().toLowerCase(Locale.ROOT).split("(?<=\\d)(st|nd|rd|th)?\\s+|[./\\s]+\\s*", -1);
            boolean isDated = words.length == 3 && words[0].matches("\\d{1,2}") && words[2].matches("\\d{4}");
            if (isDated && words[1].matches("\\d{1,2}")) {
                return String.format("%s-%2s-%2s", words[2], words[1], words[0]).replace(' ', '0');
            }
            for (int month = 0; isDated && month < MONTHS.size(); month++) {
                if (words[1].length() >= FEWEST_LETTERS && MONTHS.get(month).startsWith(words[1])) {
                    return String.format("%4s-%02d-%2s", words[2], month + 1, words[0])
                            .replace(' ', '0');
                }
            }
            return typed.strip();
        }
    }
}
