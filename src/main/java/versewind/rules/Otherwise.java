package versewind.rules;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.sound.Balance;
import versewind.sound.Odds;
import versewind.sound.Verdict;

/**
 * The other outcome of a verse that is worth a word, and what to have ready for it: the next step of the {@link
 * BuildingLine} where the verse may turn out too weak, a box or the last step where it may turn out too strong.
 *
 * @param verdict the most likely verdict after the one that is shown
 * @param odds of it, 0 to 1
 * @param isSaid whether it is said beside the verdict that is shown
 * @param ready what to do then; empty where it calls for nothing, or the organ has no more
 */
public record Otherwise(Verdict verdict, double odds, boolean isSaid, Optional<String> ready) {

    private static final String COUPLED = " coupled";
    private static final String OUT = "if they sing out, ";

    private static final Set<StopClass> NO_LEAD =
            EnumSet.of(StopClass.TWELFTH, StopClass.DOUBLE, StopClass.REED_16, StopClass.SOLO_REED);

    /** A box is worth opening where so much of the sound comes out of it. An estimate. */
    private static final double GOOD_PART = 0.4;

    static Optional<Otherwise> of(ChorusFaults faults, Verse verse, Balance balance) {
        return balance.isSure()
                ? Optional.empty()
                : balance.odds()
                        .second()
                        .map(other -> new Otherwise(
                                other,
                                balance.odds().of(other),
                                balance.excess().isPresent(),
                                ready(faults, verse, other)))
                        .filter(other -> !other.isSaid() || other.ready().isPresent());
    }

    private static Optional<String> ready(ChorusFaults faults, Verse verse, Verdict other) {
        OrganFacts organ = faults.organ();
        if (verse.mode() == Mode.MELODY_SOLOED) {
            return Optional.empty();
        }
        BuildingLine line = new BuildingLine(
                organ,
                verse.hands(),
                verse.locks().never(),
                verse.registration().stops());
        // stops that are drawn and not heard are no part of what is built up so far
        Registration heard = verse.registration().withStops(faults.played(verse).sounding());
        return switch (other.way()) {
            case STRONGER ->
                opened(organ, heard).or(() -> next(organ, line, heard).map(next -> ready(organ, next, heard)));
            case SOFTER -> box(organ.organ(), heard).or(() -> last(organ, line, heard));
            case NONE -> Optional.empty();
        };
    }

    /** A box that is not open, where what stands in it is a good part of what is heard. */
    private static Optional<String> opened(OrganFacts organ, Registration heard) {
        double all = power(organ, heard.stops());
        return IntStream.range(0, heard.boxes().size())
                .filter(division -> organ.isEnclosed(division) && heard.boxes().get(division) != BoxPosition.OPEN)
                .filter(division -> power(organ, behind(organ, heard, division)) >= GOOD_PART * all)
                .mapToObj(division ->
                        "open the " + organ.organ().divisions().get(division).name() + " box")
                .findFirst();
    }

    /**
     * The first addition that is left out, but flutes, which principals cover, and what adds weight or colour and no
     * lead.
     */
    private static Optional<BuildingLine.Addition> next(OrganFacts organ, BuildingLine line, Registration heard) {
        return line.additions().stream()
                .filter(each -> each.step().compareTo(BuildingStep.PRINCIPAL_8) >= 0)
                .filter(each -> each.draws().minus(heard.stops()).stream().anyMatch(stop -> isLead(organ, stop))
                        || !each.couplers().minus(heard.couplers()).isEmpty())
                .findFirst();
    }

    private static boolean isLead(OrganFacts organ, int stop) {
        return organ.divisionOf(stop) != organ.pedal() && !NO_LEAD.contains(organ.layer(stop));
    }

    private static IndexSet behind(OrganFacts organ, Registration heard, int division) {
        return IndexSet.of(heard.stops().stream().filter(stop -> organ.homeOfPipes(stop) == division));
    }

    /** What stops come to beside each other, as a power. */
    private static double power(OrganFacts organ, IndexSet stops) {
        return stops.stream()
                .mapToDouble(stop -> ThirdOctaves.dbToPower(organ.levelDb(stop)))
                .sum();
    }

    private static String ready(OrganFacts organ, BuildingLine.Addition next, Registration heard) {
        return coupled(organ, next, heard)
                .map(what -> "couple the " + what)
                .orElseGet(() -> "add the " + name(organ, next, heard));
    }

    /** What an addition couples, if its name says that it does. */
    private static Optional<String> coupled(OrganFacts organ, BuildingLine.Addition addition, Registration heard) {
        String name = name(organ, addition, heard);
        return name.endsWith(COUPLED)
                ? Optional.of(name.substring(0, name.length() - COUPLED.length()))
                : Optional.empty();
    }

    /** The stop that an addition draws on the manuals, or else its name. */
    private static String name(OrganFacts organ, BuildingLine.Addition addition, Registration heard) {
        IndexSet draws = organ.pedal() == OrganFacts.NO_PEDAL
                ? addition.draws()
                : addition.draws().minus(organ.allOf(organ.pedal()));
        return draws.size() == 1 && addition.couplers().isEmpty()
                ? distinct(organ, draws.next(0), heard)
                : addition.words();
    }

    /** The label of a stop, with its division where a stop of that label is heard from another. */
    private static String distinct(OrganFacts organ, int stop, Registration heard) {
        String label = organ.stop(stop).label();
        boolean isHeardElsewhere = heard.stops().stream()
                .anyMatch(other -> other != stop && organ.stop(other).label().equals(label));
        return isHeardElsewhere
                ? organ.organ().divisions().get(organ.divisionOf(stop)).name() + " " + label
                : label;
    }

    private static Optional<String> box(Instrument organ, Registration drawn) {
        return IntStream.range(0, drawn.boxes().size())
                .filter(division -> drawn.stops().stream()
                        .anyMatch(stop -> organ.stops().get(stop).division() == division))
                .filter(division -> organ.divisions().get(division).isEnclosed()
                        && drawn.boxes().get(division) != BoxPosition.CLOSED)
                .mapToObj(division ->
                        "close the " + organ.divisions().get(division).name() + " box")
                .findFirst();
    }

    private static Optional<String> last(OrganFacts organ, BuildingLine line, Registration drawn) {
        List<BuildingLine.Addition> begun = line.begun(drawn);
        return begun.stream().findFirst().map(last -> coupled(organ, last, drawn)
                .map(what -> "uncouple the " + what)
                .orElseGet(() -> Registration.PUT_IN + " the " + name(organ, last, drawn)));
    }

    /** In words: "or lost, 3 in 10: if they sing out, add the Mixture III". */
    public String words() {
        if (isSaid) {
            return shortWords();
        }
        String todo = verdict.way() == Verdict.Way.STRONGER ? OUT : "";
        return "or " + verdict.word() + ", " + Odds.words(odds)
                + ready.map(each -> ": " + todo + each).orElse("");
    }

    /** Without its odds: "if they sing out, add the Mixture III". */
    public String shortWords() {
        String then = verdict.way() == Verdict.Way.STRONGER ? OUT : "if " + verdict.word() + ", ";
        return ready.map(each -> then + each).orElseGet(() -> "or " + verdict.word());
    }
}
