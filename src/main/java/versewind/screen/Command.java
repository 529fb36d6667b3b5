package versewind.screen;

import static versewind.screen.Key.Named.BACK_TAB;
import static versewind.screen.Key.Named.DELETE;
import static versewind.screen.Key.Named.DOWN;
import static versewind.screen.Key.Named.END;
import static versewind.screen.Key.Named.ENTER;
import static versewind.screen.Key.Named.ESCAPE;
import static versewind.screen.Key.Named.F1;
import static versewind.screen.Key.Named.HOME;
import static versewind.screen.Key.Named.LEFT;
import static versewind.screen.Key.Named.PAGE_DOWN;
import static versewind.screen.Key.Named.PAGE_UP;
import static versewind.screen.Key.Named.RIGHT;
import static versewind.screen.Key.Named.TAB;
import static versewind.screen.Key.Named.UP;

import java.util.List;
import java.util.Set;

/**
 * Everything that a key can do: the one table from which the keys, the help screen and the README's list come.
 *
 * <p>A key has one meaning in each {@link Where}.
 */
public enum Command {
    STOP_ABOVE("in the stops: the knob above", Group.MOVING, Where.STOPS, Key.of(UP)),
    STOP_BELOW("in the stops: the knob below", Group.MOVING, Where.STOPS, Key.of(DOWN)),
    STOP_LEFT("in the stops: the column to the left", Group.MOVING, Where.STOPS, Key.of(LEFT)),
    STOP_RIGHT("in the stops: the column to the right", Group.MOVING, Where.STOPS, Key.of(RIGHT)),
    FIRST_STOP("in the stops: the first knob", Group.MOVING, Where.STOPS, Key.of(HOME)),
    LAST_STOP("in the stops: the last knob", Group.MOVING, Where.STOPS, Key.of(END)),
    FIND("find a stop by part of its name", Group.MOVING, Where.BOTH, Key.of('/')),
    VERSE_ABOVE("in the verses: the verse above, also in the hymn before", Group.MOVING, Where.VERSES, Key.of(UP)),
    VERSE_BELOW("in the verses: the verse below, also in the next hymn", Group.MOVING, Where.VERSES, Key.of(DOWN)),
    NEXT_VERSE("the next verse of the hymn", Group.MOVING, Where.BOTH, Key.of('n'), Key.of(PAGE_DOWN)),
    PREVIOUS_VERSE("the verse before in the hymn", Group.MOVING, Where.BOTH, Key.of('p'), Key.of(PAGE_UP)),
    NEXT_HYMN("the next hymn", Group.MOVING, Where.BOTH, Key.of(']')),
    PREVIOUS_HYMN("the hymn before", Group.MOVING, Where.BOTH, Key.of('[')),
    OTHER_SIDE("from the stops to the verses and back", Group.MOVING, Where.BOTH, Key.of(TAB), Key.of(BACK_TAB)),

    ABOUT_STOP("what the stop is, in a sentence", Group.MOVING, Where.STOPS, Key.of('T')),

    TOGGLE("draw the stop, or put it in", Group.DRAWING, Where.STOPS, Key.of(' '), Key.of(ENTER)),
    PUT_ALL_IN("put everything in", Group.DRAWING, Where.BOTH, Key.of('0')),
    BOX_WIDER("open the box a step", Group.DRAWING, Where.BOTH, Key.of('<')),
    BOX_NARROWER("close the box a step", Group.DRAWING, Where.BOTH, Key.of('>')),
    TAKE_OVER("draw what the verse before has", Group.DRAWING, Where.BOTH, Key.of('c')),
    LOCK("lock the stop for proposals: always, never, as it may be", Group.DRAWING, Where.STOPS, Key.of('v')),
    LOCK_THROUGHOUT("lock it so in every verse of the service", Group.DRAWING, Where.STOPS, Key.of('V')),
    PROPOSE("what to draw: registrations proposed", Group.DRAWING, Where.BOTH, Key.of('P')),
    CARRY_ON("draw the same in the verses after that the same people sing", Group.DRAWING, Where.BOTH, Key.of('C')),

    CONGREGATION("the congregation sings", Group.SINGERS, Where.BOTH, Key.of('1')),
    SMALL_CHOIR("a small choir sings", Group.SINGERS, Where.BOTH, Key.of('2')),
    SOLO_VOICE("one voice sings", Group.SINGERS, Where.BOTH, Key.of('3')),
    MELODY_SOLOED("nobody sings, the melody is soloed", Group.SINGERS, Where.BOTH, Key.of('4')),
    SING_STRONGER("they sing more strongly", Group.SINGERS, Where.BOTH, Key.of('+'), Key.of('=')),
    SING_SOFTER("they sing more gently", Group.SINGERS, Where.BOTH, Key.of('-')),
    MOOD("how it is to sound: plain, bright, festal, gentle", Group.SINGERS, Where.BOTH, Key.of('g')),
    PEOPLE("how many sing, or are present", Group.SINGERS, Where.BOTH, Key.of('#')),

    LAYOUT("hands and feet: the next way to play", Group.HANDS, Where.BOTH, Key.of('h')),
    RIGHT_HAND("the right hand to the next manual", Group.HANDS, Where.BOTH, Key.of('r')),
    LEFT_HAND("the left hand to the next manual", Group.HANDS, Where.BOTH, Key.of('l')),

    EDIT_VERSE("label, piston and note of the verse", Group.VERSES, Where.BOTH, Key.of('e')),
    OPEN_VERSE("label, piston and note of the verse", Group.VERSES, Where.VERSES, Key.of(ENTER)),
    KIND("the next kind: verse, refrain, interlude, last, Amen, intro", Group.VERSES, Where.BOTH, Key.of('k')),
    INSERT_VERSE("a new verse after this one", Group.VERSES, Where.BOTH, Key.of('i')),
    DUPLICATE_VERSE("this verse once more", Group.VERSES, Where.BOTH, Key.of('d')),
    REMOVE_VERSE("take the verse out", Group.VERSES, Where.BOTH, Key.of('x'), Key.of(DELETE)),
    VERSE_EARLIER("move the verse up", Group.VERSES, Where.BOTH, Key.of(',')),
    VERSE_LATER("move the verse down", Group.VERSES, Where.BOTH, Key.of('.')),

    EDIT_HYMN("title, tune, key and tempo of the hymn", Group.HYMNS, Where.BOTH, Key.of('E')),
    INSERT_HYMN("a new hymn after this one", Group.HYMNS, Where.BOTH, Key.of('I')),
    DUPLICATE_HYMN("this hymn once more", Group.HYMNS, Where.BOTH, Key.of('D')),
    REMOVE_HYMN("take the hymn out", Group.HYMNS, Where.BOTH, Key.of('X')),
    HYMN_EARLIER("move the hymn forward", Group.HYMNS, Where.BOTH, Key.of('{')),
    HYMN_LATER("move the hymn back", Group.HYMNS, Where.BOTH, Key.of('}')),
    BRING_HYMN("bring a hymn over from another plan, with its stops", Group.HYMNS, Where.BOTH, Key.of('b')),
    EDIT_SERVICE("title, date and people of the service", Group.HYMNS, Where.BOTH, Key.of('S')),

    ANSWER("how it was: too soft, right, too strong", Group.METER, Where.BOTH, Key.of('y')),
    APPLY_FEEDBACK("take into account how the verses were, or not", Group.METER, Where.BOTH, Key.of('Y')),
    READING("a meter's reading of this verse", Group.METER, Where.BOTH, Key.of('m')),
    READINGS("the readings taken, and what to read next", Group.METER, Where.BOTH, Key.of('M')),

    UNDO("undo", Group.PLAN, Where.BOTH, Key.of('u'), Key.control('z')),
    REDO("do again what was undone", Group.PLAN, Where.BOTH, Key.of('U'), Key.control('y')),
    SAVE("save", Group.PLAN, Where.BOTH, Key.of('s'), Key.control('s')),
    SAVE_UNDER("save under another title, in a new file", Group.PLAN, Where.BOTH, Key.of('w')),
    PLANS("the library: open another plan, or make a new one", Group.PLAN, Where.BOTH, Key.of('o'), Key.control('o')),
    WRITE_SHEET("write the sheet for the music desk", Group.PLAN, Where.BOTH, Key.of('W')),
    FINDINGS("what a colleague would say of the plan", Group.PLAN, Where.BOTH, Key.of('f')),
    ATTENDED("what a colleague would say if only so many come", Group.PLAN, Where.BOTH, Key.of('a')),
    AT_DESK("at the desk: the verse fills the screen", Group.PLAN, Where.BOTH, Key.of('K')),
    HELP("all the keys", Group.PLAN, Where.BOTH, Key.of('?'), Key.of(F1)),
    REPAINT("paint the screen afresh", Group.PLAN, Where.ANYWHERE, Key.control('l')),
    LEAVE("leave", Group.PLAN, Where.BOTH, Key.of('q'), Key.control('q')),
    INTERRUPT("leave, from anywhere", Group.PLAN, Where.ANYWHERE, Key.control('c')),

    FIND_NEXT("the next stop that fits", Group.FINDING, Where.FIND, Key.of(TAB), Key.of(DOWN)),
    FIND_PREVIOUS("the one before", Group.FINDING, Where.FIND, Key.of(BACK_TAB), Key.of(UP)),
    FIND_STAY("stay at this stop", Group.FINDING, Where.FIND, Key.of(ENTER)),
    FIND_BACK("go back to where you were", Group.FINDING, Where.FIND, Key.of(ESCAPE)),

    MARK_BELOW("the row below", Group.LIBRARY, Where.LIBRARY, Key.of(DOWN)),
    MARK_ABOVE("the row above", Group.LIBRARY, Where.LIBRARY, Key.of(UP)),
    MARK_PAGE_BELOW("a page down", Group.LIBRARY, Where.LIBRARY, Key.of(PAGE_DOWN)),
    MARK_PAGE_ABOVE("a page up", Group.LIBRARY, Where.LIBRARY, Key.of(PAGE_UP)),
    OPEN_MARKED("open", Group.LIBRARY, Where.LIBRARY, Key.of(ENTER)),
    NEW_PLAN("new", Group.LIBRARY, Where.LIBRARY, Key.control('n')),
    NEW_FROM_OLD("copy", Group.LIBRARY, Where.LIBRARY, Key.control('d')),
    RENAME_PLAN("rename", Group.LIBRARY, Where.LIBRARY, Key.control('r')),
    BIN_PLAN("to the bin", Group.LIBRARY, Where.LIBRARY, Key.control('x')),
    BRING_BACK("back from the bin what went there last", Group.LIBRARY, Where.LIBRARY, Key.control('z')),
    OTHER_SHELF("from the plans to the organs and back", Group.LIBRARY, Where.LIBRARY, Key.of(TAB), Key.of(BACK_TAB)),
    CLOSE_LIBRARY("take away what was typed; back to the plan", Group.LIBRARY, Where.LIBRARY, Key.of(ESCAPE)),
    LEAVE_LIBRARY("leave", Group.LIBRARY, Where.LIBRARY, Key.control('q')),

    PROPOSAL_BELOW("the proposal below", Group.PROPOSALS, Where.PROPOSALS, Key.of(DOWN), Key.of(TAB)),
    PROPOSAL_ABOVE("the proposal above", Group.PROPOSALS, Where.PROPOSALS, Key.of(UP), Key.of(BACK_TAB)),
    TAKE_PROPOSAL("draw it", Group.PROPOSALS, Where.PROPOSALS, Key.of(ENTER)),
    PROPOSE_HYMN("for the whole hymn", Group.PROPOSALS, Where.PROPOSALS, Key.of('h')),
    PROPOSE_SERVICE("for the service", Group.PROPOSALS, Where.PROPOSALS, Key.of('s')),
    CLOSE_PROPOSALS("close", Group.PROPOSALS, Where.PROPOSALS, Key.of(ESCAPE), Key.of('P'), Key.of('q')),
    STOP_SEARCH("stop, and take what is found", Group.PROPOSALS, Where.SEARCH, Key.of(ESCAPE), Key.of('q')),

    EDIT_ORGAN("change the marked organ", Group.LIBRARY, Where.LIBRARY, Key.control('e')),

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
    CLOSE_STOP_TEXT("back to the organs", Group.STOP_TEXT, Where.STOP_TEXT, Key.of(ESCAPE)),

    HELP_DOWN("a line down", Group.READING, Where.HELP, Key.of(DOWN)),
    HELP_UP("a line up", Group.READING, Where.HELP, Key.of(UP)),
    HELP_PAGE_DOWN("a page down", Group.READING, Where.HELP, Key.of(' '), Key.of(PAGE_DOWN)),
    HELP_PAGE_UP("a page up", Group.READING, Where.HELP, Key.of(PAGE_UP)),
    CLOSE_HELP("close the help", Group.READING, Where.HELP, Key.of(ESCAPE), Key.of('?'), Key.of('q'), Key.of(F1));

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
        /** The stops have the keys. */
        STOPS,
        /** The verses have the keys. */
        VERSES,
        /** The stops or the verses have the keys. */
        BOTH,
        FIND,
        LIBRARY,
        PROPOSALS,
        /** Registrations are being searched. */
        SEARCH,
        /** An organ is being changed. */
        ORGAN,
        /** A stop list is being pasted. */
        STOP_TEXT,
        HELP,
        /** Whatever has the keys. */
        ANYWHERE;

        /** Whether a key pressed here can mean a command of another place. */
        boolean answersTo(Where other) {
            return switch (other) {
                case ANYWHERE -> true;
                case BOTH -> this == STOPS || this == VERSES || this == BOTH;
                case STOPS, VERSES, FIND, LIBRARY, HELP -> this == other;
                case ORGAN, STOP_TEXT, PROPOSALS, SEARCH -> this == other;
            };
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

    /** Commands that the help does not list, since another row already says the same. */
    static final Set<Command> UNLISTED = Set.of(OPEN_VERSE);
}
