package versewind.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.IndexSet;
import versewind.plan.Hymn;
import versewind.plan.Locks;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.Balance;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/** The rule book applied to a plan: findings in the order of the plan, remedies, and how to play. */
public final class Advice {

    /** The rules that look at other hymns, or at the pistons that these have; all others look at the hymn alone. */
    private static final List<PlanRule> BEYOND_THE_HYMN =
            List.of(VerseRule.NOT_HEARD, ChangeRule.PISTON_TWICE, ChangeRule.PISTONS_ALIKE);

    private final OrganSound sound;
    private final ChorusFaults faults;

    /** What was found out of {@link #plan}: most keys change one verse, or none. */
    private final Map<VersePlace, List<Finding>> mentions = new HashMap<>();

    private final Map<VersePlace, Touch> touches = new HashMap<>();
    private final Map<Finding, Finding> mended = new HashMap<>();
    private Optional<Plan> plan = Optional.empty();

    /** Hymn by hymn, of the plan that was last looked through: most changes are to one. */
    private List<Unmended> unmended = List.of();

    /** Of the plan asked about last. */
    private Optional<PistonUse> pistons = Optional.empty();

    private Advice(OrganSound sound) {
        this.sound = sound;
        faults = ChorusFaults.on(OrganFacts.of(sound));
    }

    /** The rule book for one instrument. */
    public static Advice on(OrganSound sound) {
        return sound.derived(Advice.class, Advice::new);
    }

    /** All findings of a plan that can be played on the instrument, silenced ones too. */
    public List<Finding> findings(Plan plan) {
        return findings(plan, this::mend).toList();
    }

    /** As {@link #findings(Plan)}, but without mends, which take a hundred times as long; see {@link #mended}. */
    public List<Finding> unmended(Plan plan) {
        List<Unmended> now = new ArrayList<>();
        for (int i = 0; i < plan.hymns().size(); i++) {
            InHymn hymn = hymn(plan, i);
            List<String> elsewhere = fromElsewhere(hymn);
            now.add(unmended.stream()
                    .skip(i)
                    .limit(1)
                    .filter(last -> last.isOf(hymn, elsewhere))
                    .findFirst()
                    .orElseGet(() -> new Unmended(
                            plan.heading(),
                            hymn.hymn(),
                            elsewhere,
                            findings(hymn, Advice::notMended).toList())));
        }
        unmended = now;
        return now.stream().flatMap(hymn -> hymn.findings().stream()).toList();
    }

    /** What the rules say that look beyond the hymn. */
    private static List<String> fromElsewhere(InHymn hymn) {
        return IntStream.range(0, hymn.verses().size())
                .boxed()
                .flatMap(verse -> BEYOND_THE_HYMN.stream()
                        .map(rule ->
                                rule.breach(hymn, verse).map(Breach::sentence).orElse("")))
                .toList();
    }

    /** What was found in a hymn, and all that it depends on. */
    private record Unmended(ServiceHeading heading, Hymn hymn, List<String> elsewhere, List<Finding> findings) {

        boolean isOf(InHymn other, List<String> now) {
            return heading.equals(other.plan().heading()) && hymn.equals(other.hymn()) && elsewhere.equals(now);
        }
    }

    /** A finding of a plan with its mend, if there is one. */
    public Finding mended(Plan plan, Finding finding) {
        return of(plan, mended).computeIfAbsent(finding, found -> {
            InHymn hymn = hymn(plan, found.place().hymn());
            return breaches(hymn, found.place().verse())
                    .filter(broken -> broken.rule() == found.rule()
                            && found.sentence().startsWith(broken.breach().sentence()))
                    .findFirst()
                    .map(broken -> found.with(mend(hymn, broken)))
                    .orElse(found);
        });
    }

    /** The findings of one verse, the weightiest first, silenced ones too. */
    public List<Finding> findings(Plan plan, VersePlace place) {
        return findings(hymn(plan, place.hymn()), place.verse(), this::mend);
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
        return of(plan, mentions)
                .computeIfAbsent(
                        place, here -> findings(hymn(plan, here.hymn()), here.verse(), Advice::notMended).stream()
                                .filter(finding -> !finding.isSilenced())
                                .toList());
    }

    /** What is kept of a plan; nothing at first of another than that asked about last. */
    private <K, T> Map<K, T> of(Plan other, Map<K, T> kept) {
        if (!plan.equals(Optional.of(other))) {
            plan = Optional.of(other);
            mentions.clear();
            touches.clear();
            mended.clear();
        }
        return kept;
    }

    /** The other outcome of a verse that is worth a word; empty where its verdict is sure. */
    public Optional<Otherwise> otherwise(Verse verse, Balance balance) {
        return Otherwise.of(faults, verse, balance);
    }

    private InHymn hymn(Plan plan, int hymn) {
        PistonUse use =
                pistons.filter(last -> last.plan().equals(plan)).orElseGet(() -> PistonUse.of(plan, sound.organ()));
        pistons = Optional.of(use);
        return new InHymn(sound, faults, use, hymn);
    }

    private Stream<Finding> findings(Plan plan, BiFunction<InHymn, Broken, Optional<Mend>> mend) {
        return IntStream.range(0, plan.hymns().size())
                .mapToObj(hymn -> hymn(plan, hymn))
                .flatMap(hymn -> findings(hymn, mend));
    }

    private Stream<Finding> findings(InHymn hymn, BiFunction<InHymn, Broken, Optional<Mend>> mend) {
        return saidOnce(IntStream.range(0, hymn.verses().size())
                        .boxed()
                        .flatMap(verse -> breaches(hymn, verse).sorted(Broken.BY_WEIGHT))
                        .toList())
                .map(broken -> finding(hymn, broken, mend));
    }

    private List<Finding> findings(InHymn hymn, int index, BiFunction<InHymn, Broken, Optional<Mend>> mend) {
        return breaches(hymn, index)
                .sorted(Broken.BY_WEIGHT)
                .map(broken -> finding(hymn, broken, mend))
                .toList();
    }

    private static Finding finding(InHymn hymn, Broken broken, BiFunction<InHymn, Broken, Optional<Mend>> mend) {
        return new Finding(
                broken.rule().head().severity(),
                broken.rule(),
                hymn.place(broken.verse()),
                broken.breach().numbers(),
                broken.sentence(),
                mend.apply(hymn, broken),
                broken.silence());
    }

    /**
     * The first of what may mend a rule that is allowed and does: the rule is kept then, and no other of the verse is
     * broken for it. For a hard rule of choruses the balance or a soft rule may suffer, if there is no other way; the
     * balance and soft rules are mended when none of those is broken.
     */
    private Optional<Mend> mend(InHymn hymn, Broken broken) {
        List<Rule> before = rules(hymn, broken.verse());
        boolean isStructural =
                broken.rule() instanceof ChorusRule && broken.rule().head().severity() == Severity.CAUTION;
        boolean isOfPlan = broken.rule() instanceof ChangeRule || broken.rule() instanceof HymnRule;
        boolean isTooSoon = !isStructural
                && !isOfPlan
                && before.stream()
                        .anyMatch(rule ->
                                rule instanceof ChorusRule && rule.head().severity() == Severity.CAUTION);
        if (isTooSoon) {
            return Optional.empty();
        }
        boolean isHard = broken.rule().head().severity() == Severity.CAUTION;
        Predicate<Rule> all = rule -> rule instanceof ChorusRule || rule.head().severity() == Severity.CAUTION;
        Predicate<Rule> hard = rule -> rule.head().severity() == Severity.CAUTION
                && (rule instanceof ChorusRule || !(broken.rule() instanceof ChorusRule));
        return (isHard ? Stream.of(all, hard) : Stream.of(all))
                .flatMap(kept -> broken.breach()
                        .mends()
                        .get()
                        .filter(mend -> isAllowed(hymn, mend))
                        .map(mend -> PistonChoice.mend(mend, hymn, broken.verse()))
                        .filter(mend -> isMended(hymn, broken, before, mend, kept)))
                .findFirst();
    }

    private boolean isMended(InHymn hymn, Broken broken, List<Rule> before, Mend mend, Predicate<Rule> kept) {
        List<Rule> after = rules(hymn.with(mend), broken.verse());
        return Collections.frequency(after, broken.rule()) < Collections.frequency(before, broken.rule())
                && after.stream()
                        .filter(rule -> rule != broken.rule() && kept.test(rule))
                        .allMatch(rule -> Collections.frequency(after, rule) <= Collections.frequency(before, rule));
    }

    private List<Rule> rules(InHymn hymn, int verse) {
        return breaches(hymn, verse).map(Broken::rule).toList();
    }

    /** True where a mend keeps what the plan fixes: stops always or never drawn, hands and feet, and boxes. */
    private static boolean isAllowed(InHymn hymn, Mend mend) {
        Verse before = hymn.verse(mend.place().verse());
        Locks locks = before.locks();
        IndexSet was = before.registration().stops();
        IndexSet is = mend.verse().registration().stops();
        return !is.minus(was).meets(locks.never())
                && !was.minus(is).meets(locks.always())
                && (!locks.keepsHands() || mend.verse().hands().equals(before.hands()))
                && (!locks.keepsBoxes()
                        || mend.verse()
                                .registration()
                                .boxes()
                                .equals(before.registration().boxes()));
    }

    /**
     * What a teacher would mention of a verse by itself is said once a hymn, at the first verse it is true of, with the
     * other verses.
     */
    private static Stream<Broken> saidOnce(List<Broken> all) {
        Map<String, Broken> said = new LinkedHashMap<>();
        for (Broken each : all) {
            boolean isOnce = each.rule().head().severity() == Severity.REMARK
                    && !(each.rule() instanceof ChangeRule || each.rule() instanceof HymnRule)
                    && each.silence().isEmpty();
            String key = isOnce ? each.rule().word() : String.valueOf(said.size());
            said.merge(key, each, Broken::also);
        }
        return said.values().stream();
    }

    /** A rule broken in a verse, and the labels of others in which it is broken too. */
    private record Broken(
            Rule rule, int verse, String label, Breach breach, Optional<String> silence, List<String> others) {

        /** Those that are not ignored first, the weightiest at the head. */
        static final Comparator<Broken> BY_WEIGHT = Comparator.comparing(
                        (Broken broken) -> broken.silence().isPresent())
                .thenComparing(broken -> broken.rule().points(), Comparator.reverseOrder());

        Broken also(Broken later) {
            boolean isSaid = later.label.equals(label) || others.contains(later.label);
            return isSaid
                    ? this
                    : new Broken(
                            rule,
                            verse,
                            label,
                            breach,
                            silence,
                            Stream.concat(others.stream(), Stream.of(later.label))
                                    .toList());
        }

        String sentence() {
            return breach.sentence() + (others.isEmpty() ? "" : " Also in " + String.join(", ", others) + ".");
        }
    }

    /**
     * The rules that a verse breaks; of one in which nothing is drawn yet, only those on how the people are led, and
     * none of one that is sung unaccompanied.
     */
    private Stream<Broken> breaches(InHymn hymn, int index) {
        if (!hymn.verse(index).isPlayed()) {
            return Stream.empty();
        }
        if (hymn.verse(index).registration().stops().isEmpty()) {
            return Stream.of(BalanceRule.values()).filter(BalanceRule::isOfLead).flatMap(rule -> of(rule, hymn, index));
        }
        Stream<Broken> ofStops = faults.in(hymn.played(index)).stream()
                .map(fault ->
                        broken(hymn, index, fault.rule(), new Breach(List.of(), fault.sentence(), () -> fault.fixes()
                                .map(fix -> hymn.fixed(index, fix)))));
        return Stream.of(
                        PlanRule.ofVerse().flatMap(rule -> of(rule, hymn, index)),
                        ofStops,
                        Stream.of(HymnRule.values()).flatMap(rule -> of(rule, hymn, index)))
                .flatMap(each -> each);
    }

    private static Stream<Broken> of(PlanRule rule, InHymn hymn, int index) {
        return rule.breach(hymn, index).stream().map(breach -> broken(hymn, index, rule, breach));
    }

    private static Broken broken(InHymn hymn, int index, Rule rule, Breach breach) {
        Verse verse = hymn.verse(index);
        return new Broken(rule, index, verse.label(), breach, verse.silence(rule.word()), List.of());
    }

    /** The change that makes a verse hold that fails; empty where it does not fail, and where no change is enough. */
    public Optional<Mend> remedy(Plan plan, VersePlace place) {
        InHymn hymn = hymn(plan, place.hymn());
        Verdict verdict = hymn.estimate(place.verse()).balance().estimated();
        return verdict.wantsAttention()
                ? breaches(hymn, place.verse())
                        .filter(broken -> broken.rule() instanceof BalanceRule
                                || broken.rule() == VerseRule.HANDS_CROSSED
                                || broken.rule() == ChorusRule.EMPTY_HAND)
                        .flatMap(broken -> mend(hymn, broken).stream())
                        .findFirst()
                : Optional.empty();
    }

    /** How to play a verse. */
    public Touch touch(Plan plan, VersePlace place) {
        return of(plan, touches).computeIfAbsent(place, here -> Touch.of(hymn(plan, here.hymn()), here.verse()));
    }

    /** For findings without their mends, which may need many estimates. */
    private static Optional<Mend> notMended(InHymn hymn, Broken broken) {
        return Optional.empty();
    }
}
