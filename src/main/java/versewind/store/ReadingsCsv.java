package versewind.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import versewind.calibration.MeterReading;
import versewind.schema.CalibrationFields;
import versewind.schema.Field;
import versewind.schema.OrganNames;
import versewind.schema.Refused;
import versewind.sound.OrganSound;

/**
 * Readings of a sound-level meter as a spreadsheet: a reading a row, under a row that names the columns in any order.
 * Lines that begin with # are remarks.
 */
public final class ReadingsCsv {
    private static final List<Field<MeterReading, ?>> FIELDS = CalibrationFields.TYPED.fields();
    private static final List<String> COLUMNS =
            FIELDS.stream().map(Field::column).toList();
    private static final List<String> NEEDED =
            FIELDS.stream().filter(Field::isNeededTyped).map(Field::column).toList();

    private ReadingsCsv() {}

    /**
     * Reads a table.
     *
     * @param text what is in it
     * @param sound the organ
     * @throws BadRows with every row that is wrong
     */
    public static List<MeterReading> read(String text, OrganSound sound) throws BadRows {
        List<Csv.Row> rows = new ArrayList<>(Csv.read(withoutRemarks(text)));
        rows.removeIf(row -> row.cells().stream().allMatch(String::isBlank));
        if (rows.size() < 2) {
            throw BadRows.at(
                    1, "there are no readings. Write a first line with draw and dBA, then a line for each reading");
        }
        CsvColumns columns = new CsvColumns(rows.get(0), COLUMNS, NEEDED);
        List<MeterReading> readings = new ArrayList<>();
        List<String> troubles = new ArrayList<>();
        OrganNames names = OrganNames.of(sound.organ());
        for (Csv.Row row : rows.subList(1, rows.size())) {
            Consumer<Refused> wrong = refusal -> troubles.add(sentence(row, refusal));
            Optional<String> excess = columns.excess(row);
            if (excess.isPresent()) {
                troubles.add(BadRows.sentence(row.line(), excess.get()));
                continue;
            }
            Optional<MeterReading> reading = CalibrationFields.TYPED.read(
                    field -> columns.cell(row, field.column()).strip(), names, wrong);
            if (reading.isPresent() && reading.get().expectedDba(sound).isEmpty()) {
                troubles.add(BadRows.sentence(row.line(), "nothing sounds. Draw a stop where the hands play."));
            }
            reading.ifPresent(readings::add);
        }
        if (!troubles.isEmpty()) {
            throw new BadRows(troubles);
        }
        return List.copyOf(readings);
    }

    /** With remarks blanked, so that lines keep their numbers. */
    private static String withoutRemarks(String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return plain.lines().map(line -> line.startsWith("#") ? "" : line).collect(Collectors.joining("\n"));
    }

    private static String sentence(Csv.Row row, Refused wrong) {
        String column = wrong.place().isEmpty() ? "" : wrong.place() + ": ";
        return BadRows.sentence(row.line(), column + wrong.problemAndRemedy());
    }
}
