package versewind.store;

import java.text.Normalizer;
import java.util.Optional;
import java.util.regex.Pattern;
import versewind.organ.Names;

/** A title made into a file's name: "Évensong, 3rd of May" becomes "evensong-3rd-of-may". */
final class Slug {
    private static final int LONGEST = 60;

    /** Names that no file can have on Windows, whatever its ending. Source: Microsoft, Naming Files, Paths. */
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

    private Slug() {}

    /** The name, if the title has any letter or digit that ASCII has. */
    static Optional<String> of(String title) {
        String ascii = Names.plain(Normalizer.normalize(spelledOut(title), Normalizer.Form.NFKC))
                .replace("'", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String name = ascii.length() > LONGEST ? ascii.substring(0, LONGEST).replaceAll("-[^-]*$", "") : ascii;
        return name.isEmpty()
                ? Optional.empty()
                : Optional.of(DEVICE.matcher(name).matches() ? name + "-1" : name);
    }

    /** Letters that do not come apart into a letter and a mark. */
    private static String spelledOut(String title) {
        return title.replace("\u00df", "ss")
                .replace("\u00e6", "ae")
                .replace("\u00c6", "ae")
                .replace("\u0153", "oe")
                .replace("\u0152", "oe")
                .replace("\u00f8", "o")
                .replace("\u00d8", "o")
                .replace("\u0142", "l")
                .replace("\u0141", "l");
    }
}
