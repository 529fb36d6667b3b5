package versewind.cli;

/** Something was typed that cannot be understood; the message is a sentence that says what and what to do. */
final class UsageException extends Exception {
    private static final long serialVersionUID = 1L;

    UsageException(String sentence) {
        super(sentence, null, false, false);
    }
}
