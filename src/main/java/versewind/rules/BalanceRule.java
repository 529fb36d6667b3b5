package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.sound.Balance;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/**
 * The rules on the balance of a verse: the people hear their leader and are not driven, a soloist and a choir are
 * carried and never covered, a soloed melody stands out from its accompaniment. Each is broken by one verdict.
 *
 * <p>Source of the edges: {@link Verdict}.
 */
public enum BalanceRule implements PlanRule {
    LEAD_LOST("lead lost", 10, Verdict.LOST, "The organ will {probably}not be heard above {who}."),
    LEAD_TOO_STRONG("lead too strong", 8, Verdict.TOO_STRONG, "The organ {probably}overpowers {who}."),
    LEAD_ONLY_JUST(
            "no fall-back at hand",
            1,
            Verdict.LEAD_ONLY_JUST,
            "The lead is near its edge, and the next step takes several changes."),
    WORDS_COVERED(
            "words covered", 10, Verdict.COVERED, "The organ {probably}covers {who}: the words are lost in the nave."),
    MELODY_BURIED("melody buried", 9, Verdict.BURIED, "The soloed melody is {probably}buried in its accompaniment.");

    private static final String SILENT = "Nothing is drawn that sounds: the people sing without a lead.";

    private static final BalanceRule[] RULES = values();
    private static final int MOST_STEPS = 6;

    @SuppressWarnings("ImmutableEnumChecker") // a value, which never changes
    private final RuleHead head;

    private final Verdict verdict;
    private final String sentence;

    BalanceRule(String word, int points, Verdict verdict, String sentence) {
        head = new RuleHead(word, points);
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

    /** True for the rules on how the people are led. */
    boolean isOfLead() {
        return verdict.kind() == Balance.Kind.LEAD;
    }

    @Override
    public Optional<Breach> breach(InHymn hymn, int verse) {
        Estimate estimate = hymn.estimate(verse);
        boolean isSaid = estimate.isSilent()
                ? !hymn.verse(verse).registration().stops().isEmpty()
                : verdict.kind() == Balance.Kind.SOLO_LINE && VerseRule.isCrossed(hymn, verse);
        return estimate.balance().estimated() == verdict
                        && !isSaid
                        && !(this == LEAD_ONLY_JUST && isAtHand(hymn, verse))
                ? Optional.of(new Breach(
                        Figure.balance(estimate), sentence(estimate, hymn.verse(verse)), () -> mends(hymn, verse)))
                : Optional.empty();
    }

    /** True where a box can be opened, the next step is a knob or two, or where nothing more can be drawn. */
    private static boolean isAtHand(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        PlayedRegistration played = hymn.played(index);
        boolean isBoxLeft = IntStream.range(0, verse.registration().boxes().size())
                .anyMatch(home ->
                        played.isHeard(home) && verse.registration().boxes().get(home) != BoxPosition.OPEN);
        return isBoxLeft
                || new BuildingLine(
                                played.organ(),
                                verse.hands(),
                                verse.locks().never(),
                                verse.registration().stops())
                        .next(verse.registration())
                        .filter(next ->
                                next.draws().minus(verse.registration().stops()).size()
                                                + next.couplers()
                                                        .minus(verse.registration()
                                                                .couplers())
                                                        .size()
                                        > Practice.AT_HAND_KNOBS)
                        .isEmpty();
    }

    private String sentence(Estimate estimate, Verse verse) {
        return estimate.isSilent() && this == LEAD_LOST
                ? SILENT
                : sentence.replace("{probably}", estimate.balance().isSure() ? "" : "probably ")
                        .replace("{who}", who(verse));
    }

    private String who(Verse verse) {
        if (!isOfLead()) {
            return verse.mode() == Mode.SOLO_VOICE ? "the soloist" : "the choir";
        }
        return switch (verse.singing()) {
            case GENTLE -> "gentle singing";
            case ORDINARY -> "the singing";
            case STRONG -> "strong singing";
            case FULL_VOICE -> "singing with full voice";
        };
    }

    /**
     * What may bring the verse to its balance: a manual that is prepared; else steps of the order, boxes first, until
     * it holds well, or at least holds. Of a soloed melody the accompaniment is made softer, then the melody stronger.
     */
    Stream<Mend> mends(InHymn hymn, int index) {
        Stream<Verdict.Way> ways = verdict.kind() == Balance.Kind.SOLO_LINE
                ? Stream.of(Verdict.Way.SOFTER, Verdict.Way.STRONGER)
                : Stream.of(verdict.way());
        return Stream.concat(prepared(hymn, index), ways.flatMap(way -> steps(hymn, index, way)))
                .map(fix -> hymn.fixed(index, fix));
    }

    /** The hands together on another manual on which something is drawn. */
    private static Stream<Fix> prepared(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        return hymn.faults().organ().keyboards().stream()
                .filter(home -> verse.hands().right() == verse.hands().left()
                        && home != verse.hands().left())
                .map(home -> new Fix(
                        verse.registration(), HandsAndFeet.on(verse.hands().layout(), home)))
                .filter(fix -> hymn.estimate(verse.withHands(fix.hands()))
                                .balance()
                                .estimated()
                                .way()
                        == Verdict.Way.NONE);
    }

    private Stream<Fix> steps(InHymn hymn, int index, Verdict.Way way) {
        Verse verse = hymn.verse(index);
        if (verse.registration().stops().isEmpty()) {
            return fromNothing(hymn, index);
        }
        List<DynamicStep> steps = DynamicSteps.steps(
                hymn.sound(),
                verse,
                hymn.plan().heading().people(),
                hymn.hymn().tempo(),
                way,
                this == LEAD_ONLY_JUST ? 1 : MOST_STEPS);
        Stream<DynamicStep> well = steps.stream()
                .filter(step -> step.estimate().balance().estimated().way() == Verdict.Way.NONE);
        Stream<DynamicStep> atLeast = steps.stream()
                .filter(step -> this != LEAD_ONLY_JUST
                        && !step.estimate().balance().estimated().wantsAttention());
        return Stream.concat(well.limit(1), atLeast.limit(1)).map(step -> new Fix(step.registration(), verse.hands()));
    }

    /** The first rung of the order that leads, and else the last. */
    private static Stream<Fix> fromNothing(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        List<Registration> rungs = new BuildingLine(
                        hymn.faults().organ(), verse.hands(), verse.locks().never())
                .rungs().stream()
                        .map(rung ->
                                verse.registration().withStops(rung.stops()).withCouplers(rung.couplers()))
                        .toList();
        Stream<Registration> leading = rungs.stream()
                .filter(drawn -> hymn.estimate(verse.withRegistration(drawn))
                                .balance()
                                .estimated()
                                .way()
                        == Verdict.Way.NONE);
        return Stream.concat(leading, rungs.stream().skip(Math.max(0, rungs.size() - 1)))
                .limit(1)
                .map(drawn -> new Fix(drawn, verse.hands()));
    }
}
