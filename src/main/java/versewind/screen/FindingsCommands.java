package versewind.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.plan.Edit;
import versewind.plan.Plan;
import versewind.plan.Silenced;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.Finding;
import versewind.rules.Mend;

/** Reading what was found: going there, mending it, silencing it. */
final class FindingsCommands {
    private FindingsCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.FINDINGS, Handler.work((state, work) -> open(state, work, OptionalInt.empty())));
        handlers.put(
                Command.ATTENDED,
                Handler.work((state, work) -> Transition.to(
                        state.with(attendedForm(work.plan().heading().people())))));
        handlers.put(Command.FINDING_BELOW, panel((state, work, panel) -> toRow(state, panel, panel.at() + 1)));
        handlers.put(Command.FINDING_ABOVE, panel((state, work, panel) -> toRow(state, panel, panel.at() - 1)));
        handlers.put(
                Command.GO_THERE,
                marked((state, work, panel, finding) ->
                        Transition.to(state.closed().with(work.at(finding.place())))));
        handlers.put(Command.MEND, marked(FindingsCommands::mend));
        handlers.put(Command.SILENCE, marked(FindingsCommands::silenceOrHear));
        handlers.put(Command.CLOSE_FINDINGS, state -> Transition.to(state.closed()));
    }

    @FunctionalInterface
    private interface OnFindings {
        Transition on(State state, PlanEdit work, Panel.Findings panel);
    }

    @FunctionalInterface
    private interface OnFinding {
        Transition on(State state, PlanEdit work, Panel.Findings panel, Finding finding);
    }

    private static Handler panel(OnFindings handler) {
        return Handler.work((state, work) ->
                state.panel() instanceof Panel.Findings panel ? handler.on(state, work, panel) : Transition.to(state));
    }

    private static Handler marked(OnFinding handler) {
        return panel((state, work, panel) -> panel.marked()
                .map(finding -> handler.on(state, work, panel, finding))
                .orElseGet(() -> Transition.says(state, "There is nothing to say.")));
    }

    /** Opens the list at the first finding of the verse where we are, or after it. */
    static Transition open(State state, PlanEdit work, OptionalInt people) {
        List<Finding> rows = Advice.on(work.sound()).findings(attended(work.plan(), people));
        int at = 0;
        while (at < rows.size() - 1 && isBefore(rows.get(at).place(), work.place())) {
            at++;
        }
        return Transition.to(state.with(new Panel.Findings(rows, at, people)));
    }

    /** The plan before a number of people, if one is given. */
    static Plan attended(Plan plan, OptionalInt people) {
        return people.isPresent() ? plan.withPeople(people.getAsInt()) : plan;
    }

    private static boolean isBefore(VersePlace one, VersePlace other) {
        return one.hymn() < other.hymn() || (one.hymn() == other.hymn() && one.verse() < other.verse());
    }

    private static Transition toRow(State state, Panel.Findings panel, int row) {
        int at = Math.max(0, Math.min(row, panel.rows().size() - 1));
        return Transition.to(state.with(panel.at(at)));
    }

    private static Transition mend(State state, PlanEdit work, Panel.Findings panel, Finding finding) {
        if (finding.mend().isEmpty()) {
            return Transition.says(state, "There is no single change that mends it.");
        }
        Mend mend = finding.mend().get();
        return done(
                Handler.edit(state, work, mend.edit(), finding.place()),
                panel.people(),
                "Done: " + mend.words() + " After closing, u takes it back.");
    }

    private static Transition silenceOrHear(State state, PlanEdit work, Panel.Findings panel, Finding finding) {
        if (finding.isSilenced()) {
            Verse heard =
                    verse(work.plan(), finding.place()).hearing(finding.rule().word());
            return done(
                    Handler.edit(state, work, setVerse(finding.place(), heard), finding.place()),
                    panel.people(),
                    "It is heard again.");
        }
        return Transition.to(state.with(silenceForm(finding, panel.people())));
    }

    private static Panel.Form silenceForm(Finding finding, OptionalInt people) {
        return new Panel.Form(
                "Say no more of: " + finding.rule().word(),
                List.of(Panel.Field.of("Note", "", "why it is meant so; the plan keeps it; may be blank")),
                0,
                new FormAction.Silence(finding.place(), finding.rule(), people),
                "");
    }

    private static Panel.Form attendedForm(int expected) {
        String hint = "how many, 1 to " + Verse.MOST_PEOPLE + "; " + expected + " are expected";
        return new Panel.Form(
                "If only so many come", List.of(Panel.Field.of("People", "", hint)), 0, new FormAction.Attended(), "");
    }

    /** The rule of a form is silenced with the note that was typed. */
    static Transition silence(State state, PlanEdit work, FormAction.Silence purpose, String note) {
        Verse silenced = verse(work.plan(), purpose.place())
                .silencing(new Silenced(purpose.rule().word(), note));
        return done(
                Handler.edit(state, work, setVerse(purpose.place(), silenced), purpose.place()),
                purpose.people(),
                "Silenced for this verse; the plan keeps it. On it, s lets it be heard again.");
    }

    private static Edit setVerse(VersePlace place, Verse verse) {
        return new Edit.SetVerse(place.hymn(), place.verse(), verse);
    }

    private static Verse verse(Plan plan, VersePlace place) {
        return plan.hymns().get(place.hymn()).verses().get(place.verse());
    }

    /** The list as it is after an edit, marked near where it was. */
    private static Transition done(Transition edited, OptionalInt people, String sentence) {
        State state = edited.state();
        Optional<PlanEdit> work = state.work();
        return work.isEmpty()
                ? edited
                : new Transition(open(state, work.get(), people).state(), edited.effects()).saying(sentence);
    }

    /** Back to the list from a form that was left. */
    static Transition back(State state, OptionalInt people) {
        return state.work().map(work -> open(state, work, people)).orElseGet(() -> Transition.to(state.closed()));
    }
}
