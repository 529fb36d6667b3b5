package versewind;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import versewind.cli.Commands;
import versewind.cli.Reply;
import versewind.cli.Surroundings;
import versewind.terminal.Console;

/** Starts the program, writes what it has to say, and ends it. */
public final class Main {

    /** The folder that the program lies in; the launcher says so. */
    private static final String PROGRAM_FOLDER = "versewind.home";

    private Main() {}

    public static void main(String[] arguments) {
        Charset charset = Console.charset(System.getProperty("native.encoding", ""));
        Reply reply = reply(List.of(arguments), charset);
        write(reply.results(), FileDescriptor.out, charset);
        write(reply.words(), FileDescriptor.err, charset);
        System.exit(reply.status());
    }

    private static Reply reply(List<String> arguments, Charset charset) {
        try {
            return Commands.run(
                    arguments,
                    new Surroundings(
                            Path.of(""),
                            Optional.ofNullable(System.getProperty(PROGRAM_FOLDER))
                                    .map(Path::of),
                            charset,
                            LocalDate.now(ZoneId.systemDefault()),
                            Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
                                    .orElse("(not packaged)")));
        } catch (RuntimeException | Error unexpected) {
            return Reply.unexpected(unexpected);
        }
    }

    private static void write(String text, FileDescriptor where, Charset charset) {
        OutputStream out = new FileOutputStream(where);
        try {
            out.write(text.getBytes(charset));
        } catch (IOException readerGone) {
            // Whoever read this has had enough, as `head` does, and nobody is left to be told.
            return;
        }
    }
}
