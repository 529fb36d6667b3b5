package versewind.rules;

import java.util.Optional;
import versewind.organ.Registration;
import versewind.sound.Estimate;

/**
 * One step stronger or softer.
 *
 * @param moves the changes since the step before
 * @param registration what is drawn then
 * @param estimate the verse's sound then, an estimate
 * @param changeDb change of the organ's level in the nave in dB; negative for softer
 * @param reached the step of the order that is reached: "step 5 of 8: principals 8 4 2"; empty where that
 *     stays as it was, and off the order
 */
public record DynamicStep(
        StopChanges moves, Registration registration, Estimate estimate, double changeDb, Optional<String> reached) {}
