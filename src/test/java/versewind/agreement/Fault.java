package versewind.agreement;

import java.util.Locale;

/** What a teacher names in a registration, a step or a plan. */
enum Fault {
    // what nobody does
    EMPTY_KEYS,
    NO_FOUNDATION,
    CELESTE,
    CELESTE_WITHOUT_PARTNER,
    VOX_HUMANA,
    TREMULANT,
    LONE_RANK,
    BARE_MIXTURE,
    TWO_WITHOUT_FOUR,
    BARE_TWELFTH,
    BARE_SIXTEEN,
    LONE_SIXTEEN_REED,
    LONE_CLARION,
    OCTAVE_COUPLER,
    SUB_OCTAVE_COUPLER,
    THIRTY_TWO_WITH_FEW,
    THIRTY_TWO_BEFORE_SIXTEEN,
    TUBA,
    PEDAL_REED_FIRST,
    BOX_SHUT_ON_BORROWED,
    FIXED_PLAYING_CHANGED,
    MELODY_UNDER_PEOPLE,

    // the order of building up
    RANK_PASSED_OVER,
    DOUBLING_BEFORE_UPPERWORK,
    REED_BEFORE_MIXTURE,
    FOUNDATION_TAKEN_AWAY,
    WRONG_WAY,

    // what a teacher would mention
    GENTLE_VERSE_TOO_BRIGHT,
    NO_FOUR_UNDER_PEOPLE,
    FESTAL_VERSE_TOO_PLAIN,
    SOLOIST_TOO_BRIGHT,
    ACCOMPANIMENT_TOO_BRIGHT,
    REED_THOUGH_FLUES_LEAD,
    NO_SIXTEEN_IN_PEDAL,
    HEAVY_SIXTEEN_UNDER_FLUTES,
    SOFT_BOURDON_UNDER_REEDS,
    PEDAL_NOT_COUPLED,
    COUPLER_FROM_EMPTY_MANUAL,
    PEDAL_COUPLER_UNPLAYED,
    SOLO_REED_IN_CHORUS,
    BOX_SHUT_ON_REEDS,
    OCTAVE_COUPLER_WHILE_STOPS_ARE_LEFT,
    LAST_VERSE_WEAKER,
    NO_GROWTH,
    LOUDEST_ON_INTRODUCTION,
    INTRODUCTION_LOUDER,
    LEAP,
    THREE_ALIKE,
    PISTONS_ALIKE,
    PISTON_OF_TWO_MEANINGS;

    /** In words: "bare mixture". */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The fault in a sentence. */
    Remark says(String sentence) {
        return new Remark(this, sentence);
    }

    /** What a teacher says. */
    record Remark(Fault fault, String sentence) {}
}
