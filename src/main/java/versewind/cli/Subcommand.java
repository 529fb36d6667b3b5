package versewind.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The subcommands, in the order in which help lists them. Whatever else lists them takes them from here.
 *
 * <p>Knows nothing of options: the editor starts without the classes that read these, an eighth of a second sooner.
 */
enum Subcommand {
    DESK,
    ASSESS,
    PROPOSE,
    CHANGE,
    LIST,
    FIND,
    USUAL,
    CALIBRATE,
    ESTIMATE,
    READ_STOPS,
    SHOW,
    ROOM,
    SHEET,
    CALC,
    EXPORT,
    IMPORT,
    HELP;

    /** An earlier word for {@link #CALC}, still accepted. */
    static final String RECKON = "reckon";

    /** The word on the command line. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All words. */
    static List<String> words() {
        return Arrays.stream(values()).map(Subcommand::word).toList();
    }

    /** The subcommand of this word. */
    static Optional<Subcommand> of(String word) {
        String today = word.equals(RECKON) ? CALC.word() : word;
        for (Subcommand each : values()) {
            if (each.word().equals(today)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
