package versewind.schema;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Nearest;
import versewind.organ.NotationException;
import versewind.organ.Pressed;
import versewind.organ.Quoted;
import versewind.organ.RegistrationText;
import versewind.organ.Stop;
import versewind.organ.StopName;

/**
 * The parts of an organ by their names. A former name stands for what it is called today; parts that are gone are left
 * out and remembered. For one reading only.
 */
public final class OrganNames {

    /** For fields that name no part of an organ. */
    public static final OrganNames NONE = ofDivisions(List.of());

    private final Optional<Instrument> organ;
    private final FormerNames former;
    private final List<String> divisions;
    private final List<String> couplers;
    private final List<String> tremulants;
    private final Set<String> gone = new LinkedHashSet<>();
    private final Set<String> goneHere = new LinkedHashSet<>();
    private Optional<RegistrationText> text = Optional.empty();
    private boolean outdated;

    /** Reads a part of a registration. */
    @FunctionalInterface
    interface Notation<V> {
        V read(RegistrationText text, String typed) throws NotationException;
    }

    private OrganNames(Optional<Instrument> organ, FormerNames former, List<String> divisions) {
        this.organ = organ;
        this.former = former;
        this.divisions = divisions;
        this.couplers = organ.map(Instrument::couplerNames).orElse(List.of());
        this.tremulants = organ.map(Instrument::tremulantNames).orElse(List.of());
    }

    /** The names of an instrument, and what they were before. */
    public static OrganNames of(Instrument organ, FormerNames former) {
        return new OrganNames(Optional.of(organ), former, organ.divisionNames());
    }

    /** The names of an instrument. */
    public static OrganNames of(Instrument organ) {
        return of(organ, FormerNames.NONE);
    }

    /** The divisions of an instrument that is not complete yet. */
    public static OrganNames ofDivisions(List<String> divisions) {
        return new OrganNames(Optional.empty(), FormerNames.NONE, divisions);
    }

    /** Whether the organ is known. */
    boolean hasOrgan() {
        return organ.isPresent();
    }

    /** The organ; there must be one. */
    Instrument organ() {
        return organ.orElseThrow();
    }

    /** Names of the divisions. */
    List<String> divisions() {
        return divisions;
    }

    /** Names of the couplers. */
    List<String> couplers() {
        return couplers;
    }

    /** Names of the tremulants. */
    List<String> tremulants() {
        return tremulants;
    }

    /** The notation of registrations. */
    RegistrationText text() {
        if (text.isEmpty()) {
            text = Optional.of(new RegistrationText(organ()));
        }
        return text.get();
    }

    /** Reads typed words in the notation of registrations. */
    <V> V typed(Found found, Notation<V> notation) throws Refused {
        try {
            return notation.read(text(), found.text());
        } catch (NotationException wrong) {
            throw found.bad(wrong.getMessage(), "");
        }
    }

    /** True if a former name was read. */
    public boolean isOutdated() {
        return outdated;
    }

    /** The parts that were read and are gone, each once. */
    public Set<String> gone() {
        return Collections.unmodifiableSet(gone);
    }

    /** The parts that were read and are gone since the last call. */
    Set<String> takeGone() {
        Set<String> taken = new LinkedHashSet<>(goneHere);
        goneHere.clear();
        return taken;
    }

    /** Today's name; empty if the part is gone, which is remembered. */
    private <N> Optional<N> today(Now<N> now, N written, String words) {
        outdated |= !now.name().equals(Optional.of(written));
        if (now.name().isEmpty()) {
            gone.add(words);
            goneHere.add(words);
        }
        return now.name();
    }

    /** Index of a division; empty if it is gone. */
    Optional<Integer> division(Found found, String name) throws Refused {
        Optional<Now<String>> now = former.division(organ(), name);
        if (now.isEmpty()) {
            throw unknown(found, "division", name, divisions);
        }
        return today(now.get(), name, name).map(divisions::indexOf);
    }

    /** The name of pistons, with today's names of divisions; a name that is none of the organ's as it is. */
    String pistons(String written) {
        if (organ.isEmpty() || written.isBlank() || Pressed.of(organ(), written).sets()) {
            return written;
        }
        String today = written;
        for (Map.Entry<String, Now<String>> each : former.divisions().entrySet()) {
            Optional<String> now = each.getValue().name();
            today = now.isPresent() ? today.replace(each.getKey(), now.get()) : today;
        }
        boolean isFormer = Pressed.of(organ(), today).sets();
        outdated |= isFormer;
        return isFormer ? today : written;
    }

    /** Index of a division that stands in a box; empty if division or box is gone. */
    Optional<Integer> box(Found found, String name) throws Refused {
        Optional<Integer> division = division(found, name);
        if (division.isEmpty()) {
            return division;
        }
        String today = divisions.get(division.get());
        if (former.boxes().contains(today)) {
            today(Now.gone(), today, "the box of " + today);
            return Optional.empty();
        }
        if (!organ().divisions().get(division.get()).isEnclosed()) {
            throw found.bad(Quoted.plain(name) + " has no swell box", "Leave out its position.");
        }
        return division;
    }

    /** Indices of couplers. */
    IndexSet readCouplers(List<Found> found) throws Refused {
        return knobs(found, "coupler", couplers, name -> former.coupler(organ(), name));
    }

    /** Indices of tremulants. */
    IndexSet readTremulants(List<Found> found) throws Refused {
        return knobs(found, "tremulant", tremulants, name -> former.tremulant(organ(), name));
    }

    private IndexSet knobs(
            List<Found> found, String thing, List<String> known, Function<String, Optional<Now<String>>> former)
            throws Refused {
        IndexSet drawn = IndexSet.EMPTY;
        Set<String> seen = new HashSet<>();
        for (Found each : found) {
            String name = each.text();
            Optional<Now<String>> now = former.apply(name);
            if (now.isEmpty()) {
                throw unknown(each, thing, name, known);
            }
            requireOnce(seen, name, each);
            Optional<String> today = today(now.get(), name, name);
            if (today.isPresent()) {
                drawn = drawn.with(known.indexOf(today.get()));
            }
        }
        return drawn;
    }

    /** Indices of stops, listed by their divisions. */
    IndexSet stops(Map<String, Found> byDivision) throws Refused {
        IndexSet drawn = IndexSet.EMPTY;
        for (Map.Entry<String, Found> entry : byDivision.entrySet()) {
            Optional<Integer> division = division(entry.getValue(), entry.getKey());
            Set<String> seen = new HashSet<>();
            for (Found each : entry.getValue().items("")) {
                StopName written = new StopName(entry.getKey(), each.text());
                Optional<Now<StopName>> now = former.stop(organ(), written);
                if (now.isEmpty()) {
                    throw noStop(each, division);
                }
                requireOnce(seen, each.text(), each);
                Optional<StopName> today = today(now.get(), written, written.toString());
                if (today.isPresent()) {
                    drawn = drawn.with(organ().stop(today.get()).getAsInt());
                }
            }
        }
        return drawn;
    }

    private Refused noStop(Found found, Optional<Integer> division) throws Refused {
        String name = division.map(divisions::get).orElse("");
        List<String> labels = division.isEmpty()
                ? List.of()
                : organ().divisions().get(division.get()).stops().stream()
                        .map(Stop::label)
                        .toList();
        return found.bad(
                Quoted.plain(name) + " has no stop " + Quoted.text(found.text()),
                Nearest.sentence(found.text(), labels, "It has"));
    }

    private static void requireOnce(Set<String> seen, String name, Found found) throws Refused {
        if (!seen.add(name)) {
            throw found.bad(Quoted.text(name) + " stands here twice", "Delete one of them.");
        }
    }

    private static Refused unknown(Found found, String thing, String name, List<String> known) {
        return found.bad(
                "the organ has no " + thing + " " + Quoted.text(name),
                Nearest.sentence(name, known, "The " + thing + "s are"));
    }
}
