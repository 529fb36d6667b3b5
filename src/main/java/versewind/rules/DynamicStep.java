package versewind.rules;

import versewind.organ.Registration;
import versewind.sound.Estimate;

/**
 * One step stronger or softer.
 *
 * @param moves the changes since the step before
 * @param registration what is drawn then
 * @param estimate the verse's sound then, an estimate
 * @param changeDb change of the organ's level in the nave in dB; negative for softer
 */
public record DynamicStep(StopChanges moves, Registration registration, Estimate estimate, double changeDb) {}
