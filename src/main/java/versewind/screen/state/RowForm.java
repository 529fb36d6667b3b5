package versewind.screen.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.schema.Field;
import versewind.schema.OrganNames;
import versewind.schema.Refused;
import versewind.schema.Table;

/**
 * Some fields of a table as a form.
 *
 * @param table all fields of the value
 * @param asked the fields that are asked for, from top to bottom
 * @param value the value before
 * @param names the names of the organ's parts
 */
public record RowForm<T>(Table<T> table, List<Field<T, ?>> asked, T value, OrganNames names) {

    public RowForm {
        asked = List.copyOf(asked);
    }

    /** The fields with what they hold now. */
    public List<FormBox.Field> fields() {
        return asked.stream()
                .map(field -> FormBox.Field.of(field.label(), field.typed(value, names), field.hint()))
                .toList();
    }

    /** The value with what was typed into the first fields of a form. */
    public T typed(FormBox form) {
        List<Refused> refusals = new ArrayList<>();
        Optional<T> read = table.read(
                field -> asked.contains(field) ? form.text(asked.indexOf(field)) : field.typed(value, names),
                names,
                refusals::add);
        if (!refusals.isEmpty()) {
            Refused wrong = refusals.get(0);
            int at = IntStream.range(0, asked.size())
                    .filter(i -> asked.get(i).column().equals(wrong.place()))
                    .findFirst()
                    .orElse(0);
            throw wrong(at, asked.get(at), wrong);
        }
        return read.orElseThrow();
    }

    private static FormBox.Wrong wrong(int at, Field<?, ?> field, Refused why) {
        return new FormBox.Wrong(at, field.label() + ": " + why.problemAndRemedy());
    }

    /** A form of some fields, unless one of them holds none of the words to choose from: that is refused. */
    public static FormBox withChoices(FormBox form, List<Field<?, ?>> fields) {
        for (int i = 0; i < fields.size(); i++) {
            if (!fields.get(i).kind().words().isEmpty() && !form.isBlank(i)) {
                try {
                    fields.get(i).parse(form.text(i));
                } catch (Refused wrong) {
                    throw wrong(i, fields.get(i), wrong);
                }
            }
        }
        return form;
    }
}
