package versewind.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/** The rule book applied to a plan: findings in the order of the plan, remedies, and how to play. */
public final class Advice {

    private final OrganSound sound;
    private final ChorusFaults faults;

    private Advice(OrganSound sound) {
        this.sound = sound;
        faults = ChorusFaults.on(OrganFacts.of(sound));
    }

    /** The rule book for one instrument. */
    public static Advice on(OrganSound sound) {
        return new Advice(sound);
    }

    /** All findings of a plan that can be played on the instrument, silenced ones too. */
    public List<Finding> findings(Plan plan) {
        return findings(plan, breach -> breach.mend().get()).toList();
    }

    /** The findings of one verse, the weightiest first, silenced ones too. */
    public List<Finding> findings(Plan plan, VersePlace place) {
        return findings(
                hymn(plan, place.hymn()), place.verse(), breach -> breach.mend().get());
    }

    /** Number of cautions in a plan, silenced ones left out. */
    public int cautions(Plan plan) {
        return (int) findings(plan, Advice::notMended)
                .filter(Finding::isStandingCaution)
                .count();
    }

    /**
     * The findings of one verse without silenced ones and without mends: quick enough for every key that is pressed.
     */
    public List<Finding> mentions(Plan plan, VersePlace place) {
        return findings(hymn(plan, place.hymn()), place.verse(), Advice::notMended).stream()
                .filter(finding -> !finding.isSilenced())
                .toList();
    }

    private InHymn hymn(Plan plan, int hymn) {
        return InHymn.of(plan, sound, faults, hymn);
    }

    private Stream<Finding> findings(Plan plan, Function<Breach, Optional<Mend>> mend) {
        return IntStream.range(0, plan.hymns().size())
                .mapToObj(hymn -> hymn(plan, hymn))
                .flatMap(hymn -> IntStream.range(0, hymn.verses().size())
                        .boxed()
                        .flatMap(verse -> findings(hymn, verse, mend).stream()));
    }

    private List<Finding> findings(InHymn hymn, int index, Function<Breach, Optional<Mend>> mend) {
        return breaches(hymn, index)
                .map(each -> new Finding(
                        each.severity(),
                        each.rule(),
                        hymn.place(index),
                        each.breach().numbers(),
                        each.breach().sentence(),
                        mend.apply(each.breach()).map(found -> PistonChoice.mend(found, hymn, index)),
                        hymn.verse(index).silence(each.rule().word())))
                .sorted(Comparator.comparing(Finding::isSilenced).thenComparing(Finding.BY_WEIGHT))
                .toList();
    }

    private record Broken(Rule rule, Severity severity, Breach breach) {}

    /** The rules that a verse breaks; of one in which nothing is drawn yet, only those on how the people are led. */
    private Stream<Broken> breaches(InHymn hymn, int index) {
        if (hymn.verse(index).registration().stops().isEmpty()) {
            return Stream.of(BalanceRule.values()).filter(BalanceRule::isOfLead).flatMap(rule -> of(rule, hymn, index));
        }
        Stream<Broken> ofStops = faults.in(hymn.verse(index)).stream()
                .map(fault -> new Broken(
                        fault.rule(), fault.severity(), new Breach(List.of(), fault.sentence(), () -> fault.mended()
                                .map(drawn -> hymn.drawing(index, drawn)))));
        return Stream.of(
                        PlanRule.ofVerse().flatMap(rule -> of(rule, hymn, index)),
                        ofStops,
                        Stream.of(HymnRule.values()).flatMap(rule -> of(rule, hymn, index)))
                .flatMap(each -> each);
    }

    private static Stream<Broken> of(PlanRule rule, InHymn hymn, int index) {
        return rule.breach(hymn, index).stream()
                .map(breach -> new Broken(rule, rule.head().severity(), breach));
    }

    /** The change that makes a verse hold that fails; empty where it does not fail, and where no change is enough. */
    public Optional<Mend> remedy(Plan plan, VersePlace place) {
        InHymn hymn = hymn(plan, place.hymn());
        Verdict verdict = hymn.estimate(place.verse()).margin().verdict();
        return verdict.wantsAttention()
                ? Remedy.of(hymn, place.verse(), verdict).map(each -> PistonChoice.mend(each, hymn, place.verse()))
                : Optional.empty();
    }

    /** How to play a verse. */
    public Touch touch(Plan plan, VersePlace place) {
        return Touch.of(hymn(plan, place.hymn()), place.verse());
    }

    /** For findings without their mends, which may need many estimates. */
    private static Optional<Mend> notMended(Breach breach) {
        return Optional.empty();
    }
}
