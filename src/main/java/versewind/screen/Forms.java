package versewind.screen;

import java.util.OptionalInt;
import versewind.plan.Edit;
import versewind.plan.Hymn;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;

/** What becomes of a form that was filled in. */
final class Forms {

    /** The field of a form that asks for one thing. */
    private static final int ONLY = 0;

    private Forms() {}

    /** Keeps what was typed, or says what is wrong with it. */
    static Transition keep(State state, Panel.Form form) {
        try {
            return kept(state, form);
        } catch (FilledForm.Wrong wrong) {
            return Transition.to(state.with(form.complaining(wrong.field(), wrong.getMessage())));
        }
    }

    private static Transition kept(State state, Panel.Form form) {
        FormAction purpose = form.purpose();
        FilledForm filled = new FilledForm(form);
        if (purpose instanceof FormAction.NewPlan newPlan) {
            return FileCommands.afterAsking(
                    state, new Effect.CreatePlan(ServiceForm.heading(filled), newPlan.instrument()));
        }
        if (purpose instanceof FormAction.PlanFrom planFrom) {
            return FileCommands.afterAsking(state, ServiceForm.copy(planFrom.plan(), filled));
        }
        if (purpose instanceof FormAction.Rename rename) {
            return Transition.to(
                    state.with(rename.back()), new Effect.RenamePlan(rename.plan(), ServiceForm.title(filled)));
        }
        if (purpose instanceof FormAction.OrganLine line) {
            return OrganEditCommands.kept(state.closed(), form, line);
        }
        if (purpose instanceof FormAction.OrganOfList list) {
            return PasteCommands.made(state, list, filled.text(ONLY));
        }
        return state.work()
                .map(work -> kept(state.closed(), work, filled))
                .orElseGet(() -> Transition.to(state.closed()));
    }

    /** Keeps what changes the plan that is open. */
    private static Transition kept(State closed, PlanEdit work, FilledForm filled) {
        FormAction purpose = filled.form().purpose();
        if (purpose instanceof FormAction.VerseTexts && work.verse().isPresent()) {
            return Handler.change(closed, work, VerseForm.verse(filled, work));
        }
        if (purpose instanceof FormAction.MeterReading && work.verse().isPresent()) {
            return MeterCommands.taken(
                    closed, work, MeterForm.reading(filled, work.verse().get(), closed.today()));
        }
        if (purpose instanceof FormAction.Silence silence) {
            return FindingsCommands.silence(closed, work, silence, filled.text(ONLY));
        }
        if (purpose instanceof FormAction.Attended) {
            return FindingsCommands.open(closed, work, OptionalInt.of(filled.number(ONLY, 1, Verse.MOST_PEOPLE)));
        }
        if (purpose instanceof FormAction.HymnTexts && work.hymn().isPresent()) {
            Hymn hymn = HymnForm.hymn(filled, work.hymn().get().verses());
            return Handler.edit(closed, work, new Edit.SetHymn(work.place().hymn(), hymn), work.place());
        }
        if (purpose instanceof FormAction.NewHymn newHymn) {
            Hymn hymn = HymnForm.made(filled, work.instrument(), work.plan().locks());
            return Handler.edit(closed, work, new Edit.InsertHymn(newHymn.at(), hymn));
        }
        if (purpose instanceof FormAction.SaveUnder) {
            return FileCommands.saveUnder(closed, work, ServiceForm.title(filled));
        }
        if (purpose instanceof FormAction.ServiceTexts) {
            ServiceHeading heading = ServiceForm.headingWithMoving(filled);
            return Handler.edit(closed, work, new Edit.SetHeading(heading), work.place());
        }
        return Transition.to(closed);
    }
}
