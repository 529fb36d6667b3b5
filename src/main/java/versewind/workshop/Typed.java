package versewind.workshop;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** A line that is looked through: its texts as values, and every problem of them written down. */
final class Typed {
    private final int at;
    private final DraftLine line;
    private final List<Problem> problems;

    Typed(int at, DraftLine line, List<Problem> problems) {
        this.at = at;
        this.line = line;
        this.problems = problems;
    }

    DraftLine line() {
        return line;
    }

    String text(DraftField slot) {
        return line.at(slot);
    }

    void wrong(DraftField slot, String sentence) {
        problems.add(new Problem(at, slot, sentence));
    }

    /** A name, which must not be blank. */
    String name() {
        if (text(DraftField.NAME).isBlank()) {
            wrong(
                    DraftField.NAME,
                    "A name is missing: every " + line.part().word().toLowerCase(Locale.ROOT) + " needs one.");
        }
        return text(DraftField.NAME);
    }

    /** A whole number between two others; where it is blank, another. */
    OptionalInt whole(DraftField slot, int least, int most, OptionalInt blank) {
        if (text(slot).isBlank() && blank.isPresent()) {
            return blank;
        }
        OptionalInt number = TypedNumbers.whole(text(slot));
        if (number.isEmpty() || number.getAsInt() < least || number.getAsInt() > most) {
            wrong(slot, said(slot) + "it is a whole number from " + least + " to " + most + ".");
            return OptionalInt.empty();
        }
        return number;
    }

    /** A number; where it is blank, another. */
    OptionalDouble number(DraftField slot, OptionalDouble blank) {
        if (text(slot).isBlank() && blank.isPresent()) {
            return blank;
        }
        OptionalDouble number = TypedNumbers.number(text(slot));
        if (number.isEmpty()) {
            wrong(slot, said(slot) + "it is a number, as 12 or 2.5.");
        }
        return number;
    }

    /** A word out of some, or as much of its beginning as tells it from the others. */
    <T> Optional<T> choice(DraftField slot, List<T> values, Function<T, String> word) {
        Optional<T> choice = Choice.of(text(slot), values, word);
        if (choice.isEmpty()) {
            wrong(slot, said(slot) + "it is " + values.stream().map(word).collect(Collectors.joining(", ")) + ".");
        }
        return choice;
    }

    private String said(DraftField slot) {
        return slot.word() + ": " + (text(slot).isBlank() ? "nothing is written; " : "not \"" + text(slot) + "\"; ");
    }

    /** A value of the trade made of what is written; its objection becomes a problem. */
    <T> Optional<T> make(DraftField slot, Supplier<T> maker) {
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException objection) {
            String message = objection.getMessage();
            wrong(slot, message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1) + ".");
            return Optional.empty();
        }
    }
}
