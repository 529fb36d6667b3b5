package versewind.store;

import java.io.IOException;

/** Under a name that a file should have lies something else: a pipe, a device, or a link that is not followed. */
final class NotAFileException extends IOException {
    private static final long serialVersionUID = 1L;

    NotAFileException(String sentence) {
        super(sentence);
    }
}
