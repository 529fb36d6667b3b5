package versewind.screen.plan;

import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Pressed;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.rules.Caution;
import versewind.rules.PistonChoice;
import versewind.schema.Field;
import versewind.schema.OrganNames;
import versewind.schema.VerseFields;
import versewind.screen.state.FormBox;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.RowForm;
import versewind.screen.state.State;

/** The form of the current verse. */
public final class VerseForm {

    private static final List<Field<Verse, ?>> ASKED =
            List.of(VerseFields.LABEL, VerseFields.PEOPLE, VerseFields.IN_TEN, VerseFields.PISTON, VerseFields.NOTE);

    static final int LABEL = ASKED.indexOf(VerseFields.LABEL);
    private static final int PISTON = ASKED.indexOf(VerseFields.PISTON);
    public static final int PEOPLE = ASKED.indexOf(VerseFields.PEOPLE);

    private VerseForm() {}

    static FormBox of(PlanEdit work, Verse verse, int at) {
        RowForm<Verse> row = new RowForm<>(VerseFields.TABLE, ASKED, verse, OrganNames.of(work.instrument()));
        return FormBox.of("Verse", row.fields(), (form, closed) -> {
                    Verse typed = labelled(onPiston(row.typed(form), verse, work.instrument()), work);
                    State after = told(closed, PlanChanges.change(closed, work, typed), verse, typed);
                    return onHeldPiston(typed, verse, work)
                            .or(() -> Caution.choir(typed, work.instrument().room()))
                            .map(after::warns)
                            .orElse(after);
                })
                .at(at);
    }

    /** A verse on another piston only if the organ has it, under its full name. */
    private static Verse onPiston(Verse typed, Verse before, Instrument organ) {
        if (typed.piston().equals(before.piston())) {
            return typed;
        }
        try {
            return typed.withPiston(Pressed.read(organ, typed.piston()).name(organ));
        } catch (NotationException unknown) {
            throw new FormBox.Wrong(PISTON, unknown.getMessage());
        }
    }

    /** What is wrong with another piston that is asked for. */
    private static Optional<String> onHeldPiston(Verse typed, Verse before, PlanEdit work) {
        return typed.piston().equals(before.piston())
                ? Optional.empty()
                : PistonChoice.warning(work.plan(), work.instrument(), work.place(), typed);
    }

    /** After the form, with the piston where it is another. */
    private static State told(State closed, State after, Verse before, Verse typed) {
        String piston = typed.piston();
        return piston.equals(before.piston())
                ? after
                : PlanChanges.told(closed, after, piston.isEmpty() ? "No piston." : "Piston " + piston + ".");
    }

    /** A verse whose label is left blank gets the one that it usually has. */
    private static Verse labelled(Verse verse, PlanEdit work) {
        return verse.label().isBlank()
                ? verse.withLabel(Verses.usualLabel(work.verses(), work.place().verse()))
                : verse;
    }
}
