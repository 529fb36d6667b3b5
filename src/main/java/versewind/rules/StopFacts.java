package versewind.rules;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Instrument;
import versewind.organ.Stop;

/** The facts of an instrument's stops that the rules and a search ask for again and again, worked out once. */
public final class StopFacts {

    /** Stands for a stop without a pitch of its own. */
    static final int NO_PITCH = Integer.MIN_VALUE;

    private static final int NO_MANUAL = -1;

    /** Common practice, no source: the stop is called so in most languages. */
    private static final Pattern VOX_HUMANA = Pattern.compile("(vox|voix|voz|voce) ?hum.*");

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");

    private final Instrument organ;
    private final int[] semitones;
    private final boolean[] voxHumana;
    private final int[] manual;

    /** Reads an instrument. */
    public StopFacts(Instrument organ) {
        this.organ = organ;
        int stops = organ.stops().size();
        semitones = new int[stops];
        voxHumana = new boolean[stops];
        manual = organ.divisions().stream()
                .mapToInt(division -> division.manual().orElse(NO_MANUAL))
                .toArray();
        for (int i = 0; i < stops; i++) {
            Stop stop = organ.stops().get(i).stop();
            semitones[i] = semitones(stop);
            voxHumana[i] = stop.family() == Family.SOLO_REED && isVoxHumana(stop.name());
        }
    }

    /**
     * A cornet that begins with 8 ft has the pitch of that; other compound stops stand on what is drawn beneath them.
     */
    private static int semitones(Stop stop) {
        if (stop.family() == Family.CORNET) {
            boolean hasUnison = !stop.composition().isEmpty()
                    && stop.composition().stream()
                            .allMatch(from -> from.pitches().contains(Footage.of(8)));
            return hasUnison ? 0 : NO_PITCH;
        }
        if (stop.family() == Family.MIXTURE || stop.footage().isEmpty()) {
            return NO_PITCH;
        }
        return (int) Math.rint(stop.footage().get().semitones());
    }

    private static boolean isVoxHumana(String name) {
        String plain = MARKS.matcher(Normalizer.normalize(name, Normalizer.Form.NFD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        return VOX_HUMANA.matcher(plain).matches();
    }

    /** The instrument. */
    public Instrument organ() {
        return organ;
    }

    /** Number of stops. */
    public int stops() {
        return semitones.length;
    }

    /** A stop by its index. */
    public Stop stop(int stop) {
        return organ.stops().get(stop).stop();
    }

    /** Index of the division of a stop. */
    public int divisionOf(int stop) {
        return organ.stops().get(stop).division();
    }

    /** Pitch above 8 ft in whole semitones, or {@link #NO_PITCH}. */
    int semitones(int stop) {
        return semitones[stop];
    }

    boolean isVoxHumana(int stop) {
        return voxHumana[stop];
    }

    /** True for two divisions that are played from one keyboard. */
    public boolean isOneKeyboard(int one, int other) {
        return manual[one] == manual[other];
    }
}
