package versewind.cli;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.text.Normalizer;
import java.util.Map;
import java.util.stream.Collectors;
import versewind.screen.toolkit.Text;

/**
 * Converts texts to what a character set can show: control characters are marked, and missing characters lose their
 * accents or become the nearest ASCII.
 */
final class CharsetFallback {
    private static final Map<Integer, String> TYPEWRITTEN = Map.ofEntries(
            Map.entry(0x2018, "'"),
            Map.entry(0x2019, "'"),
            Map.entry(0x201A, "'"),
            Map.entry(0x201C, "\""),
            Map.entry(0x201D, "\""),
            Map.entry(0x201E, "\""),
            Map.entry(0x2013, "-"),
            Map.entry(0x2014, "-"),
            Map.entry(0x2212, "-"),
            Map.entry(0xB1, "+-"),
            Map.entry(0x2044, "/"),
            Map.entry(0x266D, " flat"),
            Map.entry(0x266F, " sharp"));

    private final CharsetEncoder encoder;

    CharsetFallback(Charset charset) {
        this.encoder = charset.newEncoder();
    }

    /** One line of text. */
    String of(String text) {
        String clean = Text.clean(text);
        if (encoder.canEncode(clean)) {
            return clean;
        }
        StringBuilder shown = new StringBuilder();
        clean.codePoints().forEach(point -> shown.append(shown(point)));
        return shown.toString();
    }

    /** Several lines of text, each ended by a line feed. */
    String ofLines(String lines) {
        return lines.lines().map(line -> of(line) + "\n").collect(Collectors.joining());
    }

    private String shown(int point) {
        String as = Character.toString(point);
        if (encoder.canEncode(as)) {
            return as;
        }
        if (Text.columns(point) == 0) {
            return "";
        }
        String apart = Normalizer.normalize(as, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "");
        StringBuilder typewritten = new StringBuilder();
        apart.codePoints()
                .forEach(each -> typewritten.append(TYPEWRITTEN.getOrDefault(each, Character.toString(each))));
        return !typewritten.isEmpty() && encoder.canEncode(typewritten) ? typewritten.toString() : "?";
    }
}
