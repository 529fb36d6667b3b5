package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.plan.ChurchYear;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.Assessment;
import versewind.rules.Caution;
import versewind.rules.Finding;
import versewind.rules.NoiseExposure;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;
import versewind.sound.StdDevs;
import versewind.store.OpenPlan;

/** A plan's assessment as plain text: a table for every hymn, a summary, what to keep in mind. */
final class AssessmentText {

    private static final String HEADS_ABOVE =
            "                                 organ        sung margin                    lag";
    private static final String HEADS =
            "verse   mode          singing     dB(A)       dB(A)     dB verdict            ms";

    private static final int TITLE = 24;
    private static final int LABEL = 7;
    private static final int MODE = 13;
    private static final int SINGING = 10;
    private static final int LEVEL = 6;
    private static final int DYNAMIC = 3;
    private static final int MARGIN = 6;
    private static final int VERDICT = 16;
    private static final int LAG = 3;

    private final Page page;
    private final Assessment assessment;
    private final AdviceText advice;

    private AssessmentText(Page page, Assessment assessment, AdviceText advice) {
        this.page = page;
        this.assessment = assessment;
        this.advice = advice;
    }

    static String of(
            OpenPlan open, Assessment assessment, NoiseExposure ears, Advice advice, CharsetFallback lettering) {
        Page page = new Page(lettering);
        Plan plan = open.plan();
        Instrument instrument = open.instrument();
        AdviceText adviceText = new AdviceText(page, plan, advice);
        AssessmentText text = new AssessmentText(page, assessment, adviceText);
        heading(page, plan.heading(), instrument);
        page.line(AttendanceText.people(plan.heading().people()) + " expected");
        for (int hymn = 0; hymn < assessment.hymns().size(); hymn++) {
            text.hymn(assessment.hymns().get(hymn), hymn);
        }
        page.blank();
        page.paragraph(text.summary());
        adviceText.silenced();
        page.paragraph(Caution.ESTIMATE);
        Caution.room(instrument.room()).ifPresent(page::paragraph);
        Caution.hearing(assessment.loudestDba()).ifPresent(page::paragraph);
        ears.words().ifPresent(page::paragraph);
        return page.text();
    }

    /** The first lines: the service and its instrument. */
    static void heading(Page page, ServiceHeading heading, Instrument instrument) {
        page.line(heading.title() + heading.date().map(date -> ", " + date).orElse(""));
        heading.date()
                .flatMap(ChurchYear::day)
                .ifPresent(day ->
                        page.paragraph(day.summary() + ", " + day.occasion().suggestion() + "."));
        page.line(instrument.toString());
    }

    private void hymn(Assessment.OfHymn of, int index) {
        page.blank();
        page.line(name(of.hymn()));
        if (of.verses().isEmpty()) {
            page.line("no verse yet");
            return;
        }
        page.line(HEADS_ABOVE);
        page.line(HEADS);
        of.verses().forEach(verse -> page.line(row(verse)));
        said("steps", "From verse to verse, in dB: ", of, this::step);
        said("heard", "After the service: ", of, AssessmentText::heard);
        advice.hymn(index);
    }

    /** What there is to say of some of the verses, in one paragraph. */
    private void said(
            String head, String start, Assessment.OfHymn of, Function<Assessment.OfVerse, Optional<String>> words) {
        String all = of.verses().stream()
                .flatMap(verse -> words.apply(verse).map(each -> verse.verse().label() + " " + each).stream())
                .collect(Collectors.joining(", "));
        if (!all.isEmpty()) {
            page.hanging(page.left(head, LABEL) + "  ", start + all + ".");
        }
    }

    private Optional<String> step(Assessment.OfVerse of) {
        return of.step()
                .map(step -> LevelText.signed(OptionalDouble.of(step.db())) + LevelText.plusMinus(step.plusMinusDb()));
    }

    private static Optional<String> heard(Assessment.OfVerse of) {
        return of.verse()
                .answer()
                .map(answer -> answer.heard().word() + " (" + AttendanceText.people(answer.present()) + ")");
    }

    /** The line over a hymn. */
    static String name(Hymn hymn) {
        return (hymn.number() + "  " + hymn.title()).strip();
    }

    private String row(Assessment.OfVerse of) {
        Verse verse = of.verse();
        Estimate estimate = of.estimate();
        boolean isSung = verse.isSung();
        StdDevs plusMinus = estimate.plusMinus();
        return row(
                verse.label(),
                isSung || verse.mode() == Mode.MELODY_SOLOED ? verse.mode().word() : LevelText.NONE,
                isSung ? verse.singing().word() : LevelText.NONE,
                LevelText.whole(estimate.organDba(), plusMinus.organDb()),
                estimate.dynamic().map(Dynamic::word).orElse(""),
                LevelText.whole(estimate.singersDba(), plusMinus.singersDb()),
                LevelText.signed(estimate.margin()),
                (of.wantsAttention() ? "!" : " ") + estimate.margin().words(),
                isSung ? LevelText.whole(estimate.lagMs()) : LevelText.NONE);
    }

    private String row(
            String label,
            String mode,
            String singing,
            String organ,
            String dynamic,
            String sung,
            String margin,
            String verdict,
            String lag) {
        return page.left(label, LABEL) + " " + page.left(mode, MODE) + " " + page.left(singing, SINGING) + " "
                + page.right(organ, LEVEL) + " " + page.left(dynamic, DYNAMIC) + " " + page.right(sung, LEVEL) + " "
                + page.right(margin, MARGIN) + " " + page.left(verdict, 1 + VERDICT) + " " + page.right(lag, LAG);
    }

    private String summary() {
        List<VersePlace> places = assessment.wantingAttention();
        if (assessment.hymns().stream().allMatch(hymn -> hymn.verses().isEmpty())) {
            return "There is no verse yet.";
        }
        if (places.isEmpty()) {
            return cautions(advice.cautions());
        }
        String those = places.stream().map(this::words).collect(Collectors.joining(", "));
        return places.size() + (places.size() == 1 ? " verse wants" : " verses want") + " attention: " + those + ".";
    }

    private String cautions(List<Finding> cautions) {
        if (cautions.isEmpty()) {
            return "No verse wants attention.";
        }
        String those = cautions.stream()
                .map(caution -> name(caution.place()) + " " + caution.rule().word())
                .collect(Collectors.joining(", "));
        return "The leads are well, but " + cautions.size()
                + (cautions.size() == 1 ? " caution stands: " : " cautions stand: ") + those + ".";
    }

    private String words(VersePlace place) {
        return name(place) + " "
                + assessment.at(place).estimate().margin().verdict().word();
    }

    private String name(VersePlace place) {
        Hymn hymn = assessment.hymns().get(place.hymn()).hymn();
        String called = hymn.number().isBlank() ? page.shortened(hymn.title(), TITLE) : hymn.number();
        return called + " " + assessment.at(place).verse().label();
    }
}
