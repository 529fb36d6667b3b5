package versewind.calibration;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * What the answers after the last service changed, worked out when it is first asked for: an organ opens without it.
 * Belongs to one thread, as the sound does that it is worked out with.
 */
public final class LastHeard {

    private Optional<Supplier<HeardEffect>> work;
    private Optional<HeardEffect> effect = Optional.empty();

    private LastHeard(Optional<Supplier<HeardEffect>> work) {
        this.work = work;
    }

    /** No answers. */
    public static LastHeard none() {
        return new LastHeard(Optional.empty());
    }

    /** The effect that is worked out so. */
    static LastHeard of(Supplier<HeardEffect> work) {
        return new LastHeard(Optional.of(work));
    }

    /** The effect, if there are answers. */
    Optional<HeardEffect> effect() {
        if (work.isPresent()) {
            effect = work.map(Supplier::get);
            work = Optional.empty();
        }
        return effect;
    }
}
