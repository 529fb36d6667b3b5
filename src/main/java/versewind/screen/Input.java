package versewind.screen;

/** Something that happened outside and that the editor answers. */
public sealed interface Input {

    /** A key was pressed. */
    record Press(Key key) implements Input {}

    /** Text was pasted as one piece. */
    record Paste(String text) implements Input {}

    /** The terminal has another size now. */
    record Resize(int columns, int rows) implements Input {}

    /** Nobody listens any more: the line was dropped or the input ended. */
    record Hangup() implements Input {}
}
