package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import versewind.organ.Count;
import versewind.organ.Registration;
import versewind.organ.Worded;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/**
 * How to play a verse, and why.
 *
 * <p>The thicker the sound and the longer the room rings against the beat, the more detached the touch. Each of the two
 * counts 0, 1 or 2: the dynamic (up to mp, mf and f, above), the beats that the room rings ({@link
 * Practice#RINGS_BEATS}, {@link Practice#RINGS_LONG_BEATS}). Where more lead is wanted and no more organ is left to
 * draw, 2 are added if it only just leads, and 3 if it is lost. Up to 1 in all is legato, 2 lightly detached, 3 and 4
 * detached, above well detached. A gentle verse is legato, unless touch is the lead that remains.
 *
 * <p>Source: common practice, no source; the numbers are estimates.
 *
 * @param manner how notes are joined
 * @param holdBeats how long a note of one beat is held, as a share of the beat
 * @param reasons why, each in a few words; none where nobody plays
 * @param isLastMeans no more organ is left to draw, and more lead is wanted: touch is what remains
 * @param breathBeats the breath before the next verse, in beats
 * @param isLiveRoom whether the breath has a beat more, for the sound to clear
 * @param lagMs how late the farthest singers hear, in ms; empty when nobody or one singer sings
 * @param lagBeats the same as a share of the beat; empty without a tempo
 */
public record Touch(
        Manner manner,
        double holdBeats,
        List<String> reasons,
        boolean isLastMeans,
        int breathBeats,
        boolean isLiveRoom,
        OptionalDouble lagMs,
        OptionalDouble lagBeats) {

    /** What is left to do where no more organ is left to draw: a sentence, after a blank. */
    public static final String LAST_MEANS = " No more organ is left: lead by touch and a steady beat.";

    /** How notes are joined. */
    public enum Manner implements Worded {
        LEGATO(8),
        LIGHTLY_DETACHED(7),
        DETACHED(6),
        WELL_DETACHED(5);

        private static final double EIGHTHS = 8;

        private final int eighths;

        Manner(int eighths) {
            this.eighths = eighths;
        }

        double holdBeats() {
            return eighths / EIGHTHS;
        }

        /** How long a note is held: "7/8 of the beat". */
        public String hold() {
            return switch (this) {
                case LEGATO -> "the whole beat";
                case DETACHED -> "3/4 of the beat";
                case LIGHTLY_DETACHED, WELL_DETACHED -> eighths + "/8 of the beat";
            };
        }
    }

    public Touch {
        reasons = List.copyOf(reasons);
    }

    static Touch of(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        Estimate estimate = hymn.estimate(index);
        long ringsBeats =
                Math.round(hymn.sound().reverberationS(hymn.plan().heading().people()) / hymn.beatS());
        int thick = thickness(estimate);
        int rings = ringsBeats >= Practice.RINGS_LONG_BEATS ? 2 : ringsBeats >= Practice.RINGS_BEATS ? 1 : 0;
        int weak = weakness(estimate.balance().estimated());
        boolean isLastMeans = weak > 0 && !hasMore(hymn, index);
        Manner manner = manner(thick + rings + (isLastMeans ? 1 + weak : 0));
        boolean isGentle =
                verse.isSung() && !isLastMeans && verse.singing() == Singing.GENTLE && manner != Manner.LEGATO;
        boolean isOfMany = verse.isSung() && verse.mode() != Mode.SOLO_VOICE;
        Manner chosen = isGentle ? Manner.LEGATO : manner;
        return new Touch(
                chosen,
                chosen.holdBeats(),
                verse.isPlayed() ? reasons(thick, ringsBeats, isLastMeans ? weak : 0, isGentle) : List.of(),
                isLastMeans,
                hymn.breathBeats(),
                hymn.isLiveRoom(),
                isOfMany ? OptionalDouble.of(estimate.lagMs()) : OptionalDouble.empty(),
                isOfMany ? estimate.lagBeats() : OptionalDouble.empty());
    }

    private static int thickness(Estimate estimate) {
        Optional<Dynamic> dynamic = estimate.dynamic();
        if (dynamic.isEmpty()) {
            return 0;
        }
        return switch (dynamic.get()) {
            case PP, P, MP -> 0;
            case MF, F -> 1;
            case FF, FFF -> 2;
        };
    }

    private static int weakness(Verdict verdict) {
        return switch (verdict) {
            case LOST, NO_TUNE -> 2;
            case LEAD_ONLY_JUST -> 1;
            case LEADS,
                    TOO_STRONG,
                    COVERED,
                    VOICE_ONLY_JUST,
                    CLEAR,
                    BURIED,
                    SOLO_LINE_ONLY_JUST,
                    STANDS_OUT,
                    ORGAN_ALONE,
                    UNACCOMPANIED -> 0;
        };
    }

    private static Manner manner(int points) {
        if (points <= 1) {
            return Manner.LEGATO;
        }
        if (points == 2) {
            return Manner.LIGHTLY_DETACHED;
        }
        return points <= 4 ? Manner.DETACHED : Manner.WELL_DETACHED;
    }

    private static List<String> reasons(int thick, long ringsBeats, int weak, boolean isGentle) {
        if (isGentle) {
            return List.of("the verse is gentle; keep repeated notes and the ends of lines clean");
        }
        List<String> reasons = new ArrayList<>();
        reasons.add(
                switch (thick) {
                    case 0 -> "the sound is thin";
                    case 1 -> "the sound is full";
                    default -> "the sound is thick";
                });
        reasons.add("it lasts about " + Count.of(ringsBeats, "beat") + " in the church");
        if (weak > 0) {
            reasons.add(weak == 1 ? "the lead only just holds" : "the lead is lost");
        }
        return reasons;
    }

    /** Whether full organ would lead better than what is drawn. */
    private static boolean hasMore(InHymn hymn, int index) {
        Estimate full = hymn.estimate(hymn.verse(index).withRegistration(Registration.full(hymn.organ())));
        double now = hymn.estimate(index).balance().share().orElse(0);
        return full.balance().share().orElse(0) - now >= Practice.MORE_ORGAN_SHARE;
    }

    /** The touch and its reasons in one sentence. */
    public String sentence() {
        if (reasons.isEmpty()) {
            return "Nobody plays: give the note first.";
        }
        String why = reasons.size() == 1
                ? reasons.get(0)
                : String.join(", ", reasons.subList(0, reasons.size() - 1)) + " and " + reasons.get(reasons.size() - 1);
        String manner = Character.toUpperCase(manner().word().charAt(0))
                + manner().word().substring(1);
        return manner + ", each note held " + manner().hold() + ": " + why + "." + (isLastMeans ? LAST_MEANS : "");
    }

    /** In a few words: "detached, 3/4 of the beat". */
    public String words() {
        return reasons.isEmpty() ? "give the note first" : manner().word() + ", " + manner().hold();
    }

    /** The breath before the next verse, in one sentence. */
    public String breath() {
        return "Breathe " + Count.of(breathBeats, "beat")
                + " between verses, always the same: that is the time people need"
                + (isLiveRoom ? ", and the sound to clear." : ".");
    }

    /** What the lag means for the organist, in one sentence; empty when nobody sings, or it is too little to mind. */
    public Optional<String> lag() {
        if (lagMs.isEmpty() || lagBeats.orElse(1) < Practice.LAG_BEATS) {
            return Optional.empty();
        }
        String late = "The farthest singers hear " + Math.round(lagMs.getAsDouble()) + " ms late";
        if (lagBeats.isEmpty()) {
            return Optional.of(late + ": do not wait for them.");
        }
        String share = String.format(Locale.ROOT, ", %.2f of a beat", lagBeats.getAsDouble());
        return Optional.of(late + share + ": do not wait for them; keep the beat.");
    }
}
