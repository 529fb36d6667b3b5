package versewind.screen.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.plan.ChurchYear;
import versewind.plan.NearDay;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.schema.Field;
import versewind.schema.OrganNames;
import versewind.schema.Refused;
import versewind.schema.ServiceFields;
import versewind.screen.toolkit.ShortWords;

/** The forms of a service: the open one, a new one, a copy of one, and its title alone. */
public final class ServiceForm {

    private static final List<Field<Plan, ?>> ASKED = List.of(
            ServiceFields.TITLE,
            ServiceFields.DATE,
            ServiceFields.OCCASION,
            ServiceFields.PEOPLE,
            ServiceFields.IN_TEN,
            ServiceFields.PLAYER,
            ServiceFields.NOTES,
            ServiceFields.SECONDS_A_MOVE);

    private static final List<Field<Plan, ?>> OF_NEW_PLAN =
            ASKED.subList(0, ASKED.indexOf(ServiceFields.SECONDS_A_MOVE));

    private static final List<Field<Plan, ?>> OF_COPY =
            List.of(ServiceFields.TITLE, ServiceFields.DATE, ServiceFields.NOTES);

    private static final int TITLE = ASKED.indexOf(ServiceFields.TITLE);
    private static final int DATE = ASKED.indexOf(ServiceFields.DATE);

    private static final int USUAL_PEOPLE = 100;

    private ServiceForm() {}

    /** The heading of the open plan. */
    public static FormBox of(State state, PlanEdit work) {
        RowForm<Plan> row = row(ASKED, work.plan());
        return FormBox.of(
                "Service",
                fields(state, row),
                (form, closed) -> PlanChanges.edit(
                        closed, work, work.plan().withHeading(heading(state, form, row)), work.place()));
    }

    private static RowForm<Plan> row(List<Field<Plan, ?>> asked, Plan plan) {
        return new RowForm<>(ServiceFields.HEAD, asked, plan, OrganNames.NONE);
    }

    private static List<FormBox.Field> fields(State state, RowForm<Plan> row) {
        List<FormBox.Field> fields = new ArrayList<>(row.fields());
        FormBox.Field date = fields.get(DATE);
        fields.set(
                DATE,
                new FormBox.Field(date.name(), date.line(), typed -> dayOrHint(typed, state.today()), date.was()));
        return fields;
    }

    private static ServiceHeading heading(State state, FormBox form, RowForm<Plan> row) {
        title(form);
        Optional<LocalDate> day =
                NearDay.of(form.text(DATE), state.today()).or(() -> nextOf(form.text(DATE), state.today()));
        return row.typed(day.map(each -> form.with(DATE, each.toString())).orElse(form))
                .heading();
    }

    /** A day typed without its year, "29 Nov": the first from today on. */
    private static Optional<LocalDate> nextOf(String typed, LocalDate today) {
        return IntStream.range(0, 2)
                .mapToObj(years -> typed.strip() + " " + (today.getYear() + years))
                .flatMap(ServiceForm::parsed)
                .filter(day -> !day.isBefore(today))
                .findFirst();
    }

    private static Stream<LocalDate> parsed(String typed) {
        try {
            return ServiceFields.DATE.parse(typed).stream();
        } catch (Refused notADay) {
            return Stream.empty();
        }
    }

    /** The day and what it is in the church's year, once it can be read. */
    private static String dayOrHint(String typed, LocalDate today) {
        Optional<LocalDate> near = NearDay.of(typed, today).or(() -> nextOf(typed, today));
        try {
            return (near.isPresent() ? near : ServiceFields.DATE.parse(typed))
                    .map(day -> ShortWords.day(day)
                            + ChurchYear.day(day)
                                    .map(church -> ", " + church.summary())
                                    .orElse(""))
                    .orElse(ServiceFields.DATE.hint());
        } catch (Refused noDateYet) {
            return ServiceFields.DATE.hint() + ", or next Sunday";
        }
    }

    /**
     * A new plan for an instrument, for the next Sunday that has no service.
     *
     * @param usual who plays, and for how many, unless something else is typed
     * @param taken the days that have one
     */
    public static FormBox ofNewPlan(
            State state, String instrument, String name, ServiceHeading usual, Set<LocalDate> taken) {
        LocalDate free = Stream.iterate(nextSunday(state), day -> day.plusWeeks(1))
                .filter(day -> !taken.contains(day))
                .findFirst()
                .orElseThrow();
        ServiceHeading heading =
                new ServiceHeading("", Optional.of(free), usual.people(), "").withPlayer(usual.player());
        RowForm<Plan> row = row(OF_NEW_PLAN, new Plan(heading, instrument, List.of()));
        return FormBox.of("New service at " + name, fields(state, row), (form, closed) -> {
            ServiceHeading made = heading(state, form, row);
            return Leaving.afterAsking(
                    closed.open(form), "make the new plan", effects -> effects.createPlan(made, instrument));
        });
    }

    /** A new plan with the hymns of an old one. */
    public static FormBox ofPlanFrom(State state, String old, String title) {
        ServiceHeading heading = new ServiceHeading("", Optional.of(nextSunday(state)), USUAL_PEOPLE, "");
        RowForm<Plan> row = row(OF_COPY, new Plan(heading, old, List.of()));
        List<FormBox.Field> fields = fields(state, row);
        fields.add(
                FormBox.Field.of("People", "", "how many people are expected; blank for as many as in the old plan"));
        return FormBox.of("New plan from \"" + title + "\"", fields, (form, closed) -> {
            ServiceHeading made = heading(state, form, row);
            OptionalInt people = form.numberIfAny(OF_COPY.size(), 1, Verse.MOST_PEOPLE);
            return Leaving.afterAsking(
                    closed.open(form),
                    "make the copy",
                    effects -> effects.copyPlan(old, made.title(), made.date(), people, made.notes()));
        });
    }

    private static LocalDate nextSunday(State state) {
        return state.today().plusDays(7 - state.today().getDayOfWeek().getValue() % 7);
    }

    /** Another title for a plan of the library. */
    public static FormBox ofRename(String id, String was) {
        return ofTitle("Rename", was, (form, closed) -> {
            String title = title(form);
            return closed.wants(effects -> effects.renamePlan(id, title));
        });
    }

    /** The open plan under another title, in a file of its own. */
    public static FormBox ofSaveUnder(PlanEdit work) {
        return ofTitle(
                "Save under another title",
                work.plan().heading().title(),
                (form, closed) -> saveUnder(closed, work, title(form)));
    }

    private static State saveUnder(State state, PlanEdit work, String title) {
        ServiceHeading heading = work.plan().heading().withTitle(title);
        PlanEdit after = work.with(work.history().to(work.plan().withHeading(heading)));
        return state.with(after).wants(effects -> effects.saveUnder(after.plan()));
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
}
