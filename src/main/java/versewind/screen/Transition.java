package versewind.screen;

import java.util.ArrayList;
import java.util.List;

/**
 * What comes of an input.
 *
 * @param state the state after it
 * @param effects what is to be done outside, in this order
 */
public record Transition(State state, List<Effect> effects) {

    public Transition {
        effects = List.copyOf(effects);
    }

    static Transition to(State state) {
        return new Transition(state, List.of());
    }

    static Transition to(State state, Effect effect) {
        return new Transition(state, List.of(effect));
    }

    static Transition says(State state, String sentence) {
        return to(state.with(Notice.says(sentence)));
    }

    /** With a sentence said of it. */
    Transition saying(String sentence) {
        return new Transition(state.with(Notice.says(sentence)), effects);
    }

    /** With something more to be done. */
    Transition and(Effect effect) {
        List<Effect> more = new ArrayList<>(effects);
        more.add(effect);
        return new Transition(state, more);
    }
}
