package versewind.agreement;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.proposal.PartKind;
import versewind.proposal.Proposal;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.ScorePart;
import versewind.proposal.SearchProgress;
import versewind.rules.Advice;
import versewind.rules.ChorusRule;
import versewind.rules.DynamicStep;
import versewind.rules.DynamicSteps;
import versewind.rules.Finding;
import versewind.rules.Severity;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/** The program that is judged, on one organ: the only class of the measure that knows how it is asked. */
final class Program {

    static final String TOO_MANY_CHANGES = "too many movements";

    private final OrganSound sound;
    private final RegistrationProposer proposer;
    private final Advice advice;

    Program(Instrument organ) {
        sound = OrganSound.open(organ);
        proposer = RegistrationProposer.of(sound);
        advice = Advice.on(sound);
    }

    Instrument organ() {
        return sound.organ();
    }

    /**
     * A verse as it is proposed.
     *
     * @param verse with the proposal drawn
     * @param why what speaks for it
     * @param rules the sentences of the rules that speak against it
     */
    record Offer(Verse verse, String why, List<String> rules) {

        Offer {
            rules = List.copyOf(rules);
        }
    }

    /**
     * A finding.
     *
     * @param rule its word
     * @param isCaution whether it is more than a remark
     * @param mended the plan after its mend, if it has one
     */
    record Said(
            String rule, boolean isCaution, String sentence, VersePlace place, Optional<Plan> mended, String mend) {}

    /** How the balance of a verse is judged. */
    enum Balance {
        TOO_WEAK,
        JUST,
        GOOD,
        TOO_STRONG,
        NOT_ASKED
    }

    /** The plan after {@code propose --write}. */
    Plan proposed(Plan plan) {
        return proposer.forService(plan, SearchProgress.PATIENT).on(plan);
    }

    /** Up to five proposals for one verse. */
    List<Offer> five(Plan plan, VersePlace place) {
        return proposer.forVerse(plan, place).proposals().stream()
                .map(proposal -> offer(plan, place, proposal))
                .toList();
    }

    private static Offer offer(Plan plan, VersePlace place, Proposal proposal) {
        return new Offer(
                proposal.on(verse(plan, place)),
                proposal.why(),
                proposal.score().parts().stream()
                        .filter(part -> part.kind() == PartKind.FAULT || part.kind() == PartKind.RULE)
                        .map(ScorePart::sentence)
                        .toList());
    }

    /** Findings of a verse with their mends. */
    List<Said> findings(Plan plan, VersePlace place) {
        return advice.findings(plan, place).stream()
                .map(each -> said(plan, each))
                .toList();
    }

    /** Findings with their mends. */
    List<Said> findings(Plan plan) {
        return advice.findings(plan).stream().map(each -> said(plan, each)).toList();
    }

    /** Findings of a verse without mends. */
    List<Said> mentions(Plan plan, VersePlace place) {
        return advice.mentions(plan, place).stream()
                .map(each -> said(plan, each))
                .toList();
    }

    private static Said said(Plan plan, Finding finding) {
        return new Said(
                finding.rule().word(),
                finding.severity() == Severity.CAUTION,
                finding.sentence(),
                finding.place(),
                finding.mend().map(mend -> mend.on(plan)),
                finding.mend().map(mend -> mend.words()).orElse(""));
    }

    /** Whether a finding is of stops alone, and of no balance, change or hymn. */
    static boolean isOfStops(Said said) {
        return Stream.of(ChorusRule.values()).anyMatch(rule -> rule.word().equals(said.rule()));
    }

    /** The steps stronger, or softer, each from the one before. */
    List<Verse> ladder(Plan plan, VersePlace place, Verse from, boolean isStronger) {
        DynamicSteps steps = DynamicSteps.of(
                sound,
                from,
                plan.heading().people(),
                plan.hymns().get(place.hymn()).tempo(),
                DynamicSteps.AT_DESK);
        return (isStronger ? steps.stronger() : steps.softer())
                .stream()
                        .map(DynamicStep::registration)
                        .map(from::withRegistration)
                        .toList();
    }

    Balance balance(Plan plan, VersePlace place) {
        Verdict verdict = estimate(plan, place).balance().estimated();
        return switch (verdict) {
            case NO_TUNE, LOST, BURIED -> Balance.TOO_WEAK;
            case COVERED, TOO_STRONG -> Balance.TOO_STRONG;
            case LEAD_ONLY_JUST, VOICE_ONLY_JUST, SOLO_LINE_ONLY_JUST -> Balance.JUST;
            case LEADS, CLEAR, STANDS_OUT -> Balance.GOOD;
            case ORGAN_ALONE, UNACCOMPANIED -> Balance.NOT_ASKED;
        };
    }

    /** Whether the people are led with the odds of what is called sure. */
    boolean surelyLeads(Plan plan, VersePlace place) {
        var balance = estimate(plan, place).balance();
        return balance.verdict() == Verdict.LEADS && balance.isSure();
    }

    /** Whether the verdict and the odds that a proposal promises are those of the assessment. */
    boolean isPromiseKept(Plan plan, VersePlace place, String why) {
        String words = ": " + estimate(plan, place).balance().words();
        return balance(plan, place) == Balance.NOT_ASKED || why.contains(words + "; ") || why.endsWith(words + ".");
    }

    private Estimate estimate(Plan plan, VersePlace place) {
        return sound.estimate(
                verse(plan, place),
                plan.heading().people(),
                plan.hymns().get(place.hymn()).tempo());
    }

    /** Level of the organ in the empty nave, in dB(A). */
    double levelDba(Verse verse) {
        return sound.levelDba(verse.registration(), verse.hands());
    }

    static Verse verse(Plan plan, VersePlace place) {
        return plan.hymns().get(place.hymn()).verses().get(place.verse());
    }
}
