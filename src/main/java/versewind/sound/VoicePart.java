package versewind.sound;

/**
 * A part of a hymn in four parts. The bass is two: in the hand it has every key it wants, on the pedal only those that
 * the pedal has.
 */
public enum VoicePart {
    SOPRANO,
    ALTO,
    TENOR,
    BASS_IN_HAND,
    BASS_ON_PEDAL
}
