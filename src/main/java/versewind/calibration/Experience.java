package versewind.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import versewind.plan.Verse;

/**
 * What an organist knows of an organ without a meter.
 *
 * @param usual the registrations that are usually drawn, {@value #MOST_USUAL} at most, each under a name of its own
 */
public record Experience(List<HeardRegistration> usual) {

    /** The most usual registrations: more are no longer usual. */
    public static final int MOST_USUAL = 12;

    private static final double STRENGTH_DB = 4;

    /** Nothing is known yet. */
    public static final Experience NONE = new Experience(List.of());

    public Experience {
        usual = List.copyOf(usual);
        if (usual.size() > MOST_USUAL) {
            throw new IllegalArgumentException("an organ keeps up to " + MOST_USUAL + " usual registrations");
        }
        if (usual.stream().map(HeardRegistration::name).distinct().count() < usual.size()) {
            throw new IllegalArgumentException("two usual registrations have the same name");
        }
    }

    /** The usual registration of this name. */
    public Optional<HeardRegistration> usual(String name) {
        return usual.stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /**
     * The usual registration by which a verse is measured: of those for the same singers the one for the nearest level
     * of singing, which grows by 10 lg of the people and by about 4 dB from one strength to the next (ANSI S3.5-1997,
     * the levels of voices). Empty where nobody sings.
     *
     * @param people present
     */
    public Optional<HeardRegistration> nearest(Verse verse, int people) {
        return usual.stream()
                .filter(each -> verse.isSung() && each.mode() == verse.mode())
                .min(Comparator.comparingDouble(each -> Math.abs(10 * Math.log10((double) people / each.people())
                        + STRENGTH_DB
                                * (verse.singing().ordinal() - each.singing().ordinal()))));
    }

    /** With a usual registration, in place of the one of its name. */
    public Experience keeping(HeardRegistration one) {
        List<HeardRegistration> more = new ArrayList<>(usual);
        int place = usual.stream().map(HeardRegistration::name).toList().indexOf(one.name());
        if (place < 0) {
            more.add(one);
        } else {
            more.set(place, one);
        }
        return new Experience(more);
    }

    /** Without the usual registration of this name. */
    public Experience without(String name) {
        return new Experience(
                usual.stream().filter(each -> !each.name().equals(name)).toList());
    }
}
