package versewind.screen.state;

import versewind.screen.toolkit.ListBox;

/** A screen with a list of which one row is marked. */
public interface Listing<T> extends Screen {

    /** Its rows, and which of them is marked. */
    ListBox<T> list();

    /** The screen with another row marked; the nearest that there is. */
    Screen marking(int row);

    /** A row in words, the weightiest first. */
    String words(T row, State state);

    /** The state with the mark moved, or with a sentence where it cannot move that way. */
    default State moved(State state, int by, String rowName) {
        return list().end(by, rowName)
                .map(state::says)
                .orElseGet(() -> state.show(marking(list().move(by).marked())));
    }

    /** The marked row in full, which may take more than the line of the caret, and where it stands in the list. */
    @Override
    default String spoken(State before, State now) {
        return list().current().map(row -> sentence(words(row, now))).orElse("");
    }

    private String sentence(String words) {
        return words + (words.endsWith(".") ? " " : ", ") + list().place() + ".";
    }
}
