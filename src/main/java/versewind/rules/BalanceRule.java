package versewind.rules;

import static versewind.rules.Severity.CAUTION;
import static versewind.rules.Severity.REMARK;

import java.util.Optional;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.sound.Estimate;
import versewind.sound.Margin;
import versewind.sound.Verdict;

/**
 * The rules on the balance of a verse: the people hear their leader and are not driven, a soloist and a choir are
 * carried and never covered, a soloed melody stands out from its accompaniment. Each is broken by one verdict.
 *
 * <p>Source of the thresholds: {@link versewind.sound.Thresholds}.
 */
public enum BalanceRule implements PlanRule {
    NO_TUNE(
            "no tune",
            10,
            CAUTION,
            Verdict.NO_TUNE,
            "Nothing sounds in the right hand: the people have no tune to follow."),
    LEAD_LOST("lead lost", 10, CAUTION, Verdict.LOST, "The lead is {probably}lost: {who} cover the organ."),
    LEAD_TOO_STRONG("lead too strong", 8, CAUTION, Verdict.TOO_STRONG, "The organ {probably}overpowers {who}."),
    LEAD_ONLY_JUST(
            "lead only just held",
            3,
            REMARK,
            Verdict.LEAD_ONLY_JUST,
            "The lead {probably}only just holds against {who}."),
    WORDS_COVERED(
            "words covered",
            10,
            CAUTION,
            Verdict.COVERED,
            "The organ {probably}covers {who}: the words are lost in the nave."),
    WORDS_ONLY_JUST(
            "words only just clear",
            3,
            REMARK,
            Verdict.VOICE_ONLY_JUST,
            "The words of {who} {probably}only just come through."),
    MELODY_BURIED(
            "melody buried", 9, CAUTION, Verdict.BURIED, "The soloed melody is {probably}buried in its accompaniment."),
    MELODY_ONLY_JUST(
            "melody only just heard",
            3,
            REMARK,
            Verdict.SOLO_LINE_ONLY_JUST,
            "The soloed melody {probably}only just stands out from its accompaniment.");

    private static final String SILENT = "Nothing is drawn that sounds: the people sing without a lead.";

    private static final BalanceRule[] RULES = values();

    @SuppressWarnings("ImmutableEnumChecker") // a value, which never changes
    private final RuleHead head;

    private final Verdict verdict;
    private final String sentence;

    BalanceRule(String word, int weight, Severity severity, Verdict verdict, String sentence) {
        head = new RuleHead(word, weight, severity);
        this.verdict = verdict;
        this.sentence = sentence;
    }

    @Override
    public RuleHead head() {
        return head;
    }

    /** The rule that a verdict breaks, if it breaks one. */
    public static Optional<BalanceRule> brokenBy(Verdict verdict) {
        for (BalanceRule rule : RULES) {
            if (rule.verdict == verdict) {
                return Optional.of(rule);
            }
        }
        return Optional.empty();
    }

    /** Cost of breaking it: the weight, and half of it where it is only just kept. */
    public double points() {
        return points(head.severity());
    }

    /** True for the rules on how the people are led. */
    boolean isOfLead() {
        return verdict.kind() == Margin.Kind.LEAD;
    }

    @Override
    public Optional<Breach> breach(InHymn hymn, int verse) {
        Estimate estimate = hymn.estimate(verse);
        return estimate.margin().verdict() == verdict
                ? Optional.of(new Breach(
                        Figure.balance(estimate), sentence(estimate, hymn.verse(verse)), () -> mend(hymn, verse)))
                : Optional.empty();
    }

    private String sentence(Estimate estimate, Verse verse) {
        return estimate.isSilent() && this == LEAD_LOST
                ? SILENT
                : sentence.replace("{probably}", estimate.margin().isSure() ? "" : "probably ")
                        .replace("{who}", who(verse));
    }

    private String who(Verse verse) {
        if (!isOfLead()) {
            return verse.mode() == Mode.SOLO_VOICE ? "the soloist" : "the choir";
        }
        return switch (verse.singing()) {
            case GENTLE -> "people who sing gently";
            case ORDINARY -> "people who sing as usual";
            case STRONG -> "people who sing strongly";
            case FULL_VOICE -> "people who sing with full voice";
        };
    }

    private Optional<Mend> mend(InHymn hymn, int verse) {
        return this == NO_TUNE ? Optional.empty() : Remedy.of(hymn, verse, verdict);
    }
}
