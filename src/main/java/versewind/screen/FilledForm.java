package versewind.screen;

import java.util.OptionalInt;

/** What was typed into a form, read as what belongs in its fields. */
record FilledForm(Panel.Form form) {

    /** What was typed cannot be kept: which field, and why. */
    static final class Wrong extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final int field;

        Wrong(int field, String sentence) {
            super(sentence);
            this.field = field;
        }

        int field() {
            return field;
        }
    }

    String text(int field) {
        return form.value(field);
    }

    boolean isBlank(int field) {
        return text(field).isEmpty();
    }

    /** A whole number within limits. */
    int number(int field, int least, int most) {
        try {
            int number = Integer.parseInt(text(field));
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // Said below, with what would be right.
        }
        String name = form.fields().get(field).name();
        throw new Wrong(field, name + " is a whole number from " + least + " to " + most + ".");
    }

    /** A whole number within limits, unless the field is blank. */
    OptionalInt numberIfAny(int field, int least, int most) {
        return isBlank(field) ? OptionalInt.empty() : OptionalInt.of(number(field, least, most));
    }
}
