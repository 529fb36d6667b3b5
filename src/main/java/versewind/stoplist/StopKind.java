package versewind.stoplist;

import java.util.Optional;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Pipe;

/**
 * The usual family, pitch and pipes of the stops of one name.
 *
 * @param name the name as it is mostly written
 * @param language "en", "de", "fr", "nl", "it", "es", "nordic", "fi", "hu", or "la" for a name that is known everywhere
 * @param family its tonal family
 * @param footage its usual pitch on a manual
 * @param pedalFootage its usual pitch in a pedal
 * @param pipe its usual kind of pipe
 * @param strengthDb how much stronger than is usual for its family it is, in dB; an estimate
 * @param description in one sentence
 */
public record StopKind(
        String name,
        String language,
        Family family,
        Footage footage,
        Optional<Footage> pedalFootage,
        Pipe pipe,
        double strengthDb,
        String description) {

    /** The pitch it has when none is written. */
    public Footage usualFootage(boolean inPedal) {
        return inPedal ? pedalFootage.orElse(footage) : footage;
    }
}
