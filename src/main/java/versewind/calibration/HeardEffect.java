package versewind.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;

/**
 * What the answers after the last service changed: by how many dB the organ, and the singing, are taken to be stronger
 * than without them, in the mean of the verses that were answered.
 *
 * @param service the service that was answered
 * @param before the organ without these answers
 * @param organ the organ in the nave
 * @param singing the singing
 */
public record HeardEffect(String service, OrganSound before, Change organ, Change singing) {

    /** A change that is told, in dB: it rounds to 1. */
    private static final double WORTH_A_WORD_DB = 0.5;

    /**
     * A change of a level.
     *
     * @param db its amount in dB
     * @param plusMinusDb standard deviation of the level after it
     */
    public record Change(double db, double plusMinusDb) {

        private boolean isTold() {
            return Math.abs(db) >= WORTH_A_WORD_DB;
        }

        private String words() {
            return Math.round(Math.abs(db)) + " dB " + (db < 0 ? "softer" : "stronger") + ", ±"
                    + Math.max(1, Math.round(plusMinusDb));
        }
    }

    /**
     * Compares the organ without the answers on a service and with them.
     *
     * @param service what it is called
     * @param before the organ without them
     * @param after the organ with them
     * @param answers one at least
     */
    static HeardEffect of(String service, OrganSound before, OrganSound after, List<HeardRegistration> answers) {
        double organDb = 0;
        double organPlusMinusDb = 0;
        double singingDb = 0;
        double singingPlusMinusDb = 0;
        for (HeardRegistration each : answers) {
            Estimate was = before.estimate(each.verse(), each.people(), OptionalInt.empty());
            Estimate is = after.estimate(each.verse(), each.people(), OptionalInt.empty());
            organDb += is.organDba().orElse(0) - was.organDba().orElse(0);
            organPlusMinusDb += is.plusMinus().organDb();
            singingDb += is.singersDba().orElse(0) - was.singersDba().orElse(0);
            singingPlusMinusDb += is.plusMinus().singersDb();
        }
        int count = answers.size();
        return new HeardEffect(
                service,
                before,
                new Change(organDb / count, organPlusMinusDb / count),
                new Change(singingDb / count, singingPlusMinusDb / count));
    }

    /** In a sentence; empty where nothing changed by half a dB. */
    public Optional<String> sentence() {
        List<String> changes = new ArrayList<>();
        if (organ.isTold()) {
            changes.add("the organ is taken to be " + organ.words());
        }
        if (singing.isTold()) {
            changes.add("the singing " + (changes.isEmpty() ? "is taken to be " : "") + singing.words());
        }
        return changes.isEmpty()
                ? Optional.empty()
                : Optional.of("Since the answers of " + HeardRegistration.said(service) + ", "
                        + String.join("; ", changes) + ".");
    }
}
