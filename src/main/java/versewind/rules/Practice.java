package versewind.rules;

/**
 * The numbers on which advice rests, all in one place. Levels are in dB as at a seat in the nave.
 *
 * <p>Source: common practice, no source; where that knows no number, an estimate. What the model cannot tell apart,
 * less than 3 dB, is given no word.
 */
final class Practice {

    /** A difference in dB that is heard between two sounds of one organ. */
    static final double HEARD_DB = 1;

    /** How much stronger the other hand may be than that with the tune, in dB(A). */
    static final double CROSSED_DB = 2;

    /** How far an Amen may lie from the verse before it, in dB(A). */
    static final double AMEN_DB = 6;

    /** How much an introduction may be louder than what it introduces, in dB(A). */
    static final double INTRODUCTION_LOUDER_DB = 4;

    /** How much softer an introduction may be, in dB(A), when it is played on one sound. */
    static final double INTRODUCTION_SOFTER_DB = 12;

    /** How much softer an introduction may be, in dB(A), when its melody is soloed. */
    static final double SOLOED_INTRODUCTION_SOFTER_DB = 20;

    /** Share of the loudness that the stops of the pedal may have. */
    static final double PEDAL_SHARE = 0.25;

    /** Verses one after another that may sound the same. */
    static final int SAME_SOUND_VERSES = 2;

    /** Verses from which a hymn is long. */
    static final int LONG_HYMN_VERSES = 5;

    /** A step between neighbours, in dB(A). */
    static final double STEP_DB = 8;

    /** Beats a minute of a hymn that has no tempo. */
    static final int USUAL_TEMPO = 90;

    /** Time in s that people need to breathe between verses. */
    static final double BREATH_S = 1.2;

    /** Longest breath between verses in beats: a bar. */
    static final int LONGEST_BREATH_BEATS = 4;

    /** Reverberation time in s from which the breath wants a beat more. */
    static final double LIVE_ROOM_S = 4;

    /** Knobs of a step that can be drawn while playing. */
    static final int AT_HAND_KNOBS = 2;

    /** Hands that can move stops in the breath. */
    static final int HANDS = 2;

    /** How much greater the clear share of full organ is than that of what is drawn when there is more to draw. */
    static final double MORE_ORGAN_SHARE = 0.03;

    /** From so many stops on, what is drawn on a manual is meant to be heard, and not left for something else. */
    static final int A_CHORUS = 2;

    /** Beats that a room rings, from which a note wants to be shorter, and much shorter. */
    static final int RINGS_BEATS = 3;

    static final int RINGS_LONG_BEATS = 6;

    /** Lag as a share of the beat from which singers far away drag noticeably. */
    static final double LAG_BEATS = 0.1;

    private Practice() {}
}
