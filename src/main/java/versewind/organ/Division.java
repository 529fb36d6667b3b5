package versewind.organ;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The stops played from one keyboard.
 *
 * @param name "Great", "Hauptwerk"
 * @param manual the keyboard, 1 for the lowest manual to 7; empty for the pedal. Divisions may share a manual
 * @param keys compass: number of keys from the bottom C, 24 to 73 for a manual, 12 to 37 for a pedal
 * @param box the swell box it stands in, if any
 * @param stops in the order of its stop knobs
 */
public record Division(String name, OptionalInt manual, int keys, Optional<SwellBox> box, List<Stop> stops) {

    /** MIDI note number of the lowest key, the bottom C, of manuals and pedals alike. */
    public static final int BOTTOM_KEY = 36;

    /** The most manuals that an instrument can have. */
    public static final int MOST_MANUALS = 7;

    public Division {
        stops = List.copyOf(stops);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a division needs a name");
        }
        if (manual.isPresent() && (manual.getAsInt() < 1 || manual.getAsInt() > MOST_MANUALS)) {
            throw new IllegalArgumentException("manuals are counted from 1 to 7");
        }
        int fewest = manual.isPresent() ? 24 : 12;
        int most = manual.isPresent() ? 73 : 37;
        if (keys < fewest || keys > most) {
            throw new IllegalArgumentException(
                    (manual.isPresent() ? "a manual" : "a pedal") + " has " + fewest + " to " + most + " keys");
        }
    }

    /** With other stops. */
    public Division withStops(List<Stop> others) {
        return new Division(name, manual, keys, box, others);
    }

    /** True for the pedal. */
    public boolean isPedal() {
        return manual.isEmpty();
    }

    /** True if it stands in a swell box. */
    public boolean isEnclosed() {
        return box.isPresent();
    }

    /** MIDI note number of its highest key. */
    public int topKey() {
        return BOTTOM_KEY + keys - 1;
    }

    /** True if a stop of this division stands inside its box. */
    public boolean encloses(Stop stop) {
        return isEnclosed() && stop.enclosure() == Stop.Enclosure.AS_ITS_DIVISION;
    }
}
