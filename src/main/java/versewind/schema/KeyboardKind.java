package versewind.schema;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Division;

/** The number of a manual, or the word pedal. */
final class KeyboardKind extends Kinds.Parsed<OptionalInt> {
    private static final String PEDAL_WORD = "pedal";

    KeyboardKind() {
        super(
                "a keyboard",
                "1 for the lowest manual to " + Division.MOST_MANUALS + ", or pedal",
                KeyboardKind::parsed,
                manual -> manual.isPresent() ? Integer.toString(manual.getAsInt()) : PEDAL_WORD);
    }

    private static Optional<OptionalInt> parsed(String text) {
        if (text.equals(PEDAL_WORD)) {
            return Optional.of(OptionalInt.empty());
        }
        boolean isManual = text.length() == 1 && text.charAt(0) >= '1' && text.charAt(0) - '0' <= Division.MOST_MANUALS;
        return isManual ? Optional.of(OptionalInt.of(text.charAt(0) - '0')) : Optional.empty();
    }

    @Override
    Object shaped(String typed) {
        return ChoiceKind.of(typed, words()).orElse(typed.strip());
    }

    @Override
    public List<String> words() {
        return List.of(PEDAL_WORD);
    }
}
