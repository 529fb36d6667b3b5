package versewind.workshop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.MixtureBreak;
import versewind.organ.Pipe;
import versewind.organ.Stop;
import versewind.organ.StopName;

/** Looks through the stops of a draft: each by itself, then whether no two have one name, then what is borrowed. */
final class StopLines {
    private static final String SEPARATOR = ": ";

    private final Map<StopName, Typed> lines = new LinkedHashMap<>();
    private final Map<StopName, Stop> stops = new LinkedHashMap<>();

    /** Whether a text says yes; blank says no. */
    static boolean isYes(Typed typed, DraftField slot) {
        return !typed.text(slot).isBlank()
                && typed.choice(slot, DraftLine.YES_NO, word -> word)
                        .filter(word -> word.equals(DraftLine.YES))
                        .isPresent();
    }

    /** The stop of a line, as far as it can be read. */
    Optional<Stop> stop(Typed typed, String division, boolean enclosed) {
        String name = typed.name();
        Optional<Family> family = typed.choice(DraftField.FAMILY, List.of(Family.values()), Family::word);
        Optional<Optional<Footage>> feet = feet(typed, family);
        OptionalInt ranks = ranks(typed, family);
        Optional<Pipe> pipe = typed.text(DraftField.PIPE).isBlank()
                ? family.map(Family::usualPipe)
                : typed.choice(DraftField.PIPE, List.of(Pipe.values()), Pipe::word);
        Optional<List<MixtureBreak>> breaks = TypedNumbers.breaks(typed.text(DraftField.BREAKS));
        if (breaks.isEmpty()) {
            typed.wrong(
                    DraftField.BREAKS,
                    "The breaks cannot be read: write C 1 1/3, 1; c1 2, 1 1/3 (a key, then its feet).");
        }
        OptionalDouble trim = typed.number(DraftField.TRIM, OptionalDouble.of(0));
        Stop.Enclosure enclosure = enclosure(typed, division, enclosed);
        Optional<Optional<StopName>> from = from(typed);
        boolean readable = feet.isPresent()
                && ranks.isPresent()
                && pipe.isPresent()
                && breaks.isPresent()
                && trim.isPresent()
                && from.isPresent();
        if (family.isEmpty() || !readable || name.isBlank()) {
            remember(typed, division, Optional.empty());
            return Optional.empty();
        }
        Optional<Stop> made = typed.make(
                DraftField.NAME,
                () -> new Stop(
                        name,
                        feet.get(),
                        family.get(),
                        pipe.get(),
                        ranks.getAsInt(),
                        breaks.get(),
                        trim.getAsDouble(),
                        enclosure,
                        from.get()));
        remember(typed, division, made);
        return made;
    }

    private void remember(Typed typed, String division, Optional<Stop> stop) {
        StopName name =
                new StopName(division, stop.map(Stop::label).orElse(typed.line().label()));
        if (lines.putIfAbsent(name, typed) != null) {
            typed.wrong(
                    DraftField.NAME, division + " has two stops called " + name.label() + ": give one another name.");
        }
        stop.ifPresent(each -> stops.put(name, each));
    }

    private static Optional<Optional<Footage>> feet(Typed typed, Optional<Family> family) {
        boolean may = family.filter(Family::isCompound).isPresent();
        if (typed.text(DraftField.FEET).isBlank()) {
            if (!may && family.isPresent()) {
                typed.wrong(
                        DraftField.FEET,
                        "The pitch in feet is missing: a " + family.get().word() + " needs one.");
            }
            return Optional.of(Optional.empty());
        }
        Optional<Footage> feet = TypedNumbers.feet(typed.text(DraftField.FEET));
        if (feet.isEmpty()) {
            typed.wrong(DraftField.FEET, "Not a pitch from 1/8 to 64 feet: \"" + typed.text(DraftField.FEET) + "\".");
            return Optional.empty();
        }
        return Optional.of(feet);
    }

    private static OptionalInt ranks(Typed typed, Optional<Family> family) {
        if (!typed.text(DraftField.RANKS).isBlank()) {
            OptionalInt ranks = TypedNumbers.ranks(typed.text(DraftField.RANKS));
            if (ranks.isEmpty()) {
                typed.wrong(
                        DraftField.RANKS,
                        "Not a number of ranks from 1 to 12: \"" + typed.text(DraftField.RANKS) + "\".");
            }
            return ranks;
        }
        if (family.filter(Family::isCompound).isPresent()) {
            typed.wrong(
                    DraftField.RANKS,
                    "The number of ranks is missing: a " + family.get().word() + " needs it.");
            return OptionalInt.empty();
        }
        return OptionalInt.of(1);
    }

    private static Stop.Enclosure enclosure(Typed typed, String division, boolean enclosed) {
        if (typed.text(DraftField.STANDS).isBlank()) {
            return Stop.Enclosure.AS_ITS_DIVISION;
        }
        if (!isYes(typed, DraftField.STANDS)) {
            return Stop.Enclosure.OUTSIDE_THE_BOX;
        }
        if (!enclosed) {
            typed.wrong(DraftField.STANDS, "It is to stand in the box, but " + division + " has no box.");
        }
        return Stop.Enclosure.AS_ITS_DIVISION;
    }

    private static Optional<Optional<StopName>> from(Typed typed) {
        String from = typed.text(DraftField.FROM);
        if (from.isBlank()) {
            return Optional.of(Optional.empty());
        }
        int cut = from.indexOf(SEPARATOR);
        if (cut < 0) {
            typed.wrong(DraftField.FROM, "Not a stop: write its division, a colon and the stop, as Pedal: Bourdon 16.");
            return Optional.empty();
        }
        return Optional.of(Optional.of(new StopName(from.substring(0, cut), from.substring(cut + SEPARATOR.length()))));
    }

    /** After all stops: that what is borrowed exists, has as many ranks, and is not borrowed from itself. */
    void checkBorrowing() {
        for (Map.Entry<StopName, Stop> entry : stops.entrySet()) {
            Typed typed = lines.get(entry.getKey());
            Optional<StopName> lender = entry.getValue().borrowed();
            if (lender.isEmpty()) {
                continue;
            }
            if (!lines.containsKey(lender.get())) {
                typed.wrong(DraftField.FROM, "It borrows from \"" + lender.get() + "\", which does not exist.");
            } else if (stops.containsKey(lender.get())
                    && stops.get(lender.get()).ranks() != entry.getValue().ranks()) {
                typed.wrong(DraftField.FROM, "It and the stop it borrows from have different numbers of ranks.");
            } else if (isCircle(entry.getKey())) {
                typed.wrong(DraftField.FROM, "It borrows from itself in a circle: let one of them have pipes.");
            }
        }
    }

    private boolean isCircle(StopName start) {
        Set<StopName> seen = new HashSet<>();
        List<StopName> trail = new ArrayList<>(List.of(start));
        while (!trail.isEmpty()) {
            StopName at = trail.remove(0);
            if (!seen.add(at)) {
                return true;
            }
            if (stops.containsKey(at)) {
                stops.get(at).borrowed().ifPresent(trail::add);
            }
        }
        return false;
    }
}
