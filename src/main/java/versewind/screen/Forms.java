package versewind.screen;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.advice.Finding;
import versewind.plan.ChurchDay;
import versewind.plan.ChurchYear;
import versewind.plan.Edit;
import versewind.plan.Heading;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.sound.Reading;
import versewind.sound.Seat;

/** The forms: what they ask, and what becomes of the answers. */
final class Forms {

    /** Fields of the verse's form. */
    static final int LABEL = 0;

    static final int PEOPLE = 1;
    private static final int PISTON = 2;
    private static final int NOTE = 3;

    private static final int NUMBER = 0;
    private static final int TITLE = 1;
    private static final int TUNE = 2;
    private static final int METRE = 3;
    private static final int KEY = 4;
    private static final int TEMPO = 5;
    private static final int HYMN_NOTES = 6;
    private static final int SUNG = 7;

    private static final int SERVICE_TITLE = 0;
    private static final int DATE = 1;
    private static final int PRESENT = 2;
    private static final int SERVICE_NOTES = 3;
    private static final int MOVING = 4;

    private static final int SILENCE_NOTE = 0;

    private static final int COMING = 0;

    private static final int LEVEL = 0;
    private static final int SEAT = 1;
    private static final int IN_THE_ROOM = 2;
    private static final int SINGERS = 3;

    private static final int USUAL_PEOPLE = 100;
    private static final int USUAL_VERSES = 4;

    private static final String DATE_HINT = "year-month-day, as 2026-10-04; may be blank";
    private static final String PEOPLE_HINT = "how many are expected, 1 to 50000";

    private Forms() {}

    /** What was typed cannot be kept: which field, and why. */
    private static final class Wrong extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final int field;

        Wrong(int field, String sentence) {
            super(sentence);
            this.field = field;
        }
    }

    static Panel.Form ofVerse(Work work, Verse verse, int at) {
        String people =
                verse.people().isPresent() ? Integer.toString(verse.people().getAsInt()) : "";
        return new Panel.Form(
                "Verse",
                List.of(
                        field(
                                "Label",
                                verse.label(),
                                "what stands before the verse on the desk, as V2; if blank, as usual"),
                        field(
                                "People",
                                people,
                                "present in this verse, or voices of a small choir; if blank, the service's "
                                        + work.plan().heading().people()),
                        field("Piston", verse.piston(), "the piston that sets it, as G3"),
                        field("Note", verse.note(), "what you want to read on the desk")),
                at,
                new Panel.Purpose.VerseTexts(),
                "");
    }

    static Panel.Form ofReading(String verse, String expected) {
        return new Panel.Form(
                "A meter's reading of " + verse,
                List.of(
                        field("Level", "", "mean level in dB(A) while it is played, as 78.5; " + expected),
                        field("Seat", Seat.NAVE.word(), "where the meter stands: nave, far, choir or console"),
                        field("People", "0", "in the room"),
                        field("Singers", "", "how many of them sing with the organ; blank for nobody")),
                LEVEL,
                new Panel.Purpose.MeterReading(),
                "");
    }

    static Panel.Form ofSilence(Finding finding, OptionalInt people) {
        return new Panel.Form(
                "Say no more of: " + finding.rule().word(),
                List.of(field("Note", "", "why it is meant so; the plan keeps it; may be blank")),
                SILENCE_NOTE,
                new Panel.Purpose.Silence(finding.place(), finding.rule(), people),
                "");
    }

    static Panel.Form ofAttended(int expected) {
        return new Panel.Form(
                "If only so many come",
                List.of(field("People", "", "how many, 1 to 50000; " + expected + " are expected")),
                COMING,
                new Panel.Purpose.Attended(),
                "");
    }

    static Panel.Form ofHymn(Hymn hymn) {
        return new Panel.Form("Hymn", hymnFields(hymn), TITLE, new Panel.Purpose.HymnTexts(), "");
    }

    static Panel.Form ofNewHymn(int at) {
        Hymn blank = new Hymn("", "", "", "", "", OptionalInt.empty(), "", List.of());
        List<Panel.Field> fields = new ArrayList<>(hymnFields(blank));
        fields.add(field(
                "Verses", Integer.toString(USUAL_VERSES), "how many are sung; an introduction comes before them"));
        return new Panel.Form("New hymn", fields, NUMBER, new Panel.Purpose.NewHymn(at), "");
    }

    private static List<Panel.Field> hymnFields(Hymn hymn) {
        String tempo = hymn.tempo().isPresent() ? Integer.toString(hymn.tempo().getAsInt()) : "";
        return List.of(
                field("Number", hymn.number(), "in the book; may be blank"),
                field("Title", hymn.title(), "the title or the first line; needed"),
                field("Tune", hymn.tune(), "name of the tune"),
                field("Metre", hymn.metre(), "as 8 7 8 7 D"),
                field("Key", hymn.key(), "as G or e minor"),
                field("Tempo", tempo, "beats a minute, 20 to 300; may be blank"),
                field("Notes", hymn.notes(), "for the desk"));
    }

    static Panel.Form ofService(Plan plan) {
        return new Panel.Form(
                "Service", headingFields(plan.heading()), SERVICE_TITLE, new Panel.Purpose.ServiceTexts(), "");
    }

    static Panel.Form ofNewPlan(State state, String instrument) {
        return ofPlan(
                state,
                "New plan for " + instrument,
                Integer.toString(USUAL_PEOPLE),
                new Panel.Purpose.NewPlan(instrument));
    }

    static Panel.Form ofPlanFrom(State state, Input.ListedPlan old) {
        return ofPlan(state, "New plan from \"" + old.title() + "\"", "", new Panel.Purpose.PlanFrom(old.id()));
    }

    static Panel.Form ofRename(Input.ListedPlan plan, Panel.Library back) {
        return ofTitle("Rename", plan.title(), new Panel.Purpose.Rename(plan.id(), back));
    }

    static Panel.Form ofSaveUnder(Work work) {
        return ofTitle("Save under another title", work.plan().heading().title(), new Panel.Purpose.SaveUnder());
    }

    private static Panel.Form ofTitle(String title, String was, Panel.Purpose purpose) {
        Panel.Field field = field("Title", was, "the name of the service, after which the file is named");
        return new Panel.Form(title, List.of(field), SERVICE_TITLE, purpose, "");
    }

    private static Panel.Form ofPlan(State state, String title, String people, Panel.Purpose purpose) {
        List<Panel.Field> fields = List.of(
                field("Title", "", "the name of the service; needed"),
                field("Date", nextSunday(state.today()).toString(), DATE_HINT),
                field("People", people, people.isEmpty() ? "as in the old plan, if blank" : PEOPLE_HINT),
                field("Notes", "", "for the desk"));
        return new Panel.Form(title, fields, SERVICE_TITLE, purpose, "");
    }

    private static LocalDate nextSunday(LocalDate today) {
        return today.plusDays(7 - today.getDayOfWeek().getValue() % 7);
    }

    private static List<Panel.Field> headingFields(Heading heading) {
        return List.of(
                field("Title", heading.title(), "the name of the service; needed"),
                field("Date", heading.date().map(LocalDate::toString).orElse(""), DATE_HINT),
                field("People", Integer.toString(heading.people()), PEOPLE_HINT),
                field("Notes", heading.notes(), "for the desk"),
                field(
                        "Moving",
                        Double.toString(heading.moveS()),
                        "seconds that a hand needs for one stop or coupler; an estimate, usually "
                                + Heading.USUAL_MOVE_S));
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

    static Panel.Field field(String name, String value, String hint) {
        return new Panel.Field(name, TextLine.of(value), hint, value);
    }

    /** Keeps what was typed, or says what is wrong with it. */
    static Step keep(State state, Panel.Form form) {
        try {
            return kept(state, form);
        } catch (Wrong wrong) {
            return Step.to(state.with(form.complaining(wrong.field, wrong.getMessage())));
        }
    }

    private static Step kept(State state, Panel.Form form) {
        Panel.Purpose purpose = form.purpose();
        State closed = state.closed();
        if (purpose instanceof Panel.Purpose.NewPlan newPlan) {
            return Filing.afterAsking(state, new Effect.CreatePlan(heading(form), newPlan.instrument()));
        }
        if (purpose instanceof Panel.Purpose.PlanFrom planFrom) {
            return Filing.afterAsking(state, copy(planFrom.plan(), form));
        }
        if (purpose instanceof Panel.Purpose.Rename rename) {
            return Step.to(state.with(rename.back()), new Effect.RenamePlan(rename.plan(), serviceTitle(form)));
        }
        if (purpose instanceof Panel.Purpose.OrganLine line) {
            return Benching.kept(closed, form, line);
        }
        if (purpose instanceof Panel.Purpose.OrganOfList list) {
            return Pasting.made(state, list, form.value(SERVICE_TITLE));
        }
        if (state.work().isEmpty()) {
            return Step.to(closed);
        }
        Work work = state.work().get();
        if (purpose instanceof Panel.Purpose.VerseTexts && work.verse().isPresent()) {
            return Handler.change(closed, work, verse(form, work));
        }
        if (purpose instanceof Panel.Purpose.MeterReading && work.verse().isPresent()) {
            return Metering.taken(closed, work, reading(form, work.verse().get(), state.today()));
        }
        if (purpose instanceof Panel.Purpose.Silence silence) {
            return Heeding.silence(closed, work, silence, form.value(SILENCE_NOTE));
        }
        if (purpose instanceof Panel.Purpose.Attended) {
            return Heeding.open(closed, work, OptionalInt.of(number(form, COMING, 1, Verse.MOST_PEOPLE)));
        }
        if (purpose instanceof Panel.Purpose.HymnTexts && work.hymn().isPresent()) {
            Hymn hymn = hymn(form, work.hymn().get().verses());
            return Handler.edit(closed, work, new Edit.SetHymn(work.place().hymn(), hymn), work.place());
        }
        if (purpose instanceof Panel.Purpose.NewHymn newHymn) {
            int sung = number(form, SUNG, 0, Verses.MOST_NEW);
            Hymn hymn = hymn(form, Verses.ofNewHymn(work.instrument(), sung));
            return Handler.edit(closed, work, new Edit.InsertHymn(newHymn.at(), hymn));
        }
        if (purpose instanceof Panel.Purpose.SaveUnder) {
            return saveUnder(closed, work, serviceTitle(form));
        }
        if (purpose instanceof Panel.Purpose.ServiceTexts) {
            Heading typed = heading(form);
            Heading heading =
                    new Heading(typed.title(), typed.date(), typed.people(), typed.notes(), seconds(form, MOVING));
            return Handler.edit(closed, work, new Edit.SetHeading(heading), work.place());
        }
        return Step.to(closed);
    }

    private static Step saveUnder(State state, Work work, String title) {
        Heading heading = work.plan().heading().withTitle(title);
        Work after =
                work.with(work.history().after(new Edit.SetHeading(heading))).at(work.place());
        return Step.to(state.with(after), new Effect.SaveUnder(after.plan()));
    }

    private static Reading reading(Panel.Form form, Verse verse, LocalDate today) {
        Seat seat = Stream.of(Seat.values())
                .filter(each -> each.word().equalsIgnoreCase(form.value(SEAT)))
                .findFirst()
                .orElseThrow(() -> new Wrong(SEAT, "The meter stands in the nave, far, choir or console."));
        int people = form.value(IN_THE_ROOM).isEmpty() ? 0 : number(form, IN_THE_ROOM, 0, Verse.MOST_PEOPLE);
        Optional<Reading.Sung> sung = form.value(SINGERS).isEmpty()
                ? Optional.empty()
                : Optional.of(new Reading.Sung(number(form, SINGERS, 2, Verse.MOST_PEOPLE), verse.singing()));
        double dba = level(form);
        try {
            return new Reading(today.toString(), verse.registration(), verse.hands(), seat, people, sung, dba);
        } catch (IllegalArgumentException wrong) {
            throw new Wrong(sung.isPresent() ? SINGERS : LEVEL, sentence(wrong.getMessage()));
        }
    }

    private static String sentence(String message) {
        return message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1) + ".";
    }

    private static double level(Panel.Form form) {
        try {
            return Double.parseDouble(form.value(LEVEL).replace(',', '.'));
        } catch (NumberFormatException noNumber) {
            throw new Wrong(LEVEL, "The level is a number of dB(A), as 78.5.");
        }
    }

    /** A verse whose label is left blank gets the one that it usually has. */
    private static Verse verse(Panel.Form form, Work work) {
        int at = work.place().verse();
        String label = form.value(LABEL).isEmpty() ? Verses.usualLabel(work.verses(), at) : form.value(LABEL);
        OptionalInt people = form.value(PEOPLE).isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(number(form, PEOPLE, 1, Verse.MOST_PEOPLE));
        return work.verses()
                .get(at)
                .withLabel(label)
                .withPeople(people)
                .withPiston(form.value(PISTON))
                .withNote(form.value(NOTE));
    }

    private static Hymn hymn(Panel.Form form, List<Verse> verses) {
        if (form.value(TITLE).isEmpty()) {
            throw new Wrong(TITLE, "A hymn needs a title.");
        }
        OptionalInt tempo = form.value(TEMPO).isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(number(form, TEMPO, Hymn.SLOWEST_TEMPO, Hymn.FASTEST_TEMPO));
        return new Hymn(
                form.value(NUMBER),
                form.value(TITLE),
                form.value(TUNE),
                form.value(METRE),
                form.value(KEY),
                tempo,
                form.value(HYMN_NOTES),
                verses);
    }

    private static Effect copy(String plan, Panel.Form form) {
        OptionalInt people = form.value(PRESENT).isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(number(form, PRESENT, 1, Verse.MOST_PEOPLE));
        return new Effect.CopyPlan(plan, serviceTitle(form), serviceDate(form), people, form.value(SERVICE_NOTES));
    }

    private static String serviceTitle(Panel.Form form) {
        if (form.value(SERVICE_TITLE).isEmpty()) {
            throw new Wrong(SERVICE_TITLE, "A service needs a title.");
        }
        return form.value(SERVICE_TITLE);
    }

    private static Optional<LocalDate> serviceDate(Panel.Form form) {
        return form.value(DATE).isEmpty() ? Optional.empty() : Optional.of(date(form));
    }

    private static Heading heading(Panel.Form form) {
        return new Heading(
                serviceTitle(form),
                serviceDate(form),
                number(form, PRESENT, 1, Verse.MOST_PEOPLE),
                form.value(SERVICE_NOTES));
    }

    private static LocalDate date(Panel.Form form) {
        try {
            return LocalDate.parse(form.value(DATE));
        } catch (DateTimeParseException notADate) {
            throw new Wrong(DATE, "\"" + form.value(DATE) + "\" is no date; write it as 2026-10-04.");
        }
    }

    private static double seconds(Panel.Form form, int field) {
        try {
            double number = Double.parseDouble(form.value(field));
            if (number >= Heading.SHORTEST_MOVE_S && number <= Heading.LONGEST_MOVE_S) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // Said below, with what would be right.
        }
        throw new Wrong(field, "A movement takes 0.1 to 5 seconds.");
    }

    private static int number(Panel.Form form, int field, int least, int most) {
        String name = form.fields().get(field).name();
        try {
            int number = Integer.parseInt(form.value(field));
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // Said below, with what would be right.
        }
        throw new Wrong(field, name + " is a whole number from " + least + " to " + most + ".");
    }
}
