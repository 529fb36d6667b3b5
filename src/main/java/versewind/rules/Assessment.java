package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.sound.OrganSound.LevelStep;

/**
 * How every verse of a plan is estimated to sound.
 *
 * @param hymns in the order they are sung
 */
public record Assessment(List<OfHymn> hymns) {

    public Assessment {
        hymns = List.copyOf(hymns);
    }

    /**
     * A hymn and its verses.
     *
     * @param hymn the hymn
     * @param verses in the order they are played
     */
    public record OfHymn(Hymn hymn, List<OfVerse> verses) {

        public OfHymn {
            verses = List.copyOf(verses);
        }
    }

    /**
     * A verse and what it sounds like.
     *
     * @param verse the verse
     * @param estimate its sound, an estimate
     * @param step how much louder the organ is than in the hymn's verse before; empty for its first verse, and where
     *     one of the two is silent
     */
    public record OfVerse(Verse verse, Estimate estimate, Optional<LevelStep> step) {

        /** A verse by itself. */
        public OfVerse(Verse verse, Estimate estimate) {
            this(verse, estimate, Optional.empty());
        }

        /** Whether something should be done about it. */
        public boolean wantsAttention() {
            return estimate.balance().estimated().wantsAttention();
        }

        /** The highest level in dB(A) at a seat, of the organ or of the singing; empty where nothing sounds. */
        public OptionalDouble loudestDba() {
            return Stream.of(estimate.organDba(), estimate.organAmongSingersDba(), estimate.singersDba())
                    .flatMapToDouble(
                            level -> level.isPresent() ? DoubleStream.of(level.getAsDouble()) : DoubleStream.empty())
                    .max();
        }
    }

    /**
     * Listens to every verse of a plan.
     *
     * @param plan a plan that can be played on the instrument
     * @param sound the instrument
     */
    public static Assessment of(Plan plan, OrganSound sound) {
        int people = plan.heading().people();
        return new Assessment(plan.hymns().stream()
                .map(hymn -> new OfHymn(hymn, verses(hymn, people, sound)))
                .toList());
    }

    private static List<OfVerse> verses(Hymn hymn, int people, OrganSound sound) {
        List<OfVerse> verses = new ArrayList<>();
        Optional<Verse> before = Optional.empty();
        for (Verse verse : hymn.verses()) {
            verses.add(new OfVerse(
                    verse,
                    sound.estimate(verse, people, hymn.tempo()),
                    before.flatMap(from -> sound.step(from, verse, people))));
            before = Optional.of(verse);
        }
        return verses;
    }

    /** The verse at a place of the plan. */
    public OfVerse at(VersePlace place) {
        return hymns.get(place.hymn()).verses().get(place.verse());
    }

    /** Where something should be done, in the order of the plan. */
    public List<VersePlace> wantingAttention() {
        List<VersePlace> places = new ArrayList<>();
        for (int hymn = 0; hymn < hymns.size(); hymn++) {
            List<OfVerse> verses = hymns.get(hymn).verses();
            for (int verse = 0; verse < verses.size(); verse++) {
                if (verses.get(verse).wantsAttention()) {
                    places.add(new VersePlace(hymn, verse));
                }
            }
        }
        return List.copyOf(places);
    }

    /** The highest level in dB(A) of all verses; empty where nothing sounds. */
    public OptionalDouble loudestDba() {
        return hymns.stream()
                .flatMap(hymn -> hymn.verses().stream())
                .map(OfVerse::loudestDba)
                .flatMapToDouble(
                        level -> level.isPresent() ? DoubleStream.of(level.getAsDouble()) : DoubleStream.empty())
                .max();
    }
}
