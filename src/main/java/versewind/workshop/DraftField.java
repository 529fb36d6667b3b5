package versewind.workshop;

/** One thing that is said in a line of a draft. */
public enum DraftField {
    NAME("Name", "what stands on the knob or over the keys; needed"),
    PLACE("Place", "where it stands; may be blank"),
    ACTION("Action", "mechanical: couplers carry each other along; or electric"),
    TRIM("Trim", "dB louder than is usual, or softer with a minus; blank for 0"),

    MANUAL("Manual", "1 for the lowest keyboard, to 7; or pedal"),
    KEYS("Keys", "how many, from the bottom C: a manual 24 to 73, a pedal 12 to 37"),
    BOX("Box", "yes if the division stands in a swell box; else no or blank"),
    BOX_TRIM("Box dB", "dB less than is usual that the closed box takes away; blank for 0"),
    DIVISIONALS("Pistons", "how many divisional pistons; blank for none"),

    FEET("Feet", "8, 2 2/3 or 1/2; a mixture or cornet may be without"),
    FAMILY("Family", "principal, flute, string, celeste, mutation, mixture, cornet, chorus or solo reed"),
    PIPE("Pipe", "open, stopped, harmonic, tapered, conical or cylindrical reed; blank for the usual one"),
    RANKS("Ranks", "pipes a note, 1 to 12; a mixture or cornet needs it"),
    BREAKS("Breaks", "from which key which feet: C 1 1/3, 1; c1 2, 1 1/3; may be blank"),
    STANDS("In box", "blank: where its division stands; no: outside the box; yes: in the box"),
    FROM("From", "the stop whose pipes it plays, as Pedal: Bourdon 16; blank for its own"),

    SOUNDS("Sounds", "the division whose stops sound"),
    KEYBOARD("Played", "the division from whose keys it is played"),
    KIND("Pitch", "unison, octave, sub-octave or unison off; blank for unison"),
    DIVISION("Shakes", "the division whose wind it shakes"),

    GENERALS("General", "how many general pistons; blank for none"),
    LEVELS("Levels", "how many memory levels; blank where there are no pistons"),

    VOLUME("Volume", "of the room in m3, 50 to 500000"),
    SEATS("Seats", "how many seats the room has"),
    AT_125("125 Hz", "s that the empty room rings there; blank where nobody timed it"),
    AT_250("250 Hz", "s that the empty room rings there; blank where nobody timed it"),
    AT_500("500 Hz", "s that the empty room rings there; blank where nobody timed it"),
    AT_1000("1 kHz", "s that the empty room rings there; blank where nobody timed it"),
    AT_2000("2 kHz", "s that the empty room rings there; blank where nobody timed it"),
    AT_4000("4 kHz", "s that the empty room rings there; blank where nobody timed it"),
    NAVE("Nave", "m from the organ to the middle of the nave"),
    FAR("Far", "m from the organ to the singers farthest from it"),
    CHOIR("Choir", "m from the organ to the place of a choir or a soloist"),
    CHOIR_TO_NAVE("To nave", "m from that choir to the middle of the nave"),
    CONSOLE("Console", "m from the pipes to the organist"),
    MATERIAL("What", "a material of the table of absorption"),
    AREA("Area", "in m2");

    private final String word;
    private final String hint;

    DraftField(String word, String hint) {
        this.word = word;
        this.hint = hint;
    }

    /** What it is called, in seven letters at most. */
    public String word() {
        return word;
    }

    /** What belongs in it. */
    public String hint() {
        return hint;
    }
}
