package versewind.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.swing.SwingTerminal;
import com.googlecode.lanterna.terminal.swing.SwingTerminalFontConfiguration;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorColorConfiguration;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorDeviceConfiguration;
import com.googlecode.lanterna.terminal.swing.TerminalEmulatorPalette;
import java.awt.AWTError;
import java.awt.Color;
import java.awt.EventQueue;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.HierarchyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.JFrame;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Letters;

/**
 * A window of its own, for where no terminal is: Lanterna's Swing terminal with Lanterna's screen. Its size is the
 * terminal's size; closing it is leaving the program.
 *
 * <p>Keys that belong to the window and not to what is shown in it: Ctrl-+ and Ctrl-- for larger and smaller letters,
 * F11 for the whole screen with letters as large as 80 columns and 24 rows allow (120 and 40 for large letters),
 * Ctrl-Shift-V and Shift-Insert to paste.
 */
final class WindowDisplay implements Display {

    private static final int USUAL_POINTS = 18;
    private static final int LEAST_POINTS = 8;
    private static final int MOST_POINTS = 96;
    private static final TerminalSize OPENED = new TerminalSize(100, 32);
    private static final TerminalSize FULL_SCREEN = new TerminalSize(80, 24);
    /** For stops and verses in large letters. */
    private static final TerminalSize FOR_LARGE = new TerminalSize(120, 40);
    /** Each step of the letters is by a fifth. */
    private static final double STEP = 1.2;
    /** The share of a screen that a new window may take. */
    private static final double ROOM = 0.9;

    private static final long LAST_WORK_S = 5;

    /**
     * The terminal in the window, with letters of one size; larger letters need another.
     *
     * @param points size of the letters
     * @param terminal takes the keys and shows the cells
     * @param screen remembers what is shown
     * @param painter paints on it
     */
    private record Face(int points, SwingTerminal terminal, TerminalScreen screen, ScreenPainter painter) {}

    /** What Lanterna needs the colours for is the rest of the window at its edges; cells have colours of their own. */
    private static final TerminalEmulatorPalette ON_PAPER =
            onPaper(ScreenPainter.INK.toColor(), ScreenPainter.PAPER.toColor());

    private final Inbox inbox = new Inbox();
    private final CountDownLatch closed = new CountDownLatch(1);
    private final JFrame window = new JFrame("Versewind");
    private final Letters letters;
    private Face face;
    private Rectangle boundsBefore = new Rectangle();
    private int pointsBefore = USUAL_POINTS;

    private WindowDisplay(Letters letters) {
        this.letters = letters;
        window.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        window.setBackground(ScreenPainter.PAPER.toColor());
        window.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                inbox.add(new Event.Press(Key.control('c')));
            }
        });
    }

    /**
     * Opens the window.
     *
     * @throws NoTerminalException if this Java or this machine has no windows
     */
    static Display open(Letters letters) throws NoTerminalException {
        try {
            if (GraphicsEnvironment.isHeadless()) {
                throw NoTerminalException.ofWindow("this machine shows none, or this Java is one without windows");
            }
            Display[] opened = new Display[1];
            EventQueue.invokeAndWait(() -> opened[0] = opened(letters));
            return opened[0];
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw NoTerminalException.ofWindow("opening it was interrupted");
        } catch (InvocationTargetException | AWTError | LinkageError e) {
            Throwable why = e.getCause() == null ? e : e.getCause();
            throw NoTerminalException.ofWindow(String.valueOf(why.getMessage()));
        }
    }

    private static Display opened(Letters letters) {
        WindowDisplay display = new WindowDisplay(letters);
        Rectangle most = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        TerminalSize size = letters == Letters.LARGE ? FOR_LARGE : OPENED;
        int points = fitting(size, (int) (most.width * ROOM), (int) (most.height * ROOM));
        display.show(Math.min(points, USUAL_POINTS), size);
        display.window.setLocationByPlatform(true);
        display.window.setVisible(true);
        Runtime.getRuntime().addShutdownHook(new Thread(display::endFromOutside, "end"));
        return display;
    }

    private static TerminalEmulatorPalette onPaper(Color ink, Color paper) {
        return new TerminalEmulatorPalette(
                ink, ink, paper, ink, ink, ink, ink, ink, ink, ink, ink, ink, ink, ink, ink, ink, ink, ink, ink);
    }

    /** The largest letters with which so many cells fit into so many pixels. */
    private static int fitting(TerminalSize size, int width, int height) {
        SwingTerminalFontConfiguration letters = SwingTerminalFontConfiguration.getDefaultOfSize(MOST_POINTS);
        double scale = Math.min(
                (double) width / (size.getColumns() * letters.getFontWidth()),
                (double) height / (size.getRows() * letters.getFontHeight()));
        int points = Math.max(LEAST_POINTS, Math.min(MOST_POINTS, (int) (MOST_POINTS * scale)));
        while (points > LEAST_POINTS && !fits(points, size, width, height)) {
            points--;
        }
        return points;
    }

    /** Letters are whole pixels wide, so that a smaller size need not scale exactly. */
    private static boolean fits(int points, TerminalSize size, int width, int height) {
        SwingTerminalFontConfiguration letters = SwingTerminalFontConfiguration.getDefaultOfSize(points);
        return size.getColumns() * letters.getFontWidth() <= width
                && size.getRows() * letters.getFontHeight() <= height;
    }

    /** Puts a terminal with letters of this size into the window. */
    private void show(int points, TerminalSize size) {
        SwingTerminal terminal = new SwingTerminal(
                size,
                new TerminalEmulatorDeviceConfiguration()
                        .withClipboardAvailable(false)
                        .withCursorBlinking(false)
                        .withLineBufferScrollbackSize(0)
                        .withCursorColor(ScreenPainter.INK),
                SwingTerminalFontConfiguration.getDefaultOfSize(points),
                TerminalEmulatorColorConfiguration.newInstance(ON_PAPER));
        terminal.setForegroundColor(ScreenPainter.INK);
        terminal.setBackgroundColor(ScreenPainter.PAPER);
        terminal.addResizeListener((any, now) -> inbox.add(new Event.Resize(now.getColumns(), now.getRows())));
        window.setContentPane(terminal);
        if (window.isDisplayable()) {
            window.validate();
        } else {
            window.pack();
        }
        tellDisplayability(terminal);
        // only now has the terminal the size without which Lanterna's screen cannot start
        TerminalScreen screen = started(terminal);
        Face before;
        synchronized (this) {
            before = face;
            face = new Face(points, terminal, screen, new ScreenPainter(screen, Palette.COLOUR));
        }
        // later, since taking the old terminal out of the window takes the keys from both
        EventQueue.invokeLater(terminal::requestFocusInWindow);
        if (before != null) {
            tellDisplayability(before.terminal());
        }
        Thread keys = new Thread(() -> readKeys(terminal), "keys");
        keys.setDaemon(true);
        keys.start();
    }

    /**
     * Makes a terminal notice whether it is in a window: it takes keys only if it is, and ends their stream if it no
     * longer is. Lanterna looks for an event with this flag alone; one that comes to a window already open has others
     * beside it.
     */
    private void tellDisplayability(SwingTerminal terminal) {
        terminal.dispatchEvent(new HierarchyEvent(
                terminal, HierarchyEvent.HIERARCHY_CHANGED, terminal, window, HierarchyEvent.DISPLAYABILITY_CHANGED));
    }

    private static TerminalScreen started(SwingTerminal terminal) {
        try {
            TerminalScreen screen = new TerminalScreen(terminal);
            screen.startScreen();
            return screen;
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Reads the keys of one terminal until it is closed. */
    private void readKeys(SwingTerminal terminal) {
        KeyStrokes strokes = new KeyStrokes();
        KeyStroke stroke = terminal.readInput();
        while (stroke != null && stroke.getKeyType() != KeyType.EOF) {
            if (!isOfTheWindow(stroke)) {
                strokes.event(stroke).ifPresent(inbox::add);
            }
            stroke = terminal.readInput();
        }
    }

    /** Does what a key of the window is for; false for all other keys. */
    private boolean isOfTheWindow(KeyStroke stroke) {
        if (stroke.getKeyType() == KeyType.F11) {
            EventQueue.invokeLater(this::toggleFullScreen);
            return true;
        }
        if (stroke.getKeyType() == KeyType.Insert && stroke.isShiftDown()) {
            EventQueue.invokeLater(this::paste);
            return true;
        }
        if (stroke.getKeyType() != KeyType.Character || !stroke.isCtrlDown()) {
            return false;
        }
        switch (Character.toLowerCase(stroke.getCharacter())) {
            case '+', '=' -> EventQueue.invokeLater(() -> lettersTimes(STEP));
            case '-' -> EventQueue.invokeLater(() -> lettersTimes(1 / STEP));
            case 'v' -> {
                if (!stroke.isShiftDown()) {
                    return false;
                }
                EventQueue.invokeLater(this::paste);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Shows the same window with letters of another size, and so with more or fewer of them. */
    private void letters(int points) {
        show(points, sizeWith(points));
        inbox.add(size());
    }

    private void lettersTimes(double factor) {
        int points = (int) Math.round(face.points() * factor);
        if (points >= LEAST_POINTS && points <= MOST_POINTS) {
            letters(points);
        }
    }

    private TerminalSize sizeWith(int points) {
        SwingTerminalFontConfiguration letters = SwingTerminalFontConfiguration.getDefaultOfSize(points);
        return new TerminalSize(
                Math.max(1, window.getContentPane().getWidth() / letters.getFontWidth()),
                Math.max(1, window.getContentPane().getHeight() / letters.getFontHeight()));
    }

    private void toggleFullScreen() {
        GraphicsDevice device = window.getGraphicsConfiguration().getDevice();
        boolean whole = device.getFullScreenWindow() != window;
        Rectangle screen = device.getDefaultConfiguration().getBounds();
        if (whole) {
            boundsBefore = window.getBounds();
            pointsBefore = face.points();
        }
        window.dispose();
        window.setUndecorated(whole);
        device.setFullScreenWindow(whole ? window : null);
        if (whole) {
            letters(fitting(letters == Letters.LARGE ? FOR_LARGE : FULL_SCREEN, screen.width, screen.height));
        } else {
            window.setBounds(boundsBefore);
            letters(pointsBefore);
        }
        window.setVisible(true);
        EventQueue.invokeLater(face.terminal()::requestFocusInWindow);
    }

    private void paste() {
        try {
            Object text = Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
            inbox.add(new Event.Paste(text.toString()));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException nothingToPaste) {
            Toolkit.getDefaultToolkit().beep();
        }
    }

    private void endFromOutside() {
        if (closed.getCount() == 0) {
            return;
        }
        inbox.hangUp();
        try {
            closed.await(LAST_WORK_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public Inbox inbox() {
        return inbox;
    }

    @Override
    public synchronized void paint(Frame frame) {
        try {
            face.painter().paint(frame);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    @Override
    public synchronized void repaint() {
        face.screen().clear();
    }

    @Override
    public synchronized Event.Resize size() {
        TerminalSize size = face.terminal().getTerminalSize();
        return new Event.Resize(size.getColumns(), size.getRows());
    }

    @Override
    public boolean utf8() {
        return true;
    }

    @Override
    public void close() {
        closed.countDown();
        EventQueue.invokeLater(window::dispose);
    }
}
