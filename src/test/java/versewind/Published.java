package versewind;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Published numbers: tables with their sources in lines beginning with #, then a line of heads. */
public final class Published {

    private Published() {}

    /** A column of numbers by its head. */
    public static double[] column(String table, String head) {
        List<List<String>> lines = lines(table);
        int column = lines.get(0).indexOf(head);
        return lines.stream()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.get(column)))
                .toArray();
    }

    /** Numbers written in one field with semicolons between them; none for an empty field. */
    public static double[] numbers(String field) {
        if (field == null || field.isEmpty()) {
            return new double[0];
        }
        return Arrays.stream(field.split(";")).mapToDouble(Double::parseDouble).toArray();
    }

    private static List<List<String>> lines(String table) {
        String name = "/published/" + table;
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(Published.class.getResourceAsStream(name), StandardCharsets.UTF_8))) {
            List<List<String>> lines = new ArrayList<>();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.startsWith("#")) {
                    lines.add(List.of(line.split(",", -1)));
                }
            }
            return lines;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
