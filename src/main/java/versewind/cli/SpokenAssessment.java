package versewind.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import versewind.organ.Count;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Assessment;
import versewind.rules.Caution;
import versewind.rules.Finding;
import versewind.rules.Mend;
import versewind.rules.StopChanges;
import versewind.rules.StopChangesByDivision;
import versewind.rules.Touch;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;
import versewind.sound.Balance;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;

/**
 * An assessment for who hears it: a sentence a verse, and once for the service what is so in every hymn.
 *
 * @param of what is told
 */
record SpokenAssessment(AssessmentReport of) implements Report {

    @Override
    public void print(Page page) {
        page.heading(plan().heading(), of.open().instrument());
        page.paragraph(Page.people(plan().heading().people()) + " expected. " + of.summary(page));
        for (int hymn : of.part().hymns(plan())) {
            Hymn sung = plan().hymns().get(hymn);
            page.blank();
            page.paragraph("Hymn " + (sung.number() + " " + sung.title()).strip() + ".");
            Optional<VersePlace> before = Optional.empty();
            for (VersePlace place : of.part().places(plan(), hymn)) {
                page.paragraph(verse(place, before));
                of.findings().stream()
                        .filter(finding -> finding.place().equals(place) && !finding.isSilenced())
                        .forEach(finding -> page.paragraph(words(finding)));
                before = Optional.of(place);
            }
        }
        page.blank();
        playing().forEach((sentence, verses) -> page.paragraph(verses + sentence));
        page.paragraph(Caution.ESTIMATE);
        Caution.hearing(of.assessment().loudestDba()).ifPresent(page::paragraph);
    }

    private Plan plan() {
        return of.open().plan();
    }

    /** "V2: congregation of 480, ordinary; forte, 80 decibels, leads, 8 in 10; 1 dB louder than V1; draw Oboe 8.". */
    private String verse(VersePlace place, Optional<VersePlace> before) {
        Assessment.OfVerse verse = of.assessment().at(place);
        Estimate estimate = verse.estimate();
        List<String> parts = new ArrayList<>();
        parts.add(verse.verse().label() + ": "
                + Wording.who(verse.verse(), plan().heading().people(), estimate));
        parts.add(sound(estimate));
        before.map(plan()::verse).ifPresent(last -> verse.step()
                .map(step -> Math.round(step.db()))
                .ifPresent(db -> parts.add(
                        db == 0
                                ? "as loud as " + last.label()
                                : "about " + Count.of(Math.abs(db), "decibel") + " " + (db > 0 ? "louder" : "softer")
                                        + " than " + last.label())));
        parts.add(moved(verse.verse(), before.map(plan()::verse)));
        return parts.stream().filter(part -> !part.isBlank()).collect(Collectors.joining("; ")) + ".";
    }

    private static String sound(Estimate estimate) {
        List<String> parts = new ArrayList<>();
        estimate.dynamic().map(SpokenAssessment::inWords).ifPresent(parts::add);
        estimate.organDba().ifPresent(dba -> parts.add(Math.round(dba) + " decibels"));
        if (estimate.balance().kind() != Balance.Kind.ORGAN_ALONE) {
            parts.add(Wording.verdict(estimate.balance()));
        }
        return String.join(", ", parts);
    }

    private static String inWords(Dynamic dynamic) {
        return switch (dynamic) {
            case PP -> "pianissimo";
            case P -> "piano";
            case MP -> "mezzo piano";
            case MF -> "mezzo forte";
            case F -> "forte";
            case FF -> "fortissimo";
            case FFF -> "triple forte";
        };
    }

    /** What is drawn and put in since the verse before; of the first all that is drawn. */
    private String moved(Verse verse, Optional<Verse> before) {
        StopChanges moves = StopChanges.between(
                before.map(Verse::registration)
                        .orElse(Registration.silent(of.open().instrument())),
                verse.registration());
        List<String> parts = new ArrayList<>();
        for (StopChangesByDivision each : StopChangesByDivision.of(of.open().instrument(), moves)) {
            List<String> here = new ArrayList<>();
            if (!each.drawn().isEmpty()) {
                here.add("draw " + String.join(", ", each.drawn()));
            }
            if (!each.putIn().isEmpty()) {
                here.add(Registration.PUT_IN + " " + String.join(", ", each.putIn()));
            }
            each.box().ifPresent(box -> here.add("box " + box.word()));
            parts.add(each.where() + " " + String.join(", ", here));
        }
        return parts.isEmpty() ? "no changes" : String.join("; ", parts);
    }

    private static String words(Finding finding) {
        return Text.capital(finding.severity().word()) + ": " + finding.sentence()
                + finding.mend().map(Mend::words).map(words -> " " + words).orElse("");
    }

    /** Touch and breath, each sentence once, after the verses it is for: all where there is nothing before it. */
    private Map<String, String> playing() {
        Map<String, List<String>> verses = new LinkedHashMap<>();
        int all = 0;
        for (int hymn : of.part().hymns(plan())) {
            for (VersePlace place : of.part().places(plan(), hymn)) {
                Touch touch = of.advice().touch(plan(), place);
                Hymn sung = plan().hymn(place);
                String name = (sung.number().isBlank() ? sung.title() : sung.number()) + " "
                        + plan().verse(place).label();
                verses.computeIfAbsent(touch.sentence(), none -> new ArrayList<>())
                        .add(name);
                verses.computeIfAbsent(touch.breath(), none -> new ArrayList<>())
                        .add(name);
                all++;
            }
        }
        int most = all;
        Map<String, String> said = new LinkedHashMap<>();
        verses.forEach(
                (sentence, names) -> said.put(sentence, names.size() == most ? "" : String.join(", ", names) + ": "));
        return said;
    }

    @Override
    public Json json() {
        return of.json();
    }
}
