package versewind.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Trims;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.sound.ClearShare;
import versewind.sound.Covariance;
import versewind.sound.FeltVerses;
import versewind.sound.NormalDistribution;
import versewind.sound.Offsets;
import versewind.sound.OrganSound;
import versewind.sound.Parameters;

/**
 * The update of an organ by what was heard: usual registrations, and answers after a service.
 *
 * <p>Each is an ordered observation of the share: the level of the organ as felt lay below, in or above the {@link
 * ClearShare.RightBand} of what was played; see {@link HeardVerse}. The level of the organ over the singing, or of the
 * melody over its accompaniment, is linear in the {@link Parameters}, and so is the felt level, but for the error of
 * its own. The factors of {@link JointlyFelt} are brought into the parameters one after the other, as readings are. One
 * organist in 50 answers as if at random: how likely that is decides how far all answers together are trusted. What was
 * heard is kept beside the organ too: a verse played just so again is judged by its own answers, see {@link
 * FeltVerses}.
 *
 * <p>Source: ordered probit with expectation propagation, see {@link JointlyFelt}.
 *
 * <p>Checked against: {@code FeedbackUpdateTest}.
 */
public final class FeedbackUpdate {

    /** What others make less likely than this contradicts them. An estimate. */
    private static final double UNLIKELY = 0.05;

    /** How often the answers of an organist are as if given at random. An estimate. */
    private static final double RANDOM = 0.02;

    private final OrganSound sound;
    private final List<HeardVerse> verses = new ArrayList<>();
    private final JointlyFelt felt;

    /**
     * Prepares an update.
     *
     * @param sound the organ as expected before
     * @param heard registrations of this organ
     */
    public FeedbackUpdate(OrganSound sound, List<HeardRegistration> heard) {
        this.sound = sound;
        for (HeardRegistration each : heard) {
            Optional<HeardVerse> verse = verse(each);
            if (verse.isPresent()) {
                verse.get().add(each);
            }
        }
        felt = new JointlyFelt(sound.covariance(), verses);
    }

    /** The verse that was heard, alike to one before or another; empty where nothing leads. */
    private Optional<HeardVerse> verse(HeardRegistration heard) {
        Verse verse = sound.heard(heard.verse());
        for (HeardVerse each : verses) {
            if (each.isAlike(verse, heard.people())) {
                return Optional.of(each);
            }
        }
        Optional<ClearShare.RightBand> right = sound.rightBand(verse, heard.people());
        if (right.isEmpty()) {
            return Optional.empty();
        }
        double[] gradient = new double[sound.parameters().count()];
        sound.gradient(verse, heard.people(), gradient);
        gradient[sound.parameters().taste()] = 1;
        HeardVerse another = new HeardVerse(verse, heard.people(), gradient, right.get());
        verses.add(another);
        return Optional.of(another);
    }

    /** The organ after what was heard; the same organ if there is nothing. */
    public OrganSound sound() {
        if (verses.isEmpty()) {
            return sound;
        }
        Parameters parameters = sound.parameters();
        double[] found = new double[parameters.count()];
        Covariance covariance = sound.covariance();
        for (int verse = 0; verse < verses.size(); verse++) {
            double[] gradient = verses.get(verse).gradient();
            double expectedDb = Covariance.inner(gradient, found);
            double precision = felt.precision(verse);
            double variance = covariance.variance(gradient) + HeardVerse.OWN_SD_DB * HeardVerse.OWN_SD_DB;
            double part = 1 + precision * variance;
            Covariance.addScaled(
                    found, covariance.times(gradient), (felt.shift(verse) - precision * expectedDb) / part);
            covariance = covariance.afterPart(gradient, HeardVerse.OWN_SD_DB, precision * variance / part);
        }
        double trusted = trusted();
        covariance = covariance.mixed(sound.covariance(), trusted, found);
        for (int index = 0; index < found.length; index++) {
            found[index] *= trusted;
        }
        Offsets offsets = sound.offsets().plus(parameters.offsets(found));
        return sound.with(parameters.trims(Trims.of(sound.organ()), found), offsets)
                .with(covariance, felt());
    }

    private FeltVerses felt() {
        FeltVerses all = FeltVerses.NONE;
        for (HeardVerse verse : verses) {
            List<HeardAs> said = new ArrayList<>();
            for (HeardRegistration answer : verse.answers()) {
                said.add(answer.heard());
            }
            all = all.and(verse.verse(), verse.people(), said);
        }
        return all;
    }

    /** The odds that the answers tell of the organ, 0 to 1. */
    private double trusted() {
        int answers = 0;
        for (HeardVerse verse : verses) {
            answers += verse.answers().size();
        }
        double random = Math.log(RANDOM) - answers * Math.log(HeardVerse.CHOICES);
        return 1 / (1 + Math.exp(random - Math.log(1 - RANDOM) - felt.logProbability()));
    }

    /** A judgement, of which verse, and whether all other verses make it unlikely. */
    private record Said(HeardVerse verse, HeardRegistration answer, boolean isOdd) {}

    /**
     * The judgements that all other verses together make unlikely, and less likely by half than the estimate does, each
     * with those that it denies: that make it unlikely, and that it makes unlikely, where nothing else is known. Where
     * two deny each other and neither is unlikely beside all the rest, both are named. Only judgements of the same
     * kind of singing deny each other.
     */
    public List<Contradiction> contradictions() {
        List<Said> all = new ArrayList<>();
        for (int index = 0; index < verses.size(); index++) {
            HeardVerse verse = verses.get(index);
            NormalDistribution.Moments rest = felt.rest(index);
            for (HeardRegistration answer : verse.answers()) {
                double alone = verse.meant(answer.heard(), before(verse));
                boolean isOdd =
                        hasOpposite(answer) && verse.meant(answer.heard(), rest) < Math.min(UNLIKELY, alone / 2);
                all.add(new Said(verse, answer, isOdd));
            }
        }
        boolean[][] denying = new boolean[all.size()][all.size()];
        for (int one = 0; one < denying.length; one++) {
            for (int other = 0; other < one; other++) {
                denying[one][other] = denyEachOther(all.get(one), all.get(other));
                denying[other][one] = denying[one][other];
            }
        }
        List<Contradiction> found = new ArrayList<>();
        for (int one = 0; one < denying.length; one++) {
            Said said = all.get(one);
            List<HeardRegistration> denied = new ArrayList<>();
            for (int other = 0; other < denying.length; other++) {
                if (denying[one][other] && (said.isOdd() || !all.get(other).isOdd())) {
                    denied.add(all.get(other).answer());
                }
            }
            if (said.isOdd() || !denied.isEmpty()) {
                found.add(new Contradiction(said.answer(), denied));
            }
        }
        return List.copyOf(found);
    }

    /** True if the same kind of singing was judged otherwise: what suits a choir says nothing against the people. */
    private boolean hasOpposite(HeardRegistration answer) {
        return verses.stream()
                .flatMap(verse -> verse.answers().stream())
                .anyMatch(other -> other.isSungAs(answer.mode(), answer.singing()) && other.heard() != answer.heard());
    }

    private boolean denyEachOther(Said one, Said other) {
        if (one.answer().heard() == other.answer().heard()
                || !one.answer().isSungAs(other.answer().mode(), other.answer().singing())) {
            return false;
        }
        NormalDistribution.Moments before = before(one.verse());
        NormalDistribution.Moments otherBefore = before(other.verse());
        double covariance = one.verse() == other.verse()
                ? before.variance()
                : sound.covariance().of(one.verse().gradient(), other.verse().gradient());
        double together = one.verse()
                .meant(
                        one.answer().heard(),
                        before,
                        other.verse(),
                        other.answer().heard(),
                        otherBefore,
                        covariance);
        double alone = one.verse().meant(one.answer().heard(), before);
        double otherAlone = other.verse().meant(other.answer().heard(), otherBefore);
        return together < UNLIKELY * Math.min(alone, otherAlone);
    }

    /** The felt level of a verse before any answer. */
    private NormalDistribution.Moments before(HeardVerse verse) {
        return new NormalDistribution.Moments(
                0, sound.covariance().variance(verse.gradient()) + HeardVerse.OWN_SD_DB * HeardVerse.OWN_SD_DB);
    }
}
