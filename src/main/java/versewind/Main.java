package versewind;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicReference;
import versewind.cli.Commands;
import versewind.cli.ConsoleProgress;
import versewind.cli.Environment;
import versewind.cli.LibraryLocator;
import versewind.cli.Progress;
import versewind.cli.Reply;
import versewind.store.FaultLog;
import versewind.terminal.Console;

/** Runs a command, writes its reply, and exits with its status. */
public final class Main {

    /** System property set by the launcher: the folder of the program. */
    private static final String PROGRAM_FOLDER = "versewind.home";

    /**
     * System property set by the launcher when it makes the archive of classes: a library on which commands that print
     * are run first, so that the archive has their classes too.
     */
    private static final String ARCHIVED_LIBRARY = "versewind.archived";

    /** A fault of any thread. */
    private static final AtomicReference<Throwable> FAULT = new AtomicReference<>();

    private Main() {}

    public static void main(String[] arguments) {
        Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> FAULT.compareAndSet(null, fault));
        Charset charset = Console.charset(Console.nativeEncoding());
        ConsoleProgress waiting = new ConsoleProgress(isWatched() ? Main::writeError : nothing -> {}, Main::writeError);
        String archived = System.getProperty(ARCHIVED_LIBRARY, "");
        if (!archived.isEmpty()) {
            reply(List.of("--help"), charset, waiting);
            reply(List.of("--library", archived, "assess", "harvest-festival"), charset, waiting);
        }
        Reply reply = reply(List.of(arguments), charset, waiting);
        waiting.endLine();
        int status = reply.status();
        try {
            write(
                    reply.results(),
                    FileDescriptor.out,
                    reply.letters() == Reply.Letters.UTF_8 ? StandardCharsets.UTF_8 : charset);
            write(reply.words(), FileDescriptor.err, charset);
        } catch (IOException unwritten) {
            status = Reply.BAD;
            System.err.println("versewind: The results could not be written: " + unwritten.getMessage() + ".");
        }
        waiting.end();
        System.exit(status);
    }

    /** True if the launcher found that standard error is a terminal. */
    private static boolean isWatched() {
        return Boolean.getBoolean("versewind.watched");
    }

    /** The columns of standard output, if the launcher found that it is a terminal. */
    private static OptionalInt columns() {
        int columns = Integer.getInteger("versewind.columns", 0);
        return columns > 0 ? OptionalInt.of(columns) : OptionalInt.empty();
    }

    /** The day that the launcher read from the clock, YYYY-MM-DD: Java's own needs its time zones, 14 ms. */
    private static LocalDate today() {
        String told = System.getProperty("versewind.today", "");
        return told.length() == 10
                ? LocalDate.of(
                        Integer.parseInt(told.substring(0, 4)),
                        Integer.parseInt(told.substring(5, 7)),
                        Integer.parseInt(told.substring(8)))
                : LocalDate.now(ZoneId.systemDefault());
    }

    private static void writeError(String text) {
        System.err.print(text);
        System.err.flush();
    }

    private static Reply reply(List<String> arguments, Charset charset, Progress meanwhile) {
        try {
            Reply reply = Commands.run(
                    arguments,
                    new Environment(
                            Path.of(""),
                            Optional.ofNullable(System.getProperty(PROGRAM_FOLDER))
                                    .map(Path::of),
                            environment(),
                            System.in,
                            charset,
                            today(),
                            version(),
                            meanwhile,
                            columns()));
            return fault().orElse(reply);
        } catch (RuntimeException | Error unexpected) {
            FAULT.set(unexpected);
        }
        return fault().orElseThrow();
    }

    /** The first fault that nobody caught, once the screen is left. */
    private static Optional<Reply> fault() {
        return Optional.ofNullable(FAULT.get())
                .map(fault -> Reply.unexpected(
                        fault,
                        LibraryLocator.state(environment())
                                .flatMap(folder -> FaultLog.write(folder, version(), fault))));
    }

    private static String version() {
        return Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
                .orElse("(not packaged)");
    }

    /** The variables; without HOME, with that of the account. */
    private static Map<String, String> environment() {
        Map<String, String> variables = new HashMap<>(System.getenv());
        if (variables.getOrDefault("HOME", "").isEmpty()) {
            variables.put("HOME", System.getProperty("user.home", ""));
        }
        return variables;
    }

    private static void write(String text, FileDescriptor where, Charset charset) throws IOException {
        OutputStream out = new FileOutputStream(where);
        try {
            out.write(text.getBytes(charset));
        } catch (IOException trouble) {
            if (!isReaderGone(trouble)) {
                throw trouble;
            }
        }
    }

    /** True if the reader closed the pipe, as {@code head} does; that is no error. */
    private static boolean isReaderGone(IOException trouble) {
        return String.valueOf(trouble.getMessage()).toLowerCase(Locale.ROOT).contains("broken pipe");
    }
}
