package versewind.screen;

import java.util.List;
import versewind.screen.KeyRow.Hint;

/** The keys most wanted, in the last row, as many as fit. */
final class HintLine {

    private static final List<Hint> STOPS = List.of(
            new Hint(Command.HELP, "keys"),
            new Hint(Command.TOGGLE, "draw"),
            new Hint(Command.FIND, "find"),
            new Hint(Command.CONGREGATION, "to 4 who"),
            new Hint(Command.SING_STRONGER, "- sing"),
            new Hint(Command.BOX_WIDER, "> box"),
            new Hint(Command.LAYOUT, "hands"),
            new Hint(Command.NEXT_VERSE, "next"),
            new Hint(Command.OTHER_SIDE, "verses"),
            new Hint(Command.SAVE, "save"),
            new Hint(Command.UNDO, "undo"),
            new Hint(Command.LEAVE, "leave"));

    private static final List<Hint> VERSES = List.of(
            new Hint(Command.HELP, "keys"),
            new Hint(Command.INSERT_VERSE, "new verse"),
            new Hint(Command.INSERT_HYMN, "new hymn"),
            new Hint(Command.EDIT_VERSE, "edit"),
            new Hint(Command.EDIT_HYMN, "edit hymn"),
            new Hint(Command.REMOVE_VERSE, "out"),
            new Hint(Command.OTHER_SIDE, "stops"),
            new Hint(Command.SAVE, "save"),
            new Hint(Command.LEAVE, "leave"));

    private HintLine() {}

    static void paint(Frame frame, State state, int y) {
        KeyRow.paint(
                frame, y, Update.where(new Panel.None(), state) == Command.Where.VERSES ? VERSES : STOPS, Style.FAINT);
    }
}
