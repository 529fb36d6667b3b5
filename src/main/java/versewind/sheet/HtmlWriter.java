package versewind.sheet;

import java.text.Normalizer;
import java.util.Locale;

/**
 * Writes HTML in plain ASCII, so that it is the same whatever character set it is saved in.
 *
 * <p>Source: HTML Living Standard, 13.1.2 (elements and attributes), 13.1.4 (character references) and 3.2.5 (text
 * holds no controls but white space, no surrogates, no noncharacters).
 */
final class HtmlWriter {

    private static final String NO_CHARACTER = "&#65533;";
    private static final int LAST_OF_ASCII = 0x7E;

    private final StringBuilder html = new StringBuilder();

    /** Writes markup as it is. */
    HtmlWriter raw(String markup) {
        html.append(markup);
        return this;
    }

    /** Writes a text; accents are composed, and what would disturb a page becomes U+FFFD. */
    HtmlWriter text(String text) {
        return raw(escaped(text));
    }

    /** Writes an element; names of attributes and their values in turn. */
    HtmlWriter tag(String name, Runnable content, Object... attributes) {
        start(name, attributes).raw(">");
        content.run();
        return raw("</" + name + ">");
    }

    /** Writes an element with a text in it. */
    HtmlWriter tag(String name, String text, Object... attributes) {
        return tag(name, () -> text(text), attributes);
    }

    /** Writes an element on a line of its own. */
    HtmlWriter line(String name, Runnable content, Object... attributes) {
        return tag(name, content, attributes).raw("\n");
    }

    /** Writes an element with a text in it on a line of its own; nothing for a blank text. */
    HtmlWriter line(String name, String text, Object... attributes) {
        return text.isBlank() ? this : line(name, () -> text(text), attributes);
    }

    /** Writes an element whose content begins on a line of its own. */
    HtmlWriter block(String name, Runnable content, Object... attributes) {
        return line(
                name,
                () -> {
                    raw("\n");
                    content.run();
                },
                attributes);
    }

    /** Writes an element without content on a line of its own. */
    HtmlWriter empty(String name, Object... attributes) {
        return start(name, attributes).raw("/>\n");
    }

    private HtmlWriter start(String name, Object... attributes) {
        raw("<" + name);
        for (int i = 0; i < attributes.length; i += 2) {
            raw(" " + attributes[i] + "=\"" + value(attributes[i + 1]) + "\"");
        }
        return this;
    }

    private static String value(Object value) {
        return value instanceof Double number ? number(number) : escaped(value.toString());
    }

    /** A number with one decimal, if it needs one. */
    static String number(double value) {
        String written = String.format(Locale.ROOT, "%.1f", value);
        return written.endsWith(".0") ? written.substring(0, written.length() - 2) : written;
    }

    /** A text, harmless between tags and between quotation marks; ends of lines become blanks. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(point -> escaped.append(shown(point)));
        return escaped.toString();
    }

    private static String shown(int point) {
        return switch (point) {
            case '&' -> "&amp;";
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '"' -> "&quot;";
            case '\'' -> "&#39;";
            case '\n', '\r', '\t' -> " ";
            default -> point >= ' ' && point <= LAST_OF_ASCII ? Character.toString(point) : reference(point);
        };
    }

    private static String reference(int point) {
        boolean isShown =
                switch (Character.getType(point)) {
                    case Character.CONTROL,
                            Character.FORMAT,
                            Character.LINE_SEPARATOR,
                            Character.PARAGRAPH_SEPARATOR,
                            Character.SURROGATE,
                            Character.PRIVATE_USE,
                            Character.UNASSIGNED -> false;
                    default -> true;
                };
        return isShown ? "&#" + point + ";" : NO_CHARACTER;
    }

    @Override
    public String toString() {
        return html.toString();
    }
}
