package versewind.screen;

import java.time.LocalDate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.screen.desk.DeskScreen;
import versewind.screen.library.LibraryScreen;
import versewind.screen.organ.SavingScreen;
import versewind.screen.plan.SearchScreen;
import versewind.screen.state.Event;
import versewind.screen.state.FormBox;
import versewind.screen.state.State;
import versewind.screen.state.Transition;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Marks;

/** What comes of an input: a pure function from a state and an input to a state and effects. */
public final class Update {

    private Update() {}

    /** An editor with nothing open yet. */
    public static State empty(int columns, int rows, Marks marks, LocalDate today) {
        return State.empty(columns, rows, marks, today, Rooms.ALL);
    }

    /** The state after an input, and what is to be done outside. */
    public static Transition step(State state, Event input) {
        State after = input.on(state);
        State settled = after.top().settled(after);
        return transition(settled.isSpoken() ? Spoken.after(state, input, settled) : settled);
    }

    /** Whether something goes on in the background that may end soon. */
    public static boolean isSearching(State state) {
        return state.top() instanceof SearchScreen || state.top() instanceof SavingScreen;
    }

    private static Transition transition(State state) {
        return new Transition(state.wantingNothing(), state.wanted());
    }

    /** The state in which the program starts without a plan: the library is looked through. */
    public static Transition start(State state) {
        return opened(state, LibraryScreen.open(state));
    }

    /** The state in which the program goes on at the desk, when a plan has just been opened for that. */
    public static Transition desk(State state) {
        return opened(state, DeskScreen.alone(state));
    }

    private static Transition opened(State state, State opened) {
        return transition(opened.isSpoken() ? Spoken.opened(state, opened) : opened);
    }

    /**
     * What is said where everything is spoken: which screen it is where that is another, what came of the key, and
     * where we are.
     */
    private static final class Spoken {

        private Spoken() {}

        /** After something happened. */
        static State after(State before, Event input, State now) {
            String news = now.notice().text();
            String said = before.notice().text();
            boolean isKey = input instanceof Event.Press || input instanceof Event.Paste;
            if (isKey && news.isBlank() && isAwaited(before, now)) {
                return now;
            }
            if (isOther(before, now)) {
                String first = news.isBlank() || news.equals(said) ? unchanged(before, input, now) : news;
                return says(now, first, name(before, now), here(before, now));
            }
            if (isKey) {
                boolean isMoved =
                        !before.work().equals(now.work()) || !before.screens().equals(now.screens());
                if (!news.isBlank() && !isMoved) {
                    return now;
                }
                boolean isPlan = now.screens().size() == 1;
                return isPlan ? says(now, news, here(before, now)) : says(now, here(before, now), news);
            }
            if (!news.isBlank() && !news.equals(said)) {
                return says(now, said, news);
            }
            boolean isFound = before.top().spoken(before, before).isBlank();
            return said.isBlank() || isFound ? says(now, said, here(before, now)) : now;
        }

        /** Whether something is done outside, without another screen and without a change, that will be answered. */
        private static boolean isAwaited(State before, State now) {
            return !now.wanted().isEmpty()
                    && before.work().equals(now.work())
                    && now.screens()
                            .equals(before.screens().stream()
                                    .limit(now.screens().size())
                                    .toList());
        }

        /** Where we are, after a screen was opened from outside. */
        static State opened(State before, State now) {
            return says(now, name(before, now), here(before, now));
        }

        private static boolean isOther(State before, State now) {
            return !before.top().getClass().equals(now.top().getClass())
                    || !before.top().name(before).equals(now.top().name(now));
        }

        /** After a form was left with Esc. */
        private static String unchanged(State before, Event input, State now) {
            boolean isLeft = before.top() instanceof FormBox
                    && input.equals(new Event.Press(Key.of(Key.Named.ESCAPE)))
                    && before.work().equals(now.work());
            return isLeft ? "Nothing changed." : "";
        }

        private static String name(State before, State now) {
            String name = now.top().name(now);
            boolean isBelow =
                    now.screens().size() == 1 && now.top().name(before).equals(name);
            boolean isKnown = name.isEmpty() || name.equals(before.top().name(before)) || isBelow;
            return isKnown ? "" : name.endsWith("?") ? name : name + ".";
        }

        private static String here(State before, State now) {
            return now.top().spoken(before, now);
        }

        private static State says(State now, String... parts) {
            String words = Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(" "));
            return words.isEmpty() ? now : now.says(words);
        }
    }
}
