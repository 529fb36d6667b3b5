package versewind.organ;

import static versewind.organ.Completeness.require;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One drawable voice of a division.
 *
 * @param name its name on the knob: "Open Diapason"
 * @param footage its pitch; optional for a mixture or cornet
 * @param family its tonal family
 * @param pipe the kind of pipe it is made of
 * @param ranks pipes a note, 1 to 12; more than one for compound stops
 * @param composition the pitches of a compound stop by ascending key; empty if unknown
 * @param trimDb level above (positive) or below the usual level of its family, in dB, -20 to 20
 * @param enclosure inside or outside the box of its division
 * @param borrowed the stop whose rank it plays, if it is an extension or a transmission
 * @param note what else there is to know of it: "from tenor C", "pitch assumed"; mostly blank
 */
public record Stop(
        String name,
        Optional<Footage> footage,
        Family family,
        Pipe pipe,
        int ranks,
        List<MixtureBreak> composition,
        double trimDb,
        Enclosure enclosure,
        Optional<StopName> borrowed,
        String note) {

    /** Where a stop of an enclosed division stands. */
    public enum Enclosure {
        AS_ITS_DIVISION,
        OUTSIDE_THE_BOX
    }

    /** Roman numerals for numbers of ranks, from one rank to the most. */
    public static final List<String> NUMERALS =
            List.of("I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII");

    /** The most ranks that a stop can have. */
    public static final int MOST_RANKS = NUMERALS.size();

    /** The largest trim of a stop, a box or an organ, in dB. */
    public static final double WIDEST_TRIM_DB = 20;

    public Stop {
        composition = List.copyOf(composition);
        require(!name.isBlank(), "a stop needs a name");
        require(ranks >= 1 && ranks <= MOST_RANKS, "a stop has 1 to 12 ranks");
        require(pipe.isReed() == family.isReed(), "a " + family.word() + " is not made of " + pipe.word() + " pipes");
        require(footage.isPresent() || family.isCompound(), "a " + family.word() + " needs a footage");
        require(
                ranks == 1 || family.isCompound() || family == Family.CELESTE,
                "only compound stops have several ranks");
        require(composition.isEmpty() || family.isCompound(), "only compound stops have a composition");
        require(Math.abs(trimDb) <= WIDEST_TRIM_DB, "a trim lies between -20 and 20 dB");
        for (int i = 0; i < composition.size(); i++) {
            require(composition.get(i).pitches().size() == ranks, "every break of a compound stop has all its ranks");
            require(
                    i == 0
                            || composition.get(i).fromKey()
                                    > composition.get(i - 1).fromKey(),
                    "the breaks of a compound stop go upward");
        }
    }

    /** A stop of one rank with no trim, standing with its division. */
    public static Stop of(String name, String footage, Family family, Pipe pipe) {
        return new Stop(
                name,
                Footage.parse(footage),
                family,
                pipe,
                1,
                List.of(),
                0,
                Enclosure.AS_ITS_DIVISION,
                Optional.empty(),
                "");
    }

    /** As a registration is written: flues from the deepest pitch upward, compound stops, then the reeds likewise. */
    public static Comparator<Stop> asWritten() {
        return Comparator.comparing((Stop stop) -> stop.family().isReed())
                .thenComparing(stop -> stop.family().isCompound())
                .thenComparing(stop -> stop.footage().orElse(Footage.of(2)))
                .thenComparing(Stop::family);
    }

    /** With another trim. */
    public Stop withTrimDb(double otherDb) {
        return new Stop(name, footage, family, pipe, ranks, composition, otherDb, enclosure, borrowed, note);
    }

    /** Playing the pipes of another stop, whose trim counts from then on. */
    public Stop borrowing(StopName lender) {
        return new Stop(name, footage, family, pipe, ranks, composition, 0, enclosure, Optional.of(lender), note);
    }

    /** True for a trim that has no effect: that of borrowed pipes is the trim of the stop that lends them. */
    public boolean isTrimmedInVain() {
        return borrowed.isPresent() && trimDb != 0;
    }

    /** Its pitch as written on the knob: "8", "2 2/3"; for a compound stop its ranks, "III". */
    public String pitch() {
        return family.isCompound() || footage.isEmpty()
                ? NUMERALS.get(ranks - 1)
                : footage.get().toString();
    }

    /** Name and pitch: "Open Diapason 8", "Mixture III". */
    public String label() {
        return name + " " + pitch();
    }
}
