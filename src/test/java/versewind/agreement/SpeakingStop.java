package versewind.agreement;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Pipe;
import versewind.organ.Stop;

/**
 * A stop that speaks.
 *
 * @param index of the stop
 * @param division index of the division of its knob
 * @param stop what it is
 * @param octave up or down from the key that is played: -1, 0 or 1
 */
record SpeakingStop(int index, int division, Stop stop, int octave) {

    /** From how far above its family's level a reed is a big one, in dB. */
    private static final double BIG_DB = 4;

    private static final double TWELFTH_FEET = 8.0 / 3;

    /** A cornet of so many ranks begins at 8 ft. */
    private static final int RANKS_OF_A_WHOLE_CORNET = 5;

    /** The pitch that is heard, in feet; of a mixture or cornet that of its lowest rank, 0 if that is unknown. */
    double feet() {
        return stop.footage().map(Footage::feet).orElse(0.0) / Math.pow(2, octave);
    }

    boolean is(Family... families) {
        return List.of(families).contains(stop.family());
    }

    /** A single rank that is neither a reed nor at a fifth or third. */
    boolean isFlue() {
        return is(Family.PRINCIPAL, Family.FLUTE, Family.STRING, Family.CELESTE);
    }

    boolean isFlue(double feet) {
        return isFlue() && feet() == feet;
    }

    boolean isReed() {
        return stop.family().isReed();
    }

    boolean isReed(double feet) {
        return isReed() && feet() == feet;
    }

    /** A chorus reed that is no tuba. */
    boolean isChorusReed() {
        return is(Family.CHORUS_REED) && !isTuba();
    }

    /** Whether it sounds at 8 ft: a flue, a reed, or a cornet that begins there. */
    boolean hasEight() {
        return isFlue(8) || isReed(8) || isWholeCornet();
    }

    boolean isWholeCornet() {
        return is(Family.CORNET) && stop.ranks() >= RANKS_OF_A_WHOLE_CORNET;
    }

    /** The twelfth of the chorus; a nazard is a colour over a flute. */
    boolean isTwelfth() {
        return is(Family.MUTATION) && Math.abs(feet() - TWELFTH_FEET) < 0.01 && !isNamed("naz", "nas", "flauto");
    }

    boolean isVoxHumana() {
        return is(Family.SOLO_REED) && isNamed("vox hum", "voix hum");
    }

    /** A tuba, or a chorus reed far louder than its fellows. */
    boolean isTuba() {
        return isNamed("tuba") || (is(Family.CHORUS_REED) && stop.trimDb() >= BIG_DB);
    }

    /** An oboe, which belongs to a full Swell. */
    boolean isOboe() {
        return is(Family.SOLO_REED) && isNamed("oboe", "hautb");
    }

    /** A heavy open stop of 16 ft, no string. */
    boolean isHeavy() {
        return isFlue(16) && !is(Family.STRING) && stop.pipe() == Pipe.OPEN;
    }

    /** Whether it makes a chorus: principals above 8 ft, mixtures, chorus reeds. */
    boolean isOfChorus() {
        return (is(Family.PRINCIPAL) && feet() <= 4) || is(Family.MIXTURE) || is(Family.CHORUS_REED);
    }

    private boolean isNamed(String... parts) {
        String name = stop.name().toLowerCase(Locale.ROOT);
        return List.of(parts).stream().anyMatch(name::contains);
    }

    String label() {
        return stop.label();
    }

    /** Whether a flue of so many feet is among them. */
    static boolean has(List<SpeakingStop> stops, double feet) {
        return stops.stream().anyMatch(stop -> stop.isFlue(feet));
    }

    /** Whether any of them makes a chorus. */
    static boolean isChorus(List<SpeakingStop> stops) {
        return stops.stream().anyMatch(SpeakingStop::isOfChorus);
    }

    /** Whether a reed of 8 ft is drawn; one of another pitch is none for an octave coupler. */
    static boolean hasReedEight(List<SpeakingStop> stops) {
        return stops.stream()
                .anyMatch(stop -> stop.isReed() && stop.stop().footage().equals(Optional.of(Footage.of(8))));
    }
}
