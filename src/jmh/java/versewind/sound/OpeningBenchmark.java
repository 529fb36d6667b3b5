package versewind.sound;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import versewind.organ.Instrument;
import versewind.store.BadFile;
import versewind.store.Library;

/**
 * Opening an organ of 100 stops in a Java that has just started, one opening a Java, with the launcher's options: all
 * vectors are to be worked out in less than 60 ms.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 15,
        jvmArgsAppend = {"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx128m"})
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class OpeningBenchmark {

    private Instrument organ;

    @Setup(Level.Trial)
    public void read() throws BadFile {
        organ = new Library(Path.of("")).openInstrument("ostmere-cathedral");
    }

    /** Works out everything that does not depend on what is drawn. */
    @Benchmark
    public OrganSound open() {
        return OrganSound.open(organ);
    }
}
