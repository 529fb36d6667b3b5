package versewind.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.Trims;
import versewind.plan.Verse;
import versewind.sound.ClearShare;
import versewind.sound.Covariance;
import versewind.sound.FeltVerses;
import versewind.sound.Offsets;
import versewind.sound.OrganSound;
import versewind.sound.Parameters;

/**
 * The update of an organ by what was heard: usual registrations, and answers after a service.
 *
 * <p>Each is an ordered observation of the share: the level of the organ as felt lay below, in or above the {@link
 * ClearShare.RightBand} of what was played; see {@link HeardVerse}. The level of the organ over the singing, or of the
 * melody over its accompaniment, is linear in the {@link Parameters}, and so is the felt level, but for the error of its
 * own. The factors of {@link JointlyFelt} are brought into the parameters one after the other, as readings are. What was
 * heard is kept beside the organ too: a verse played just so again is judged by its own answers, see {@link FeltVerses}.
 *
 * <p>Source: ordered probit with expectation propagation, see {@link JointlyFelt}.
 *
 * <p>Checked against: {@code FeedbackUpdateTest}.
 */
public final class FeedbackUpdate {

    /** What all others make less likely than this contradicts them. An estimate. */
    private static final double CONTRADICTING = 0.05;

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
            verse(each).ifPresent(verse -> verse.add(each));
        }
        felt = new JointlyFelt(sound.covariance(), verses);
    }

    /** The verse that was heard, alike to one before or another; empty where nothing leads. */
    private Optional<HeardVerse> verse(HeardRegistration heard) {
        Optional<HeardVerse> same =
                verses.stream().filter(verse -> verse.isOf(heard)).findFirst();
        if (same.isPresent()) {
            return same;
        }
        Verse verse = heard.verse();
        Optional<ClearShare.RightBand> right = sound.rightBand(verse, heard.people());
        right.ifPresent(band -> {
            double[] gradient = new double[sound.parameters().count()];
            sound.gradient(verse, heard.people(), gradient);
            gradient[sound.parameters().taste()] = 1;
            verses.add(new HeardVerse(gradient, band));
        });
        return right.map(band -> verses.get(verses.size() - 1));
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
            List<HeardRegistration> answers = verse.answers();
            all = all.and(
                    answers.get(0).verse(),
                    answers.get(0).people(),
                    answers.stream().map(HeardRegistration::heard).toList());
        }
        return all;
    }

    /** The odds that the answers tell of the organ, 0 to 1. */
    private double trusted() {
        int answers = verses.stream().mapToInt(verse -> verse.answers().size()).sum();
        double random = Math.log(RANDOM) - answers * Math.log(HeardVerse.CHOICES);
        return 1 / (1 + Math.exp(random - Math.log(1 - RANDOM) - felt.logProbability()));
    }

    /** Those of the registrations heard that contradict all others together. */
    public List<HeardRegistration> contradicting() {
        return IntStream.range(0, verses.size())
                .boxed()
                .flatMap(verse -> verses.get(verse).answers().stream().filter(answer -> isContradicting(verse, answer)))
                .toList();
    }

    private boolean isContradicting(int verse, HeardRegistration answer) {
        return verses.get(verse).probability(answer, felt.rest(verse)) < CONTRADICTING;
    }
}
