package versewind.terminal;

import java.time.Duration;
import java.util.Optional;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Frame;

/**
 * Where the full screen is seen and its keys come from: the terminal that the program was started in ({@link Console})
 * or a window of its own ({@link WindowDisplay}).
 */
interface Display extends AutoCloseable {

    /** Blocks until the next event; of several resizes in a row, the last. After a hangup every call returns one. */
    Event next();

    /** As above, but returns nothing when this time has passed. */
    Optional<Event> next(Duration longest);

    /** Adds an event from another thread to those that come. */
    void tell(Event event);

    /** Shows a frame. */
    void paint(Frame frame);

    /** Makes the next frame be painted whole. */
    void repaint();

    /** Columns and rows now. */
    Event.Resize size();

    /** True if any character can be shown; otherwise only ASCII. */
    boolean utf8();

    @Override
    void close();

    /** What the program is to end with: 128 and the number of the signal that ended it, or 0. */
    default int status() {
        return 0;
    }
}
