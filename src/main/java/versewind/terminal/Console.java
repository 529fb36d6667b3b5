package versewind.terminal;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import versewind.screen.Event;
import versewind.screen.Frame;

/**
 * The terminal that the program was started in, taken whole while this is open and left as it was found.
 *
 * <p>Keys, pastes, changes of size and the end of it all come through one queue, in the order in which they happened;
 * what was typed before the program stood comes first.
 *
 * <p>When the program is told to end (TERM, HUP, INT), the terminal is put back at once, the queue gives a
 * {@link Event.Hangup}, and the program has a few seconds for its last work. It says that this is done by closing the
 * console, so nobody may exit without.
 */
public final class Console implements AutoCloseable {

    private static final long LAST_WORK_S = 5;

    private final Tty line;
    private final TerminalType model;
    private final Charset charset;
    private final KeyReader keys;
    private final Emitter emitter;
    private final BlockingQueue<Event> inputs = new LinkedBlockingQueue<>();
    private final AtomicBoolean hungUp = new AtomicBoolean();
    private final CountDownLatch closed = new CountDownLatch(1);

    /** Held while the terminal is written to. */
    private final Object screen = new Object();
    /** Held while a signal is answered, so that the last one has the last word. */
    private final Object signals = new Object();

    private Event.Resize size;
    private boolean standing;
    private boolean heeding;

    private Console(Tty line, TerminalType model, Charset charset, KeyReader keys, Emitter emitter) {
        this.line = line;
        this.model = model;
        this.charset = charset;
        this.keys = keys;
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
        TerminalType model = TerminalType.of(environment);
        Tty line = Tty.open(environment);
        Charset charset = charset(System.getProperty("native.encoding", ""));
        InputStream in = new FileInputStream(FileDescriptor.in);
        OutputStream out = new FileOutputStream(FileDescriptor.out);
        Emitter emitter = new Emitter(out, charset, model.palette(environment));
        Console console = new Console(line, model, charset, new KeyReader(in, charset), emitter);
        console.stand();
        return console;
    }

    /** The terminal's character set, which is not Java's default one: that is UTF-8 everywhere from Java 18 on. */
    public static Charset charset(String nativeEncoding) {
        try {
            return Charset.forName(nativeEncoding);
        } catch (IllegalArgumentException unknownHere) {
            return StandardCharsets.US_ASCII;
        }
    }

    private void stand() {
        Runtime.getRuntime().addShutdownHook(new EndFromOutside());
        synchronized (screen) {
            standing = true;
            send(model.enter());
        }
        new KeyWorker().start();
    }

    /** Waits for what happens next. After a hangup there is nothing more to wait for: it gives hangups for ever. */
    public Event next() {
        try {
            Event input = inputs.take();
            while (input instanceof Event.Resize && inputs.peek() instanceof Event.Resize) {
                input = inputs.take();
            }
            if (input instanceof Event.Hangup) {
                inputs.add(input);
            }
            return input;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Event.Hangup();
        }
    }

    /** Waits for what happens next, but no longer than this. */
    Optional<Event> next(Duration longest) {
        try {
            Optional<Event> input = Optional.ofNullable(inputs.poll(longest.toMillis(), TimeUnit.MILLISECONDS));
            input.filter(Event.Hangup.class::isInstance).ifPresent(inputs::add);
            return input;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /** Tells what happened elsewhere, as if it had been typed. */
    void tell(Event input) {
        inputs.add(input);
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
            if (!heeding) {
                heeding = true;
                new SignalListener().start();
            }
        }
    }

    /** Forgets what the terminal shows, so that the next frame is painted whole. */
    public void repaint() {
        synchronized (screen) {
            emitter.forget();
        }
    }

    /** The terminal's columns and rows now, in the form in which a change of them is told. */
    public Event.Resize size() {
        synchronized (screen) {
            return size;
        }
    }

    /** Whether the terminal's character set is UTF-8, so that there is more than ASCII to draw with. */
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
            if (!standing) {
                return;
            }
            send(model.leave());
            standing = false;
        }
        line.restoreModes();
    }

    private void send(String sequences) {
        try {
            emitter.send(sequences);
        } catch (IOException lineBroken) {
            hangUp();
        }
    }

    private void hangUp() {
        if (hungUp.compareAndSet(false, true)) {
            inputs.add(new Event.Hangup());
        }
    }

    /** Has the whole screen painted again, at the size that it has now. */
    private void resized() {
        synchronized (signals) {
            Event.Resize now = line.size().orElseGet(this::size);
            synchronized (screen) {
                size = now;
                emitter.forget();
            }
            inputs.add(now);
        }
    }

    /** After a stop: the shell has set modes of its own and written on the screen. */
    private void continued() {
        synchronized (signals) {
            line.setModes();
            synchronized (screen) {
                if (standing) {
                    send(model.enter());
                }
            }
            resized();
        }
    }

    /**
     * Work beside the program's own. An error of ours in it is told where it can be read, and ends the program as a
     * dropped line does. These are classes since the first lambda of a program costs its start 30 ms.
     */
    private abstract class Worker extends Thread {

        Worker(String name) {
            super(name);
            setDaemon(true);
        }

        abstract void work();

        @Override
        public final void run() {
            try {
                work();
            } catch (RuntimeException | Error e) {
                leave();
                hangUp();
                throw e;
            }
        }
    }

    private final class KeyWorker extends Worker {

        KeyWorker() {
            super("keys");
        }

        @Override
        void work() {
            for (Event input = keys.next(); !(input instanceof Event.Hangup); input = keys.next()) {
                inputs.add(input);
            }
            hangUp();
        }
    }

    /** Begins to listen when the first frame is seen, which it would delay. */
    private final class SignalListener extends Worker {

        SignalListener() {
            super("signals");
        }

        @Override
        void work() {
            Signals.on("TSTP", () -> {});
            Signals.on("CONT", Console.this::continued);
            Signals.on("WINCH", Console.this::resized);
            Event.Resize painted = size();
            boolean changed = line.size()
                    .filter(now -> now.columns() != painted.columns() || now.rows() != painted.rows())
                    .isPresent();
            if (changed) {
                resized();
            }
        }
    }

    private final class EndFromOutside extends Worker {

        EndFromOutside() {
            super("end");
        }

        @Override
        void work() {
            if (closed.getCount() == 0) {
                return;
            }
            leave();
            hangUp();
            try {
                closed.await(LAST_WORK_S, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
