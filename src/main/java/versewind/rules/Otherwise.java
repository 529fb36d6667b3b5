package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.Family;
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
 * @param ready what to have ready; empty where it calls for nothing, or the organ has no more
 */
public record Otherwise(Verdict verdict, double odds, Optional<String> ready) {

    static Optional<Otherwise> of(ChorusFaults faults, Verse verse, Balance balance) {
        return balance.isSure()
                ? Optional.empty()
                : balance.odds()
                        .second()
                        .map(other -> new Otherwise(other, balance.odds().of(other), ready(faults, verse, other)));
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
            case STRONGER -> next(organ, line, heard).map(next -> "have " + name(organ, next) + " ready");
            case SOFTER -> box(organ.organ(), heard).or(() -> last(organ, line, heard));
            case NONE -> Optional.empty();
        };
    }

    /** The first addition of something beyond the farthest that is begun; where there is none, one left out before. */
    private static Optional<BuildingLine.Addition> next(OrganFacts organ, BuildingLine line, Registration heard) {
        List<BuildingLine.Addition> begun = line.begun(heard);
        int from = begun.isEmpty() ? 0 : line.additions().indexOf(begun.get(0)) + 1;
        List<BuildingLine.Addition> missing = line.additions().stream()
                .filter(each -> !each.draws().minus(heard.stops()).isEmpty()
                        || !each.couplers().minus(heard.couplers()).isEmpty())
                .filter(each -> each.draws().stream()
                        .noneMatch(
                                stop -> organ.organ().stops().get(stop).stop().family() == Family.SOLO_REED))
                .toList();
        return Stream.concat(
                        missing.stream().filter(each -> line.additions().indexOf(each) >= from),
                        missing.stream().filter(each -> each.step().compareTo(BuildingStep.PRINCIPALS_8_4) > 0))
                .findFirst();
    }

    /** The stop that an addition draws, or else its name. */
    private static String name(OrganFacts organ, BuildingLine.Addition addition) {
        return addition.draws().size() == 1 && addition.couplers().isEmpty()
                ? organ.organ().stops().get(addition.draws().next(0)).stop().label()
                : addition.words();
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
        return begun.isEmpty() ? Optional.empty() : Optional.of("push in " + name(organ, begun.get(0)));
    }

    /** In words: "or lost, 3 in 10: have Mixture III ready". */
    public String words() {
        return "or " + verdict.word() + ", " + Odds.words(odds) + todo();
    }

    /** Without its odds: "or lost: have Mixture III ready". */
    public String shortWords() {
        return "or " + verdict.word() + todo();
    }

    private String todo() {
        return ready.map(each -> ": " + each).orElse("");
    }
}
