package versewind.proposal;

import java.util.Locale;

/** Of what a score is made. */
public enum PartKind {
    /** How far the margin may be expected to lie from where the verse wants it. */
    BALANCE("the balance is what the verse wants"),
    /** The rules of choruses that are broken. */
    RULES("no rule of choruses is broken"),
    /** Layers that do not suit the mood, or are missed. */
    COLOUR("the colour suits the mood"),
    /** What the feet sound. */
    PEDAL("the pedal suits the manuals"),
    /** Stops, and the doubling of what sounds already. */
    SPARING("few stops"),
    /** Where the hands play, and with or without the feet; the boxes. */
    PLAYING("it is easy to play"),
    /** What has to be moved from the verse before, and for the verse after. */
    MOVEMENTS("there is nothing to change"),
    /** Sameness with the neighbours. */
    VARIETY("it is not the same as its neighbours"),
    /** How it grows or sinks from the verse before. */
    SHAPE("it fits its place in the hymn");

    private final String otherwise;

    PartKind(String otherwise) {
        this.otherwise = otherwise;
    }

    /** In words: "balance". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What is said where it costs nothing worth a word. */
    String otherwise() {
        return otherwise;
    }
}
