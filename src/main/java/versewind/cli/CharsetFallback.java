package versewind.cli;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.util.stream.Collectors;
import versewind.screen.toolkit.Text;

/**
 * Converts texts to what a character set can show: control characters are marked, and missing characters lose their
 * accents or become the nearest ASCII.
 */
final class CharsetFallback {
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
        String typed = Text.typewritten(point);
        return !typed.isEmpty() && encoder.canEncode(typed) ? typed : "?";
    }
}
