package versewind.stoplist;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import versewind.organ.Family;
import versewind.organ.Footage;

/**
 * The text of one stop, taken apart: "3. Mixtur 4-5f. 1 1/3' (Zinn)" is a name, a pitch, ranks and a remark.
 *
 * @param name what is left when everything else is taken away; "" where nothing is
 * @param feet the pitches that are written
 * @param mark how surely the pitches are pitches
 * @param ranks the ranks that are written; 0 for none
 * @param numeral a Roman numeral that may be ranks or part of the name; "" for none
 * @param remarks what else is said
 */
record StopLine(String name, List<Footage> feet, Mark mark, int ranks, String numeral, List<String> remarks) {

    /** How a pitch is written. */
    enum Mark {
        /** With a unit. */
        UNIT,
        /** As a number alone. */
        BARE,
        NONE
    }

    private static final Pattern HALF = Pattern.compile(
            "(?i)bass|treble|bassi|soprani|b|d|b/d|bas/discant|bas/disc|bass/diskant|discant|diskant|disc|dessus|basse|dess|bas|sopr|mano"
                    + " (?:izquierda|derecha)|m\\.?\\s?[id]\\.?|izquierda|derecha|izq\\.?|der\\.?|tiples|bajos|bajo|tiple|soprano|basso");

    /** Takes the text of one stop apart. */
    static StopLine of(String text, ListStyle style) {
        return new StopWording(text, style).taken();
    }

    /** Whether a text names a known stop with its pitch. */
    static boolean isPitchedStop(String text, ListStyle style) {
        StopLine stop = of(text, style);
        return stop.mark != Mark.NONE
                && Lexicon.get().known(stop.name, style.setting()).isPresent();
    }

    /** Whether a text names the bass or the treble half of a stop and nothing else. */
    static boolean isHalf(String text) {
        return HALF.matcher(text).matches();
    }

    /** All words that are neither name nor pitch, for a judgement whether this is a sentence. */
    String said() {
        return String.join(" ", remarks);
    }

    /** The first pitch. */
    Optional<Footage> pitch() {
        return feet.stream().findFirst();
    }

    /** Whether a family counts its numeral as ranks. */
    static boolean countsRanks(Family family) {
        return family.isCompound() || family == Family.CELESTE;
    }
}
