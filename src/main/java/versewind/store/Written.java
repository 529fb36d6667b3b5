package versewind.store;

import versewind.organ.Decimal;

/** How texts and numbers are written in JSON. Source: RFC 8259, sections 6 and 7. */
final class Written {
    private static final char NO_CHARACTER = '\uFFFD';

    private Written() {}

    /** A number as short as it can be: 6000, 1.5. */
    static String number(double value) {
        return Decimal.of(value);
    }

    /** A number with one decimal at least, for those that are measured: 3.0. */
    static String decimal(double value) {
        String number = number(value);
        return number.contains(".") ? number : number + ".0";
    }

    /** A text in quotation marks. Half a surrogate pair, which is no character, becomes U+FFFD. */
    static String text(String value) {
        StringBuilder out = new StringBuilder("\"");
        value.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (Character.getType(c) == Character.SURROGATE) {
                        out.append(NO_CHARACTER);
                    } else if (Character.isISOControl(c)) {
                        out.append(String.format("\\u%04x", c));
                    } else {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.append('"').toString();
    }
}
