package versewind.proposal;

import java.util.List;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.PistonChoice;
import versewind.sound.Balance;

/**
 * A registration proposed for a verse.
 *
 * @param registration what to draw
 * @param hands how to play it
 * @param promised how it stands to the singers, just as an assessment of the verse will have it
 * @param score what speaks against it
 * @param sound the step of the order, or the colour, in words: "principals 8 4 2 on the Great, step 5 of 10"
 * @param why what speaks for it, in one sentence
 * @param unlike how it differs from the best, in words: "leaves out Great Mixture III, 2 dB softer"; blank for the best
 */
public record Proposal(
        Registration registration,
        HandsAndFeet hands,
        Balance promised,
        Score score,
        String sound,
        String why,
        String unlike) {

    /** What speaks against it beside what its sentence has said. */
    public List<String> furtherRemarks() {
        return score.remarks().stream()
                .filter(remark -> !why.contains(remark.substring(1, remark.length() - 1)))
                .toList();
    }

    /** By how much the organ, or the melody, has a greater share than with another for the same verse. */
    double beyond(Proposal other) {
        double more = promised.share().orElse(0) - other.promised.share().orElse(0);
        return promised.kind() == Balance.Kind.VOICE ? -more : more;
    }

    Proposal unlike(String words) {
        return new Proposal(registration, hands, promised, score, sound, why, words);
    }

    /** The verse with it drawn. */
    public Verse on(Verse verse) {
        return verse.withRegistration(registration).withHands(hands);
    }

    /** A verse of a plan with it drawn, on a piston that may set it, {@link PistonChoice#redrawn}. */
    public Verse on(Plan plan, VersePlace place, Instrument organ) {
        Verse verse = plan.hymns().get(place.hymn()).verses().get(place.verse());
        return PistonChoice.redrawn(plan, place, on(verse), organ);
    }
}
