package versewind.screen.desk;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.Pressed;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.rules.StopChanges;
import versewind.rules.StopChangesByDivision;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;
import versewind.sound.Balance;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;

/**
 * What is heard at the desk: all that is to be done on arriving at a verse, and after another key what came of it.
 *
 * @param work the plan, and where
 * @param notes what is known at the desk
 * @param words what is written of the verse
 */
record SpokenDesk(PlanEdit work, DeskNotes notes, DeskWords words) {

    static final String NO_VERSE = "This plan has no verse to play yet.";

    /** After a key or from another screen. */
    String after(State before) {
        if (work.verse().isEmpty()) {
            return NO_VERSE;
        }
        boolean isSameVerse = before.work().map(PlanEdit::place).equals(Optional.of(work.place()));
        if (!(before.top() instanceof DeskScreen desk)) {
            return hymn() + verse(true);
        }
        if (!isSameVerse) {
            boolean isOtherHymn = before.work()
                    .filter(was -> was.place().hymn() == work.place().hymn())
                    .isEmpty();
            return (isOtherHymn ? hymn() : "") + verse(isOtherHymn);
        }
        DeskNotes was = desk.notes();
        if (was.steps(work.place()) != notes.steps(work.place())) {
            return stepped(was.played(work).verse(work.place()).registration());
        }
        return was.people(work) == notes.people(work) ? "" : notes.people(work) + " present. " + sound();
    }

    /** "Hymn 208 Come, carry in the harvest, tune Corvening. ". */
    private String hymn() {
        Hymn hymn = work.hymn().orElseThrow();
        String tune = hymn.tune().isBlank() ? "" : ", tune " + hymn.tune();
        return (hymn.number().isBlank() ? "" : "Hymn ") + hymn.name() + tune + ". ";
    }

    /** The verse, what is moved for it, who sings, and hands and feet where they are others. */
    private String verse(boolean isOtherHymn) {
        Plan plan = notes.played(work);
        Verse verse = plan.verse(work.place());
        Optional<Verse> before = plan.before(work.place()).stream().findFirst().map(plan::verse);
        String who = Wording.who(verse, plan.heading().people(), estimate());
        boolean isPlayedOtherwise =
                verse.isPlayed() && (isOtherHymn || !before.map(Verse::hands).equals(Optional.of(verse.hands())));
        String hands = isPlayedOtherwise ? Wording.handsInWords(work.instrument(), verse.hands()) : "";
        return sentences(
                Verses.inWords(work.verses(), work.place().verse()),
                before.isEmpty() && verse.isPlayed()
                        ? "set this before the service: " + set(verse)
                        : words.now().text(),
                hands.isEmpty() || verse.mode() != Mode.MELODY_SOLOED ? who : "",
                hands);
    }

    private static String sentences(String... sentences) {
        return Stream.of(sentences)
                .filter(words -> !words.isEmpty())
                .map(words -> Text.capital(words) + (words.endsWith(".") ? "" : "."))
                .collect(Collectors.joining(" "));
    }

    /** What is drawn for the first verse: by its piston and what that leaves, or all of it. */
    private String set(Verse verse) {
        Instrument organ = work.instrument();
        Registration drawn = verse.registration();
        if (words.piston().isEmpty()) {
            return Wording.drawn(organ, drawn, work.sound().sounding(drawn, verse.hands()));
        }
        Registration set = Pressed.of(organ, verse.piston())
                .press(
                        organ,
                        Registration.silent(organ),
                        work.plan().verse(work.place()).registration());
        List<String> byHand = StopChangesByDivision.words(organ, StopChanges.between(set, drawn));
        return Stream.concat(Stream.of("piston " + words.piston()), byHand.stream())
                .collect(Collectors.joining("; "));
    }

    /** "1 step louder than planned: draw Great Mixture III. Now ff, leads, 8 in 10.", from what was drawn. */
    private String stepped(Registration was) {
        int steps = notes.steps(work.place());
        Registration drawn = notes.played(work).verse(work.place()).registration();
        String moved =
                String.join("; ", StopChangesByDivision.words(work.instrument(), StopChanges.between(was, drawn)));
        return (steps == 0 ? "Back to the plan: " : DeskWords.stepped(steps) + " than planned: ") + moved + ". "
                + sound();
    }

    private Estimate estimate() {
        Plan plan = notes.played(work);
        return work.sound()
                .estimate(
                        plan.verse(work.place()),
                        plan.heading().people(),
                        plan.hymn(work.place()).tempo());
    }

    private String sound() {
        Estimate estimate = estimate();
        boolean isJudged = estimate.balance().kind() != Balance.Kind.ORGAN_ALONE;
        String verdict = isJudged ? Wording.verdict(estimate.balance()) : "";
        return "Now "
                + Stream.of(estimate.dynamic().map(Dynamic::word).orElse("silent"), verdict)
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining(", "))
                + ".";
    }
}
