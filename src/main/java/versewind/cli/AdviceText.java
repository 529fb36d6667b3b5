package versewind.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.Finding;
import versewind.rules.Mend;
import versewind.rules.Touch;

/** What was found in a hymn and how to play it, under its table. */
final class AdviceText {

    private static final int LABEL = 7;

    private final Page page;
    private final Plan plan;
    private final Advice advice;
    private final List<Finding> findings;

    AdviceText(Page page, Plan plan, Advice advice) {
        this.page = page;
        this.plan = plan;
        this.advice = advice;
        findings = advice.findings(plan);
    }

    void hymn(int hymn) {
        findings.stream()
                .filter(finding -> finding.place().hymn() == hymn && !finding.isSilenced())
                .forEach(this::finding);
        List<Verse> verses = plan.hymns().get(hymn).verses();
        Map<String, List<String>> touches = new LinkedHashMap<>();
        Map<String, List<String>> times = new LinkedHashMap<>();
        for (int verse = 0; verse < verses.size(); verse++) {
            Touch touch = advice.touch(plan, new VersePlace(hymn, verse));
            String label = verses.get(verse).label();
            gather(touches, touch.sentence(), label);
            times.putIfAbsent(touch.breath(), new ArrayList<>());
            touch.lag().ifPresent(lag -> gather(times, lag, label));
        }
        groups("touch", touches);
        groups("time", times);
    }

    private static void gather(Map<String, List<String>> groups, String sentence, String label) {
        groups.computeIfAbsent(sentence, any -> new ArrayList<>()).add(label);
    }

    private void finding(Finding finding) {
        Verse verse = plan.hymns()
                .get(finding.place().hymn())
                .verses()
                .get(finding.place().verse());
        String mend = finding.mend().map(Mend::words).map(words -> " " + words).orElse("");
        page.hanging(
                page.left(verse.label(), LABEL) + "  ", finding.severity().word() + ": " + finding.sentence() + mend);
    }

    /** Sentences, each after the verses that it is about; a sentence about all stands alone. */
    private void groups(String head, Map<String, List<String>> groups) {
        String start = head;
        for (Map.Entry<String, List<String>> group : groups.entrySet()) {
            String labels = group.getValue().isEmpty() ? "" : String.join(", ", group.getValue()) + ": ";
            page.hanging(page.left(start, LABEL) + "  ", labels + group.getKey());
            start = "";
        }
    }

    /** The cautions that stand. */
    List<Finding> cautions() {
        return findings.stream().filter(Finding::isStandingCaution).toList();
    }

    /** How many findings were silenced, if any were. */
    void silenced() {
        long count = findings.stream().filter(Finding::isSilenced).count();
        if (count > 0) {
            page.paragraph(count + (count == 1 ? " finding is" : " findings are") + " silenced in the plan.");
        }
    }
}
