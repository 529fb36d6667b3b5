package versewind.screen.state;

import java.util.List;
import java.util.Optional;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Notice;

/** Something that happened outside. */
public interface Event {

    /** What comes of it: the state after it, with what is wanted done. */
    State on(State state);

    /** A key was pressed: first what every screen does with it, then what the top one does. */
    record Press(Key key) implements Event {
        @Override
        public State on(State before) {
            State state = before.with(Notice.NONE);
            Screen top = state.top();
            if (Key.all(Leaving.INTERRUPT).contains(key)) {
                return Leaving.interrupt(state);
            }
            if (state.isTooSmall() && !top.worksWhenSmall(key, state)) {
                return state;
            }
            boolean isTyped = top.takesText() && key.isCharacter();
            return KeyTable.pressed(top.keys(), top, key, state)
                    .or(() -> isTyped
                            ? Optional.empty()
                            : KeyTable.pressed(state.doors().keys(), top, key, state))
                    .orElseGet(() -> top.typed(key, state));
        }
    }

    /** Text was pasted as one piece. */
    record Paste(String text) implements Event {
        @Override
        public State on(State state) {
            return state.top().pasted(text, state.with(Notice.NONE));
        }
    }

    /** The terminal has another size now. */
    record Resize(int columns, int rows) implements Event {
        @Override
        public State on(State state) {
            return state.sized(columns, rows);
        }
    }

    /** Nobody listens any more: the line was dropped or the input ended. */
    record Hangup() implements Event {
        @Override
        public State on(State state) {
            return Leaving.hangup(state);
        }
    }

    /** Something was done; the sentence says what and where. */
    record Done(String sentence) implements Event {
        @Override
        public State on(State state) {
            return state.says(sentence);
        }
    }

    /**
     * Something could not be done; the sentence says what, where and what to do. It is said below what is open; where
     * nothing is, instead of it, with the way back to the list.
     */
    record Failed(String sentence) implements Event {
        @Override
        public State on(State state) {
            boolean isAnythingOpen =
                    state.work().isPresent() || state.screens().stream().anyMatch(Screen::saysFailures);
            if (isAnythingOpen) {
                return state.warns(sentence);
            }
            Question.Answer choose = new Question.Answer("Enter", "choose another plan", state.doors()::library);
            return state.closed().open(new Question(sentence, List.of(choose)));
        }
    }
}
