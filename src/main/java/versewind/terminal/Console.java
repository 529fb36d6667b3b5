package versewind.terminal;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.Proxy;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Frame;

/**
 * The terminal that the program was started in: full screen while this is open, restored by {@link #close()}.
 *
 * <p>Keys, pastes, resizes and hangups come through one queue in the order in which they happened, beginning with what
 * was typed before the first frame.
 *
 * <p>On TERM, HUP or INT the terminal is restored at once, a {@link Event.Hangup} comes, and the JVM waits up
 * to five seconds for {@link #close()}, so that unsaved work can be written.
 */
public final class Console implements Display {

    private static final long LAST_WORK_S = 5;
    private static final long STALLED_MS = 1000;
    private static final int SIGNALLED = 128;

    /** Signals that would end Java at once, without its last work. */
    private static final List<String> ENDING = List.of("INT", "USR1", "ALRM", "XCPU", "VTALRM", "PROF", "PWR");

    private final Tty line;
    private final TerminalType model;
    private final Charset charset;
    private final KeyReader keys;
    private final Emitter emitter;
    private final Inbox inbox = new Inbox();
    private final CountDownLatch closed = new CountDownLatch(1);

    /** Held while the terminal is written to. */
    private final Object screen = new Object();
    /** Held while a signal is handled, so that the size read last is the one that stays. */
    private final Object signals = new Object();

    private volatile int status;
    private Event.Resize size;
    private boolean suspended;
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
     * Switches the terminal to a full screen.
     *
     * @throws NoTerminalException if there is no terminal, or it cannot show a full screen
     */
    public static Console open() throws NoTerminalException {
        Map<String, String> environment = System.getenv();
        TerminalType model = TerminalType.of(environment);
        Tty line = Tty.open(environment);
        Charset charset = charset(nativeEncoding());
        InputStream in = new FileInputStream(FileDescriptor.in);
        OutputStream out = new FileOutputStream(FileDescriptor.out);
        Emitter emitter = new Emitter(out, charset, model.palette(environment));
        Console console = new Console(line, model, charset, new KeyReader(in, charset), emitter);
        console.stand();
        return console;
    }

    /**
     * The name of the terminal's character set. Where that is ASCII, the launcher says so, and has Java begin with
     * UTF-8 all the same, since else it could not open files whose names have other letters.
     */
    public static String nativeEncoding() {
        return System.getProperty("versewind.charset", System.getProperty("native.encoding", ""));
    }

    /** The terminal's character set; ASCII if unknown. Java's default charset is UTF-8 everywhere from Java 18 on. */
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

    @Override
    public Inbox inbox() {
        return inbox;
    }

    /** Makes the terminal show a frame. If the connection is lost, a hangup comes. */
    @Override
    public void paint(Frame frame) {
        synchronized (screen) {
            if (!standing || suspended) {
                return;
            }
            try {
                emitter.paint(frame);
            } catch (IOException lineBroken) {
                inbox.hangUp();
            }
            if (!heeding) {
                heeding = true;
                new SignalListener().start();
            }
        }
    }

    @Override
    public void repaint() {
        synchronized (screen) {
            emitter.forget();
        }
    }

    @Override
    public Event.Resize size() {
        synchronized (screen) {
            return size;
        }
    }

    /** True if the terminal's character set is UTF-8. */
    @Override
    public boolean utf8() {
        return charset.equals(StandardCharsets.UTF_8);
    }

    /** Restores the terminal. */
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
            inbox.hangUp();
        }
    }

    /** Reports the size now, and makes the next frame be painted whole. */
    private void resized() {
        synchronized (signals) {
            Event.Resize now = line.size().orElseGet(this::size);
            synchronized (screen) {
                size = now;
                emitter.forget();
            }
            inbox.add(now);
        }
    }

    @Override
    public int status() {
        return status;
    }

    private void endBy(int signal) {
        status = SIGNALLED + signal;
        inbox.hangUp();
    }

    /** Leaves the screen before a stop. */
    private void suspended() {
        synchronized (screen) {
            if (standing && !suspended) {
                suspended = true;
                send(model.leave());
            }
        }
    }

    /** Takes the terminal again after a stop, during which the shell set its own modes and wrote on the screen. */
    private void continued() {
        synchronized (signals) {
            line.setModes();
            synchronized (screen) {
                if (standing) {
                    suspended = false;
                    send(model.enter());
                }
            }
            resized();
        }
    }

    /**
     * A daemon thread. An error in it is printed after the screen is left, and ends the program as a hangup does.
     * Subclasses and not lambdas, since the first lambda costs 30 ms at start.
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
                inbox.hangUp();
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
                if (line.isAlone()) {
                    break;
                }
                inbox.add(input);
            }
            inbox.hangUp();
        }
    }

    /** Registers signal handlers; started after the first frame, which it would delay. */
    private final class SignalListener extends Worker {

        SignalListener() {
            super("signals");
        }

        @Override
        void work() {
            Signals.on("TSTP", number -> suspended());
            Signals.on("CONT", number -> continued());
            Signals.on("WINCH", number -> resized());
            for (String ending : ENDING) {
                Signals.on(ending, Console.this::endBy);
            }
            Event.Resize painted = size();
            boolean changed = line.size()
                    .filter(now -> now.columns() != painted.columns() || now.rows() != painted.rows())
                    .isPresent();
            if (changed) {
                resized();
            }
            if (line.outlivesLauncher()) {
                inbox.hangUp();
                endUnlessClosed();
            }
        }
    }

    /** Ends a program that cannot end, since the terminal takes no more output or it is busy. */
    private void endUnlessClosed() {
        try {
            if (!closed.await(LAST_WORK_S, TimeUnit.SECONDS)) {
                Signals.raise("TERM");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
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
            inbox.hangUp();
            Thread leaving = new Thread(Console.this::leave, "leaving");
            leaving.setDaemon(true);
            leaving.start();
            try {
                leaving.join(STALLED_MS);
                // A terminal that takes no more output keeps the program from painting, and so from ending. The edits
                // are in the journal already.
                if (leaving.isAlive()) {
                    line.restoreModes();
                    return;
                }
                closed.await(LAST_WORK_S, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** Unix signals, by reflection, since {@code sun.misc.Signal} does not compile without a warning. */
    static final class Signals {

        private Signals() {}

        /**
         * Runs an action in its own thread whenever a signal arrives, with its number; nothing on a Java without it.
         */
        static void on(String name, IntConsumer action) {
            try {
                Class<?> signal = Class.forName("sun.misc.Signal");
                Class<?> handler = Class.forName("sun.misc.SignalHandler");
                Object proxy = Proxy.newProxyInstance(
                        handler.getClassLoader(), new Class<?>[] {handler}, (self, method, arguments) -> {
                            if (method.getName().equals("handle")) {
                                action.accept(
                                        (Integer) signal.getMethod("getNumber").invoke(arguments[0]));
                            }
                            return null;
                        });
                signal.getMethod("handle", signal, handler)
                        .invoke(null, signal.getConstructor(String.class).newInstance(name), proxy);
            } catch (ReflectiveOperationException | IllegalArgumentException unknownHere) {
                // Without signals, resizes and stops go unnoticed.
                return;
            }
        }

        /** Has a signal arrive at this program. */
        static void raise(String name) {
            try {
                Class<?> signal = Class.forName("sun.misc.Signal");
                signal.getMethod("raise", signal)
                        .invoke(null, signal.getConstructor(String.class).newInstance(name));
            } catch (ReflectiveOperationException | IllegalArgumentException unknownHere) {
                return;
            }
        }
    }
}
