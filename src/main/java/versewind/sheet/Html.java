package versewind.sheet;

import java.text.Normalizer;

/**
 * Pieces of HTML in plain ASCII, so that they are the same whatever character set they are written in.
 *
 * <p>Source: HTML Living Standard, 13.1.2 (elements and attributes), 13.1.4 (character references) and 3.2.5 (text holds no
 * controls but white space, no surrogates, no noncharacters).
 */
final class Html {

    private static final String NO_CHARACTER = "&#65533;";
    private static final int LAST_OF_ASCII = 0x7E;

    private Html() {}

    /**
     * A text, harmless between tags and between quotation marks; accents are composed. What cannot be shown, and what would turn the direction of
     * writing, becomes U+FFFD; ends of lines become blanks.
     */
    static String text(String text) {
        StringBuilder html = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(point -> html.append(shown(point)));
        return html.toString();
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

    /** A text in which a name is never parted from its pitch: "Open Diapason 8", "Twelfth 2 2/3". */
    static String label(String label) {
        String[] words = label.split(" ", -1);
        StringBuilder html = new StringBuilder(text(words[0]));
        for (int i = 1; i < words.length; i++) {
            html.append(isPitch(words[i]) ? "&#160;" : " ").append(text(words[i]));
        }
        return html.toString();
    }

    private static boolean isPitch(String word) {
        return word.matches("[0-9/]+|[IVX]+");
    }

    /**
     * An element.
     *
     * @param start its name and attributes, as they stand in its tag; the values are escaped already
     * @param content HTML
     */
    static String element(String start, String content) {
        int blank = start.indexOf(' ');
        return "<" + start + ">" + content + "</" + (blank < 0 ? start : start.substring(0, blank)) + ">";
    }

    /** An element on lines of its own. */
    static String block(String start, String content) {
        return element(start, "\n" + content) + "\n";
    }

    /** An element with text in it, on a line of its own; nothing for a blank text. */
    static String line(String start, String text) {
        return text.isBlank() ? "" : element(start, text(text)) + "\n";
    }
}
