package versewind.agreement;

import java.util.Locale;

/** What a teacher names in a registration, a step or a plan. */
enum Fault {
    EMPTY_KEYS(Row.HARD),
    NO_FOUNDATION(Row.HARD),
    CELESTE(Row.HARD),
    CELESTE_WITHOUT_PARTNER(Row.HARD),
    VOX_HUMANA(Row.HARD),
    TREMULANT(Row.HARD),
    LONE_RANK(Row.HARD),
    BARE_MIXTURE(Row.HARD),
    TWO_WITHOUT_FOUR(Row.HARD),
    BARE_TWELFTH(Row.HARD),
    BARE_SIXTEEN(Row.HARD),
    LONE_SIXTEEN_REED(Row.HARD),
    LONE_CLARION(Row.HARD),
    OCTAVE_COUPLER(Row.HARD),
    SUB_OCTAVE_COUPLER(Row.HARD),
    THIRTY_TWO_WITH_FEW(Row.HARD),
    THIRTY_TWO_BEFORE_SIXTEEN(Row.HARD),
    TUBA(Row.HARD),
    PEDAL_REED_FIRST(Row.HARD),
    BOX_SHUT_ON_BORROWED(Row.HARD),
    FIXED_PLAYING_CHANGED(Row.HARD),
    MELODY_UNDER_PEOPLE(Row.HARD),

    RANK_PASSED_OVER(Row.ORDER),
    DOUBLING_BEFORE_UPPERWORK(Row.ORDER),
    REED_BEFORE_MIXTURE(Row.ORDER),
    FOUNDATION_TAKEN_AWAY(Row.ORDER),
    WRONG_WAY(Row.ORDER),

    HEAVY_SIXTEEN_UNDER_FLUTES(Row.SOFT),
    SOFT_BOURDON_UNDER_REEDS(Row.SOFT),
    PEDAL_NOT_COUPLED(Row.SOFT),
    COUPLER_FROM_EMPTY_MANUAL(Row.SOFT),
    PEDAL_COUPLER_UNPLAYED(Row.SOFT),
    SOLO_REED_IN_CHORUS(Row.SOFT),
    BOX_SHUT_ON_REEDS(Row.SOFT),
    OCTAVE_COUPLER_WHILE_STOPS_ARE_LEFT(Row.SOFT);

    /** Which table it belongs to. */
    enum Row {
        /** What nobody does. */
        HARD,
        /** The order of building up. */
        ORDER,
        /** What a teacher would mention. */
        SOFT
    }

    private final Row row;

    Fault(Row row) {
        this.row = row;
    }

    Row row() {
        return row;
    }

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
