package versewind.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.Pressed;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Occasion;
import versewind.plan.Plan;
import versewind.plan.Sung;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;

/** A hymn of a plan and how its verses sound: all that the rules look at. */
final class InHymn {

    /** Stands for the level of silence. */
    private static final double SILENT_DBA = -100;

    private final OrganSound sound;
    private final ChorusFaults faults;
    private final PistonUse pistons;
    private final Occasion occasion;
    private final int index;
    private final Hymn hymn;

    /** How the verses sound that were asked about. */
    private final Map<Integer, Estimate> estimates;

    /** What sounds in those. */
    private final Map<Integer, PlayedRegistration> played;

    private InHymn(
            InHymn before,
            PistonUse pistons,
            Hymn hymn,
            Map<Integer, Estimate> estimates,
            Map<Integer, PlayedRegistration> played) {
        sound = before.sound;
        faults = before.faults;
        this.pistons = pistons;
        occasion = before.occasion;
        index = before.index;
        this.hymn = hymn;
        this.estimates = estimates;
        this.played = played;
    }

    /**
     * A hymn.
     *
     * @param sound the instrument
     * @param faults the instrument's choruses
     * @param pistons of the plan
     * @param index of the hymn in the plan
     */
    InHymn(OrganSound sound, ChorusFaults faults, PistonUse pistons, int index) {
        this.sound = sound;
        this.faults = faults;
        this.pistons = pistons;
        this.index = index;
        occasion = pistons.plan().heading().occasion();
        hymn = pistons.plan().hymns().get(index);
        estimates = new HashMap<>();
        played = new HashMap<>();
    }

    /** The hymn with a verse mended. */
    InHymn with(Mend mend) {
        int verse = mend.place().verse();
        Plan alone = plan().withHymns(List.of(hymn)).withVerse(new VersePlace(0, verse), mend.verse());
        Hymn mended = alone.hymns().get(0);
        Map<Integer, Estimate> after = new HashMap<>(estimates);
        after.put(verse, estimate(mend.verse()));
        Map<Integer, PlayedRegistration> others = new HashMap<>(played);
        others.remove(verse);
        return new InHymn(this, pistons.with(mend.place(), mended.verses().get(verse)), mended, after, others);
    }

    /** The plan, without what is tried in the hymn. */
    Plan plan() {
        return pistons.plan();
    }

    OrganSound sound() {
        return sound;
    }

    ChorusFaults faults() {
        return faults;
    }

    PistonUse pistons() {
        return pistons;
    }

    /** The hymn, with what is tried in it. */
    Hymn hymn() {
        return hymn;
    }

    /**
     * The verse of the plan before one; empty for the first of the service. {@link Advice} names the rules that look
     * beyond the hymn.
     */
    Optional<Verse> verseBefore(int verse) {
        return verse > 0
                ? Optional.of(verse(verse - 1))
                : IntStream.range(0, index)
                        .mapToObj(back -> plan().hymns().get(index - 1 - back).verses())
                        .filter(verses -> !verses.isEmpty())
                        .map(verses -> verses.get(verses.size() - 1))
                        .findFirst();
    }

    /** The verses of the plan after one, the next of the service first. */
    Stream<Verse> after(int verse) {
        return Stream.concat(
                verses().subList(verse + 1, verses().size()).stream(),
                plan().hymns().subList(index + 1, plan().hymns().size()).stream()
                        .flatMap(later -> later.verses().stream()));
    }

    /** The pistons that are pressed for a verse. */
    Pressed pressed(Verse verse) {
        return pistons.pressed(verse);
    }

    /** True for two verses whose tune the same people sing. */
    boolean isSungAlike(int one, int other) {
        Sung mine = verse(one).sung().ofTune();
        Sung its = verse(other).sung().ofTune();
        return company(one).who() == company(other).who()
                && mine.by() == its.by()
                && mine.people().equals(its.people())
                && mine.share().equals(its.share());
    }

    /** For whom a verse is played. */
    Company company(int verse) {
        return Company.of(verse(verse), occasion);
    }

    /** What sounds in a verse. */
    PlayedRegistration played(int verse) {
        return played.computeIfAbsent(verse, asked -> played(verse(asked)));
    }

    /** What sounds in a verse of this day. */
    PlayedRegistration played(Verse other) {
        return faults.played(other.registration(), other.hands(), Company.of(other, occasion));
    }

    Instrument organ() {
        return sound.organ();
    }

    List<Verse> verses() {
        return hymn.verses();
    }

    Verse verse(int verse) {
        return verses().get(verse);
    }

    Estimate estimate(int verse) {
        return estimates.computeIfAbsent(verse, asked -> estimate(verse(asked)));
    }

    /** A mend that puts another verse in the place of one. */
    Mend mend(String words, int verse, Verse other) {
        return new Mend(words, place(verse), other);
    }

    /** A mend that draws another registration. */
    Mend drawing(int verse, Registration after) {
        return fixed(verse, new Fix(after, verse(verse).hands()));
    }

    /** A mend that plays a verse otherwise. */
    Mend fixed(int verse, Fix fix) {
        return mended(verse, verse(verse).withRegistration(fix.registration()).withHands(fix.hands()));
    }

    /** A mend that puts another verse in the place of one, in words of what is changed. */
    Mend mended(int verse, Verse after) {
        return mend(Mend.sentence(Mend.words(organ(), verse(verse), after)), verse, after);
    }

    /** A mend that sets a verse on a piston. */
    Mend onPiston(String piston, int verse, Verse other) {
        return mend("Set it on piston " + piston + ".", verse, other.withPiston(piston));
    }

    VersePlace place(int verse) {
        return new VersePlace(index, verse);
    }

    /** How a verse would sound if it were another. */
    Estimate estimate(Verse other) {
        return sound.estimate(other, plan().heading().people(), hymn.tempo());
    }

    /** Level of the organ in a verse, in dB(A); far below anything where it is silent. */
    double organDba(int verse) {
        return estimate(verse).organDba().orElse(SILENT_DBA);
    }

    /** Level of organ and singing together in a verse, in dB(A). */
    double soundingDba(int verse) {
        double singing = estimate(verse).singersDba().orElse(SILENT_DBA);
        return 10 * Math.log10(Math.pow(10, organDba(verse) / 10) + Math.pow(10, singing / 10));
    }

    /** The verses of the text, in their order: neither introduction, interlude, refrain nor Amen. */
    List<Integer> textVerses() {
        return IntStream.range(0, verses().size())
                .filter(i -> verse(i).kind() == VerseKind.VERSE || verse(i).kind() == VerseKind.LAST_VERSE)
                .filter(i -> verse(i).isPlayed())
                .boxed()
                .toList();
    }

    /** Those of them that the congregation sings. */
    List<Integer> congregationVerses() {
        return textVerses().stream()
                .filter(i -> Company.of(verse(i)).isCongregation())
                .toList();
    }

    /** What the feet sound in a verse, if they play. */
    Optional<Chorus> pedal(int verse) {
        return played(verse).feet();
    }

    /** Seconds of a beat. */
    double beatS() {
        return BetweenVerses.beatS(hymn);
    }

    /** Whether the room rings so long that the breath wants a beat more. */
    boolean isLiveRoom() {
        return BetweenVerses.isLiveRoom(plan().heading().people(), sound);
    }

    /**
     * The breath between verses in beats: what people need to breathe, and a beat more in a very live room; a bar at
     * most.
     */
    int breathBeats() {
        return BetweenVerses.breathBeats(beatS(), isLiveRoom());
    }
}
