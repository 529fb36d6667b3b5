package versewind.screen.state;

import java.util.List;

/**
 * What comes of an event.
 *
 * @param state the state after it
 * @param effects what is to be done outside, in this order
 */
public record Transition(State state, List<Effect> effects) {

    public Transition {
        effects = List.copyOf(effects);
    }
}
