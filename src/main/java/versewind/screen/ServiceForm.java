package versewind.screen;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import versewind.plan.ChurchDay;
import versewind.plan.ChurchYear;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;

/** The forms of a service, new, copied, renamed or open: what they ask, and the heading that the answers make. */
final class ServiceForm {

    private static final int TITLE = 0;
    private static final int DATE = 1;
    private static final int PEOPLE = 2;
    private static final int NOTES = 3;
    private static final int MOVING = 4;

    private static final int USUAL_PEOPLE = 100;

    private static final String DATE_HINT = "year-month-day, as 2026-10-04; may be blank";
    private static final String PEOPLE_HINT = "how many are expected, 1 to " + Verse.MOST_PEOPLE;

    private ServiceForm() {}

    static Panel.Form of(Plan plan) {
        return new Panel.Form("Service", fields(plan.heading()), TITLE, new FormAction.ServiceTexts(), "");
    }

    private static List<Panel.Field> fields(ServiceHeading heading) {
        return List.of(
                Panel.Field.of("Title", heading.title(), "the name of the service; needed"),
                Panel.Field.of("Date", heading.date().map(LocalDate::toString).orElse(""), DATE_HINT),
                Panel.Field.of("People", Integer.toString(heading.people()), PEOPLE_HINT),
                Panel.Field.of("Notes", heading.notes(), "for the desk"),
                Panel.Field.of(
                        "Moving",
                        Double.toString(heading.moveS()),
                        "seconds that a hand needs for one stop or coupler; an estimate, usually "
                                + ServiceHeading.USUAL_MOVE_S));
    }

    static Panel.Form ofNewPlan(State state, String instrument) {
        return ofPlan(
                state,
                "New plan for " + instrument,
                Integer.toString(USUAL_PEOPLE),
                new FormAction.NewPlan(instrument));
    }

    static Panel.Form ofPlanFrom(State state, Event.ListedPlan old) {
        return ofPlan(state, "New plan from \"" + old.title() + "\"", "", new FormAction.PlanFrom(old.id()));
    }

    private static Panel.Form ofPlan(State state, String title, String people, FormAction purpose) {
        List<Panel.Field> fields = List.of(
                Panel.Field.of("Title", "", "the name of the service; needed"),
                Panel.Field.of("Date", nextSunday(state.today()).toString(), DATE_HINT),
                Panel.Field.of("People", people, people.isEmpty() ? "as in the old plan, if blank" : PEOPLE_HINT),
                Panel.Field.of("Notes", "", "for the desk"));
        return new Panel.Form(title, fields, TITLE, purpose, "");
    }

    private static LocalDate nextSunday(LocalDate today) {
        return today.plusDays(7 - today.getDayOfWeek().getValue() % 7);
    }

    static Panel.Form ofRename(Event.ListedPlan plan, Panel.Library back) {
        return ofTitle("Rename", plan.title(), new FormAction.Rename(plan.id(), back));
    }

    static Panel.Form ofSaveUnder(PlanEdit work) {
        return ofTitle("Save under another title", work.plan().heading().title(), new FormAction.SaveUnder());
    }

    private static Panel.Form ofTitle(String title, String was, FormAction purpose) {
        Panel.Field field = Panel.Field.of("Title", was, "the name of the service, after which the file is named");
        return new Panel.Form(title, List.of(field), TITLE, purpose, "");
    }

    /** What is said of a field: for a date what the day is in the church's year, once it can be read. */
    static String hint(Panel.Field field) {
        if (!field.hint().equals(DATE_HINT)) {
            return field.hint();
        }
        try {
            return ChurchYear.day(LocalDate.parse(field.line().text().strip()))
                    .map(ChurchDay::summary)
                    .orElse(DATE_HINT);
        } catch (DateTimeParseException noDateYet) {
            return DATE_HINT;
        }
    }

    static String title(FilledForm filled) {
        if (filled.isBlank(TITLE)) {
            throw new FilledForm.Wrong(TITLE, "A service needs a title.");
        }
        return filled.text(TITLE);
    }

    /** The heading of a new service. */
    static ServiceHeading heading(FilledForm filled) {
        return new ServiceHeading(
                title(filled), date(filled), filled.number(PEOPLE, 1, Verse.MOST_PEOPLE), filled.text(NOTES));
    }

    /** The heading of the service that is open. */
    static ServiceHeading headingWithMoving(FilledForm filled) {
        ServiceHeading heading = heading(filled);
        return new ServiceHeading(heading.title(), heading.date(), heading.people(), heading.notes(), movingS(filled));
    }

    /** The copy of a plan for another service. */
    static Effect.CopyPlan copy(String plan, FilledForm filled) {
        return new Effect.CopyPlan(
                plan,
                title(filled),
                date(filled),
                filled.numberIfAny(PEOPLE, 1, Verse.MOST_PEOPLE),
                filled.text(NOTES));
    }

    private static Optional<LocalDate> date(FilledForm filled) {
        if (filled.isBlank(DATE)) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(filled.text(DATE)));
        } catch (DateTimeParseException notADate) {
            throw new FilledForm.Wrong(DATE, "\"" + filled.text(DATE) + "\" is no date; write it as 2026-10-04.");
        }
    }

    private static double movingS(FilledForm filled) {
        try {
            double seconds = Double.parseDouble(filled.text(MOVING));
            if (seconds >= ServiceHeading.SHORTEST_MOVE_S && seconds <= ServiceHeading.LONGEST_MOVE_S) {
                return seconds;
            }
        } catch (NumberFormatException notANumber) {
            // Said below, with what would be right.
        }
        throw new FilledForm.Wrong(MOVING, "A movement takes 0.1 to 5 seconds.");
    }
}
