package versewind.terminal;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import versewind.screen.Frame;
import versewind.screen.Input;

/**
 * The terminal that the program was started in, taken whole while it is open and left as it was found.
 *
 * <p>Keys, pastes, changes of size and the end of it all come through one queue, in the order in which they happened;
 * what was typed before the program stood comes first. When the program is told to end (TERM, HUP, INT), the terminal is
 * put back at once, the queue gives a {@link Input.Hangup}, and the program has a few seconds for its last work; it says
 * that that is done by closing the console.
 */
public final class Console implements AutoCloseable {

    private static final long LAST_WORK_S = 5;

    private final Line line;
    private final Model model;
    private final Charset charset;
    private final Emitter emitter;
    private final BlockingQueue<Input> inputs = new LinkedBlockingQueue<>();
    private final CountDownLatch closed = new CountDownLatch(1);
    private final AtomicBoolean hungUp = new AtomicBoolean();
    private final Object screen = new Object();
    private Input.Resize size;
    private boolean standing;

    private Console(Line line, Model model, Charset charset, Emitter emitter) {
        this.line = line;
        this.model = model;
        this.charset = charset;
        this.emitter = emitter;
        this.size = line.firstSize();
    }

    /**
     * Takes the terminal.
     *
     * @throws NoTerminalException if there is none, or none on which a full screen can stand
     */
    public static Console open() throws NoTerminalException {
        Map<String, String> environment = System.getenv();
        Model model = Model.of(environment);
        Line line = Line.open(environment);
        Charset charset = charset(System.getProperty("native.encoding", ""));
        OutputStream output = new FileOutputStream(FileDescriptor.out);
        Console console = new Console(line, model, charset, new Emitter(output, charset, model.palette(environment)));
        console.stand();
        console.listen(new FileInputStream(FileDescriptor.in));
        return console;
    }

    /** The terminal's character set, which is not Java's default one: that is UTF-8 everywhere from Java 18 on. */
    static Charset charset(String nativeEncoding) {
        try {
            return Charset.forName(nativeEncoding);
        } catch (IllegalArgumentException unknownHere) {
            return StandardCharsets.US_ASCII;
        }
    }

    private void stand() {
        Runtime.getRuntime().addShutdownHook(new Thread(this::endFromOutside, "end"));
        synchronized (screen) {
            standing = true;
            send(model.enter());
        }
    }

    private void listen(InputStream bytes) {
        Keys keys = new Keys(bytes, charset);
        start("keys", () -> {
            try {
                for (Input input = keys.next(); !(input instanceof Input.Hangup); input = keys.next()) {
                    inputs.add(input);
                }
            } finally {
                hangUp();
            }
        });
        start("signals", () -> {
            Signals.on("WINCH", this::resized);
            Signals.on("CONT", this::continued);
            Signals.on("TSTP", () -> {});
            resizedSinceTheStart();
        });
    }

    private static void start(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void hangUp() {
        if (hungUp.compareAndSet(false, true)) {
            inputs.add(new Input.Hangup());
        }
    }

    /** Waits for what happens next. After a hangup there is nothing more to wait for: it gives hangups for ever. */
    public Input next() {
        try {
            Input input = inputs.take();
            while (input instanceof Input.Resize && inputs.peek() instanceof Input.Resize) {
                input = inputs.take();
            }
            if (input instanceof Input.Hangup) {
                inputs.add(input);
            }
            return input;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Input.Hangup();
        }
    }

    /** Makes the terminal show a frame. If the line is broken nothing happens, and the queue says so. */
    public void paint(Frame frame) {
        synchronized (screen) {
            if (!standing) {
                return;
            }
            try {
                emitter.paint(frame);
            } catch (IOException lineBroken) {
                hangUp();
            }
        }
    }

    /** The terminal's columns and rows now, in the form in which a change of them is told. */
    public Input.Resize size() {
        synchronized (screen) {
            return size;
        }
    }

    /** Whether the terminal's character set has more than ASCII to draw with. */
    public boolean utf8() {
        return charset.equals(StandardCharsets.UTF_8);
    }

    /** Leaves the terminal as it was found. */
    @Override
    public void close() {
        leave();
        closed.countDown();
    }

    private void leave() {
        synchronized (screen) {
            if (standing) {
                send(model.leave());
                standing = false;
                line.restoreModes();
            }
        }
    }

    private void endFromOutside() {
        if (closed.getCount() == 0) {
            return;
        }
        leave();
        hangUp();
        try {
            boolean done = closed.await(LAST_WORK_S, TimeUnit.SECONDS);
            if (!done) {
                closed.countDown();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void resized() {
        synchronized (screen) {
            size = line.size(size);
            emitter.forget();
            inputs.add(size);
        }
    }

    private void resizedSinceTheStart() {
        synchronized (screen) {
            Input.Resize now = line.size(size);
            if (!now.equals(size)) {
                resized();
            }
        }
    }

    /** After a stop the shell has set its own modes and written on the screen. */
    private void continued() {
        synchronized (screen) {
            if (standing) {
                line.setModes();
                send(model.enter());
                resized();
            }
        }
    }

    private void send(String sequences) {
        try {
            emitter.send(sequences);
        } catch (IOException lineBroken) {
            hangUp();
        }
    }
}
