package versewind.acoustics;

import java.util.List;
import java.util.Optional;

/**
 * Noise dose of a day, by the rules for workplaces. Levels are A-weighted, in dB.
 *
 * <p>A caution, not an assessment: that needs measurements by qualified people under local rules.
 *
 * <p>Source: NIOSH publication 98-126 (1998), 1.1; ISO 9612:2009, 9 (the parts of a day), read through a public
 * implementation; Directive 2003/10/EC, Article 3(1), whose peak values are left out. The clauses of NIOSH and ISO are
 * from memory; 85 dB(A), 8 hours and 3 dB are those of NIOSH's own page on noise.
 *
 * <p>Differences: levels below 80 dB(A), which NIOSH leaves out, count too: cautious, by less than 0.04 of a dose an
 * hour.
 *
 * <p>Checked against: {@code NoiseDoseTest}.
 */
public final class NoiseDose {

    /** Highest level accepted, in dB(A). */
    public static final double HIGHEST_DBA = Math.nextDown(140.0);

    private static final double NIOSH_LEVEL_DBA = 85;
    private static final double NIOSH_MINUTES = 480;
    private static final double NIOSH_EXCHANGE_DB = 3;
    private static final double DAY_MINUTES = 480;

    private NoiseDose() {}

    /**
     * An exposure to sound.
     *
     * @param levelDbA mean level in dB(A), below 140
     * @param minutes how long, more than 0
     */
    public record Exposure(double levelDbA, double minutes) {

        public Exposure {
            if (!(levelDbA <= HIGHEST_DBA && levelDbA > Double.NEGATIVE_INFINITY)) {
                throw new IllegalArgumentException("no ear may be at 140 dB(A) or more, for any time");
            }
            Reverberation.requirePositive(minutes, "the length of an exposure");
        }
    }

    /** Values of the European directive, as levels over 8 hours. */
    public enum EuropeanValue {
        /** Lower action value: protection is offered. */
        LOWER_ACTION(80),
        /** Upper action value: protection is worn, noise is reduced. */
        UPPER_ACTION(85),
        /** Exposure limit, at the ear beneath the protection. */
        LIMIT(87);

        private final double levelDbA;

        EuropeanValue(double levelDbA) {
            this.levelDbA = levelDbA;
        }

        /** Level over a day of 8 hours in dB(A). */
        public double levelDbA() {
            return levelDbA;
        }

        /** The highest value that a level over 8 hours reaches, if any. */
        public static Optional<EuropeanValue> reachedBy(double dayDbA) {
            Optional<EuropeanValue> reached = Optional.empty();
            for (EuropeanValue value : values()) {
                reached = dayDbA >= value.levelDbA ? Optional.of(value) : reached;
            }
            return reached;
        }
    }

    /** Longest time a day that NIOSH recommends for a level, 480 / 2^((L - 85)/3), in minutes. */
    public static double nioshMinutes(double levelDbA) {
        return NIOSH_MINUTES / Math.pow(2, (levelDbA - NIOSH_LEVEL_DBA) / NIOSH_EXCHANGE_DB);
    }

    /** Share of the NIOSH daily dose: sum of minutes over recommended minutes. */
    public static double nioshShare(List<Exposure> day) {
        return day.stream()
                .mapToDouble(exposure -> exposure.minutes() / nioshMinutes(exposure.levelDbA()))
                .sum();
    }

    /**
     * Level over a day of 8 hours, 10 lg(sum of T_i/480 min * 10^(L_i/10)), in dB(A).
     *
     * @param day the day's exposures, at least one
     */
    public static double dayLevelDbA(List<Exposure> day) {
        if (day.isEmpty()) {
            throw new IllegalArgumentException("a day without any exposure has no level");
        }
        return ThirdOctaves.powerToDb(day.stream()
                .mapToDouble(exposure -> exposure.minutes() / DAY_MINUTES * ThirdOctaves.dbToPower(exposure.levelDbA()))
                .sum());
    }

    /** Level during an exposure minus its level over a day of 8 hours, 10 lg(480 min / T), in dB. */
    public static double overDayDb(double minutes) {
        return ThirdOctaves.powerToDb(DAY_MINUTES / minutes);
    }
}
