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

    /** The general that a piston's name means; empty for a divisional and for a name of one's own. */
    public static Optional<General> of(String piston) {
        Matcher written = WRITTEN.matcher(piston.strip());
        if (!written.matches()) {
            return Optional.empty();
        }
        int level = written.group(1) == null ? 1 : Integer.parseInt(written.group(1));
        return Optional.of(new General(level, Integer.parseInt(written.group(2))));
    }

    /** What stands on the piston: "G4". */
    public String piston() {
        return "G" + number;
    }

    /** Piston and memory level as they are written in a plan: "2/G4". */
    public String name() {
        return (level == 1 ? "" : level + "/") + piston();
    }
}
