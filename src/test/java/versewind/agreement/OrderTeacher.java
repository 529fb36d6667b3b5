package versewind.agreement;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import versewind.agreement.Fault.Remark;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.plan.Mode;
import versewind.plan.Verse;

/**
 * A teacher who knows the order in which a registration is built up: nothing passed over, doubling late, reeds after
 * mixtures, and the way back the same as the way up. Judges each manual division by its own stops; what the organ lacks
 * is left out. Common practice, no source.
 */
final class OrderTeacher {

    /** Names by which a division of a French organ is known: its light 8 ft stops are drawn together. */
    private static final Set<String> FRENCH = Set.of("Montre", "Prestant", "Doublette");

    private final Instrument organ;
    private final Verse verse;
    private final Speaking speaking;
    private final List<Remark> remarks = new ArrayList<>();

    private OrderTeacher(Instrument organ, Verse verse) {
        this.organ = organ;
        this.verse = verse;
        speaking = new Speaking(organ, verse.registration(), verse.hands());
    }

    /** What is out of order in a verse with something drawn. */
    static List<Remark> order(Instrument organ, Verse verse) {
        OrderTeacher teacher = new OrderTeacher(organ, verse);
        teacher.judge();
        return List.copyOf(teacher.remarks);
    }

    private void say(boolean isBroken, Fault fault, String sentence) {
        if (isBroken) {
            remarks.add(fault.says(sentence));
        }
    }

    private void judge() {
        for (int division : organ.manualDivisions()) {
            List<SpeakingStop> voices = unison(division);
            boolean isMelody =
                    speaking.isSoloed() && speaking.right().stream().anyMatch(voice -> voice.division() == division);
            if (voices.isEmpty() || isMelody) {
                continue;
            }
            passedOver(division, voices);
            doubled(division, voices);
        }
        reedsBeforeMixtures();
    }

    /** What speaks of a division at its own pitch. */
    private List<SpeakingStop> unison(int division) {
        return speaking.of(division).stream()
                .filter(voice -> voice.octave() == 0)
                .toList();
    }

    private void passedOver(int division, List<SpeakingStop> voices) {
        String name = organ.divisions().get(division).name();
        Predicate<Stop> isTwo = stop -> isFlue(stop, Footage.of(2));
        boolean lacksTwo =
                organHasUnlocked(division, isTwo) && speaking.manuals().stream().noneMatch(voice -> voice.isFlue(2));
        for (SpeakingStop voice : voices) {
            say(
                    lacksTwo && voice.is(Family.MIXTURE),
                    Fault.RANK_PASSED_OVER,
                    name + ": " + voice.label() + " before the 2 ft.");
            say(
                    lacksTwo && voice.is(Family.PRINCIPAL) && voice.feet() < 2,
                    Fault.RANK_PASSED_OVER,
                    name + ": " + voice.label() + " before the 2 ft.");
            if (isRipieno(division) && isOfRipieno(voice.stop())) {
                lowest(division, voices, voice)
                        .ifPresent(missing -> say(
                                true,
                                Fault.RANK_PASSED_OVER,
                                name + ": " + voice.label() + " before " + missing.label() + "."));
            }
            boolean isSecondMixture = voice.is(Family.MIXTURE)
                    && organ.divisions().get(division).stops().stream()
                            .anyMatch(stop -> stop.family() == Family.MIXTURE
                                    && isLower(stop, voice.stop())
                                    && !isLocked(division, stop)
                                    && voices.stream()
                                            .noneMatch(other -> other.stop().equals(stop)));
            say(isSecondMixture, Fault.RANK_PASSED_OVER, name + ": " + voice.label() + " before the lower mixture.");
        }
    }

    private static boolean isLower(Stop stop, Stop than) {
        return stop.footage().isPresent()
                && than.footage().isPresent()
                && stop.footage().get().feet() > than.footage().get().feet();
    }

    /** A division that has three single ranks of principals above 2 ft builds its plenum of them. */
    private boolean isRipieno(int division) {
        return organ.divisions().get(division).stops().stream()
                        .filter(stop -> isOfRipieno(stop))
                        .count()
                >= 4;
    }

    private static boolean isOfRipieno(Stop stop) {
        return stop.name().matches("[XVI]+")
                && stop.footage().filter(feet -> feet.feet() <= 2).isPresent();
    }

    /** The first rank of a ripieno that is left out below one that speaks. */
    private Optional<Stop> lowest(int division, List<SpeakingStop> voices, SpeakingStop above) {
        return organ.divisions().get(division).stops().stream()
                .filter(OrderTeacher::isOfRipieno)
                .filter(stop -> isLower(stop, above.stop()) && !isLocked(division, stop))
                .filter(stop -> voices.stream().noneMatch(voice -> voice.stop().equals(stop)))
                .findFirst();
    }

    /**
     * A principal with another flue of its pitch before the 2 ft of its division. Light 8 ft stops together are a
     * French sound, and where nobody is led two soft ones may be.
     */
    private void doubled(int division, List<SpeakingStop> voices) {
        if (verse.mode() != Mode.CONGREGATION || SpeakingStop.has(voices, 2)) {
            return;
        }
        boolean hasTwo = organHasUnlocked(division, stop -> isFlue(stop, Footage.of(2)));
        boolean isFonds = isFrench(organ, division);
        for (int feet : new int[] {8, 4}) {
            List<SpeakingStop> alike = voices.stream()
                    .filter(voice -> voice.isFlue(feet) && !isAlways(voice.index()))
                    .toList();
            boolean hasPrincipal = alike.stream().anyMatch(voice -> voice.is(Family.PRINCIPAL));
            say(
                    hasTwo && hasPrincipal && alike.size() > 1 && !(feet == 8 && isFonds),
                    Fault.DOUBLING_BEFORE_UPPERWORK,
                    organ.divisions().get(division).name() + ": "
                            + alike.stream()
                                    .map(SpeakingStop::label)
                                    .reduce((one, other) -> one + " and " + other)
                                    .orElse("")
                            + " before the 2 ft.");
        }
    }

    private static boolean isFrench(Instrument organ, int division) {
        return organ.divisions().get(division).stops().stream().map(Stop::name).anyMatch(FRENCH::contains);
    }

    /** A chorus reed under the people before any mixture that its own or the main manual has. */
    private void reedsBeforeMixtures() {
        if (verse.mode() != Mode.CONGREGATION || speaking.isSoloed()) {
            return;
        }
        boolean hasMixture = speaking.manuals().stream().anyMatch(voice -> voice.is(Family.MIXTURE));
        for (SpeakingStop voice : speaking.manuals()) {
            boolean isThere = organHasUnlocked(voice.division(), stop -> stop.family() == Family.MIXTURE)
                    || speaking.right().stream()
                            .anyMatch(other ->
                                    organHasUnlocked(other.division(), stop -> stop.family() == Family.MIXTURE));
            say(
                    voice.is(Family.CHORUS_REED) && voice.octave() == 0 && isThere && !hasMixture,
                    Fault.REED_BEFORE_MIXTURE,
                    voice.label() + " of the "
                            + organ.divisions().get(voice.division()).name() + " before a mixture.");
        }
    }

    private boolean organHasUnlocked(int division, Predicate<Stop> kind) {
        return organ.divisions().get(division).stops().stream()
                .anyMatch(stop -> kind.test(stop) && !isLocked(division, stop));
    }

    private boolean isLocked(int division, Stop stop) {
        return verse.locks().never().stream()
                .mapToObj(organ.stops()::get)
                .anyMatch(knob -> knob.division() == division && knob.stop().equals(stop));
    }

    private boolean isAlways(int stop) {
        return verse.locks().always().contains(stop);
    }

    private static boolean isFlue(Stop stop, Footage feet) {
        return (stop.family() == Family.PRINCIPAL || stop.family() == Family.FLUTE || stop.family() == Family.STRING)
                && stop.footage().equals(Optional.of(feet));
    }

    /** What a step did against the order that was kept before; hands that go to another manual start anew. */
    static List<Remark> step(Instrument organ, Verse before, Verse after, boolean isStronger) {
        List<Remark> remarks = new ArrayList<>();
        Set<Remark> old = new HashSet<>(order(organ, before));
        order(organ, after).stream().filter(each -> !old.contains(each)).forEach(remarks::add);
        if (!before.hands().equals(after.hands())) {
            return remarks;
        }
        Registration from = before.registration();
        Registration to = after.registration();
        IndexSet drawn = to.stops().minus(from.stops());
        IndexSet pushed = from.stops().minus(to.stops());
        IndexSet against = isStronger ? pushed : drawn;
        IndexSet along = isStronger ? drawn : pushed;
        boolean isOtherSolo = before.hands().layout().isSoloed()
                && against.plus(along).stream()
                        .allMatch(stop -> organ.stops().get(stop).division()
                                == before.hands().right());
        if (isOtherSolo) {
            return remarks;
        }
        if (!against.stream().allMatch(stop -> isReplaced(organ, stop, along))) {
            remarks.add(Fault.WRONG_WAY.says(
                    (isStronger ? "Stronger puts in " : "Softer draws ") + names(organ, against) + "."));
        }
        foundations(organ, before, after, remarks);
        return remarks;
    }

    /** Whether a flute or string gives way to a principal of its pitch and division, or takes its place back. */
    static boolean isReplaced(Instrument organ, int stop, IndexSet along) {
        Instrument.Knob knob = organ.stops().get(stop);
        Family family = knob.stop().family();
        boolean isLight = family == Family.FLUTE || family == Family.STRING;
        return isLight
                && along.stream()
                        .mapToObj(organ.stops()::get)
                        .anyMatch(other -> other.division() == knob.division()
                                && other.stop().family() == Family.PRINCIPAL
                                && other.stop().footage().equals(knob.stop().footage()));
    }

    /** A division that loses its last 8 ft flue and keeps what stood on it. */
    private static void foundations(Instrument organ, Verse before, Verse after, List<Remark> remarks) {
        for (int division : organ.manualDivisions()) {
            List<SpeakingStop> were = in(organ, division, before);
            List<SpeakingStop> left = in(organ, division, after);
            if (SpeakingStop.has(were, 8) && !SpeakingStop.has(left, 8) && !left.isEmpty()) {
                remarks.add(Fault.FOUNDATION_TAKEN_AWAY.says(
                        organ.divisions().get(division).name() + " loses its 8 ft and keeps "
                                + left.get(left.size() - 1).label() + "."));
            }
        }
    }

    private static List<SpeakingStop> in(Instrument organ, int division, Verse verse) {
        return new Speaking(organ, verse.registration(), verse.hands())
                .of(division).stream().filter(voice -> voice.octave() == 0).toList();
    }

    private static String names(Instrument organ, IndexSet stops) {
        return stops.stream()
                .mapToObj(stop -> organ.stops().get(stop).name().toString())
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
    }
}
