package versewind.rules;

import java.util.Optional;
import java.util.OptionalDouble;
import versewind.plan.Mode;
import versewind.sound.Estimate;
import versewind.sound.Margin;
import versewind.sound.Thresholds;

/**
 * Between which levels a verse's organ would be right for its singers, with the sound it has now and only louder or
 * softer.
 *
 * <p>Where all bands of a sound rise by 1 dB, its margin rises by 1 dB (ANSI S3.5-1997: the audible share grows by 1/30
 * for each dB), so that level + (threshold - margin) is where the verdict would change. Bands that are heard wholly or
 * not at all do not take part: an estimate, and rougher the farther away the threshold is.
 *
 * <p>Checked against: {@code TargetBandTest}, by organs that are made so much louder or softer.
 *
 * @param lowDba the lowest level in dB(A) in the nave that leads; empty where the organ may be as soft as it likes
 * @param highDba the highest level that is not too strong
 */
public record TargetBand(OptionalDouble lowDba, double highDba) {

    /** The band of a verse; none where the organ is alone, where it is silent, and where a melody is soloed. */
    public static Optional<TargetBand> of(Mode mode, Estimate estimate) {
        Margin margin = estimate.margin();
        if (estimate.isSilent() || margin.db().isEmpty()) {
            return Optional.empty();
        }
        double levelDba = estimate.organDba().getAsDouble();
        double marginDb = margin.db().getAsDouble();
        return switch (margin.kind()) {
            case LEAD ->
                Optional.of(new TargetBand(
                        OptionalDouble.of(levelDba + Thresholds.LEAD.goodDb() - marginDb),
                        levelDba + Thresholds.LEAD.tooStrongDb().orElseThrow() - marginDb));
            case VOICE ->
                Optional.of(new TargetBand(
                        OptionalDouble.empty(),
                        levelDba + marginDb - Thresholds.of(mode).goodDb()));
            case SOLO_LINE, ORGAN_ALONE -> Optional.empty();
        };
    }
}
