package versewind.cli;

/** Something was typed that cannot be understood; the message is a sentence that says what and what to do. */
final class Misuse extends Exception {
    private static final long serialVersionUID = 1L;

    Misuse(String sentence) {
        super(sentence, null, false, false);
    }
}
