package versewind.screen.plan;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Experience;
import versewind.calibration.HeardRegistration;
import versewind.organ.Instrument;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.rules.OrdinaryHymn;
import versewind.schema.HeardFields;
import versewind.schema.OrganNames;
import versewind.screen.state.FormBox;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.RowForm;
import versewind.screen.state.State;

/** The form of a usual registration: what is drawn, for how many, and how that is felt. */
final class UsualForm {

    private UsualForm() {}

    /** The form of one that is kept. */
    static FormBox of(HeardRegistration usual, CalibratedOrgan organ, UsualScreen.Owner owner) {
        return of("Usual registration", usual, Optional.of(usual), organ, owner);
    }

    /** The form of the program's own guess. */
    static FormBox ofGuess(CalibratedOrgan organ, UsualScreen.Owner owner) {
        OrdinaryHymn guess = OrdinaryHymn.of(organ.sound());
        Feedback right = new Feedback(HeardAs.RIGHT, guess.people());
        String name = freeName(organ.experience(), guess.verse().singing().word());
        String title = organ.experience().usual().isEmpty() ? PlanEdit.USUAL_QUESTION : "Usual registration";
        return of(title, HeardRegistration.of(name, guess.verse(), right), Optional.empty(), organ, owner);
    }

    /** The form of what is drawn in a verse. */
    static State ofVerse(State state, PlanEdit work, Verse verse) {
        int people = verse.mode() == Mode.SMALL_CHOIR
                ? work.plan().heading().people()
                : verse.people().orElse(work.plan().heading().people());
        if (work.sound().estimate(verse, people, OptionalInt.empty()).isSilent()) {
            return state.says("Nothing sounds here. Draw a registration first.");
        }
        Verse sung = verse.kind().isOrganAlone() ? verse.withMode(Mode.CONGREGATION) : verse;
        HeardRegistration drawn = HeardRegistration.of(
                freeName(work.organ().experience(), verse.singing().word()), sung, new Feedback(HeardAs.RIGHT, people));
        return state.open(of("Keep as usual", drawn, Optional.empty(), work.organ(), UsualScreen.Owner.PLAN));
    }

    /** Named by how they sing: "ordinary", "gentle"; "ordinary 2" where that is taken. */
    private static String freeName(Experience known, String word) {
        return IntStream.rangeClosed(1, Experience.MOST_USUAL + 1)
                .mapToObj(number -> number == 1 ? word : word + " " + number)
                .filter(name -> known.usual(name).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private static FormBox of(
            String title,
            HeardRegistration usual,
            Optional<HeardRegistration> kept,
            CalibratedOrgan organ,
            UsualScreen.Owner owner) {
        Instrument instrument = organ.sound().organ();
        RowForm<HeardRegistration> row =
                new RowForm<>(HeardFields.USUAL.table(), HeardFields.USUAL.asked(), usual, OrganNames.of(instrument));
        return FormBox.of(title, row.fields(), (form, closed) -> {
            HeardRegistration typed = row.typed(form);
            Experience others = kept.filter(before -> !before.name().equals(typed.name()))
                    .map(organ.experience()::without)
                    .orElse(organ.experience());
            try {
                Experience next = others.keeping(typed);
                return closed.wants(owner.keeping(next, organ.experience()));
            } catch (IllegalArgumentException tooMany) {
                throw new FormBox.Wrong(0, "There are " + Experience.MOST_USUAL + " already. Remove one first.");
            }
        });
    }
}
