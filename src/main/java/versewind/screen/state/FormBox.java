package versewind.screen.state;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.screen.toolkit.TextLine;

/**
 * A form over another screen: fields with hints, of which one is typed into.
 *
 * @param title its heading
 * @param fields from top to bottom
 * @param at the field that is typed into
 * @param complaint what is wrong with what was typed; blank if nothing is known to be
 * @param actions what becomes of it
 */
public record FormBox(String title, List<Field> fields, int at, String complaint, Actions actions) implements Screen {

    public static final KeyTable<FormBox> KEYS = KeyTable.<FormBox>under("Filling in a form")
            .key("Tab, Down", "the next field", (form, state) -> state.show(form.at(form.at + 1)))
            .key("Shift-Tab, Up", "the previous field", (form, state) -> state.show(form.at(form.at - 1)))
            .key("Ctrl-U", "clear the field", (form, state) -> state.show(form.with(TextLine.EMPTY)))
            .key("Enter, Ctrl-S", "OK", FormBox::keep)
            .key("Esc", "Cancel", (form, state) -> form.actions.left.on(form, state.close()));

    private static final int NAME = 10;
    private static final int WIDTH = 76;

    /** The most rows of a field. */
    private static final int MOST_ROWS = 5;

    private static final int MOST_SAID = 3;

    /** Rows under the fields: two at least for what is said, one for keys. */
    private static final int BELOW = 3;

    /** Columns of the names of fields are followed by what they hold. */
    public FormBox {
        fields = List.copyOf(fields);
    }

    /** What is done with a form, in the state without it. */
    @FunctionalInterface
    public interface Action {
        State on(FormBox form, State closed);
    }

    /** What is wrong with a form while it is being filled in; blank for nothing. */
    @FunctionalInterface
    public interface Check {
        Check NONE = form -> "";

        String complaint(FormBox form);
    }

    /** What belongs in a field, from what was typed in it. */
    @FunctionalInterface
    public interface Hint {
        String of(String typed);
    }

    /**
     * What becomes of a form.
     *
     * @param kept what is done with what was typed; may throw {@link Wrong}
     * @param left what is done where it is left
     * @param check what is wrong while it is being filled in; with a check the hint is shown besides the complaint
     */
    record Actions(Action kept, Action left, Check check) {}

    /** What was typed cannot be kept: which field, and why. */
    public static final class Wrong extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final int field;

        public Wrong(int field, String sentence) {
            super(sentence);
            this.field = field;
        }
    }

    /**
     * A field.
     *
     * @param name what it is called
     * @param line what it holds
     * @param hint what belongs in it
     * @param was what it held at first
     */
    public record Field(String name, TextLine line, Hint hint, String was) {

        /** A field that holds a value at first. */
        public static Field of(String name, String value, String hint) {
            return new Field(name, TextLine.marked(value), typed -> hint, value);
        }

        private String hint(String typed) {
            return hint.of(typed);
        }
    }

    /** A form that closes when it is left. */
    public static FormBox of(String title, List<Field> fields, Action kept) {
        return new FormBox(title, fields, 0, "", new Actions(kept, (form, closed) -> closed, Check.NONE));
    }

    /** With something else done where it is left. */
    public FormBox leaving(Action left) {
        return new FormBox(title, fields, at, complaint, new Actions(actions.kept, left, actions.check));
    }

    /** With a check of what is typed, beginning now. */
    public FormBox checkedBy(Check check) {
        return new FormBox(title, fields, at, "", new Actions(actions.kept, actions.left, check)).checked();
    }

    private FormBox checked() {
        return actions.check == Check.NONE ? this : complaining(at, actions.check.complaint(this));
    }

    /** With another field typed into; after the last comes the first. */
    public FormBox at(int field) {
        return complaining(Math.floorMod(field, fields.size()), complaint);
    }

    private FormBox complaining(int field, String sentence) {
        return new FormBox(title, fields, field, sentence, actions);
    }

    private FormBox with(TextLine line) {
        List<Field> others = new ArrayList<>(fields);
        Field here = fields.get(at);
        others.set(at, new Field(here.name, line, here.hint, here.was));
        return new FormBox(title, others, at, "", actions);
    }

    /** Whether anything was typed that would be lost. */
    boolean isTyped() {
        return fields.stream().anyMatch(field -> !field.line().text().equals(field.was()));
    }

    /** What was typed in a field, without blanks around it. */
    public String text(int field) {
        return fields.get(field).line().text().strip();
    }

    /** With something else in a field. */
    public FormBox with(int field, String text) {
        List<Field> others = new ArrayList<>(fields);
        Field here = fields.get(field);
        others.set(field, new Field(here.name, TextLine.of(text), here.hint, here.was));
        return new FormBox(title, others, at, complaint, actions);
    }

    public boolean isBlank(int field) {
        return text(field).isEmpty();
    }

    /** A whole number within limits. */
    public int number(int field, int least, int most) {
        try {
            int number = Integer.parseInt(text(field));
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // Said below, with what would be right.
        }
        throw new Wrong(field, fields.get(field).name() + ": enter a whole number from " + least + " to " + most + ".");
    }

    /** A whole number within limits, unless the field is blank. */
    public OptionalInt numberIfAny(int field, int least, int most) {
        return isBlank(field) ? OptionalInt.empty() : OptionalInt.of(number(field, least, most));
    }

    private State keep(State state) {
        try {
            return actions.kept.on(this, state.close());
        } catch (Wrong wrong) {
            return state.show(complaining(wrong.field, wrong.getMessage()));
        }
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public boolean takesText() {
        return true;
    }

    @Override
    public State typed(Key key, State state) {
        return state.show(with(fields.get(at).line().after(key)).checked());
    }

    @Override
    public State pasted(String text, State state) {
        TextLine line = fields.get(at).line();
        return line.hasRoomFor(text)
                ? state.show(with(line.typed(text)).checked())
                : state.says("Too long: a field holds at most " + TextLine.LONGEST + " characters.");
    }

    private String hint() {
        Field here = fields.get(at);
        return here.name() + ": " + here.hint(text(at)) + (here.line().isMarked() ? "; typing replaces it" : "");
    }

    /**
     * What is newly wrong; what the field holds where that was typed; else the field that was gone to, after the
     * heading of a form that was opened.
     */
    @Override
    public String spoken(State before, State now) {
        if (!(before.top() instanceof FormBox was && was.title.equals(title))) {
            String marked = fields.get(at).line().isMarked() ? "; typing replaces it" : "";
            return title + (title.endsWith("?") ? " " : ". ") + field() + marked + wrong();
        }
        if (!complaint.isEmpty() && !complaint.equals(was.complaint)) {
            return complaint;
        }
        if (was.at != at) {
            return field() + wrong();
        }
        String hint = fields.get(at).hint(text(at));
        boolean isKnown = hint.equals(fields.get(at).hint(was.text(at)));
        return was.text(at).equals(text(at)) ? field() + wrong() : held() + (isKnown ? "" : "; " + hint);
    }

    /** "People: 110". */
    private String held() {
        return fields.get(at).name() + ": " + (isBlank(at) ? "blank" : text(at));
    }

    /** "People: 110; how many people are expected". */
    private String field() {
        return held() + "; " + fields.get(at).hint(text(at));
    }

    private String wrong() {
        return complaint.isEmpty() ? "" : ". " + complaint;
    }

    /** The rows of each field: one, and more for a long text as far as there are so many. */
    private List<Integer> rows(int width, int most) {
        List<Integer> rows = new ArrayList<>();
        int left = most - fields.size();
        for (Field field : fields) {
            int more = Math.max(0, Math.min(Math.min(MOST_ROWS, field.line().rows(width)) - 1, left));
            rows.add(1 + more);
            left -= more;
        }
        return rows;
    }

    @Override
    public void paint(Frame frame, State state) {
        int width = Math.min(WIDTH, frame.width() - 4);
        boolean isWrong = !complaint.isEmpty();
        List<String> lines = Text.wrapped(isWrong ? complaint : hint(), width).stream()
                .limit(MOST_SAID)
                .toList();
        int below = Math.max(BELOW, lines.size() + 1) + (actions.check == Check.NONE ? 0 : 1);
        List<Integer> rows = rows(width - NAME, frame.height() - 4 - below);
        Box box = Box.open(
                frame, title, WIDTH, rows.stream().mapToInt(Integer::intValue).sum() + below);
        int y = box.y();
        for (int i = 0; i < fields.size(); i++) {
            Style style = i == at ? Style.STRONG : Style.TEXT;
            frame.write(box.x(), y, fields.get(i).name(), style, box.x() + NAME - 1);
            fields.get(i).line().paint(frame, box.x() + NAME, y, box.width() - NAME, rows.get(i), i == at);
            y += rows.get(i);
        }
        int last = box.y() + box.height() - 1;
        if (isWrong && actions.check != Check.NONE) {
            frame.write(box.x(), last - below + 1, frame.fit(hint(), box.width()), Style.FAINT);
        }
        box.write(frame, last - lines.size(), lines, isWrong ? Style.BAD : Style.FAINT);
        KEYS.hints(frame, box, "Enter", "Esc", "Tab", "Ctrl-U", "F1 help");
    }
}
