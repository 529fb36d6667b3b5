package versewind.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Instrument;

/**
 * A service planned on an instrument.
 *
 * @param heading title, date and people
 * @param instrument name of the instrument's file, without its extension
 * @param hymns in the order they are sung
 */
public record Plan(ServiceHeading heading, String instrument, List<Hymn> hymns) {

    public Plan {
        hymns = hymns.stream().map(hymn -> inService(heading, hymn)).toList();
    }

    /** A player without pedals plays no verse with them, and as many sing a verse as the service has. */
    private static Hymn inService(ServiceHeading heading, Hymn hymn) {
        boolean isSo = hymn.verses().stream().allMatch(verse -> verse.isIn(heading));
        return isSo
                ? hymn
                : hymn.withVerses(
                        hymn.verses().stream().map(verse -> verse.in(heading)).toList());
    }

    /** With another heading. */
    public Plan withHeading(ServiceHeading other) {
        return new Plan(other, instrument, hymns);
    }

    /** With another number of people. */
    public Plan withPeople(int people) {
        return withHeading(heading.withPeople(people));
    }

    /** With other hymns. */
    public Plan withHymns(List<Hymn> others) {
        return new Plan(heading, instrument, others);
    }

    /** With one hymn replaced. */
    public Plan withHymn(int index, Hymn hymn) {
        List<Hymn> others = new ArrayList<>(hymns);
        others.set(index, hymn);
        return withHymns(others);
    }

    /** With one verse replaced. */
    public Plan withVerse(VersePlace place, Verse verse) {
        List<Verse> verses = new ArrayList<>(hymns.get(place.hymn()).verses());
        verses.set(place.verse(), verse);
        return withVerses(place.hymn(), verses);
    }

    /** With other verses of one hymn. */
    public Plan withVerses(int hymn, List<Verse> verses) {
        return withHymn(hymn, hymns.get(hymn).withVerses(verses));
    }

    /** With a hymn put in before the one at an index, or at the end. */
    public Plan inserting(int index, Hymn hymn) {
        List<Hymn> more = new ArrayList<>(hymns);
        more.add(index, hymn);
        return withHymns(more);
    }

    /** Without one hymn. */
    public Plan removing(int index) {
        List<Hymn> fewer = new ArrayList<>(hymns);
        fewer.remove(index);
        return withHymns(fewer);
    }

    /** With the hymn at an index and the one after it in the other order. */
    public Plan swapping(int index) {
        List<Hymn> others = new ArrayList<>(hymns);
        Collections.swap(others, index, index + 1);
        return withHymns(others);
    }

    /** Without feedback, as for another service. */
    public Plan unanswered() {
        return withHymns(hymns.stream().map(Hymn::unanswered).toList());
    }

    /**
     * The verses after which a verse may be played, in its hymn or an earlier one: first as it is planned, then with
     * those left out that may be. Where nobody plays nothing is set.
     */
    public List<VersePlace> before(VersePlace place) {
        List<VersePlace> before = new ArrayList<>();
        for (int hymn = place.hymn(); hymn >= 0; hymn--) {
            List<Verse> verses = hymns.get(hymn).verses();
            for (int verse = hymn == place.hymn() ? place.verse() - 1 : verses.size() - 1; verse >= 0; verse--) {
                if (verses.get(verse).isPlayed()) {
                    before.add(new VersePlace(hymn, verse));
                    if (!verses.get(verse).isOptional()) {
                        return before;
                    }
                }
            }
        }
        return before;
    }

    /** The hymn of a place. */
    public Hymn hymn(VersePlace place) {
        return hymns.get(place.hymn());
    }

    /** A verse of it. */
    public Verse verse(VersePlace place) {
        return hymn(place).verses().get(place.verse());
    }

    /** All verses, in playing order. */
    public Stream<Verse> verses() {
        return hymns.stream().flatMap(hymn -> hymn.verses().stream());
    }

    /** The places of all verses, in playing order; hymns without verses are passed over. */
    public List<VersePlace> places() {
        List<VersePlace> places = new ArrayList<>();
        for (int hymn = 0; hymn < hymns.size(); hymn++) {
            places.addAll(places(hymn));
        }
        return places;
    }

    /** The places of the verses of a hymn. */
    public List<VersePlace> places(int hymn) {
        return IntStream.range(0, hymns.get(hymn).verses().size())
                .mapToObj(verse -> new VersePlace(hymn, verse))
                .toList();
    }

    /** The verse so many further on in the service, if there is one. */
    public Optional<VersePlace> further(VersePlace from, int step) {
        List<VersePlace> places = places();
        int at = places.indexOf(from) + step;
        return at >= 0 && at < places.size() ? Optional.of(places.get(at)) : Optional.empty();
    }

    /** The nearest verse that there is: the one here, or else the next, or else the last. */
    public Optional<VersePlace> nearest(VersePlace place) {
        List<VersePlace> places = places();
        return places.stream()
                .filter(each ->
                        each.hymn() > place.hymn() || (each.hymn() == place.hymn() && each.verse() >= place.verse()))
                .findFirst()
                .or(() -> places.isEmpty() ? Optional.empty() : Optional.of(places.get(places.size() - 1)));
    }

    /** The verses with feedback, in playing order. */
    public List<Verse> answered() {
        return verses().filter(verse -> verse.answer().isPresent()).toList();
    }

    /** The locks that all verses share; none without verses. */
    public Locks locks() {
        return verses().map(Verse::locks).reduce(Locks::shared).orElse(Locks.NONE);
    }

    /** True if every verse can be played on an instrument: all parts exist, and hands play manuals. */
    public boolean fits(Instrument organ) {
        return verses().allMatch(verse -> fits(verse, organ));
    }

    private static boolean fits(Verse verse, Instrument organ) {
        List<Integer> manuals = organ.manualDivisions();
        return verse.registration().fits(organ)
                && verse.locks().always().isBelow(organ.stops().size())
                && verse.locks().never().isBelow(organ.stops().size())
                && manuals.contains(verse.hands().right())
                && manuals.contains(verse.hands().left());
    }
}
