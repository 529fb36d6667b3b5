package versewind.organ;

/** A name or notation that cannot be understood. The message is a sentence: what is wrong, and what would be right. */
public class NotationException extends Exception {
    private static final long serialVersionUID = 1L;

    public NotationException(String sentence) {
        super(sentence, null, false, false);
    }
}
