package versewind.screen;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.plan.ChurchDay;
import versewind.plan.ChurchYear;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;

/** The forms of a service: the open one, a new one, a copy of one, and its title alone. */
final class ServiceForm {

    private static final int TITLE = 0;
    private static final int DATE = 1;
    private static final int PEOPLE = 2;
    private static final int NOTES = 3;
    private static final int MOVING = 4;

    private static final String USUAL_PEOPLE = "100";

    private static final String DATE_HINT = "such as 2026-10-04; may be blank";
    private static final String PEOPLE_HINT = "number of people expected, 1 to " + Verse.MOST_PEOPLE;

    private ServiceForm() {}

    /** The heading of the open plan. */
    static FormBox of(PlanEdit work) {
        ServiceHeading was = work.plan().heading();
        List<FormBox.Field> fields = new ArrayList<>(fields(
                was.title(),
                was.date().map(LocalDate::toString).orElse(""),
                Integer.toString(was.people()),
                PEOPLE_HINT,
                was.notes()));
        fields.add(FormBox.Field.of(
                "Seconds",
                Double.toString(was.moveS()),
                "for one stop change by hand; an estimate, usually " + ServiceHeading.USUAL_MOVE_S));
        return FormBox.of("Service", fields, (form, closed) -> {
            ServiceHeading heading = heading(form);
            ServiceHeading after = new ServiceHeading(
                    heading.title(), heading.date(), heading.people(), heading.notes(), movingS(form));
            return PlanChanges.edit(closed, work, work.plan().withHeading(after), work.place());
        });
    }

    private static List<FormBox.Field> fields(
            String title, String date, String people, String peopleHint, String notes) {
        return List.of(
                FormBox.Field.of("Title", title, "the name of the service; needed"),
                new FormBox.Field("Date", TextLine.of(date), ServiceForm::dayOrHint, date),
                FormBox.Field.of("People", people, peopleHint),
                FormBox.Field.of("Notes", notes, "for the desk"));
    }

    /** What the day is in the church's year, once it can be read. */
    private static String dayOrHint(String typed) {
        try {
            return ChurchYear.day(LocalDate.parse(typed))
                    .map(ChurchDay::summary)
                    .orElse(DATE_HINT);
        } catch (DateTimeParseException noDateYet) {
            return DATE_HINT;
        }
    }

    /** A new plan for an instrument. */
    static FormBox ofNewPlan(State state, String instrument) {
        return FormBox.of(
                        "New plan for " + instrument,
                        fields("", nextSunday(state), USUAL_PEOPLE, PEOPLE_HINT, ""),
                        (form, closed) -> {
                            ServiceHeading heading = heading(form);
                            return FileCommands.afterAsking(
                                    closed.open(form), effects -> effects.createPlan(heading, instrument));
                        })
                .leaving((form, closed) -> LibraryScreen.left(closed));
    }

    /** A new plan with the hymns of an old one. */
    static FormBox ofPlanFrom(State state, Event.ListedPlan old) {
        return FormBox.of(
                        "New plan from \"" + old.title() + "\"",
                        fields("", nextSunday(state), "", "as in the old plan, if blank", ""),
                        (form, closed) -> {
                            String title = title(form);
                            Optional<LocalDate> date = date(form);
                            OptionalInt people = form.numberIfAny(PEOPLE, 1, Verse.MOST_PEOPLE);
                            return FileCommands.afterAsking(
                                    closed.open(form),
                                    effects -> effects.copyPlan(old.id(), title, date, people, form.text(NOTES)));
                        })
                .leaving((form, closed) -> LibraryScreen.left(closed));
    }

    private static String nextSunday(State state) {
        return state.today()
                .plusDays(7 - state.today().getDayOfWeek().getValue() % 7)
                .toString();
    }

    /** Another title for a plan of the library. */
    static FormBox ofRename(Event.ListedPlan plan) {
        return ofTitle("Rename", plan.title(), (form, closed) -> {
            String title = title(form);
            return closed.wants(effects -> effects.renamePlan(plan.id(), title));
        });
    }

    /** The open plan under another title, in a file of its own. */
    static FormBox ofSaveUnder(PlanEdit work) {
        return ofTitle(
                "Save under another title",
                work.plan().heading().title(),
                (form, closed) -> FileCommands.saveUnder(closed, work, title(form)));
    }

    private static FormBox ofTitle(String title, String was, FormBox.Action kept) {
        String hint = "the name of the service, and of its file";
        return FormBox.of(title, List.of(FormBox.Field.of("Title", was, hint)), kept);
    }

    private static String title(FormBox form) {
        if (form.isBlank(TITLE)) {
            throw new FormBox.Wrong(TITLE, "A service needs a title.");
        }
        return form.text(TITLE);
    }

    private static ServiceHeading heading(FormBox form) {
        return new ServiceHeading(title(form), date(form), form.number(PEOPLE, 1, Verse.MOST_PEOPLE), form.text(NOTES));
    }

    private static Optional<LocalDate> date(FormBox form) {
        if (form.isBlank(DATE)) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(form.text(DATE)));
        } catch (DateTimeParseException notADate) {
            throw new FormBox.Wrong(
                    DATE, "\"" + form.text(DATE) + "\" is not a date. Enter a date such as 2026-10-04.");
        }
    }

    private static double movingS(FormBox form) {
        try {
            double seconds = Double.parseDouble(form.text(MOVING));
            if (seconds >= ServiceHeading.SHORTEST_MOVE_S && seconds <= ServiceHeading.LONGEST_MOVE_S) {
                return seconds;
            }
        } catch (NumberFormatException notANumber) {
            // Said below, with what would be right.
        }
        throw new FormBox.Wrong(MOVING, "Enter the seconds for one change, 0.1 to 5.");
    }
}
