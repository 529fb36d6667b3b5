package versewind.proposal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
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
import versewind.plan.Hymn;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.sound.OrganSound;
import versewind.store.BadFile;
import versewind.store.Library;

/**
 * Proposals on the organ of 102 stops: for one verse, what is to stay under 50 ms, and for a service of 10 hymns and 60
 * verses of every mood and strength of singing, what is to stay under 2 s.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 2)
public class ProposalBenchmark {

    private static final int HYMNS = 10;
    private static final int VERSES = 5;

    private RegistrationProposer proposer;
    private Plan service;
    private List<VersePlace> places;
    private int next;

    @Setup(Level.Trial)
    public void open() throws BadFile {
        Instrument organ = new Library(Path.of("")).openInstrument("ostmere-cathedral");
        proposer = RegistrationProposer.of(OrganSound.open(organ));
        Random random = new Random(3);
        List<Hymn> hymns = new ArrayList<>();
        places = new ArrayList<>();
        for (int hymn = 0; hymn < HYMNS; hymn++) {
            List<Verse> verses = new ArrayList<>(Verses.ofNewHymn(organ, VERSES));
            verses.replaceAll(verse -> verse.withMood(Mood.values()[random.nextInt(Mood.values().length)])
                    .withSinging(Singing.values()[random.nextInt(Singing.values().length)]));
            verses.set(0, verses.get(0).withMode(versewind.plan.Mode.MELODY_SOLOED));
            hymns.add(new Hymn("", "Hymn " + hymn, "", "", "", OptionalInt.of(96), "", verses));
            for (int verse = 0; verse < verses.size(); verse++) {
                places.add(new VersePlace(hymn, verse));
            }
        }
        service = new Plan(new ServiceHeading("A service", Optional.empty(), 400, ""), "ostmere-cathedral", hymns);
    }

    /** Up to five registrations for a verse; each time another. */
    @Benchmark
    public Object a_verse() {
        next = (next + 1) % places.size();
        return proposer.forVerse(service, places.get(next));
    }

    /** The whole service. */
    @Benchmark
    public Object a_service_of_60_verses() {
        return proposer.forService(service, SearchProgress.PATIENT);
    }
}
