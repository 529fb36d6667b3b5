package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.sound.ClearShare;
import versewind.sound.NormalDistribution;
import versewind.sound.OrganSound;

/**
 * What answers on several verses, agreeing or not, tell of the organ, beside Bayes' rule by random draws: felt levels
 * are drawn from what is known before, and weighted by how likely they make the answers.
 */
class JointlyFeltTest {

    private static final int PEOPLE = 180;
    private static final int DRAWS = 20_000;
    private static final int SETS = 30;

    private final OrganSound sound;
    private final List<Verse> verses;

    JointlyFeltTest() throws Exception {
        var open = Shipped.plan("harvest-festival");
        sound = OrganSound.open(open.instrument());
        verses = open.plan().hymns().stream()
                .flatMap(hymn -> hymn.verses().stream())
                .filter(verse -> verse.isSung() && verse.mode() == Mode.CONGREGATION)
                .toList();
    }

    /** A verse that was heard, and how. */
    private static final class Heard {
        private final HeardAs heard;
        private final double[] gradient;
        private final ClearShare.RightBand right;

        Heard(HeardAs heard, double[] gradient, ClearShare.RightBand right) {
            this.heard = heard;
            this.gradient = gradient;
            this.right = right;
        }

        /** How likely the answer is at a true level with taste: an error of 3 dB, and a slip once in 50. */
        double weight(double levelDb) {
            ClearShare.RightBand said = right.where(heard);
            return 0.98 * NormalDistribution.between(levelDb, 3, said.fromDb(), said.toDb()) + 0.02 / 3;
        }
    }

    private double[] gradient(Verse verse) {
        double[] gradient = new double[sound.parameters().count()];
        sound.gradient(verse, PEOPLE, gradient);
        return gradient;
    }

    @Test
    void what_several_answers_tell_is_what_random_draws_give() {
        Random random = new Random(9);
        for (int set = 0; set < SETS; set++) {
            List<HeardRegistration> answers = new ArrayList<>();
            List<Heard> heard = new ArrayList<>();
            int first = random.nextInt(4);
            for (int place = first; place < verses.size(); place += 3) {
                Verse verse = verses.get(place);
                HeardAs said = HeardAs.values()[random.nextInt(HeardAs.values().length)];
                HeardRegistration answer = HeardRegistration.of("V" + place, verse, new Feedback(said, PEOPLE));
                if (answers.stream().noneMatch(each -> each.isAlike(sound, verse, PEOPLE))) {
                    double[] gradient = gradient(verse);
                    gradient[sound.parameters().taste()] = 1;
                    answers.add(answer);
                    heard.add(new Heard(
                            said, gradient, sound.rightBand(verse, PEOPLE).orElseThrow()));
                }
            }
            Verse asked = verses.get(first);
            NormalDistribution.Moments drawn = drawn(heard, gradient(asked), random);
            OrganSound after = new FeedbackUpdate(sound, answers).sound();
            double movedDb = sound.rightBand(asked, PEOPLE).orElseThrow().fromDb()
                    - after.rightBand(asked, PEOPLE).orElseThrow().fromDb();

            assertThat(answers).hasSizeGreaterThan(2);
            assertThat(movedDb).isCloseTo(drawn.mean(), within(1.5));
            assertThat(after.covariance().sdDb(gradient(asked))).isCloseTo(Math.sqrt(drawn.variance()), within(1.5));
        }
    }

    private NormalDistribution.Moments drawn(List<Heard> heard, double[] asked, Random random) {
        double[] sums = new double[3];
        double[] parameters = new double[asked.length];
        double atRandom = 0.02 * Math.pow(1.0 / 3, heard.size());
        for (int draw = 0; draw < DRAWS; draw++) {
            for (int place = 0; place < parameters.length; place++) {
                parameters[place] = sound.parameters().sdDb(place) * random.nextGaussian();
            }
            double weight = 0.98;
            for (Heard each : heard) {
                weight *= each.weight(inner(each.gradient, parameters));
            }
            weight += atRandom;
            double levelDb = inner(asked, parameters);
            sums[0] += weight;
            sums[1] += weight * levelDb;
            sums[2] += weight * levelDb * levelDb;
        }
        double mean = sums[1] / sums[0];
        return new NormalDistribution.Moments(mean, sums[2] / sums[0] - mean * mean);
    }

    private static double inner(double[] one, double[] other) {
        double sum = 0;
        for (int place = 0; place < one.length; place++) {
            sum += one[place] * other[place];
        }
        return sum;
    }
}
