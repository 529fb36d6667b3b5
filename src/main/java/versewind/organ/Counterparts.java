package versewind.organ;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The nearest equivalent of each division and stop on another instrument.
 *
 * <p>Divisions: the one of the same name; else pedal for pedal and main division for main division; else one not yet
 * taken, enclosed alike if there is one; else the main division. Stops: of the same pitch only, and of the same family
 * if there is one. Principals, flutes and strings replace each other, as do the two families of reeds; a celeste,
 * mutation, mixture or cornet is replaced only by its own family. Of several, the one of the same name, then of the
 * same kind of pipe, then of the nearest number of ranks. An estimate; common practice, no source.
 *
 * <p>Checked against: {@code CounterpartsTest}.
 */
public final class Counterparts {

    private static final int NEVER = Integer.MAX_VALUE;
    private static final int OTHER_FAMILY = 100;
    private static final int OTHER_PIPE = 10;

    private final Instrument from;
    private final Instrument to;
    private final List<OptionalInt> divisions;

    /** The equivalents of the parts of one organ on another. */
    public Counterparts(Instrument from, Instrument to) {
        this.from = from;
        this.to = to;
        this.divisions = divisions(from, to);
    }

    /**
     * A stop, coupler or piston that has another equivalent, or none.
     *
     * @param was what was drawn, with its division: "Swell: Cornopean 8"
     * @param becomes what is drawn instead; empty if there is no equivalent
     */
    public record Replacement(String was, Optional<String> becomes) {}

    /**
     * A registration on the other organ.
     *
     * @param registration what is drawn there
     * @param replacements what is replaced or missing there
     */
    public record Brought(Registration registration, List<Replacement> replacements) {

        public Brought {
            replacements = List.copyOf(replacements);
        }
    }

    private static List<OptionalInt> divisions(Instrument from, Instrument to) {
        List<OptionalInt> found = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        for (int d = 0; d < from.divisions().size(); d++) {
            OptionalInt same = sure(from, to, d);
            found.add(same);
            same.ifPresent(taken::add);
        }
        for (int d = 0; d < from.divisions().size(); d++) {
            Division division = from.divisions().get(d);
            if (found.get(d).isEmpty() && !division.isPedal()) {
                int like = to.manualDivisions().stream()
                        .filter(each -> !taken.contains(each))
                        .max(Comparator.comparing(
                                each -> to.divisions().get(each).isEnclosed() == division.isEnclosed()))
                        .orElse(to.mainDivision());
                found.set(d, OptionalInt.of(like));
                taken.add(like);
            }
        }
        return found;
    }

    /** A division of the same name, the pedal for the pedal, or the main division for the main division. */
    private static OptionalInt sure(Instrument from, Instrument to, int d) {
        Division division = from.divisions().get(d);
        if (division.isPedal()) {
            return to.pedalDivision();
        }
        OptionalInt named = to.division(division.name());
        if (named.isPresent() && !to.divisions().get(named.getAsInt()).isPedal()) {
            return named;
        }
        boolean isMain = d == from.mainDivision()
                && from.division(to.divisions().get(to.mainDivision()).name()).isEmpty();
        return isMain ? OptionalInt.of(to.mainDivision()) : OptionalInt.empty();
    }

    /** Index of the equivalent of a division; empty only for a pedal on an organ without one. */
    public OptionalInt division(int division) {
        return divisions.get(division);
    }

    /** Index of the equivalent of a stop, if there is one. */
    public OptionalInt stop(int stop) {
        Instrument.Knob was = from.stops().get(stop);
        OptionalInt division = division(was.division());
        if (division.isEmpty()) {
            return OptionalInt.empty();
        }
        return IntStream.range(0, to.stops().size())
                .filter(i -> to.stops().get(i).division() == division.getAsInt())
                .filter(i -> strangeness(was.stop(), to.stops().get(i).stop()) != NEVER)
                .boxed()
                .min(Comparator.comparingInt(
                        i -> strangeness(was.stop(), to.stops().get(i).stop())))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    /** How unlike two stops are; {@link #NEVER} if one cannot replace the other. */
    private static int strangeness(Stop was, Stop is) {
        boolean isCompound = was.family().isCompound();
        if (!isCompound && !was.footage().equals(is.footage())) {
            return NEVER;
        }
        boolean isLike = was.family() == is.family();
        if (!isLike && (kindred(was.family()) == 0 || kindred(was.family()) != kindred(is.family()))) {
            return NEVER;
        }
        return (isLike ? 0 : OTHER_FAMILY)
                + (was.pipe() == is.pipe() ? 0 : OTHER_PIPE)
                + (was.name().equalsIgnoreCase(is.name()) ? 0 : 1)
                + Math.abs(was.ranks() - is.ranks());
    }

    /** Families of the same number replace each other; those of 0 only themselves. */
    private static int kindred(Family family) {
        return switch (family) {
            case PRINCIPAL, FLUTE, STRING -> 1;
            case CHORUS_REED, SOLO_REED -> 2;
            case CELESTE, MUTATION, MIXTURE, CORNET -> 0;
        };
    }

    /** A registration, drawn as nearly as possible on the other organ. */
    public Brought bring(Registration drawn) {
        List<Replacement> replacements = new ArrayList<>();
        Registration brought = Registration.silent(to);
        for (int stop : drawn.stops().stream().toArray()) {
            OptionalInt found = stop(stop);
            String was = from.stops().get(stop).name().toString();
            note(
                    replacements,
                    was,
                    found.isPresent()
                            ? Optional.of(
                                    to.stops().get(found.getAsInt()).name().toString())
                            : Optional.empty());
            brought = found.isPresent() ? brought.withStops(brought.stops().with(found.getAsInt())) : brought;
        }
        for (int coupler : drawn.couplers().stream().toArray()) {
            OptionalInt found = coupler(from.couplers().get(coupler), replacements);
            brought =
                    found.isPresent() ? brought.withCouplers(brought.couplers().with(found.getAsInt())) : brought;
        }
        for (int tremulant : drawn.tremulants().stream().toArray()) {
            OptionalInt found = tremulant(from.tremulants().get(tremulant), replacements);
            brought = found.isPresent() && !brought.tremulants().contains(found.getAsInt())
                    ? brought.toggleTremulant(found.getAsInt())
                    : brought;
        }
        return new Brought(boxes(drawn, brought, replacements), replacements);
    }

    private static void note(List<Replacement> replacements, String was, Optional<String> becomes) {
        if (!becomes.equals(Optional.of(was))) {
            replacements.add(new Replacement(was, becomes));
        }
    }

    /** One of the same kind between the two counterparts. Where both are one division there is nothing to couple. */
    private OptionalInt coupler(Coupler was, List<Replacement> replacements) {
        OptionalInt source = named(was.source());
        OptionalInt keyboard = named(was.keyboard());
        if (was.kind() == Coupler.Kind.UNISON && source.isPresent() && source.equals(keyboard)) {
            return OptionalInt.empty();
        }
        OptionalInt found = IntStream.range(0, to.couplers().size())
                .filter(i -> to.couplers().get(i).kind() == was.kind()
                        && to.division(to.couplers().get(i).source()).equals(source)
                        && to.division(to.couplers().get(i).keyboard()).equals(keyboard))
                .findFirst();
        note(
                replacements,
                was.name(),
                found.isPresent()
                        ? Optional.of(to.couplers().get(found.getAsInt()).name())
                        : Optional.empty());
        return found;
    }

    private OptionalInt tremulant(Tremulant was, List<Replacement> replacements) {
        OptionalInt division = named(was.division());
        OptionalInt found = IntStream.range(0, to.tremulants().size())
                .filter(i -> to.division(to.tremulants().get(i).division()).equals(division))
                .findFirst();
        note(
                replacements,
                was.division() + ": " + was.name(),
                found.isPresent()
                        ? Optional.of(to.tremulants().get(found.getAsInt()).division() + ": "
                                + to.tremulants().get(found.getAsInt()).name())
                        : Optional.empty());
        return found;
    }

    private OptionalInt named(String division) {
        return division(from.division(division).orElseThrow());
    }

    /** Boxes stand as their counterparts stood; a division that had no box leaves an open one. */
    private Registration boxes(Registration drawn, Registration brought, List<Replacement> replacements) {
        Registration set = brought;
        for (int d = 0; d < from.divisions().size(); d++) {
            BoxPosition position = drawn.boxes().get(d);
            if (!from.divisions().get(d).isEnclosed() || position == BoxPosition.OPEN) {
                continue;
            }
            OptionalInt counterpart = division(d);
            boolean isAlone = counterpart.isPresent()
                    && divisions.stream().filter(counterpart::equals).count() == 1;
            if (isAlone && to.divisions().get(counterpart.getAsInt()).isEnclosed()) {
                set = set.withBox(counterpart.getAsInt(), position);
            } else {
                note(replacements, from.divisions().get(d).name() + " box " + position.word(), Optional.empty());
            }
        }
        return set;
    }
}
