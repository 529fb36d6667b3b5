package versewind.agreement;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.HandsAndFeet;

/**
 * What speaks under each hand and under the feet: key by key, coupler by coupler, slowly. Divisions of one manual sound
 * together. A coupler of an electric action reads the keys that are played; one of a mechanical action moves keys, and
 * what is coupled to those moves too, at one octave coupler at most. Unison off silences a division from its own keys.
 */
final class Speaking {

    private static final int PEDAL = 0;

    private final Instrument organ;
    private final Registration drawn;
    private final HandsAndFeet hands;

    Speaking(Instrument organ, Registration drawn, HandsAndFeet hands) {
        this.organ = organ;
        this.drawn = drawn;
        this.hands = hands;
    }

    /** What the right hand sounds. */
    List<SpeakingStop> right() {
        return from(keyboard(hands.right()));
    }

    /** What the left hand sounds. */
    List<SpeakingStop> left() {
        return from(keyboard(hands.left()));
    }

    /** What the feet sound; nothing where they rest. */
    List<SpeakingStop> feet() {
        return hasFeet() ? from(PEDAL) : List.of();
    }

    boolean hasFeet() {
        return hands.layout().usesPedal() && organ.pedalDivision().isPresent();
    }

    /** True where the right hand plays the melody by itself. */
    boolean isSoloed() {
        return hands.layout().isSoloed();
    }

    /** All that speaks under the hands. */
    List<SpeakingStop> manuals() {
        Set<SpeakingStop> voices = new LinkedHashSet<>(right());
        voices.addAll(left());
        return List.copyOf(voices);
    }

    /** All that speaks. */
    List<SpeakingStop> all() {
        Set<SpeakingStop> voices = new LinkedHashSet<>(manuals());
        voices.addAll(feet());
        return List.copyOf(voices);
    }

    /** Whether a division is heard from a hand or the feet. */
    boolean isHeard(int division) {
        return all().stream().anyMatch(voice -> voice.division() == division);
    }

    /** Whether keys of a division's keyboard are played, or moved by a coupler. */
    boolean isPlayed(int division) {
        return reachedByAnyone().stream().anyMatch(reached -> reached.division() == division);
    }

    /** Whether a division's keyboard is under a hand or the feet. */
    boolean isUnderHandOrFoot(int division) {
        int keyboard = keyboard(division);
        return keyboard == keyboard(hands.right())
                || keyboard == keyboard(hands.left())
                || (keyboard == PEDAL && hasFeet());
    }

    /** The couplers that are drawn and carry keys that somebody plays. */
    List<Coupler> actingCouplers() {
        return drawn.couplers().stream()
                .mapToObj(organ.couplers()::get)
                .filter(this::isActing)
                .toList();
    }

    private boolean isActing(Coupler coupler) {
        int to = organ.division(coupler.keyboard()).orElseThrow();
        return isUnderHandOrFoot(to) || (organ.action() == Action.MECHANICAL && isPlayed(to));
    }

    /** The box in which the pipes of a stop stand, if any: a borrowed stop speaks through the box of its rank. */
    Optional<Integer> boxOf(int stop) {
        Instrument.Knob rank = organ.stops().get(organ.rankOf(stop));
        Division home = organ.divisions().get(rank.division());
        return home.encloses(rank.stop()) ? Optional.of(rank.division()) : Optional.empty();
    }

    /** All stops of a division that speak under the hands or feet, whether by coupler or not. */
    List<SpeakingStop> of(int division) {
        return all().stream().filter(voice -> voice.division() == division).toList();
    }

    /** Whether a stop of a kind stands where these speak, or on a manual that a coupler could bring to them. */
    boolean mayBeUnder(List<SpeakingStop> voices, Predicate<Stop> kind) {
        Set<String> homes = voices.stream()
                .map(voice -> organ.divisionNames().get(voice.division()))
                .collect(Collectors.toSet());
        return organ.divisions().stream()
                .filter(division -> homes.contains(division.name())
                        || organ.couplers().stream()
                                .anyMatch(coupler -> coupler.kind() == Coupler.Kind.UNISON
                                        && coupler.source().equals(division.name())
                                        && homes.contains(coupler.keyboard())))
                .anyMatch(division -> division.stops().stream().anyMatch(kind));
    }

    private int keyboard(int division) {
        return organ.divisions().get(division).manual().orElse(PEDAL);
    }

    private record Reached(int division, int octave) {}

    private Set<Reached> reachedByAnyone() {
        Set<Reached> reached = new LinkedHashSet<>(reached(keyboard(hands.right())));
        reached.addAll(reached(keyboard(hands.left())));
        if (hasFeet()) {
            reached.addAll(reached(PEDAL));
        }
        return reached;
    }

    private List<SpeakingStop> from(int keyboard) {
        List<SpeakingStop> voices = new ArrayList<>();
        for (Reached reached : reached(keyboard)) {
            drawn.stops().stream()
                    .filter(stop -> organ.stops().get(stop).division() == reached.division())
                    .mapToObj(stop -> new SpeakingStop(
                            stop, reached.division(), organ.stops().get(stop).stop(), reached.octave()))
                    .forEach(voices::add);
        }
        return voices;
    }

    private Set<Reached> reached(int keyboard) {
        Set<Reached> reached = new LinkedHashSet<>();
        for (int division : divisionsAt(keyboard)) {
            if (!isSilencedAtUnison(division)) {
                reached.add(new Reached(division, 0));
            }
        }
        follow(keyboard, 0, Set.of(keyboard), reached);
        return reached;
    }

    private void follow(int keyboard, int octave, Set<Integer> visited, Set<Reached> reached) {
        for (int index : drawn.couplers().stream().toArray()) {
            Coupler coupler = organ.couplers().get(index);
            int source = organ.division(coupler.source()).orElseThrow();
            int step = coupler.kind().semitones() / 12;
            boolean isElsewhere = keyboard(source) != keyboard;
            if (coupler.kind() == Coupler.Kind.UNISON_OFF
                    || keyboard(organ.division(coupler.keyboard()).orElseThrow()) != keyboard
                    || (octave != 0 && step != 0)
                    || (octave != 0 && !isElsewhere)) {
                continue;
            }
            if (!isElsewhere || organ.action() == Action.ELECTRIC) {
                reached.add(new Reached(source, octave + step));
            } else if (!visited.contains(keyboard(source))) {
                divisionsAt(keyboard(source)).forEach(moved -> reached.add(new Reached(moved, octave + step)));
                Set<Integer> further = new LinkedHashSet<>(visited);
                further.add(keyboard(source));
                follow(keyboard(source), octave + step, further, reached);
            }
        }
    }

    private List<Integer> divisionsAt(int keyboard) {
        List<Integer> divisions = new ArrayList<>();
        for (int division = 0; division < organ.divisions().size(); division++) {
            if (keyboard(division) == keyboard) {
                divisions.add(division);
            }
        }
        return divisions;
    }

    private boolean isSilencedAtUnison(int division) {
        return drawn.couplers().stream()
                .mapToObj(organ.couplers()::get)
                .anyMatch(coupler -> coupler.kind() == Coupler.Kind.UNISON_OFF
                        && organ.division(coupler.source()).orElseThrow() == division);
    }
}
