package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.Pressed;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Sung;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;

/**
 * A hymn of a plan and how its verses sound: all that the rules look at.
 *
 * @param plan the plan
 * @param sound the instrument
 * @param faults the instrument's choruses
 * @param index of the hymn
 * @param estimates of its verses
 */
record InHymn(Plan plan, OrganSound sound, ChorusFaults faults, int index, List<Estimate> estimates) {

    /** Stands for the level of silence. */
    private static final double SILENT_DBA = -100;

    InHymn {
        estimates = List.copyOf(estimates);
    }

    static InHymn of(Plan plan, OrganSound sound, ChorusFaults faults, int index) {
        Hymn hymn = plan.hymns().get(index);
        return new InHymn(
                plan,
                sound,
                faults,
                index,
                hymn.verses().stream()
                        .map(verse -> sound.estimate(verse, plan.heading().people(), hymn.tempo()))
                        .toList());
    }

    /** The hymn with a verse mended. */
    InHymn with(Mend mend) {
        List<Estimate> after = new ArrayList<>(estimates);
        after.set(mend.place().verse(), estimate(mend.verse()));
        return new InHymn(mend.on(plan), sound, faults, index, after);
    }

    /** The verses of the plan before one, the first of the service first. */
    Stream<Verse> before(int verse) {
        return Stream.concat(
                plan.hymns().subList(0, index).stream().flatMap(hymn -> hymn.verses().stream()),
                verses().subList(0, verse).stream());
    }

    /** The verse of the plan before one; empty for the first of the service. */
    Optional<Verse> verseBefore(int verse) {
        return verse > 0
                ? Optional.of(verse(verse - 1))
                : IntStream.range(0, index)
                        .mapToObj(hymn -> plan.hymns().get(index - 1 - hymn).verses())
                        .filter(verses -> !verses.isEmpty())
                        .map(verses -> verses.get(verses.size() - 1))
                        .findFirst();
    }

    /** The verses of the plan after one, the next of the service first. */
    Stream<Verse> after(int verse) {
        return Stream.concat(
                verses().subList(verse + 1, verses().size()).stream(),
                plan.hymns().subList(index + 1, plan.hymns().size()).stream().flatMap(hymn -> hymn.verses().stream()));
    }

    /** The pistons that are pressed for a verse. */
    Pressed pressed(Verse verse) {
        return Pressed.of(organ(), verse.piston());
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
        return Company.of(verse(verse), plan.heading().occasion());
    }

    /** What sounds in a verse. */
    PlayedRegistration played(int verse) {
        return played(verse(verse));
    }

    /** What sounds in a verse of this day. */
    PlayedRegistration played(Verse other) {
        return faults.played(
                other.registration(),
                other.hands(),
                Company.of(other, plan.heading().occasion()));
    }

    /** What is wrong with the stops of a verse of this day. */
    List<ChorusFault> faultsIn(Verse other) {
        return faults.in(
                other.registration(),
                other.hands(),
                Company.of(other, plan.heading().occasion()));
    }

    Hymn hymn() {
        return plan.hymns().get(index);
    }

    Instrument organ() {
        return sound.organ();
    }

    List<Verse> verses() {
        return hymn().verses();
    }

    Verse verse(int verse) {
        return verses().get(verse);
    }

    Estimate estimate(int verse) {
        return estimates.get(verse);
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
        return sound.estimate(other, plan.heading().people(), hymn().tempo());
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
        return BetweenVerses.beatS(hymn());
    }

    /** Whether the room rings so long that the breath wants a beat more. */
    boolean isLiveRoom() {
        return BetweenVerses.isLiveRoom(plan.heading().people(), sound);
    }

    /**
     * The breath between verses in beats: what people need to breathe, and a beat more in a very live room; a bar at
     * most.
     */
    int breathBeats() {
        return BetweenVerses.breathBeats(beatS(), isLiveRoom());
    }
}
