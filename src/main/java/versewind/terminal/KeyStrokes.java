package versewind.terminal;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.Optional;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Key.Named;

/** Lanterna's key strokes as events. Two strokes may be one event, so a stream of them needs one of these. */
final class KeyStrokes {

    /** Enter in both its forms; Alt only tells one from the other. */
    static final KeyStroke CARRIAGE_RETURN = new KeyStroke(KeyType.Enter, false, false);

    static final KeyStroke LINE_FEED = new KeyStroke(KeyType.Enter, false, true);

    private KeyStroke last = LINE_FEED;

    /** The event of a stroke, if it is one: the first half of a character or the second of CR LF is none. */
    Optional<Event> event(KeyStroke stroke) {
        Optional<Event> event = eventAfterLast(stroke);
        last = stroke;
        return event;
    }

    private Optional<Event> eventAfterLast(KeyStroke stroke) {
        if (stroke instanceof EscapeSequence.Pasted pasted) {
            return Optional.of(new Event.Paste(pasted.text()));
        }
        if (stroke.equals(LINE_FEED) && last.equals(CARRIAGE_RETURN)) {
            return Optional.empty();
        }
        return switch (stroke.getKeyType()) {
            case EOF -> Optional.of(new Event.Hangup());
            case Character -> character(stroke);
            default -> named(stroke.getKeyType()).map(named -> press(new Key(named, 0, stroke.isCtrlDown())));
        };
    }

    private Optional<Event> character(KeyStroke stroke) {
        char c = stroke.getCharacter();
        if (!Character.isSurrogate(c)) {
            return Optional.of(press(new Key(Named.CHARACTER, c, stroke.isCtrlDown())));
        }
        boolean pair = last.getKeyType() == KeyType.Character && Character.isSurrogatePair(last.getCharacter(), c);
        return pair ? Optional.of(press(Key.of(Character.toCodePoint(last.getCharacter(), c)))) : Optional.empty();
    }

    private static Event press(Key key) {
        return new Event.Press(key);
    }

    private static Optional<Named> named(KeyType type) {
        return switch (type) {
            case Escape -> Optional.of(Named.ESCAPE);
            case Backspace -> Optional.of(Named.BACKSPACE);
            case ArrowLeft -> Optional.of(Named.LEFT);
            case ArrowRight -> Optional.of(Named.RIGHT);
            case ArrowUp -> Optional.of(Named.UP);
            case ArrowDown -> Optional.of(Named.DOWN);
            case Insert -> Optional.of(Named.INSERT);
            case Delete -> Optional.of(Named.DELETE);
            case Home -> Optional.of(Named.HOME);
            case End -> Optional.of(Named.END);
            case PageUp -> Optional.of(Named.PAGE_UP);
            case PageDown -> Optional.of(Named.PAGE_DOWN);
            case Tab -> Optional.of(Named.TAB);
            case ReverseTab -> Optional.of(Named.BACK_TAB);
            case Enter -> Optional.of(Named.ENTER);
            case F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12 -> Optional.of(Named.valueOf(type.name()));
            case F13, F14, F15, F16, F17, F18, F19, Unknown, Character, CursorLocation, MouseEvent, EOF ->
                Optional.empty();
        };
    }
}
