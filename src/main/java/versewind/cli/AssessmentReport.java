package versewind.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.HeardEffect;
import versewind.plan.Feedback;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.Assessment;
import versewind.rules.Caution;
import versewind.rules.Finding;
import versewind.rules.Mend;
import versewind.rules.NoiseExposure;
import versewind.rules.Touch;
import versewind.schema.KnownOrgan;
import versewind.sheet.LevelText;
import versewind.sound.Dynamic;
import versewind.sound.EarSeats;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.store.OpenPlan;

/** The assessment of a plan: a table for every hymn with what was found and how to play it, a summary, cautions. */
record AssessmentReport(
        OpenPlan open,
        PartOfPlan part,
        OrganSound sound,
        Assessment assessment,
        NoiseExposure ears,
        Advice advice,
        List<Finding> findings,
        Optional<CalibratedOrgan> levels)
        implements Report {

    private static final String HEADS = "verse   mode          singing    organ step dB share  verdict";
    private static final int[] COLUMNS = {7, 13, 10, 5, 7, -5, 23};
    private static final int TITLE = 24;
    private static final int LABEL = 7;

    AssessmentReport {
        findings = List.copyOf(findings);
    }

    static AssessmentReport of(OpenPlan open, PartOfPlan part, OrganSound sound) {
        return of(open, part, sound, Optional.empty());
    }

    /** With the levels in dB(A), sone and phon too, what they mean for the ears, and what the last answers changed. */
    static AssessmentReport withLevels(OpenPlan open, PartOfPlan part, CalibratedOrgan organ) {
        return of(open, part, organ.sound(), Optional.of(organ));
    }

    private static AssessmentReport of(
            OpenPlan open, PartOfPlan part, OrganSound sound, Optional<CalibratedOrgan> levels) {
        Assessment assessment = Assessment.of(open.plan(), sound);
        Advice advice = Advice.on(sound);
        return new AssessmentReport(
                open,
                part,
                sound,
                assessment,
                NoiseExposure.of(open.plan(), assessment, new EarSeats(sound)),
                advice,
                advice.findings(open.plan()).stream()
                        .filter(finding -> part.has(finding.place()))
                        .toList(),
                levels);
    }

    boolean wantsAttention() {
        return !wantingAttention().isEmpty();
    }

    private List<VersePlace> wantingAttention() {
        return assessment.wantingAttention().stream().filter(part::has).toList();
    }

    private Plan plan() {
        return open.plan();
    }

    @Override
    public void print(Page page) {
        page.heading(plan().heading(), open.instrument());
        page.line(Page.people(plan().heading().people()) + " expected");
        for (int hymn : part.hymns(plan())) {
            List<Assessment.OfVerse> verses =
                    part.places(plan(), hymn).stream().map(assessment::at).toList();
            hymn(page, new Assessment.OfHymn(assessment.hymns().get(hymn).hymn(), verses), hymn);
        }
        page.blank();
        page.paragraph(summary(page));
        long silenced = findings.stream().filter(Finding::isSilenced).count();
        if (silenced > 0) {
            page.paragraph(silenced + (silenced == 1 ? " finding is" : " findings are") + " ignored in this plan.");
        }
        page.paragraph(Caution.ESTIMATE);
        Caution.crowds(plan(), open.instrument().room()).forEach(page::paragraph);
        Caution.organ(open.instrument()).forEach(page::paragraph);
        Caution.hearing(assessment.loudestDba()).ifPresent(page::paragraph);
        levels.ifPresent(organ -> {
            ears.words().ifPresent(page::paragraph);
            organ.lastHeard().flatMap(HeardEffect::sentence).ifPresent(page::paragraph);
        });
    }

    private void hymn(Page page, Assessment.OfHymn of, int hymn) {
        page.hymn(of.hymn());
        if (of.verses().isEmpty()) {
            return;
        }
        page.line(HEADS);
        of.verses().forEach(verse -> page.row(COLUMNS, cells(verse)));
        said(page, "or", of, verse -> advice.otherwise(
                        verse.verse(), verse.estimate().balance())
                .map(other -> other.words().replaceFirst("or ", "")));
        if (levels.isPresent()) {
            said(page, "levels", of, AssessmentReport::levels);
        }
        said(page, "usual", of, this::fromUsual);
        said(page, "heard", of, this::heard);
        findings.stream()
                .filter(finding -> finding.place().hymn() == hymn && !finding.isSilenced())
                .forEach(finding -> finding(page, finding));
        playing(page, hymn);
    }

    private static String[] cells(Assessment.OfVerse of) {
        Verse verse = of.verse();
        Estimate estimate = of.estimate();
        boolean isSung = verse.isSung();
        return new String[] {
            verse.label(),
            isSung || verse.mode() == Mode.MELODY_SOLOED || !verse.isPlayed()
                    ? verse.sungBy().word()
                    : LevelText.NONE,
            isSung ? verse.singing().word() : LevelText.NONE,
            estimate.dynamic().map(Dynamic::word).orElse(LevelText.NONE),
            of.step()
                    .map(step -> LevelText.signed(step.db(), step.plusMinusDb()))
                    .orElse(""),
            estimate.balance().share().isPresent()
                    ? LevelText.percent(estimate.balance().share().getAsDouble())
                    : LevelText.NONE,
            (of.wantsAttention() ? "!" : " ") + estimate.balance().words()
        };
    }

    /** The remarks on some verses, as one paragraph; verses of which the same is said stand together: "V1, V3 ...". */
    private static void said(
            Page page, String head, Assessment.OfHymn of, Function<Assessment.OfVerse, Optional<String>> words) {
        Map<String, List<String>> labels = new LinkedHashMap<>();
        for (Assessment.OfVerse verse : of.verses()) {
            words.apply(verse).ifPresent(each -> labels.computeIfAbsent(each, none -> new ArrayList<>())
                    .add(verse.verse().label()));
        }
        String all = labels.entrySet().stream()
                .map(each ->
                        each.getValue().stream().distinct().collect(Collectors.joining(", ")) + ": " + each.getKey())
                .collect(Collectors.joining("; "));
        if (!all.isEmpty()) {
            page.hanging(page.left(head, LABEL) + "  ", all + ".");
        }
    }

    private static Optional<String> levels(Assessment.OfVerse of) {
        Estimate estimate = of.estimate();
        List<String> levels = new ArrayList<>();
        if (!estimate.isSilent()) {
            levels.add("organ " + LevelText.organ(estimate));
        }
        if (estimate.singersDba().isPresent()) {
            levels.add("singing "
                    + LevelText.whole(
                            estimate.singersDba(), estimate.plusMinus().singersDb()) + " dB(A)");
        }
        return levels.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", levels));
    }

    private Optional<String> fromUsual(Assessment.OfVerse of) {
        return KnownOrgan.fromUsual(
                open.organ().experience(), sound, of.verse(), plan().heading().people());
    }

    /** The feedback on a verse, or on one that was played and sung just so before. */
    private Optional<String> heard(Assessment.OfVerse of) {
        Optional<String> here =
                of.verse().answer().map(answer -> answer.heard().word() + " (" + Page.people(answer.present()) + ")");
        return here.or(() -> open.organ()
                .experience()
                .lastHeard(sound, of.verse(), plan().heading().people())
                .map(before -> before.heard().word() + " (" + before.name() + ")"));
    }

    private void finding(Page page, Finding finding) {
        String mend = finding.mend().map(Mend::words).map(words -> " " + words).orElse("");
        page.hanging(
                page.left(assessment.at(finding.place()).verse().label(), LABEL) + "  ",
                finding.severity().word() + ": " + finding.sentence() + mend);
    }

    /** Touch and breath: each sentence once, after the labels of the verses it applies to. */
    private void playing(Page page, int hymn) {
        Map<String, List<String>> touches = new LinkedHashMap<>();
        Map<String, List<String>> times = new LinkedHashMap<>();
        for (VersePlace place : part.places(plan(), hymn)) {
            Touch touch = advice.touch(plan(), place);
            String label = assessment.at(place).verse().label();
            gather(touches, touch.sentence(), label);
            times.putIfAbsent(touch.breath(), new ArrayList<>());
            touch.lag().ifPresent(lag -> gather(times, lag, label));
        }
        groups(page, "touch", touches);
        groups(page, "time", times);
    }

    private static void gather(Map<String, List<String>> groups, String sentence, String label) {
        groups.computeIfAbsent(sentence, any -> new ArrayList<>()).add(label);
    }

    private static void groups(Page page, String head, Map<String, List<String>> groups) {
        String start = head;
        for (Map.Entry<String, List<String>> group : groups.entrySet()) {
            String labels = group.getValue().isEmpty() ? "" : String.join(", ", group.getValue()) + ": ";
            page.hanging(page.left(start, LABEL) + "  ", labels + group.getKey());
            start = "";
        }
    }

    String summary(Page page) {
        List<VersePlace> places = wantingAttention();
        if (assessment.hymns().stream().allMatch(hymn -> hymn.verses().isEmpty())) {
            return "There are no verses yet.";
        }
        if (places.isEmpty()) {
            return cautions(page);
        }
        String those = places.stream()
                .map(place -> name(page, place) + " "
                        + assessment.at(place).estimate().balance().estimated().word())
                .collect(Collectors.joining(", "));
        List<Finding> besides = findings.stream()
                .filter(Finding::isStandingCaution)
                .filter(caution -> !places.contains(caution.place()))
                .toList();
        return places.size() + (places.size() == 1 ? " verse needs" : " verses need") + " attention: " + those + "."
                + (besides.isEmpty() ? "" : " Other cautions: " + named(page, besides) + ".");
    }

    private String cautions(Page page) {
        List<Finding> cautions =
                findings.stream().filter(Finding::isStandingCaution).toList();
        if (cautions.isEmpty()) {
            return "No verse needs attention.";
        }
        return "No verse needs attention, but there " + (cautions.size() == 1 ? "is " : "are ") + cautions.size()
                + (cautions.size() == 1 ? " caution: " : " cautions: ") + named(page, cautions) + ".";
    }

    private String named(Page page, List<Finding> cautions) {
        return cautions.stream()
                .map(caution ->
                        name(page, caution.place()) + " " + caution.rule().word())
                .collect(Collectors.joining(", "));
    }

    private String name(Page page, VersePlace place) {
        Hymn hymn = plan().hymn(place);
        String called = hymn.number().isBlank() ? page.shortened(hymn.title(), TITLE) : hymn.number();
        return called + " " + assessment.at(place).verse().label();
    }

    /**
     * The plan, and for every verse how it is played, how much louder it is than the verse before ("step"), the
     * feedback ("heard", "present"; null without any), the exposure of the ears, and the findings.
     */
    @Override
    public Json json() {
        return ReportFields.heading(plan())
                .with(ReportFields.hymns(plan(), part, this::verse))
                .put(
                        "ears",
                        new Json()
                                .put("minutes", ears.minutes(), 1)
                                .put("organist", ears.organist().map(AssessmentReport::seat))
                                .put("choir", ears.choir().map(AssessmentReport::seat)))
                .list("findings", findings, finding -> ReportFields.finding(plan(), finding));
    }

    private Json verse(VersePlace place) {
        Assessment.OfVerse of = assessment.at(place);
        Optional<Feedback> answer = of.verse().answer();
        return ReportFields.verse(of.verse())
                .with(ReportFields.levels(of.estimate()))
                .put(
                        "step",
                        of.step()
                                .map(step ->
                                        ReportFields.level("db", OptionalDouble.of(step.db()), step.plusMinusDb())))
                .put("heard", answer.map(each -> each.heard().word()))
                .put("present", answer.map(Feedback::present))
                .put("touch", ReportFields.touch(advice.touch(plan(), place)));
    }

    /**
     * A seat: its distance in m, the mean level and its standard deviation in dB, the share of NIOSH's daily dose in
     * percent, and the level over a day of 8 hours.
     */
    private static Json seat(NoiseExposure.Seat seat) {
        return new Json()
                .put("distanceM", seat.distanceM(), 1)
                .put("dbA", seat.levelDba(), 1)
                .put("plusMinusDb", seat.plusMinusDb(), 1)
                .put("nioshPercent", 100 * seat.share(), 1)
                .put("leastPercent", 100 * seat.leastShare(), 1)
                .put("mostPercent", 100 * seat.mostShare(), 1)
                .put("dayDbA", seat.dayDba(), 1);
    }
}
