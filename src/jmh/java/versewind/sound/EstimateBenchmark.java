package versewind.sound;

import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.store.BadFile;
import versewind.store.Library;

/**
 * Putting a stop in and drawing it again on an organ, and everything that is estimated then: what is to stay under 100
 * microseconds on an organ of 100 stops.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(3)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class EstimateBenchmark {

    /** Name of the instrument's file without its ending. */
    @Param({"ostmere-cathedral", "st-tethwin"})
    public String instrument;

    /** Whom the organ accompanies. */
    @Param({"CONGREGATION", "SOLO_VOICE", "MELODY_SOLOED"})
    public versewind.plan.Mode mode;

    private OrganSound sound;
    private Verse verse;
    private int stops;
    private int next;

    @Setup(Level.Trial)
    public void open() throws BadFile {
        Instrument organ = new Library(Path.of("")).openInstrument(instrument);
        sound = OrganSound.open(organ);
        stops = organ.stops().size();
        verse = Verses.blank(organ, VerseKind.VERSE)
                .withMode(mode)
                .withHands(HandsAndFeet.on(
                        mode == versewind.plan.Mode.MELODY_SOLOED
                                ? HandsAndFeet.Layout.MELODY_SOLOED
                                : HandsAndFeet.Layout.FOUR_PARTS,
                        organ.mainDivision()))
                .withRegistration(Registration.full(organ));
    }

    /** Toggles the next stop of full organ and estimates the verse. */
    @Benchmark
    public Estimate toggle() {
        verse = verse.withRegistration(verse.registration().toggleStop(next));
        next = (next + 1) % stops;
        return sound.compute(verse, 500, OptionalInt.of(90));
    }
}
