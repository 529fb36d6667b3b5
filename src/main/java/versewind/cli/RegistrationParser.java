package versewind.cli;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.organ.StopName;

/**
 * Draws on an instrument what was typed.
 *
 * <p>Stops and couplers are typed as {@code Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16; couplers: Great to
 * Pedal}, with line ends instead of semicolons if wanted; names as {@link Names} finds them. {@code Great: all} and
 * {@code Great: all but Trumpet 8} draw many at once.
 */
final class RegistrationParser {
    private static final Pattern PARTS = Pattern.compile("[;\\r\\n]");
    private static final Pattern COMMAS = Pattern.compile(",");
    private static final Pattern ALL = Pattern.compile("all(?:\\s+but\\s+(.+))?", Pattern.CASE_INSENSITIVE);
    private static final List<String> COUPLERS = Names.words("couplers");
    private static final String EXAMPLE =
            "Write a division, a colon and its stops, like \"Great: Open Diapason 8, Principal 4\".";

    private final Instrument instrument;
    private final Names divisions;

    RegistrationParser(Instrument instrument) {
        this.instrument = instrument;
        this.divisions = new Names("The organ has no division", "The divisions are", instrument.divisionNames());
    }

    /** What is typed for {@code --draw}. */
    Registration drawn(String typed) throws UsageException {
        Registration drawn = Registration.silent(instrument);
        for (String part : PARTS.split(typed, -1)) {
            if (!part.isBlank()) {
                drawn = with(drawn, part);
            }
        }
        return drawn;
    }

    private Registration with(Registration drawn, String part) throws UsageException {
        int colon = part.indexOf(':');
        if (colon < 0) {
            throw new UsageException("\"" + part.strip() + "\" has no colon. " + EXAMPLE);
        }
        String head = part.substring(0, colon).strip();
        String names = part.substring(colon + 1);
        if (names.isBlank()) {
            throw new UsageException("Nothing stands after \"" + head + ":\". " + EXAMPLE);
        }
        if (Names.words(head).equals(COUPLERS)) {
            return drawn.withCouplers(all(drawn.couplers(), names, this::coupler));
        }
        int division = division(head);
        Matcher all = ALL.matcher(names.strip());
        if (all.matches()) {
            return drawn.withStops(drawn.stops().plus(all(division, all.group(1))));
        }
        return drawn.withStops(all(drawn.stops(), names, name -> stop(division, name)));
    }

    /** Every stop of a division, but for those that are named. */
    private IndexSet all(int division, String but) throws UsageException {
        IndexSet stops = IndexSet.of(IntStream.range(0, instrument.stops().size())
                .filter(stop -> instrument.stops().get(stop).division() == division));
        return but == null ? stops : stops.minus(all(IndexSet.EMPTY, but, name -> stop(division, name)));
    }

    /** Finds the index of a knob. */
    @FunctionalInterface
    private interface Finding {
        int find(String typed) throws UsageException;
    }

    private static IndexSet all(IndexSet before, String names, Finding finding) throws UsageException {
        IndexSet all = before;
        for (String name : COMMAS.split(names, -1)) {
            if (name.isBlank()) {
                throw new UsageException("A name is missing between the commas of \"" + names.strip() + "\".");
            }
            int index = finding.find(name.strip());
            if (all.contains(index)) {
                throw new UsageException("\"" + name.strip() + "\" is drawn twice. Leave out one of them.");
            }
            all = all.with(index);
        }
        return all;
    }

    private int stop(int division, String typed) throws UsageException {
        Division of = instrument.divisions().get(division);
        List<String> labels = of.stops().stream().map(Stop::label).toList();
        int place = new Names(of.name() + " has no stop", of.name() + " has", labels).find(typed);
        return instrument.stop(new StopName(of.name(), labels.get(place))).orElseThrow();
    }

    private int coupler(String typed) throws UsageException {
        List<String> names = instrument.couplerNames();
        return new Names("The organ has no coupler", "The couplers are", names).find(typed);
    }

    /** Index of a division. */
    int division(String typed) throws UsageException {
        return divisions.find(typed);
    }

    /** Index of a division that a hand can play. */
    int manual(String typed) throws UsageException {
        int division = division(typed);
        if (instrument.divisions().get(division).isPedal()) {
            throw new UsageException("A hand cannot play the "
                    + instrument.divisions().get(division).name() + ". Name the division of a manual.");
        }
        return division;
    }

    /** With a box in the position that is typed for {@code --box}: "Swell=closed". */
    Registration withBox(Registration drawn, String typed) throws UsageException {
        int sign = typed.indexOf('=');
        if (sign < 0) {
            throw new UsageException("\"" + typed + "\" is no position of a box. Write it like \"Swell=closed\".");
        }
        int division = division(typed.substring(0, sign).strip());
        if (!instrument.divisions().get(division).isEnclosed()) {
            throw new UsageException(
                    instrument.divisions().get(division).name() + " does not stand in a box. Leave out its position.");
        }
        List<BoxPosition> positions = List.of(BoxPosition.values());
        Names names = new Names(
                "A box has no position",
                "The positions are",
                positions.stream().map(BoxPosition::word).toList());
        return drawn.withBox(
                division, positions.get(names.find(typed.substring(sign + 1).strip())));
    }

    /** With the tremulant that is typed for {@code --tremulant}. */
    Registration withTremulant(Registration drawn, String typed) throws UsageException {
        List<String> names = instrument.tremulantNames();
        int tremulant = new Names("The organ has no tremulant", "The tremulants are", names).find(typed);
        return drawn.tremulants().contains(tremulant) ? drawn : drawn.toggleTremulant(tremulant);
    }
}
