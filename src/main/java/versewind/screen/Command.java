package versewind.screen;

import static versewind.screen.Key.Named.BACK_TAB;
import static versewind.screen.Key.Named.DELETE;
import static versewind.screen.Key.Named.DOWN;
import static versewind.screen.Key.Named.END;
import static versewind.screen.Key.Named.ENTER;
import static versewind.screen.Key.Named.ESCAPE;
import static versewind.screen.Key.Named.F1;
import static versewind.screen.Key.Named.HOME;
import static versewind.screen.Key.Named.PAGE_DOWN;
import static versewind.screen.Key.Named.PAGE_UP;
import static versewind.screen.Key.Named.TAB;
import static versewind.screen.Key.Named.UP;

import java.util.List;

/**
 * Everything that a key can do: the one table from which the keys, the help screen and the README's list come.
 *
 * <p>A key has one meaning in each {@link Where}.
 */
public enum Command {
    LINE_BELOW("the line below", Group.ORGAN, Where.ORGAN, Key.of(DOWN), Key.of(TAB)),
    LINE_ABOVE("the line above", Group.ORGAN, Where.ORGAN, Key.of(UP), Key.of(BACK_TAB)),
    LINE_PAGE_BELOW("a page down", Group.ORGAN, Where.ORGAN, Key.of(PAGE_DOWN)),
    LINE_PAGE_ABOVE("a page up", Group.ORGAN, Where.ORGAN, Key.of(PAGE_UP)),
    FIRST_LINE("the first line", Group.ORGAN, Where.ORGAN, Key.of(HOME)),
    LAST_LINE("the last line", Group.ORGAN, Where.ORGAN, Key.of(END)),
    NEXT_PROBLEM("to the next thing that is wrong", Group.ORGAN, Where.ORGAN, Key.of('n')),
    ABOUT_LINE("what the stop is, in a sentence", Group.ORGAN, Where.ORGAN, Key.of('T')),
    EDIT_LINE("change it", Group.ORGAN, Where.ORGAN, Key.of(ENTER), Key.of('e')),
    INSERT_LINE("a new one", Group.ORGAN, Where.ORGAN, Key.of('i')),
    INSERT_DIVISION("a new division", Group.ORGAN, Where.ORGAN, Key.of('I')),
    INSERT_COUPLER("a new coupler", Group.ORGAN, Where.ORGAN, Key.of('c')),
    INSERT_TREMULANT("a new tremulant", Group.ORGAN, Where.ORGAN, Key.of('t')),
    INSERT_SURFACE("a new surface of the room", Group.ORGAN, Where.ORGAN, Key.of('f')),
    DUPLICATE_LINE("this once more", Group.ORGAN, Where.ORGAN, Key.of('d')),
    REMOVE_LINE("take it out", Group.ORGAN, Where.ORGAN, Key.of('x'), Key.of(DELETE)),
    LINE_EARLIER("move it up", Group.ORGAN, Where.ORGAN, Key.of(',')),
    LINE_LATER("move it down", Group.ORGAN, Where.ORGAN, Key.of('.')),
    UNDO_LINE("undo", Group.ORGAN, Where.ORGAN, Key.of('u'), Key.control('z')),
    REDO_LINE("do again what was undone", Group.ORGAN, Where.ORGAN, Key.of('U'), Key.control('y')),
    SAVE_ORGAN("save", Group.ORGAN, Where.ORGAN, Key.of('s'), Key.control('s')),
    ORGAN_HELP("all the keys", Group.ORGAN, Where.ORGAN, Key.of('?'), Key.of(F1)),
    CLOSE_ORGAN("back", Group.ORGAN, Where.ORGAN, Key.of(ESCAPE), Key.of('q'), Key.control('q')),

    READ_STOP_TEXT("read it", Group.STOP_TEXT, Where.STOP_TEXT, Key.control('s'), Key.control('r')),
    CLEAR_STOP_TEXT("empty the box", Group.STOP_TEXT, Where.STOP_TEXT, Key.control('u')),
    CLOSE_STOP_TEXT("back to the organs", Group.STOP_TEXT, Where.STOP_TEXT, Key.of(ESCAPE));

    /** Headings under which commands are listed. */
    public enum Group {
        MOVING("Moving about"),
        DRAWING("Stops and boxes"),
        SINGERS("Who sings"),
        HANDS("Hands and feet"),
        VERSES("Verses"),
        HYMNS("Hymns and service"),
        METER("Heard and metered"),
        PLAN("The plan"),
        FINDING("Finding a stop"),
        FILLING_IN("Filling in a form"),
        CHOOSING("Choosing from a list"),
        LIBRARY("The library"),
        FINDINGS("Among the findings"),
        PROPOSALS("Among the proposals"),
        ORGAN("Changing an organ"),
        STOP_TEXT("Pasting a stop list"),
        DESK("At the desk"),
        ANSWERS("After the service"),
        READING("Reading the help");

        private final String title;

        Group(String title) {
            this.title = title;
        }

        /** In words. */
        public String title() {
            return title;
        }
    }

    /** Where a key has its meaning. */
    enum Where {
        /** An organ is being changed. */
        ORGAN,
        /** A stop list is being pasted. */
        STOP_TEXT;

        boolean answersTo(Where other) {
            return this == other;
        }
    }

    private final String does;
    private final Group group;
    private final Where where;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of, which never changes
    private final List<Key> keys;

    Command(String does, Group group, Where where, Key... keys) {
        this.does = does;
        this.group = group;
        this.where = where;
        this.keys = List.of(keys);
    }

    /** What it does, in a few words. */
    public String does() {
        return does;
    }

    /** Under which heading it is listed. */
    public Group group() {
        return group;
    }

    Where where() {
        return where;
    }

    /** The keys that mean it. */
    public List<Key> keys() {
        return keys;
    }

    /** The names of its keys, "u, Ctrl-Z". */
    public String keyNames() {
        return String.join(", ", keys.stream().map(Key::name).toList());
    }
}
