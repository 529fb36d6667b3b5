package versewind.screen;

import java.util.OptionalInt;
import versewind.advice.Rule;
import versewind.organ.Instrument;
import versewind.plan.Place;
import versewind.workshop.OrganDraft;

/** What happens with a form. */
sealed interface Purpose {

    /** Label, number of people, piston and note of the current verse. */
    record VerseTexts() implements Purpose {}

    /** The texts of the current hymn. */
    record HymnTexts() implements Purpose {}

    /** A hymn that is put in at an index. */
    record NewHymn(int at) implements Purpose {}

    /** Title, date and people of the service. */
    record ServiceTexts() implements Purpose {}

    /** A meter's reading of the current verse. */
    record MeterReading() implements Purpose {}

    /** The note with which a rule is silenced for a verse. */
    record Silence(Place place, Rule rule, OptionalInt people) implements Purpose {}

    /** Before how many people the plan is to be looked at. */
    record Attended() implements Purpose {}

    /** A new plan on an instrument. */
    record NewPlan(String instrument) implements Purpose {}

    /** A new plan that starts as a copy of one. */
    record PlanFrom(String plan) implements Purpose {}

    /** Another title for a plan in the library, to which we then go back. */
    record Rename(String plan, Panel.Library back) implements Purpose {}

    /** A line of the organ that is being changed, or one put into its draft. */
    record OrganLine(OrganDraft draft, int line, Instrument organ) implements Purpose {}

    /** The name of an organ that is made of a stop list. */
    record OrganOfList(String text, Panel.StopText back) implements Purpose {}

    /** The plan that is open, in a file of its own under another title. */
    record SaveUnder() implements Purpose {}
}
