package versewind.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.Margin;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/** What an experienced colleague would say of a plan: findings in the order of the plan, and how to play. */
public final class Advice {

    private static final VerseRule LEAD = new Lead();

    private static final List<VerseRule> VERSE_RULES = List.of(
            LEAD,
            new WordsHeard(),
            new SoloLine(),
            new MelodyUnderCongregation(),
            new Introduction(),
            new Inaudible(),
            new BoomingPedal(),
            new Leap(),
            new PistonMissing(),
            new PistonTwice(),
            new InTime());

    private static final List<HymnRule> HYMN_RULES = List.of(new SameSound(), new SixteenAlways(), new Growth());

    private final OrganSound sound;
    private final ChorusFaults faults;

    private Advice(OrganSound sound) {
        this.sound = sound;
        faults = ChorusFaults.on(sound.organ());
    }

    /** A colleague who knows an instrument. */
    public static Advice on(OrganSound sound) {
        return new Advice(sound);
    }

    /** All findings of a plan that can be played on the instrument, silenced ones too. */
    public List<Finding> findings(Plan plan) {
        return IntStream.range(0, plan.hymns().size())
                .mapToObj(hymn -> InHymn.of(plan, sound, faults, hymn))
                .flatMap(hymn -> IntStream.range(0, hymn.verses().size())
                        .boxed()
                        .flatMap(verse -> findings(hymn, verse).stream()))
                .toList();
    }

    /** How many cautions stand in a plan, silenced ones left out. */
    public int cautions(Plan plan) {
        return (int) IntStream.range(0, plan.hymns().size())
                .mapToObj(hymn -> InHymn.of(plan, sound, faults, hymn))
                .flatMap(hymn -> IntStream.range(0, hymn.verses().size())
                        .boxed()
                        .flatMap(verse -> told(hymn, verse, found -> Optional.empty()).stream()))
                .filter(Finding::isStandingCaution)
                .count();
    }

    /** The findings of one verse, the weightiest first, silenced ones too. */
    public List<Finding> findings(Plan plan, VersePlace place) {
        return findings(InHymn.of(plan, sound, faults, place.hymn()), place.verse());
    }

    /** The same without those that are silenced, and without their mends: quick enough for every key that is pressed. */
    public List<Finding> mentions(Plan plan, VersePlace place) {
        InHymn hymn = InHymn.of(plan, sound, faults, place.hymn());
        return told(hymn, place.verse(), found -> Optional.empty()).stream()
                .filter(finding -> !finding.isSilenced())
                .toList();
    }

    private List<Finding> findings(InHymn hymn, int index) {
        return told(hymn, index, found -> found.mend().get());
    }

    private List<Finding> told(InHymn hymn, int index, Function<UnfixedFinding, Optional<Mend>> mend) {
        Verse verse = hymn.verse(index);
        return found(hymn, index).stream()
                .map(found -> found.with(
                        mend.apply(found).map(each -> Pistoned.mend(each, hymn, index)),
                        verse.silence(found.rule().word())))
                .sorted(Comparator.comparing(Finding::isSilenced).thenComparing(Finding.BY_WEIGHT))
                .toList();
    }

    /** Of a verse in which no stop is drawn, or not yet, no more is told than that nobody leads it. */
    private List<UnfixedFinding> found(InHymn hymn, int index) {
        if (hymn.verse(index).registration().stops().isEmpty()) {
            return LEAD.judge(hymn, index).stream().toList();
        }
        List<UnfixedFinding> found = new ArrayList<>();
        for (VerseRule rule : VERSE_RULES) {
            rule.judge(hymn, index).ifPresent(found::add);
        }
        faults.in(hymn.verse(index)).forEach(fault -> found.add(of(fault, hymn, index)));
        for (HymnRule rule : HYMN_RULES) {
            rule.judge(hymn).stream()
                    .filter(each -> each.place().equals(hymn.place(index)))
                    .forEach(found::add);
        }
        return found;
    }

    private static UnfixedFinding of(ChorusFault fault, InHymn hymn, int index) {
        return new UnfixedFinding(
                fault.severity(), fault.rule(), hymn.place(index), List.of(), fault.sentence(), () -> fault.mended()
                        .map(drawn -> Mend.drawing(hymn.organ(), hymn.place(index), hymn.verse(index), drawn)));
    }

    /** What makes a verse hold that fails; empty where it does not fail, and where no change is enough. */
    public Optional<Mend> remedy(Plan plan, VersePlace place) {
        InHymn hymn = InHymn.of(plan, sound, faults, place.hymn());
        Verdict verdict = hymn.estimate(place.verse()).margin().verdict();
        if (!verdict.wantsAttention()) {
            return Optional.empty();
        }
        Optional<Mend> mend = verdict.kind() == Margin.Kind.SOLO_LINE
                ? SoloLine.mend(hymn, place.verse())
                : Remedy.of(hymn, place.verse(), verdict.way());
        return mend.map(each -> Pistoned.mend(each, hymn, place.verse()));
    }

    /** How to play a verse. */
    public Touch touch(Plan plan, VersePlace place) {
        return Touch.of(InHymn.of(plan, sound, faults, place.hymn()), place.verse());
    }
}
