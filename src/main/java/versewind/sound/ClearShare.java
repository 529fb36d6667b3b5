package versewind.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.sound.LevelSensitivity.Part;

/**
 * The share of one verse, for registration after registration: as a number for a search, or with the odds of every
 * verdict for an estimate.
 *
 * <p>Wanted and other sound, at the seat that matters: for a congregation the organ and the singing, for a choir or a
 * soloist the singing and the organ, for a soloed melody the melody and its accompaniment; see {@link Balance}. The
 * singing, its loudness and the paths through the room are prepared once for a verse.
 *
 * <p>Not thread-safe: it shares the buffers of the {@link OrganSound} that made it.
 *
 * <p>Checked against: {@code ClearShareTest}.
 */
public final class ClearShare {

    /** Step of numerical derivatives in dB. */
    private static final double STEP_DB = 0.5;

    private static final double STEP = ThirdOctaves.dbToPower(STEP_DB);

    /** The organ is tried so much softer and stronger, in dB, to find where a verdict begins. */
    private static final double FARTHEST_DB = 60;

    private static final double NEAR_DB = 0.01;
    private static final double WIDTH_DB = 10;

    private final OrganPower power;
    private final Hearing hearing;
    private final AsHeard asHeard;
    private final HeardShares heardBeside;
    private Mode mode;
    private Path toNave;
    private Path toOrganSeat;
    private double singingSone;
    private final double[] singing = new double[ThirdOctaves.COUNT];
    private final double[] wanted = new double[ThirdOctaves.COUNT];
    private final double[] other = new double[ThirdOctaves.COUNT];
    private final double[] shiftedWanted = new double[ThirdOctaves.COUNT];
    private final double[] shiftedOther = new double[ThirdOctaves.COUNT];
    private final double[] weights = new double[ThirdOctaves.COUNT];
    private final double[] ofWanted;
    private final double[] ofOther;

    /** The share of a registration that was heard just so, as it was felt; empty for one that was never heard. */
    @FunctionalInterface
    interface AsHeard {
        AsHeard NEVER = (drawn, hands) -> OptionalDouble.empty();

        OptionalDouble share(Registration drawn, HandsAndFeet hands);
    }

    ClearShare(OrganPower power, Hearing hearing, int parameters, AsHeard asHeard, HeardShares heardBeside) {
        this.power = power;
        this.hearing = hearing;
        this.asHeard = asHeard;
        this.heardBeside = heardBeside;
        ofWanted = new double[parameters];
        ofOther = new double[parameters];
    }

    /** Prepares for the verses of one mode, sung by some people at some seats. */
    ClearShare prepare(Mode accompaniment, PeoplePresent people, Seats seats, double[] voice) {
        mode = accompaniment;
        toNave = seats.organInNave();
        toOrganSeat = mode == Mode.CONGREGATION ? seats.organAmong(people.place()) : toNave;
        seats.singing(people, voice, singing);
        singingSone = mode == Mode.CONGREGATION ? hearing.sone(singing) : 0;
        return this;
    }

    /**
     * The share of a registration, 0 to 1; 0 if nothing leads.
     *
     * @param drawn the registration
     * @param hands how it is played
     */
    public double of(Registration drawn, HandsAndFeet hands) {
        OptionalDouble heard = asHeard.share(drawn, hands);
        if (heard.isPresent()) {
            return heard.getAsDouble();
        }
        power.compute(drawn, hands);
        return heardBeside.felt(share());
    }

    /** The share of the registration that was computed last. */
    private double share() {
        if (isWithoutTune()) {
            return 0;
        }
        listen(wanted, other);
        return shareOf(wanted, other);
    }

    private double shareOf(double[] sound, double[] beside) {
        return switch (mode) {
            case CONGREGATION -> hearing.share(sound, beside, beside == other ? singingSone : hearing.sone(beside));
            case SMALL_CHOIR, SOLO_VOICE -> hearing.words(sound, beside);
            case MELODY_SOLOED -> hearing.share(sound, beside, hearing.sone(beside));
        };
    }

    private boolean isWithoutTune() {
        return !isOfWords() && power.isMelodySilent();
    }

    /** Brings the wanted and the other sound to the seat. */
    private void listen(double[] wantedHeard, double[] otherHeard) {
        switch (mode) {
            case CONGREGATION -> {
                toOrganSeat.carry(power.all(), wantedHeard);
                System.arraycopy(singing, 0, otherHeard, 0, singing.length);
            }
            case SMALL_CHOIR, SOLO_VOICE -> {
                System.arraycopy(singing, 0, wantedHeard, 0, singing.length);
                toNave.carry(power.all(), otherHeard);
            }
            case MELODY_SOLOED -> {
                toNave.carry(power.melody(), wantedHeard);
                toNave.carry(power.rest(), otherHeard);
            }
        }
    }

    /**
     * The balance of the registration that was computed last.
     *
     * @param sensitivity of the same organ
     * @param ofSinging derivative of the level of the singing by the parameters
     * @param covariance of the parameters
     * @param gradient receives the derivative of the level of the organ over the singing, or of the melody over its
     *     accompaniment, by the parameters; unchanged if one of them is silent
     */
    Balance balance(LevelSensitivity sensitivity, double[] ofSinging, Covariance covariance, double[] gradient) {
        double share = share();
        Optional<Verdict> certain = onSilence();
        if (certain.isPresent()) {
            return Balance.certain(OptionalDouble.of(share), certain.get());
        }
        switch (mode) {
            case CONGREGATION -> {
                weigh(wanted, share);
                sensitivity.ofOrgan(Part.ALL, weights, toOrganSeat, wanted, ofWanted);
                System.arraycopy(ofSinging, 0, ofOther, 0, ofSinging.length);
            }
            case SMALL_CHOIR, SOLO_VOICE -> {
                System.arraycopy(ofSinging, 0, ofWanted, 0, ofSinging.length);
                weigh(other, share);
                sensitivity.ofOrgan(Part.ALL, weights, toNave, other, ofOther);
            }
            case MELODY_SOLOED -> {
                weigh(wanted, share);
                sensitivity.ofOrgan(Part.MELODY, weights, toNave, wanted, ofWanted);
                weigh(other, share);
                sensitivity.ofOrgan(Part.REST, weights, toNave, other, ofOther);
            }
        }
        Odds.Doubt doubt = new Odds.Doubt(
                covariance.variance(ofWanted), covariance.variance(ofOther), covariance.of(ofWanted, ofOther));
        for (int index = 0; index < gradient.length; index++) {
            gradient[index] = isOfWords() ? ofOther[index] - ofWanted[index] : ofWanted[index] - ofOther[index];
        }
        Odds odds = Odds.of(mode, doubt, this::shifted);
        return new Balance(OptionalDouble.of(share), Verdict.of(mode, share), odds.first(), odds);
    }

    /**
     * The balance of the registration that was computed last, as it was felt when it was heard. The odds are those of
     * the felt level; the share is that at its median, or as estimated where the verdict is the same.
     *
     * @param estimated the share as estimated
     * @param felt the felt level
     */
    Balance balance(double estimated, FeltLevel felt) {
        double median = shareAt(felt.medianDb());
        double share = Verdict.of(mode, estimated) == Verdict.of(mode, median) ? estimated : median;
        List<Verdict> verdicts = Verdict.of(mode);
        List<Odds.Chance> chances = new ArrayList<>();
        double below = 0;
        for (int place = 0; place < verdicts.size(); place++) {
            double upTo = place + 1 < verdicts.size()
                    ? below(felt, verdicts.get(place + 1).from(mode))
                    : 1;
            chances.add(new Odds.Chance(verdicts.get(place), Math.max(0, upTo - below)));
            below = upTo;
        }
        Odds odds = new Odds(chances);
        return new Balance(OptionalDouble.of(share), Verdict.of(mode, share), odds.first(), odds);
    }

    /** Probability of a share below an edge. */
    private double below(FeltLevel felt, double edge) {
        double below = felt.below(levelDbAt(edge));
        return isOfWords() ? 1 - below : below;
    }

    private Optional<Verdict> onSilence() {
        if (!power.isMelodySilent()) {
            return Optional.empty();
        }
        return switch (mode) {
            case CONGREGATION -> Optional.of(power.isSilent() ? Verdict.LOST : Verdict.NO_TUNE);
            case SMALL_CHOIR, SOLO_VOICE -> power.isSilent() ? Optional.of(Verdict.CLEAR) : Optional.empty();
            case MELODY_SOLOED -> Optional.of(Verdict.BURIED);
        };
    }

    /** The derivative of the share by the level of each band of one of the two sounds, made to sum to 1. */
    private void weigh(double[] varied, double share) {
        double sum = 0;
        double otherSone = isOfWords() ? 0 : hearing.sone(other);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double heard = varied[band];
            weights[band] = 0;
            if (heard > 0) {
                varied[band] = heard * STEP;
                weights[band] = Math.abs(shareBeside(varied == other ? hearing.sone(other) : otherSone) - share);
                varied[band] = heard;
            }
            sum += weights[band];
        }
        if (sum == 0) {
            LevelSensitivity.aWeigh(varied, weights);
            return;
        }
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            weights[band] /= sum;
        }
    }

    private double shareBeside(double otherSone) {
        return isOfWords() ? hearing.words(wanted, other) : hearing.share(wanted, other, otherSone);
    }

    /** The share where both sounds are so many dB stronger. */
    private double shifted(double wantedDb, double otherDb) {
        scale(wanted, wantedDb, shiftedWanted);
        scale(other, otherDb, shiftedOther);
        return shareOf(shiftedWanted, shiftedOther);
    }

    private boolean isOfWords() {
        return Balance.Kind.of(mode) == Balance.Kind.VOICE;
    }

    private static void scale(double[] sound, double moreDb, double[] scaled) {
        double factor = ThirdOctaves.dbToPower(moreDb);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            scaled[band] = sound[band] * factor;
        }
    }

    /**
     * How much stronger the organ, or the melody, may be than it is with the verdict that is wanted.
     *
     * <p>A melody, and an organ beneath words, are right within 10 dB of the edge: beyond, what lies beneath is too
     * soft (an estimate).
     *
     * @param fromDb the least, in dB above its present level
     * @param toDb the most, likewise
     */
    public record RightBand(double fromDb, double toDb) {

        /** The levels to which a judgement points: below, in or above this band. */
        public RightBand where(HeardAs heard) {
            return switch (heard) {
                case TOO_SOFT -> new RightBand(Double.NEGATIVE_INFINITY, fromDb);
                case RIGHT -> this;
                case TOO_STRONG -> new RightBand(toDb, Double.POSITIVE_INFINITY);
            };
        }
    }

    /** The levels between which a registration would be right; empty where nothing leads. */
    public Optional<RightBand> rightBand(Registration drawn, HandsAndFeet hands) {
        power.compute(drawn, hands);
        if (onSilence().isPresent()) {
            return Optional.empty();
        }
        listen(wanted, other);
        return Optional.of(right());
    }

    /** The levels between which what was listened to last would be right. */
    RightBand right() {
        double edgeDb = levelDbAt(Verdict.right(mode).from(mode));
        return switch (mode) {
            case CONGREGATION -> new RightBand(edgeDb, levelDbAt(Verdict.TOO_STRONG.from(mode)));
            case SMALL_CHOIR, SOLO_VOICE -> new RightBand(edgeDb - WIDTH_DB, edgeDb);
            case MELODY_SOLOED -> new RightBand(edgeDb, edgeDb + WIDTH_DB);
        };
    }

    /** The share where the organ, or the melody, is so many dB stronger. */
    private double shareAt(double moreDb) {
        return isOfWords() ? shifted(0, moreDb) : shifted(moreDb, 0);
    }

    /** By how many dB the organ, or the melody, would have to be stronger for a share. */
    private double levelDbAt(double share) {
        return isOfWords() ? -wantedDbAt(share, db -> shareAt(-db)) : wantedDbAt(share, this::shareAt);
    }

    /** Where a share that grows reaches a value, by halving. */
    private static double wantedDbAt(double value, DoubleUnaryOperator share) {
        double lowDb = -FARTHEST_DB;
        double highDb = FARTHEST_DB;
        while (highDb - lowDb > NEAR_DB) {
            double middleDb = (lowDb + highDb) / 2;
            if (share.applyAsDouble(middleDb) < value) {
                lowDb = middleDb;
            } else {
                highDb = middleDb;
            }
        }
        return highDb;
    }
}
