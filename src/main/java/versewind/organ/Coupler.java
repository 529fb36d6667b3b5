package versewind.organ;

/**
 * A coupler: keys of one division's keyboard also play another division.
 *
 * @param name its name: "Swell to Great"
 * @param source the division whose stops sound
 * @param keyboard the division from whose keys it is played; the source itself for a division's own octave couplers
 * @param kind at which pitch
 */
public record Coupler(String name, String source, String keyboard, Kind kind) {

    /** The pitch at which a coupler plays. */
    public enum Kind implements Worded {
        UNISON(0),
        OCTAVE(12),
        SUB_OCTAVE(-12),
        /** Silences a division's own pitch from its own keys. */
        UNISON_OFF(0);

        private final int semitones;

        Kind(int semitones) {
            this.semitones = semitones;
        }

        /** Shift of the key played, in semitones. */
        public int semitones() {
            return semitones;
        }

        /** In words: "sub-octave". */
        @Override
        public String word() {
            return this == SUB_OCTAVE ? "sub-octave" : Worded.super.word();
        }

        /** The usual name of such a coupler: "Swell to Great Octave". */
        public String of(String joined) {
            return switch (this) {
                case UNISON -> joined;
                case OCTAVE -> joined + " Octave";
                case SUB_OCTAVE -> joined + " Sub Octave";
                case UNISON_OFF -> joined + " Unison Off";
            };
        }
    }

    /** The divisions it joins: "Swell to Great", or "Swell" for a coupler of one division. */
    public static String joined(String source, String keyboard) {
        return source.equals(keyboard) ? source : source + " to " + keyboard;
    }

    public Coupler {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a coupler needs a name");
        }
        if (kind == Kind.UNISON && source.equals(keyboard)) {
            throw new IllegalArgumentException("a unison coupler joins two divisions");
        }
        if (kind == Kind.UNISON_OFF && !source.equals(keyboard)) {
            throw new IllegalArgumentException("unison off belongs to one division");
        }
    }
}
