package versewind.calibration;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.sound.OrganSound;

/**
 * The share of an organ that its organist calls right. Belongs to one thread, as the sound does.
 *
 * <p>It is the mean of the {@linkplain Experience#nearest nearest} usual registration that is right and of what was
 * called right after services where people sang as strongly; but clearly below all that was called too strong there,
 * and above what was called too soft, as long as these agree. An estimate; common practice, no source.
 */
public final class RightShare {

    /** A step of the order of building up, about: so far from what was wrong. */
    private static final double CLEARLY = 0.04;

    private final Experience experience;
    private final OrganSound sound;
    private final Map<HeardRegistration, OptionalDouble> shares = new HashMap<>();

    /**
     * Prepares it.
     *
     * @param experience what is known of the organ
     * @param sound the organ as it is known
     */
    public RightShare(Experience experience, OrganSound sound) {
        this.experience = experience;
        this.sound = sound;
    }

    /**
     * The share, 0 to 1; empty where nothing was called right.
     *
     * @param verse a verse that is sung
     * @param people present
     */
    public OptionalDouble of(Verse verse, int people) {
        List<HeardRegistration> answers = experience.answers().stream()
                .filter(each -> each.isSungAs(verse.mode(), verse.singing()))
                .toList();
        Stream<HeardRegistration> usual = Experience.nearest(
                experience.usual().stream().filter(each -> each.heard() == HeardAs.RIGHT),
                verse,
                verse.people().orElse(people))
                .stream();
        OptionalDouble right = shares(
                        Stream.concat(usual, answers.stream().filter(each -> each.heard() == HeardAs.RIGHT)))
                .average();
        double most = shares(answers, HeardAs.TOO_STRONG).min().orElse(1) - CLEARLY;
        double least = shares(answers, HeardAs.TOO_SOFT).max().orElse(-1) + CLEARLY;
        return right.isEmpty() || least > most
                ? right
                : OptionalDouble.of(Math.max(least, Math.min(most, right.getAsDouble())));
    }

    private DoubleStream shares(List<HeardRegistration> answers, HeardAs heard) {
        return shares(answers.stream().filter(each -> each.heard() == heard));
    }

    private DoubleStream shares(Stream<HeardRegistration> some) {
        return some.map(each -> shares.computeIfAbsent(each, this::share)).flatMapToDouble(OptionalDouble::stream);
    }

    private OptionalDouble share(HeardRegistration heard) {
        return sound.estimate(heard.verse(), heard.people(), OptionalInt.empty())
                .balance()
                .share();
    }
}
