package versewind.screen;

import java.util.OptionalInt;
import versewind.organ.Instrument;
import versewind.plan.VersePlace;
import versewind.rules.Rule;
import versewind.workshop.OrganDraft;

/** What happens with a form. */
sealed interface FormAction {

    /** Label, number of people, piston and note of the current verse. */
    record VerseTexts() implements FormAction {}

    /** The texts of the current hymn. */
    record HymnTexts() implements FormAction {}

    /** A hymn that is put in at an index. */
    record NewHymn(int at) implements FormAction {}

    /** Title, date and people of the service. */
    record ServiceTexts() implements FormAction {}

    /** A meter's reading of the current verse. */
    record MeterReading() implements FormAction {}

    /** The note with which a rule is silenced for a verse. */
    record Silence(VersePlace place, Rule rule, OptionalInt people) implements FormAction {}

    /** Before how many people the plan is to be looked at. */
    record Attended() implements FormAction {}

    /** A new plan on an instrument. */
    record NewPlan(String instrument) implements FormAction {}

    /** A new plan that starts as a copy of one. */
    record PlanFrom(String plan) implements FormAction {}

    /** Another title for a plan in the library, to which we then go back. */
    record Rename(String plan, Panel.Library back) implements FormAction {}

    /** A line of the organ that is being changed, or one put into its draft. */
    record OrganLine(OrganDraft draft, int line, Instrument organ) implements FormAction {}

    /** The name of an organ that is made of a stop list. */
    record OrganOfList(String text, Panel.StopText back) implements FormAction {}

    /** The plan that is open, in a file of its own under another title. */
    record SaveUnder() implements FormAction {}
}
