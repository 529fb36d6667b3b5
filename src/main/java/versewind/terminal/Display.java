package versewind.terminal;

import versewind.screen.state.Event;
import versewind.screen.toolkit.Frame;

/**
 * Where the full screen is seen and its keys come from: the terminal that the program was started in ({@link Console})
 * or a window of its own ({@link WindowDisplay}).
 */
interface Display extends AutoCloseable {

    /** What has happened and is still to be seen to; it ends with a hangup. */
    Inbox inbox();

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
