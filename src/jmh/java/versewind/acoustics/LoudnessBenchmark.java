package versewind.acoustics;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Loudness and audibility of one spectrum by themselves; loudness is to stay under 3 microseconds. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(3)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LoudnessBenchmark {

    private static final double[] SKIRT_DB = {
        62, 65, 78, 79, 89, 72, 80, 89, 75, 87, 85, 79, 86, 80, 71, 70, 72, 71, 72, 74, 69, 65, 67, 77, 68, 58, 45, 30
    };

    private final StationaryLoudness loudness = new StationaryLoudness(SoundField.DIFFUSE);
    private final BandAudibility audibility = new BandAudibility(AudibilityProcedure.THIRD_OCTAVE);
    private final double[] one = new double[ThirdOctaves.COUNT];
    private final double[] other = new double[ThirdOctaves.COUNT];

    public LoudnessBenchmark() {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            one[band] = ThirdOctaves.dbToPower(SKIRT_DB[band]);
            other[band] = ThirdOctaves.dbToPower(SKIRT_DB[ThirdOctaves.COUNT - 1 - band]);
        }
    }

    /** Loudness in sone. */
    @Benchmark
    public double sone() {
        loudness.computePower(one);
        return loudness.sone();
    }

    /** Index of audibility of one beside the other. */
    @Benchmark
    public double index() {
        audibility.computePower(one, other);
        return audibility.index();
    }
}
