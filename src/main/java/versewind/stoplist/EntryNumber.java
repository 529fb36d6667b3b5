package versewind.stoplist;

/** The bullet and the number that an entry of a list has before it. */
final class EntryNumber {

    private static final String BULLETS =
            "[*\u2022\u00b7\u25cf\u25cb\u25aa\u25e6\u2023\u25a0\u25b6>+=~|\u2020\u2021#-]";
    private static final TokenForm BULLET = TokenForm.of(BULLETS + " " + BULLETS + "*");
    private static final TokenForm ORDINAL =
            TokenForm.of("<bullet>? [.]? #3 [.:\u00b0]|close", "open #3 close", "letter close");

    private EntryNumber() {}

    /** Without bullets and the number in the list before it: "3. ", "No. 3: ", "[3]", "a) ". */
    static String without(String text) {
        Line line = new Line(text);
        int at = BULLET.at(line, 0);
        at += ORDINAL.at(line, at);
        at += BULLET.at(line, at);
        return at == 0
                ? text
                : at == line.size() ? "" : text.substring(line.at(at).start());
    }
}
