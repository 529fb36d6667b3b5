package versewind.screen;

import java.util.OptionalInt;
import versewind.plan.Edit;
import versewind.plan.Heading;
import versewind.plan.Hymn;
import versewind.plan.Verse;

/** What becomes of a form that was filled in. */
final class Forms {

    /** The field of a form that asks for one thing. */
    private static final int ONLY = 0;

    private Forms() {}

    /** Keeps what was typed, or says what is wrong with it. */
    static Step keep(State state, Panel.Form form) {
        try {
            return kept(state, form);
        } catch (FilledForm.Wrong wrong) {
            return Step.to(state.with(form.complaining(wrong.field(), wrong.getMessage())));
        }
    }

    private static Step kept(State state, Panel.Form form) {
        Purpose purpose = form.purpose();
        FilledForm filled = new FilledForm(form);
        if (purpose instanceof Purpose.NewPlan newPlan) {
            return Filing.afterAsking(state, new Effect.CreatePlan(ServiceForm.heading(filled), newPlan.instrument()));
        }
        if (purpose instanceof Purpose.PlanFrom planFrom) {
            return Filing.afterAsking(state, ServiceForm.copy(planFrom.plan(), filled));
        }
        if (purpose instanceof Purpose.Rename rename) {
            return Step.to(state.with(rename.back()), new Effect.RenamePlan(rename.plan(), ServiceForm.title(filled)));
        }
        if (purpose instanceof Purpose.OrganLine line) {
            return Benching.kept(state.closed(), form, line);
        }
        if (purpose instanceof Purpose.OrganOfList list) {
            return Pasting.made(state, list, filled.text(ONLY));
        }
        return state.work().map(work -> kept(state.closed(), work, filled)).orElseGet(() -> Step.to(state.closed()));
    }

    /** Keeps what changes the plan that is open. */
    private static Step kept(State closed, Work work, FilledForm filled) {
        Purpose purpose = filled.form().purpose();
        if (purpose instanceof Purpose.VerseTexts && work.verse().isPresent()) {
            return Handler.change(closed, work, VerseForm.verse(filled, work));
        }
        if (purpose instanceof Purpose.MeterReading && work.verse().isPresent()) {
            return Metering.taken(
                    closed, work, MeterForm.reading(filled, work.verse().get(), closed.today()));
        }
        if (purpose instanceof Purpose.Silence silence) {
            return Heeding.silence(closed, work, silence, filled.text(ONLY));
        }
        if (purpose instanceof Purpose.Attended) {
            return Heeding.open(closed, work, OptionalInt.of(filled.number(ONLY, 1, Verse.MOST_PEOPLE)));
        }
        if (purpose instanceof Purpose.HymnTexts && work.hymn().isPresent()) {
            Hymn hymn = HymnForm.hymn(filled, work.hymn().get().verses());
            return Handler.edit(closed, work, new Edit.SetHymn(work.place().hymn(), hymn), work.place());
        }
        if (purpose instanceof Purpose.NewHymn newHymn) {
            Hymn hymn = HymnForm.made(filled, work.instrument(), work.plan().locks());
            return Handler.edit(closed, work, new Edit.InsertHymn(newHymn.at(), hymn));
        }
        if (purpose instanceof Purpose.SaveUnder) {
            return Filing.saveUnder(closed, work, ServiceForm.title(filled));
        }
        if (purpose instanceof Purpose.ServiceTexts) {
            Heading heading = ServiceForm.headingWithMoving(filled);
            return Handler.edit(closed, work, new Edit.SetHeading(heading), work.place());
        }
        return Step.to(closed);
    }
}
