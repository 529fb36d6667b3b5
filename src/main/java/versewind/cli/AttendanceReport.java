package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.plan.VersePlace;
import versewind.rules.Assessment;
import versewind.rules.Attendance;
import versewind.rules.Caution;
import versewind.rules.Mend;
import versewind.sheet.LevelText;
import versewind.sound.Estimate;
import versewind.sound.Verdict;
import versewind.store.OpenPlan;

/** A plan with different numbers of people: a table for every hymn, three numbers side by side. */
record AttendanceReport(OpenPlan open, PartOfPlan part, Attendance attendance) implements Report {

    private static final int ABREAST = 3;
    private static final int REMEDY = 14;
    private static final int LABEL = 5;
    private static final int[] CELLS = {-5, -5, -4, 11};
    private static final int COLUMN = 25;
    private static final String HEADS = " org. sung share         ";

    @Override
    public void print(Page page) {
        page.heading(open.plan().heading(), open.instrument());
        page.line("organ " + offBy(estimate -> estimate.plusMinus().organDb()) + " and singing "
                + offBy(estimate -> estimate.plusMinus().singersDb()) + " in dB(A) at most");
        part.hymns(open.plan()).forEach(hymn -> hymn(page, hymn));
        page.blank();
        summaries(page, open.instrument().room().seats());
        if (open.plan().verses().anyMatch(Attendance::hasOwnNumber)) {
            page.paragraph("Verses with their own number of people keep it.");
        }
        page.paragraph(Caution.ESTIMATE);
        Caution.organ(open.instrument()).forEach(page::paragraph);
    }

    /** "±6": the largest standard deviation of all verses. */
    private String offBy(ToDoubleFunction<Estimate> plusMinusDb) {
        return LevelText.plusMinus(attendance.assessments().stream()
                .flatMap(assessment -> assessment.hymns().stream())
                .flatMap(hymn -> hymn.verses().stream())
                .map(Assessment.OfVerse::estimate)
                .mapToDouble(plusMinusDb)
                .max()
                .orElse(0));
    }

    private void hymn(Page page, int hymn) {
        Assessment.OfHymn first = attendance.assessments().get(0).hymns().get(hymn);
        page.hymn(first.hymn());
        List<Integer> people = first.verses().isEmpty() ? List.of() : attendance.people();
        for (int from = 0; from < people.size(); from += ABREAST) {
            int to = Math.min(people.size(), from + ABREAST);
            List<Assessment.OfHymn> abreast = attendance.assessments().subList(from, to).stream()
                    .map(assessment -> assessment.hymns().get(hymn))
                    .toList();
            page.line(page.left("", LABEL)
                    + people.subList(from, to).stream()
                            .map(number -> page.left(" " + Page.people(number), COLUMN))
                            .collect(Collectors.joining()));
            page.line(page.left("verse", LABEL) + HEADS.repeat(to - from));
            for (VersePlace place : part.places(open.plan(), hymn)) {
                int verse = place.verse();
                page.line(page.left(first.verses().get(verse).verse().label(), LABEL)
                        + abreast.stream()
                                .map(each -> cells(page, each.verses().get(verse)))
                                .collect(Collectors.joining()));
            }
        }
    }

    private static String cells(Page page, Assessment.OfVerse of) {
        Estimate estimate = of.estimate();
        Verdict verdict = estimate.balance().estimated();
        String word = verdict == Verdict.ORGAN_ALONE ? "alone" : verdict.word();
        return page.cells(
                "",
                CELLS,
                LevelText.whole(estimate.organDba()),
                LevelText.whole(estimate.singersDba()),
                estimate.balance().share().isPresent()
                        ? LevelText.percent(estimate.balance().share().getAsDouble())
                        : LevelText.NONE,
                (of.wantsAttention() ? "!" : " ") + word);
    }

    private void summaries(Page page, int seats) {
        for (int i = 0; i < attendance.people().size(); i++) {
            int number = attendance.people().get(i);
            int wanting = wantingAttention(i).size();
            String verses = wanting == 0 ? "no verse needs" : wanting == 1 ? "1 verse needs" : wanting + " verses need";
            String more = seats > 0 && number > seats ? " There are " + seats + " seats." : "";
            page.paragraph("With " + Page.people(number) + " " + verses + " attention." + more);
            remedies(page, i);
        }
    }

    /** The fix for each verse that fails with a number of people. */
    private void remedies(Page page, int number) {
        Assessment assessment = attendance.assessments().get(number);
        for (VersePlace place : wantingAttention(number)) {
            String hymn = open.plan().hymn(place).number();
            String called = hymn.isBlank() ? Integer.toString(place.hymn() + 1) : hymn;
            page.hanging(
                    page.left("  " + called + " " + assessment.at(place).verse().label(), REMEDY) + " ",
                    mend(number, place).orElse("No change of stops on this organ is enough."));
        }
    }

    private List<VersePlace> wantingAttention(int number) {
        return attendance.assessments().get(number).wantingAttention().stream()
                .filter(part::has)
                .toList();
    }

    /** Whether a verse that is shown needs attention with one of the numbers. */
    boolean wantsAttention() {
        return IntStream.range(0, attendance.people().size())
                .anyMatch(number -> !wantingAttention(number).isEmpty());
    }

    private Optional<String> mend(int number, VersePlace place) {
        return Optional.ofNullable(attendance.remedies().get(number).get(place)).map(Mend::words);
    }

    /**
     * In every verse, "people" has an object for each number, with the number as "count", the fields of a verse that
     * depend on it, and what makes it hold where it fails ("mend"; null where it does not, or nothing does).
     */
    @Override
    public Json json() {
        return ReportFields.heading(open.plan()).with(ReportFields.hymns(open.plan(), part, place -> ReportFields.verse(
                        open.plan().verse(place))
                .list(
                        "people",
                        IntStream.range(0, attendance.people().size()).boxed().toList(),
                        number -> people(number, place))));
    }

    private Json people(int number, VersePlace place) {
        return new Json()
                .put("count", attendance.people().get(number))
                .with(ReportFields.levels(
                        attendance.assessments().get(number).at(place).estimate()))
                .put("mend", mend(number, place));
    }
}
