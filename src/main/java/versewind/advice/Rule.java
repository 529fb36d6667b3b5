package versewind.advice;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What can be found; the word of each is its name in files.
 *
 * <p>Source: common practice, no source; the weights are estimates.
 */
public enum Rule {
    NO_EIGHT_FOOT("no 8 ft", 8),
    GAP("gap", 5),
    BARE_MIXTURE("bare mixture", 6),
    BARE_DOUBLE("bare 16 ft", 4),
    BARE_MUTATION("bare mutation", 6),
    CELESTE("celeste in chorus", 6),
    TREMULANT("tremulant in chorus", 6),
    VOX_HUMANA("vox humana in chorus", 6),
    SOLO_REED("solo reed in chorus", 3),
    REED_OVER_LITTLE("reed over little flue", 5),
    PEDAL_SILENT("pedal missing", 8),
    PEDAL_COUPLER("pedal coupler missing", 3),
    PEDAL_WITHOUT_EIGHT("pedal without 8 ft", 3);

    private final String word;
    private final int weight;

    Rule(String word, int weight) {
        this.word = word;
        this.weight = weight;
    }

    /** In words: "bare mixture". */
    public String word() {
        return word;
    }

    /** How much breaking it costs, from 1 for a matter of taste to 10; an estimate. */
    public int weight() {
        return weight;
    }

    /** The rule of this word, if there is one. */
    public static Optional<Rule> ofWord(String word) {
        return Stream.of(values()).filter(rule -> rule.word.equals(word)).findFirst();
    }
}
