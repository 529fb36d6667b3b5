package versewind.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A hymn of a service.
 *
 * @param number its number in the book; may be blank
 * @param title its first line or title
 * @param tune name of the tune
 * @param metre "8 7 8 7 D"; may be blank
 * @param key "G", "e minor"; may be blank
 * @param tempo beats a minute, 20 to 300, if set
 * @param notes notes for the desk; may be blank
 * @param verses in the order they are played
 */
public record Hymn(
        String number,
        String title,
        String tune,
        String metre,
        String key,
        OptionalInt tempo,
        String notes,
        List<Verse> verses) {

    /** The slowest tempo of a hymn, in beats a minute. */
    public static final int SLOWEST_TEMPO = 20;

    /** The fastest tempo of a hymn, in beats a minute. */
    public static final int FASTEST_TEMPO = 300;

    /** The title of a hymn that has only a number. */
    public static String titleOf(String number) {
        return "Hymn " + number;
    }

    /** Number and title: "208 Come, carry in the harvest". */
    public String name() {
        return (number + " " + title).strip();
    }

    /**
     * Whether another hymn is the same, or has the same tune. A number alone tells only of a hymn without a title:
     * another book has another hymn at it.
     */
    public boolean isLike(Hymn other) {
        boolean isUntitled = isCalledByNumber() || other.isCalledByNumber();
        return isSame(tune, other.tune) || isSame(title, other.title) || (isUntitled && isSame(number, other.number));
    }

    private boolean isCalledByNumber() {
        return title.isBlank() || title.equals(titleOf(number));
    }

    private static boolean isSame(String one, String other) {
        return !one.isBlank()
                && Sought.plain(one).strip().equals(Sought.plain(other).strip());
    }

    /** With the verses of one that is like it, and what was not known of it. */
    public Hymn completedFrom(Hymn earlier) {
        return new Hymn(
                number.isBlank() && isSame(title, earlier.title) ? earlier.number : number,
                isCalledByNumber() && isSame(number, earlier.number) ? earlier.title : title,
                tune.isBlank() ? earlier.tune : tune,
                metre.isBlank() ? earlier.metre : metre,
                key.isBlank() ? earlier.key : key,
                tempo.isPresent() ? tempo : earlier.tempo,
                notes,
                earlier.verses);
    }

    public Hymn {
        verses = List.copyOf(verses);
        if (tempo.isPresent() && (tempo.getAsInt() < SLOWEST_TEMPO || tempo.getAsInt() > FASTEST_TEMPO)) {
            throw new IllegalArgumentException("a tempo is 20 to 300 beats a minute");
        }
    }

    /** Without feedback, as for another service. */
    public Hymn unanswered() {
        return withVerses(
                verses.stream().map(verse -> verse.withAnswer(Optional.empty())).toList());
    }

    /** With these locks added to every verse. */
    public Hymn locking(Locks throughout) {
        return withVerses(verses.stream()
                .map(verse -> verse.withLocks(verse.locks().with(throughout)))
                .toList());
    }

    /**
     * The verses after which a verse may follow at once: the one before it, and where that may be left out the one
     * before that too. None where there is a silence between.
     */
    public List<Integer> before(int verse) {
        List<Integer> before = new ArrayList<>();
        for (int i = verse - 1; i >= 0; i--) {
            if (verses.get(i).isPlayed()) {
                before.add(i);
            }
            if (!verses.get(i).isOptional()) {
                break;
            }
        }
        return before;
    }

    /** With other verses. */
    public Hymn withVerses(List<Verse> others) {
        return new Hymn(number, title, tune, metre, key, tempo, notes, others);
    }
}
