package versewind.cli;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import versewind.calibration.MeterReading;
import versewind.organ.Instrument;
import versewind.organ.Names;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.Singing;
import versewind.sound.OrganSound;
import versewind.sound.Seat;

/**
 * A table of readings as people type it or a spreadsheet saves it: commas, semicolons or tabs between the cells, a head
 * that names the columns in any order, a reading a line. Lines that begin with # are remarks.
 *
 * <p>Columns: draw and dBA must be there; box, hands, right, left, seat, people, singers, singing, date may be left
 * out or blank. What is drawn is written as for {@code --draw}.
 */
final class ReadingsTable {

    private static final String DRAW = "draw";
    private static final String BOX = "box";
    private static final String HANDS = "hands";
    private static final String RIGHT = "right";
    private static final String LEFT = "left";
    private static final String SEAT = "seat";
    private static final String PEOPLE = "people";
    private static final String SINGERS = "singers";
    private static final String SINGING = "singing";
    private static final String DATE = "date";
    private static final String LEVEL = "dBA";

    /** The columns, in the order in which a table is usually written. */
    static final List<String> COLUMNS =
            List.of(DATE, DRAW, BOX, HANDS, RIGHT, LEFT, SEAT, PEOPLE, SINGERS, SINGING, LEVEL);

    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final int MOST_PEOPLE = 50_000;

    private final String place;
    private final OrganSound sound;
    private final Instrument instrument;
    private final RegistrationText text;

    private ReadingsTable(String place, OrganSound sound) {
        this.place = place;
        this.sound = sound;
        this.instrument = sound.organ();
        this.text = new RegistrationText(instrument);
    }

    /**
     * A table that was read.
     *
     * @param readings its readings
     * @param troubles every line that is wrong: "line 3: Great has no stop ..."
     */
    record Read(List<MeterReading> readings, List<String> troubles) {
        Read {
            readings = List.copyOf(readings);
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * Reads a table.
     *
     * @param place what the table is called, for the sentence if something is wrong
     * @param text what is in it
     * @param sound the organ
     */
    static Read read(String place, String text, OrganSound sound) throws NotationException {
        ReadingsTable table = new ReadingsTable(place, sound);
        String clean = text.startsWith("\uFEFF") ? text.substring(1) : text;
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter(clean))
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(true)
                .setCommentMarker('#')
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(clean), format)) {
            return table.readings(parser);
        } catch (IOException | UncheckedIOException malformed) {
            throw new UsageException(
                    place + ": quotation marks do not match. Put them around whole cells, and double those within.");
        }
    }

    private static char delimiter(String text) {
        String head = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
        return Stream.of('\t', ';')
                .filter(sign -> head.indexOf(sign) >= 0)
                .findFirst()
                .orElse(',');
    }

    private Read readings(CSVParser parser) throws NotationException {
        Map<String, Integer> columns = new HashMap<>();
        List<MeterReading> readings = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        for (CSVRecord row : parser) {
            String line = "line " + parser.getCurrentLineNumber() + ": ";
            try {
                if (columns.isEmpty()) {
                    columns.putAll(columns(row));
                } else {
                    readings.add(reading(row, columns));
                }
            } catch (NotationException | IllegalArgumentException wrong) {
                troubles.add(line + sentence(wrong.getMessage()));
            }
            if (columns.isEmpty()) {
                break;
            }
        }
        if (readings.isEmpty() && troubles.isEmpty()) {
            throw new UsageException(
                    place + " has no readings. Write a first line with draw and dBA, then a line for each reading.");
        }
        return new Read(readings, troubles);
    }

    private static String sentence(String message) {
        String capital = message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1);
        return capital.endsWith(".") ? capital : capital + ".";
    }

    private static Map<String, Integer> columns(CSVRecord head) throws NotationException {
        Map<String, Integer> columns = new HashMap<>();
        for (int i = 0; i < head.size(); i++) {
            String name = head.get(i).strip();
            if (name.isEmpty()) {
                continue;
            }
            Optional<String> column =
                    COLUMNS.stream().filter(name::equalsIgnoreCase).findFirst();
            if (column.isEmpty()) {
                throw new UsageException(
                        "There is no column \"" + name + "\". The columns are " + String.join(", ", COLUMNS) + ".");
            }
            if (columns.put(column.get(), i) != null) {
                throw new UsageException("Two columns are called \"" + name + "\". Remove one.");
            }
        }
        for (String needed : List.of(DRAW, LEVEL)) {
            if (!columns.containsKey(needed)) {
                throw new UsageException("There is no column \"" + needed
                        + "\". The first line must name the columns, draw and dBA among them.");
            }
        }
        return columns;
    }

    private static String cell(CSVRecord row, Map<String, Integer> columns, String column) {
        Integer at = columns.get(column);
        return at == null || at >= row.size() ? "" : row.get(at).strip();
    }

    private MeterReading reading(CSVRecord row, Map<String, Integer> columns) throws NotationException {
        if (row.size() > columns.size()) {
            throw new UsageException("There are more cells than columns. Put the registration in quotation marks.");
        }
        Registration drawn = text.withBoxes(text.parse(cell(row, columns, DRAW)), cell(row, columns, BOX));
        OptionalInt singers = whole(cell(row, columns, SINGERS), SINGERS);
        int people = whole(cell(row, columns, PEOPLE), PEOPLE).orElse(singers.orElse(0));
        Singing singing = choice(
                cell(row, columns, SINGING), "Unknown singing:", Singing.values(), Singing::word, Singing.ORDINARY);
        MeterReading reading = new MeterReading(
                date(cell(row, columns, DATE)),
                drawn,
                hands(row, columns),
                choice(cell(row, columns, SEAT), "Unknown seat:", Seat.values(), Seat::word, Seat.NAVE),
                people,
                singers.isPresent()
                        ? Optional.of(new MeterReading.Sung(singers.getAsInt(), singing))
                        : Optional.empty(),
                level(cell(row, columns, LEVEL)));
        if (reading.expectedDba(sound).isEmpty()) {
            throw new UsageException("Nothing sounds. Draw a stop where the hands play.");
        }
        return reading;
    }

    private HandsAndFeet hands(CSVRecord row, Map<String, Integer> columns) throws NotationException {
        HandsAndFeet.Layout layout = choice(
                cell(row, columns, HANDS),
                "Unknown value for hands:",
                HandsAndFeet.Layout.values(),
                HandsAndFeet.Layout::word,
                HandsAndFeet.Layout.FOUR_PARTS);
        String right = cell(row, columns, RIGHT);
        String left = cell(row, columns, LEFT);
        int rightHand = right.isEmpty() ? instrument.mainDivision() : text.manual(right);
        return new HandsAndFeet(layout, rightHand, left.isEmpty() ? rightHand : text.manual(left));
    }

    private static String date(String typed) throws NotationException {
        if (!typed.isEmpty() && !DAY.matcher(typed).matches()) {
            throw new UsageException("Enter a date such as 2026-10-04, not " + Quoted.text(typed) + ".");
        }
        return typed;
    }

    private static double level(String typed) throws NotationException {
        try {
            return Double.parseDouble(typed.replace(',', '.'));
        } catch (NumberFormatException noNumber) {
            throw new UsageException("Enter a level in dB(A) such as 78.5, not " + Quoted.text(typed) + ".");
        }
    }

    private static OptionalInt whole(String typed, String column) throws NotationException {
        if (typed.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!typed.matches("[0-9]{1,9}") || Integer.parseInt(typed) > MOST_PEOPLE) {
            throw new UsageException("Enter a whole number up to " + MOST_PEOPLE + " under " + column + ", not "
                    + Quoted.text(typed) + ".");
        }
        return OptionalInt.of(Integer.parseInt(typed));
    }

    private static <T> T choice(String typed, String none, T[] values, Function<T, String> word, T otherwise)
            throws NotationException {
        if (typed.isEmpty()) {
            return otherwise;
        }
        Names names = new Names(none, "Use", Stream.of(values).map(word).toList());
        return values[names.find(typed)];
    }
}
