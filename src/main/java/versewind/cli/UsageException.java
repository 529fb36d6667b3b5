package versewind.cli;

import versewind.organ.NotationException;

/** A command line that cannot be carried out. The message is a sentence: what is wrong, and what would be right. */
final class UsageException extends NotationException {
    private static final long serialVersionUID = 1L;

    UsageException(String sentence) {
        super(sentence);
    }
}
