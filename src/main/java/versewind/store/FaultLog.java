package versewind.store;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** Files in which faults of the program are described for whoever mends it, without anything of the plans. */
public final class FaultLog {

    private FaultLog() {}

    /**
     * Writes what is known of a fault.
     *
     * @param folder in which it is written, made if it is not there
     * @param version the program's
     * @return the file, if one could be written
     */
    public static Optional<Path> write(Path folder, String version, Throwable fault) {
        StringWriter text = new StringWriter();
        PrintWriter lines = new PrintWriter(text);
        lines.println("Versewind " + version + ", Java " + System.getProperty("java.vm.version") + ", "
                + System.getProperty("os.name"));
        fault.printStackTrace(lines);
        String time = Instant.now().truncatedTo(ChronoUnit.MILLIS).toString().replace(":", "-");
        Path file = folder.resolve("fault-" + time + ".log");
        try {
            Disk disk = new SystemDisk();
            disk.makeFolder(folder);
            disk.create(file, Optional.empty());
            disk.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
            return Optional.of(file);
        } catch (IOException cannot) {
            return Optional.empty();
        }
    }
}
