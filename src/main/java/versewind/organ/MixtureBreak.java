package versewind.organ;

import java.util.List;

/**
 * The pitches of a compound stop from one key up to its next break.
 *
 * @param fromKey lowest key of the range, as a MIDI note number
 * @param pitches the footage of every rank from there
 */
public record MixtureBreak(int fromKey, List<Footage> pitches) {

    public MixtureBreak {
        pitches = List.copyOf(pitches);
        if (pitches.isEmpty()) {
            throw new IllegalArgumentException("a break of a mixture sounds one rank at least");
        }
    }
}
