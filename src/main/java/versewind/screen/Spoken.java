package versewind.screen;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.screen.state.Event;
import versewind.screen.state.State;

/**
 * What is said where everything is spoken: which screen it is where that is another, what came of the key, and where we
 * are.
 */
final class Spoken {

    private Spoken() {}

    /** After something happened. */
    static State after(State before, Event input, State now) {
        String news = now.notice().text();
        String said = before.notice().text();
        if (isOther(before, now)) {
            return says(now, news.equals(said) ? "" : news, name(before, now), here(before, now));
        }
        if (input instanceof Event.Press || input instanceof Event.Paste) {
            boolean isMoved =
                    !before.work().equals(now.work()) || !before.screens().equals(now.screens());
            return news.isBlank() || isMoved ? says(now, here(before, now), news) : now;
        }
        if (!news.isBlank() && !news.equals(said)) {
            return says(now, said, news);
        }
        boolean isFound = before.top().spoken(before, before).isBlank();
        return said.isBlank() || isFound ? says(now, said, here(before, now)) : now;
    }

    /** Where we are, after a screen was opened from outside. */
    static State opened(State before, State now) {
        return says(now, name(before, now), here(before, now));
    }

    private static boolean isOther(State before, State now) {
        return !before.top().getClass().equals(now.top().getClass())
                || !before.top().name(before).equals(now.top().name(now));
    }

    private static String name(State before, State now) {
        String name = now.top().name(now);
        boolean isKnown = name.isEmpty() || name.equals(before.top().name(before));
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
