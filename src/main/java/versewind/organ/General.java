package versewind.organ;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A general piston on one memory level, written "G4" on the first level and "2/G4" on the second.
 *
 * @param level memory level, from 1
 * @param number number of the piston, from 1
 */
public record General(int level, int number) {

    private static final Pattern WRITTEN = Pattern.compile("(?:(\\d{1,3})\\s*/\\s*)?[Gg]\\s*(\\d{1,3})");

    /** Parses the name of a general; empty for a divisional or any other name. */
    public static Optional<General> of(String piston) {
        Matcher written = WRITTEN.matcher(piston.strip());
        if (!written.matches()) {
            return Optional.empty();
        }
        int level = written.group(1) == null ? 1 : Integer.parseInt(written.group(1));
        return Optional.of(new General(level, Integer.parseInt(written.group(2))));
    }

    /** The label of the piston: "G4". */
    public String piston() {
        return "G" + number;
    }

    /** Memory level and piston as plans write them: "2/G4". */
    public String name() {
        return (level == 1 ? "" : level + "/") + piston();
    }
}
