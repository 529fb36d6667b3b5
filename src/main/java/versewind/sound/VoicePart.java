package versewind.sound;

/**
 * A part of a four-part hymn. The bass has two: in the hand it has all its keys, on the pedal only those of the
 * pedalboard.
 */
public enum VoicePart {
    SOPRANO,
    ALTO,
    TENOR,
    BASS_IN_HAND,
    BASS_ON_PEDAL
}
