package versewind.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Instrument;
import versewind.organ.KeyName;
import versewind.organ.MixtureBreak;
import versewind.organ.Nearest;
import versewind.organ.Pipe;
import versewind.organ.Quoted;
import versewind.organ.Stop;
import versewind.organ.StopName;

/** Reads the stops of an instrument, and sees that none is there twice and that all borrowing leads somewhere. */
final class StopReader {
    /** What parts division and stop in the name of a stop that is borrowed. */
    static final String SEPARATOR = ": ";

    private final Map<StopName, Stop> byName = new LinkedHashMap<>();
    private final Map<StopName, LocatedValue> places = new LinkedHashMap<>();

    /** Reads a stop of a division. */
    Stop stop(String division, LocatedValue found) throws BadFile {
        Fields fields = found.fields(
                "name", "feet", "ranks", "family", "pipe", "from", "trim", "outside the box", "composition");
        String name = fields.name("name");
        Optional<Footage> feet = optionalFeet(fields);
        Family family = fields.at("family").choice(List.of(Family.values()), Family::word);
        Pipe pipe = pipe(fields, family);
        int ranks = ranks(fields);
        List<MixtureBreak> composition = composition(fields);
        double trimDb = InstrumentReader.trimDb(fields);
        Stop.Enclosure enclosure = enclosure(fields);
        Optional<StopName> borrowed = borrowed(fields);
        Stop stop =
                found.make(() -> new Stop(name, feet, family, pipe, ranks, composition, trimDb, enclosure, borrowed));
        remember(new StopName(division, stop.label()), stop, found);
        return stop;
    }

    private void remember(StopName name, Stop stop, LocatedValue found) throws BadFile {
        byName.put(name, stop);
        LocatedValue earlier = places.put(name, found);
        if (earlier != null) {
            throw found.bad(
                    Quoted.plain(name.division()) + " has two stops called " + Quoted.text(name.label())
                            + ", the first in line " + earlier.node().line(),
                    "Give one of them another name.");
        }
        if (byName.size() > Instrument.MOST_STOPS) {
            throw found.bad(
                    "an organ has " + Instrument.MOST_STOPS + " stops at most", "Take out those that nobody plays.");
        }
    }

    private static Optional<Footage> optionalFeet(Fields fields) throws BadFile {
        Optional<LocatedValue> found = fields.find("feet");
        return found.isPresent() ? Optional.of(feet(found.get())) : Optional.empty();
    }

    private static Footage feet(LocatedValue found) throws BadFile {
        String written = found.text();
        Optional<Footage> feet = Footage.parse(written);
        if (feet.isEmpty()) {
            throw found.bad(
                    Quoted.text(written) + " is no footage from 1/8 to 64",
                    "Write it like \"8\", \"2 2/3\" or \"1/2\".");
        }
        return feet.get();
    }

    private static Pipe pipe(Fields fields, Family family) throws BadFile {
        Optional<LocatedValue> pipe = fields.find("pipe");
        return pipe.isPresent() ? pipe.get().choice(List.of(Pipe.values()), Pipe::word) : family.usualPipe();
    }

    private static int ranks(Fields fields) throws BadFile {
        Optional<LocatedValue> ranks = fields.find("ranks");
        return ranks.isPresent() ? ranks.get().whole() : 1;
    }

    private static Stop.Enclosure enclosure(Fields fields) throws BadFile {
        Optional<LocatedValue> outside = fields.find("outside the box");
        return outside.isPresent() && outside.get().truth()
                ? Stop.Enclosure.OUTSIDE_THE_BOX
                : Stop.Enclosure.AS_ITS_DIVISION;
    }

    private static List<MixtureBreak> composition(Fields fields) throws BadFile {
        List<MixtureBreak> composition = new ArrayList<>();
        for (LocatedValue each : fields.items("composition")) {
            Fields part = each.fields("from", "feet");
            LocatedValue from = part.at("from");
            Optional<Integer> key = KeyName.parse(from.text());
            if (key.isEmpty()) {
                throw from.bad(
                        "there is no key " + Quoted.text(from.text()),
                        "Write C to B for the bottom octave, then c, c1, c2 and so on, sharps like \"c#1\".");
            }
            List<Footage> feet = new ArrayList<>();
            for (LocatedValue pitch : part.at("feet").items()) {
                feet.add(feet(pitch));
            }
            composition.add(each.make(() -> new MixtureBreak(key.get(), feet)));
        }
        return composition;
    }

    private static Optional<StopName> borrowed(Fields fields) throws BadFile {
        Optional<LocatedValue> found = fields.find("from");
        if (found.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(stopName(found.get(), found.get().text()));
    }

    /** The stop that a text names with its division. */
    static StopName stopName(LocatedValue found, String text) throws BadFile {
        int cut = text.indexOf(SEPARATOR);
        if (cut < 0) {
            throw found.bad(
                    Quoted.text(text) + " does not name a stop",
                    "Write the division, a colon and the stop, like \"Pedal: Bourdon 16\".");
        }
        return new StopName(text.substring(0, cut), text.substring(cut + SEPARATOR.length()));
    }

    /** Sees that every stop that is borrowed exists, has as many ranks, and is not borrowed from itself. */
    void checkBorrowing() throws BadFile {
        for (Map.Entry<StopName, Stop> entry : byName.entrySet()) {
            LocatedValue found = places.get(entry.getKey());
            Set<StopName> seen = new HashSet<>();
            StopName at = entry.getKey();
            while (byName.get(at).borrowed().isPresent()) {
                if (!seen.add(at)) {
                    throw found.bad("this stop borrows from itself", "Let one stop of the circle have pipes.");
                }
                StopName lender = byName.get(at).borrowed().get();
                requireLender(places.get(at), byName.get(at), lender);
                at = lender;
            }
        }
    }

    private void requireLender(LocatedValue found, Stop stop, StopName lender) throws BadFile {
        Stop lending = byName.get(lender);
        if (lending == null) {
            List<String> names =
                    byName.keySet().stream().map(StopName::toString).toList();
            throw found.bad(
                    "the organ has no stop " + Quoted.text(lender.toString()) + " to borrow from",
                    Nearest.sentence(lender.toString(), names, "The stops are"));
        }
        if (lending.ranks() != stop.ranks()) {
            throw found.bad(
                    "this stop and the one it borrows from have different numbers of ranks",
                    "Give both the same number of ranks.");
        }
    }
}
