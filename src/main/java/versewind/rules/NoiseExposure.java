package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.acoustics.NoiseDose;
import versewind.acoustics.NoiseDose.Exposure;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.SoundingTime;
import versewind.sound.EarSeats;
import versewind.sound.Estimate;

/**
 * What a service or a rehearsal of a plan's length means for the ears of the organist and of a choir: a caution and no
 * assessment.
 *
 * <p>Source: NIOSH publication 98-126 (1998) for the dose; lengths and levels are estimates.
 *
 * @param minutes how long all hymns of the plan sound
 * @param organist at the console; empty where nothing sounds
 * @param choir in the choir's place; empty where nothing sounds
 */
public record NoiseExposure(double minutes, Optional<Seat> organist, Optional<Seat> choir) {

    /** From this share of the dose on something is said of it beside the music. An estimate. */
    private static final double LEAST_SAID = 0.1;

    /**
     * A seat.
     *
     * @param distanceM distance from the organ in m
     * @param levelDba mean level while it sounds, in dB(A)
     * @param plusMinusDb how sure that is: standard deviation in dB
     * @param share share of the daily dose that NIOSH recommends at most, 1 for the whole
     * @param dayDba level over a day of 8 hours, if the rest of it is quiet, in dB(A)
     */
    public record Seat(double distanceM, double levelDba, double plusMinusDb, double share, double dayDba) {

        /** The share if the level is lower by its standard deviation. */
        public double leastShare() {
            return share / factor();
        }

        /** The share if the level is higher by its standard deviation. */
        public double mostShare() {
            return share * factor();
        }

        /** NIOSH's exchange: half or twice the time for 3 dB. */
        private double factor() {
            return NoiseDose.nioshMinutes(0) / NoiseDose.nioshMinutes(plusMinusDb);
        }
    }

    /**
     * Reckons a plan once through.
     *
     * @param plan the plan
     * @param assessment what it sounds like
     * @param seats the seats around its instrument
     */
    public static NoiseExposure of(Plan plan, Assessment assessment, EarSeats seats) {
        Day organist = new Day();
        Day choir = new Day();
        double minutes = 0;
        for (Assessment.OfHymn of : assessment.hymns()) {
            Hymn hymn = of.hymn();
            for (Assessment.OfVerse verse : of.verses()) {
                double verseMinutes = SoundingTime.minutes(hymn, verse.verse());
                EarSeats.Levels levels =
                        seats.during(verse.verse(), plan.heading().people(), verse.estimate());
                organist.add(levels.organist(), verseMinutes, plusMinusDb(verse.estimate()));
                choir.add(levels.choir(), verseMinutes, plusMinusDb(verse.estimate()));
                minutes += verseMinutes;
            }
        }
        return new NoiseExposure(minutes, organist.seat(seats.organistM()), choir.seat(seats.choirM()));
    }

    /** Near the organ its level is as unsure as in the nave; without it, that of the singing. */
    private static double plusMinusDb(Estimate estimate) {
        return estimate.isSilent()
                ? estimate.plusMinus().singersDb()
                : estimate.plusMinus().organDb();
    }

    /** What one seat hears of a day. */
    private static final class Day {
        private final List<Exposure> exposures = new ArrayList<>();
        private double dose;
        private double unsure;

        /** An ear at the threshold of pain has been far above every dose: levels beyond are taken as that. */
        void add(OptionalDouble levelDba, double minutes, double plusMinusDb) {
            if (levelDba.isPresent()) {
                Exposure exposure = new Exposure(Math.min(levelDba.getAsDouble(), NoiseDose.HIGHEST_DBA), minutes);
                double part = NoiseDose.nioshShare(List.of(exposure));
                exposures.add(exposure);
                dose += part;
                unsure += part * plusMinusDb;
            }
        }

        /** What is not known of the organ is the same in every verse, so that the mean is as unsure as each. */
        Optional<Seat> seat(double distanceM) {
            if (exposures.isEmpty()) {
                return Optional.empty();
            }
            double dayDba = NoiseDose.dayLevelDbA(exposures);
            double minutes = exposures.stream().mapToDouble(Exposure::minutes).sum();
            double levelDba = dayDba + NoiseDose.overDayDb(minutes);
            return Optional.of(new Seat(distanceM, levelDba, unsure / dose, dose, dayDba));
        }
    }

    /** In a few sentences; empty where nothing sounds. */
    public Optional<String> words() {
        if (organist.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("Ears, once through the plan, about " + Math.max(1, Math.round(minutes)) + " min of sound: "
                + organist.map(seat -> words("the organist", seat)).orElse("")
                + choir.map(seat -> "; " + words("the choir", seat)).orElse("")
                + ". The dose is NIOSH's for a day (85 dB(A) over 8 hours); length and levels are estimates. "
                + Caution.DEFERENCE);
    }

    /** In a short line, where a seat has {@link #LEAST_SAID} or more of the dose. */
    public Optional<String> caution() {
        String seats = Stream.of(
                        organist.filter(NoiseExposure::isSaid).map(seat -> percent(seat.share) + "% for the organist"),
                        choir.filter(NoiseExposure::isSaid).map(seat -> percent(seat.share) + "% for the choir"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return seats.isEmpty() ? Optional.empty() : Optional.of("Ears: of a day's noise dose, about " + seats + ".");
    }

    private static boolean isSaid(Seat seat) {
        return seat.share >= LEAST_SAID;
    }

    private static String words(String who, Seat seat) {
        return who + ", " + metres(seat.distanceM) + " m from the organ, about " + Math.round(seat.levelDba)
                + " dB(A), " + percent(seat.share) + "% of the daily dose, perhaps " + percent(seat.leastShare())
                + " to " + percent(seat.mostShare()) + "%";
    }

    private static String metres(double distanceM) {
        return distanceM == Math.rint(distanceM)
                ? String.format(Locale.ROOT, "%.0f", distanceM)
                : String.format(Locale.ROOT, "%.1f", distanceM);
    }

    /** Two figures at most: "0.4", "7", "35", "120". */
    private static String percent(double share) {
        double percent = 100 * share;
        if (percent < 0.05) {
            return "less than 0.1";
        }
        if (percent < 0.95) {
            return String.format(Locale.ROOT, "%.1f", percent);
        }
        double step = percent < 99.5 ? 1 : 10;
        return String.format(Locale.ROOT, "%.0f", step * Math.rint(percent / step));
    }
}
