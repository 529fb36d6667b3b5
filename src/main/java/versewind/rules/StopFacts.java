package versewind.rules;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Instrument;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;

/** What the rules want to know of an instrument's stops, worked out once. */
final class StopFacts {

    /** Stands for a stop without a pitch of its own. */
    static final int NO_PITCH = Integer.MIN_VALUE;

    /** Common practice, no source: the stop is called so in most languages. */
    private static final Pattern VOX_HUMANA = Pattern.compile("(vox|voix|voz|voce) ?hum.*");

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");

    private final Instrument organ;
    private final int[] semitones;
    private final boolean[] voxHumana;

    StopFacts(Instrument organ) {
        this.organ = organ;
        int stops = organ.stops().size();
        semitones = new int[stops];
        voxHumana = new boolean[stops];
        for (int i = 0; i < stops; i++) {
            Stop stop = organ.stops().get(i).stop();
            semitones[i] = semitones(stop);
            voxHumana[i] = stop.family() == Family.SOLO_REED && isVoxHumana(stop.name());
        }
    }

    /** A cornet that begins with 8 ft has the pitch of that; other compound stops stand on what is drawn beneath them. */
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

    Instrument organ() {
        return organ;
    }

    /** Number of stops. */
    int stops() {
        return semitones.length;
    }

    Stop stop(int stop) {
        return organ.stops().get(stop).stop();
    }

    int divisionOf(int stop) {
        return organ.stops().get(stop).division();
    }

    /** Pitch above 8 ft in whole semitones, or {@link #NO_PITCH}. */
    int semitones(int stop) {
        return semitones[stop];
    }

    boolean isVoxHumana(int stop) {
        return voxHumana[stop];
    }

    /** Whether both hands play one keyboard. */
    boolean isOneKeyboard(HandsAndFeet hands) {
        Division right = organ.divisions().get(hands.right());
        Division left = organ.divisions().get(hands.left());
        return right.manual().equals(left.manual());
    }
}
