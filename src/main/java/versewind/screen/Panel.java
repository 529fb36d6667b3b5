package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.plan.Sought;
import versewind.proposal.Proposal;
import versewind.rules.Finding;
import versewind.sound.ReadingDesign;

/** What lies over the plan and has the keys, if anything does. */
sealed interface Panel {

    /** The plan itself has the keys. */
    record None() implements Panel {}

    /**
     * A stop is being looked for.
     *
     * @param text what was typed of its name
     * @param from the knob to go back to
     * @param side what had the keys before
     */
    record Find(TextLine text, int from, PlanEdit.Side side) implements Panel {}

    /**
     * A form is being filled in.
     *
     * @param title its heading
     * @param fields from top to bottom
     * @param at the field that is typed into
     * @param purpose what happens with what was typed
     * @param complaint what is wrong with it; blank if nothing is known to be
     */
    record Form(String title, List<Field> fields, int at, FormAction purpose, String complaint) implements Panel {

        public Form {
            fields = List.copyOf(fields);
        }

        /** What was typed in a field, without blanks around it. */
        String value(int field) {
            return fields.get(field).line().text().strip();
        }

        /** Whether anything was typed that would be lost. */
        boolean isTyped() {
            return fields.stream().anyMatch(field -> !field.line().text().equals(field.was()));
        }

        /** With the field that is typed into changed. */
        Form with(TextLine line) {
            List<Field> others = new ArrayList<>(fields);
            others.set(at, fields.get(at).with(line));
            return new Form(title, others, at, purpose, "");
        }

        /** With another field typed into. */
        Form at(int field) {
            return new Form(title, fields, field, purpose, complaint);
        }

        /** With a complaint about a field. */
        Form complaining(int field, String sentence) {
            return new Form(title, fields, field, purpose, sentence);
        }
    }

    /**
     * A field of a form.
     *
     * @param name what it is called
     * @param line what it holds
     * @param hint what belongs in it
     * @param was what it held at first
     */
    record Field(String name, TextLine line, String hint, String was) {

        /** A field that holds a value at first. */
        static Field of(String name, String value, String hint) {
            return new Field(name, TextLine.of(value), hint, value);
        }

        /** With something else in it. */
        Field with(TextLine other) {
            return new Field(name, other, hint, was);
        }
    }

    /**
     * The readings that the organ's trims rest on, and those to take next.
     *
     * @param at which of the readings is marked
     * @param next what to read next
     */
    record Readings(int at, List<ReadingDesign.Proposed> next) implements Panel {

        public Readings {
            next = List.copyOf(next);
        }
    }

    /**
     * All keys are being read.
     *
     * @param top the first line shown
     */
    record Help(int top) implements Panel {}

    /**
     * Something is being chosen from a list.
     *
     * @param title its heading
     * @param rows all rows
     * @param filter what was typed to narrow them down
     * @param at which of the rows that fit is marked
     * @param choice what is chosen
     */
    record Chooser(String title, List<Row> rows, TextLine filter, int at, Choice choice) implements Panel {

        public Chooser {
            rows = List.copyOf(rows);
        }

        /** The rows that hold every word typed. */
        List<Row> fitting() {
            return Panel.fitting(rows, filter.text());
        }
    }

    /**
     * A stop list is pasted or typed.
     *
     * @param text what it holds so far
     */
    record StopText(String text) implements Panel {

        /** The longest list that can be pasted, in UTF-16 units. */
        static final int LONGEST = 100_000;

        /** After a key that types or takes away at the end. */
        StopText after(Key key) {
            if (key.control()) {
                return this;
            }
            return switch (key.named()) {
                case CHARACTER -> typed(Character.toString(key.character()));
                case ENTER -> typed("\n");
                case BACKSPACE ->
                    text.isEmpty() ? this : new StopText(text.substring(0, text.offsetByCodePoints(text.length(), -1)));
                case UP, DOWN, LEFT, RIGHT, HOME, END, PAGE_UP, PAGE_DOWN, ESCAPE, TAB, BACK_TAB, INSERT, DELETE ->
                    this;
                case F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12 -> this;
            };
        }

        /** With more text at its end, if there is room for it. */
        StopText typed(String more) {
            return text.length() + more.length() <= LONGEST ? new StopText(text + more) : this;
        }
    }

    /** The library is looked through. */
    record Library(LibraryState shelves) implements Panel {}

    /** Of some rows, those that hold every word typed. */
    static List<Row> fitting(List<Row> rows, String typed) {
        Sought sought = Sought.of(typed);
        return rows.stream()
                .filter(row -> sought.isIn(row.id() + " " + row.first() + " " + row.second()))
                .toList();
    }

    /** Rows for files. */
    static List<Row> rows(List<Event.Listed> listed) {
        return listed.stream()
                .map(each -> new Row(each.id(), each.title(), each.detail()))
                .toList();
    }

    /**
     * A row of a list.
     *
     * @param id what is chosen by it
     * @param first what it says
     * @param second what it says in less weight
     */
    record Row(String id, String first, String second) {}

    /** What is chosen from a list. */
    sealed interface Choice {
        /** An organ for a new plan. */
        record Organ() implements Choice {}

        /** A hymn of a plan in the library, to be brought over. */
        record HymnOf(String plan) implements Choice {}

        /** What was understood of a stop list, of which an organ may be made. */
        record OfStopText(String text, StopText back) implements Choice {}

        /** Nothing: the list is only read. */
        record Nothing() implements Choice {}
    }

    /**
     * The findings of the plan are being read.
     *
     * @param rows all of them, in the order of the plan
     * @param at which is marked
     * @param people before how many, where that is not the service's number
     */
    record Findings(List<Finding> rows, int at, OptionalInt people) implements Panel {

        public Findings {
            rows = List.copyOf(rows);
        }

        Findings at(int row) {
            return new Findings(rows, row, people);
        }

        /** The finding that is marked, if there are any. */
        Optional<Finding> marked() {
            return at < rows.size() ? Optional.of(rows.get(at)) : Optional.empty();
        }
    }

    /** The verse where we are fills the screen, to be played from. */
    record Desk(DeskNotes notes) implements Panel {}

    /**
     * All verses, and how the organ was in each.
     *
     * @param at which is marked, in the order of the service
     * @param notes what is known at the desk, to go back to
     */
    record Answers(int at, DeskNotes notes) implements Panel {}

    /**
     * What is proposed for the verse where we are.
     *
     * @param rows the best first, one at least
     * @param at the row that is marked
     */
    record Proposals(List<Proposal> rows, int at) implements Panel {

        public Proposals {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Registrations for many verses are searched for.
     *
     * @param verses how many have been searched
     * @param of how many there are
     */
    record Searching(int verses, int of) implements Panel {}

    /**
     * A question is asked.
     *
     * @param text the question
     * @param answers the answers and their keys
     * @param under what lay over the plan before, to go back to
     */
    record Question(String text, List<Answer> answers, Panel under) implements Panel {

        public Question {
            answers = List.copyOf(answers);
        }
    }

    /**
     * An answer to a question.
     *
     * @param key the key that gives it
     * @param words what it means
     * @param effects what is then done
     * @param reply what it changes here
     */
    record Answer(Key key, String words, List<Effect> effects, Reply reply) {

        /** Back to where the question came from. */
        static final Answer STAY = new Answer(Key.of(Key.Named.ESCAPE), "stay here", List.of(), Reply.BACK);
    }

    /** What an answer changes in the editor. */
    enum Reply {
        /** Nothing: back to where the question came from. */
        BACK,
        /** The unsaved work that was found is taken up. */
        TAKE_UP_DRAFT,
        /** The unsaved work that was found is forgotten. */
        FORGET_DRAFT,
        /** What was changed of the organ is taken back. */
        DROP_ORGAN,
        /** The draft of the organ that was kept is taken up: undoing leads back from it. */
        TAKE_UP_ORGAN
    }
}
