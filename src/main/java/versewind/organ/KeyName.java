package versewind.organ;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Names of keys in Helmholtz notation as organ builders write it: C to B for the bottom octave of a manual, then c to
 * b, c1 to b1 and so on; sharps as "c#1". Common practice, no source.
 */
public final class KeyName {
    private static final List<String> NOTES = List.of("C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B");

    /** The highest key with a name: the top of the widest manual. */
    public static final int HIGHEST = Division.BOTTOM_KEY + 72;

    private static final List<String> KEYS = IntStream.rangeClosed(Division.BOTTOM_KEY, HIGHEST)
            .mapToObj(KeyName::of)
            .toList();

    private KeyName() {}

    /**
     * The name of a key.
     *
     * @param key MIDI note number, 36 to 108
     */
    public static String of(int key) {
        if (key < Division.BOTTOM_KEY || key > HIGHEST) {
            throw new IllegalArgumentException("the keys of an organ are the MIDI notes 36 to 108, not " + key);
        }
        int above = key - Division.BOTTOM_KEY;
        String note = NOTES.get(above % 12);
        int octave = above / 12;
        return switch (octave) {
            case 0 -> note;
            case 1 -> note.toLowerCase(Locale.ROOT);
            default -> note.toLowerCase(Locale.ROOT) + (octave - 1);
        };
    }

    /** The key of a name, as a MIDI note number, if there is one. */
    public static Optional<Integer> parse(String name) {
        int key = KEYS.indexOf(name);
        return key < 0 ? Optional.empty() : Optional.of(Division.BOTTOM_KEY + key);
    }
}
