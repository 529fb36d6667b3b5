package versewind.rules;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What can be found; the word of each is its name in files.
 *
 * <p>Source: common practice, no source; the weights are estimates.
 */
public enum Rule {
    NO_TUNE("no tune", 10),
    LEAD_LOST("lead lost", 10),
    LEAD_TOO_STRONG("lead too strong", 8),
    LEAD_ONLY_JUST("lead only just held", 3),
    WORDS_COVERED("words covered", 10),
    WORDS_ONLY_JUST("words only just clear", 3),
    MELODY_BURIED("melody buried", 9),
    MELODY_ONLY_JUST("melody only just heard", 3),
    MELODY_UNDER_CONGREGATION("melody soloed under a congregation", 4),
    INTRODUCTION_LOUDER("introduction louder", 6),
    INTRODUCTION_ELSEWHERE("introduction in another world", 3),

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
    INAUDIBLE("inaudible stop", 1),
    PEDAL_SILENT("pedal missing", 8),
    PEDAL_COUPLER("pedal coupler missing", 3),
    PEDAL_WITHOUT_EIGHT("pedal without 8 ft", 3),
    PEDAL_BOOMS("pedal booms", 5),

    SAME_SOUND("same sound", 3),
    SIXTEEN_ALWAYS("16 ft in every verse", 3),
    NO_GROWTH("no growth", 3),
    BIGGEST_NOT_LAST("biggest verse not last", 3),
    STEP("step", 4),
    PISTON_MISSING("no such piston", 6),
    PISTON_TWICE("piston twice", 4),
    TOO_MANY_MOVES("too many movements", 7);

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
