package versewind.stoplist;

import java.util.List;
import java.util.Optional;
import versewind.organ.Footage;

/**
 * Where a name stands, as far as that decides what it means.
 *
 * @param language the language of the list, "" if not known
 * @param keyboard whether it is played by hands or feet
 * @param footage the pitch that is written
 * @param ranks the number of ranks that is written; 0 for none
 */
record NameContext(String language, Keyboard keyboard, Optional<Footage> footage, int ranks) {

    /** By what a division is played. */
    enum Keyboard {
        MANUAL,
        PEDAL
    }

    /** Nothing is known. */
    static final NameContext NONE = new NameContext("", Keyboard.MANUAL, Optional.empty(), 0);

    boolean inPedal() {
        return keyboard == Keyboard.PEDAL;
    }

    /**
     * True if a condition of the lexicon holds: "lang:de,fr", "feet:2,4", "feet", "pedal", "manual", "ranks:3+",
     * "noranks".
     */
    boolean holds(String condition) {
        int colon = condition.indexOf(':');
        String values = condition.substring(colon + 1);
        String what = colon < 0 ? condition : condition.substring(0, colon);
        return switch (what) {
            case "lang" -> contains(values, language);
            case "feet" ->
                footage.isPresent()
                        && (colon < 0 || contains(values, footage.get().toString()));
            case "pedal" -> inPedal();
            case "manual" -> !inPedal();
            case "ranks" -> ranks >= Integer.parseInt(values.replace("+", ""));
            case "noranks" -> ranks == 0;
            default -> throw new IllegalStateException("the lexicon has an unknown condition \"" + condition + "\"");
        };
    }

    private static boolean contains(String values, String value) {
        return List.of(values.split(",", -1)).contains(value);
    }
}
