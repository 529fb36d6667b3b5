package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.rules.Assessment;
import versewind.rules.Attendance;
import versewind.rules.Caution;
import versewind.rules.Mend;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/** A plan before different numbers of people, as plain text: for every hymn a table, three numbers abreast. */
final class AttendanceText {

    private static final int ABREAST = 3;
    private static final int REMEDY = 14;
    private static final int LABEL = 5;
    private static final int LEVEL = 5;
    private static final int MARGIN = 4;
    private static final int VERDICT = 11;
    private static final int COLUMN = 2 * LEVEL + MARGIN + VERDICT;
    private static final String HEADS = " org. sung  dB           ";

    private final Page page;
    private final Attendance attendance;

    private AttendanceText(Page page, Attendance attendance) {
        this.page = page;
        this.attendance = attendance;
    }

    static String of(Plan plan, Instrument instrument, Attendance attendance, CharsetFallback lettering) {
        Page page = new Page(lettering);
        AttendanceText text = new AttendanceText(page, attendance);
        AssessmentText.heading(page, plan.heading(), instrument);
        page.line("organ " + text.offBy(estimate -> estimate.plusMinus().organDb()) + " and singing "
                + text.offBy(estimate -> estimate.plusMinus().singersDb()) + " in dB(A), the margin "
                + text.offBy(estimate -> estimate.margin().plusMinusDb().orElse(0)) + " in dB, at most");
        for (int hymn = 0; hymn < plan.hymns().size(); hymn++) {
            text.hymn(hymn);
        }
        page.blank();
        text.summaries(instrument.room().seats());
        if (plan.hymns().stream().flatMap(hymn -> hymn.verses().stream()).anyMatch(Attendance::hasOwnNumber)) {
            page.paragraph("A verse with its own number of people keeps it.");
        }
        page.paragraph(Caution.ESTIMATE);
        Caution.room(instrument.room()).ifPresent(page::paragraph);
        return page.text();
    }

    /** "±6": what is said of all verses, the farthest off. */
    private String offBy(ToDoubleFunction<Estimate> plusMinusDb) {
        return LevelText.plusMinus(attendance.assessments().stream()
                .flatMap(assessment -> assessment.hymns().stream())
                .flatMap(hymn -> hymn.verses().stream())
                .map(Assessment.OfVerse::estimate)
                .mapToDouble(plusMinusDb)
                .max()
                .orElse(0));
    }

    /** "1 person", "40 people". */
    static String people(int number) {
        return number + (number == 1 ? " person" : " people");
    }

    private void hymn(int hymn) {
        page.blank();
        Assessment.OfHymn first = attendance.assessments().get(0).hymns().get(hymn);
        page.line(AssessmentText.name(first.hymn()));
        if (first.verses().isEmpty()) {
            page.line("no verse yet");
            return;
        }
        List<Integer> people = attendance.people();
        for (int from = 0; from < people.size(); from += ABREAST) {
            int to = Math.min(people.size(), from + ABREAST);
            List<Assessment.OfHymn> abreast = attendance.assessments().subList(from, to).stream()
                    .map(assessment -> assessment.hymns().get(hymn))
                    .toList();
            page.line(page.left("", LABEL)
                    + people.subList(from, to).stream()
                            .map(number -> page.left(" " + people(number), COLUMN))
                            .collect(Collectors.joining()));
            page.line(page.left("verse", LABEL) + HEADS.repeat(to - from));
            for (int verse = 0; verse < first.verses().size(); verse++) {
                row(abreast, verse);
            }
        }
    }

    private void row(List<Assessment.OfHymn> abreast, int verse) {
        String label = abreast.get(0).verses().get(verse).verse().label();
        page.line(page.left(label, LABEL)
                + abreast.stream().map(hymn -> cells(hymn.verses().get(verse))).collect(Collectors.joining()));
    }

    private String cells(Assessment.OfVerse of) {
        Estimate estimate = of.estimate();
        Verdict verdict = estimate.margin().verdict();
        String word = verdict == Verdict.ORGAN_ALONE ? "alone" : verdict.word();
        return page.right(LevelText.whole(estimate.organDba()), LEVEL)
                + page.right(LevelText.whole(estimate.singersDba()), LEVEL)
                + page.right(LevelText.signed(estimate.margin().db()), MARGIN)
                + page.left((of.wantsAttention() ? "!" : " ") + word, VERDICT);
    }

    /** What makes each of the verses hold that fail before a number of people. */
    private void remedies(int number) {
        for (VersePlace place : attendance.assessments().get(number).wantingAttention()) {
            Assessment.OfHymn hymn =
                    attendance.assessments().get(number).hymns().get(place.hymn());
            String label = hymn.verses().get(place.verse()).verse().label();
            String called = hymn.hymn().number().isBlank()
                    ? Integer.toString(place.hymn() + 1)
                    : hymn.hymn().number();
            String mend = Optional.ofNullable(attendance.remedies().get(number).get(place))
                    .map(Mend::words)
                    .orElse("No change within the steps of the organ is enough.");
            page.hanging(page.left("  " + called + " " + label, REMEDY) + " ", mend);
        }
    }

    private void summaries(int seats) {
        for (int i = 0; i < attendance.people().size(); i++) {
            int number = attendance.people().get(i);
            int wanting = attendance.assessments().get(i).wantingAttention().size();
            String verses = wanting == 0 ? "no verse wants" : wanting == 1 ? "1 verse wants" : wanting + " verses want";
            String more = seats > 0 && number > seats ? " There are " + seats + " seats." : "";
            page.paragraph("With " + people(number) + " " + verses + " attention." + more);
            remedies(i);
        }
    }
}
