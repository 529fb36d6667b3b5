package versewind.screen;

import java.util.ArrayList;
import java.util.List;

/**
 * What comes of an input.
 *
 * @param state the state after it
 * @param effects what is to be done outside, in this order
 */
public record Step(State state, List<Effect> effects) {

    public Step {
        effects = List.copyOf(effects);
    }

    static Step to(State state) {
        return new Step(state, List.of());
    }

    static Step to(State state, Effect effect) {
        return new Step(state, List.of(effect));
    }

    static Step says(State state, String sentence) {
        return to(state.with(Notice.says(sentence)));
    }

    /** With a sentence said of it. */
    Step saying(String sentence) {
        return new Step(state.with(Notice.says(sentence)), effects);
    }

    /** With something more to be done. */
    Step and(Effect effect) {
        List<Effect> more = new ArrayList<>(effects);
        more.add(effect);
        return new Step(state, more);
    }
}
