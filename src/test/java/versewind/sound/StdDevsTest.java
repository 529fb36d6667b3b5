package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.Shipped;
import versewind.plan.Verse;

/**
 * That what stands after "plus or minus" is true: 500 organs, with their singers and rooms, are drawn from what is not
 * known, and the verses of a service are heard on each of them.
 */
@Tag("slow")
class StdDevsTest {

    private static final int ORGANS = 500;
    private static final int PEOPLE = 180;

    /** What is stated. */
    private enum Stated {
        ORGAN_LEVEL,
        ORGAN_LOUDNESS,
        ORGAN_AMONG_SINGERS,
        SINGING,
        DIFFERENCE
    }

    /** Odds stated of a verdict, summed over all organs, and how often it came true. */
    private static final class Forecast {
        private double stated;
        private int cameTrue;
        private int all;
    }

    /** How often the truth lay within the two bands. */
    private static final class Count {
        private int all;
        private int within68;
        private int within95;

        private void add(double truth, double low, double high, double lowest, double highest) {
            all++;
            within68 += truth >= low && truth <= high ? 1 : 0;
            within95 += truth >= lowest && truth <= highest ? 1 : 0;
        }

        private void add(double truth, double stated, double plusMinus) {
            double wide = 1.96 * plusMinus;
            add(truth, stated - plusMinus, stated + plusMinus, stated - wide, stated + wide);
        }

        private double percent68() {
            return 100.0 * within68 / all;
        }

        private double percent95() {
            return 100.0 * within95 / all;
        }
    }

    private static final Map<Stated, Count> COUNTS = new TreeMap<>();
    private static final Map<Verdict, Forecast> FORECASTS = new TreeMap<>();

    @BeforeAll
    static void hear_the_service_on_500_organs() throws Exception {
        for (Stated stated : Stated.values()) {
            COUNTS.put(stated, new Count());
        }
        var open = Shipped.plan("harvest-festival");
        List<Verse> verses = new ArrayList<>();
        open.plan().hymns().forEach(hymn -> verses.addAll(hymn.verses()));
        OrganSound estimated = OrganSound.open(open.instrument());
        RandomOrgans random = new RandomOrgans(20261004);
        for (int organ = 0; organ < ORGANS; organ++) {
            OrganSound truth = random.truth(estimated);
            for (int i = 0; i < verses.size(); i++) {
                hear(estimated, truth, verses.get(i));
                hear(estimated, truth, verses.get(i), verses.get((i + 1) % verses.size()));
            }
        }
    }

    private static void hear(OrganSound estimated, OrganSound truth, Verse verse) {
        Estimate stated = estimated.estimate(verse, PEOPLE, OptionalInt.empty());
        Estimate heard = truth.estimate(verse, PEOPLE, OptionalInt.empty());
        Estimate.StdDevs plusMinus = stated.plusMinus();
        COUNTS.get(Stated.ORGAN_LEVEL)
                .add(heard.organDba().orElseThrow(), stated.organDba().orElseThrow(), plusMinus.organDb());
        COUNTS.get(Stated.ORGAN_LOUDNESS)
                .add(heard.sone(), stated.sone(), stated.loudnessPlusMinus().sone());
        COUNTS.get(Stated.ORGAN_AMONG_SINGERS)
                .add(
                        heard.organAmongSingersDba().orElseThrow(),
                        stated.organAmongSingersDba().orElseThrow(),
                        plusMinus.organAmongSingersDb());
        if (stated.singersDba().isPresent()) {
            COUNTS.get(Stated.SINGING)
                    .add(heard.singersDba().orElseThrow(), stated.singersDba().orElseThrow(), plusMinus.singersDb());
        }
        double share = heard.balance().share().orElse(0);
        for (Odds.Chance chance : stated.balance().odds().all()) {
            Forecast forecast = FORECASTS.computeIfAbsent(chance.verdict(), any -> new Forecast());
            forecast.stated += chance.odds();
            forecast.cameTrue += Verdict.of(verse.mode(), share) == chance.verdict() ? 1 : 0;
            forecast.all++;
        }
    }

    private static void hear(OrganSound estimated, OrganSound truth, Verse from, Verse to) {
        if (from.registration().equals(to.registration()) && from.hands().equals(to.hands())) {
            return;
        }
        OrganSound.LevelStep stated = estimated.step(from, to, PEOPLE).orElseThrow();
        OrganSound.LevelStep heard = truth.step(from, to, PEOPLE).orElseThrow();
        COUNTS.get(Stated.DIFFERENCE).add(heard.db(), stated.db(), stated.plusMinusDb());
    }

    @ParameterizedTest
    @EnumSource
    void two_times_in_three_the_truth_lies_within_the_band(Stated stated) {
        assertThat(COUNTS.get(stated).percent68()).isCloseTo(68, within(5.0));
    }

    @ParameterizedTest
    @EnumSource
    void nineteen_times_in_twenty_the_truth_lies_within_twice_the_band(Stated stated) {
        assertThat(COUNTS.get(stated).percent95()).isCloseTo(95, within(3.0));
    }

    @Test
    void verdicts_come_true_as_often_as_their_odds_say() {
        assertThat(FORECASTS.keySet()).contains(Verdict.LEADS, Verdict.CLEAR, Verdict.STANDS_OUT);
        FORECASTS.forEach((verdict, forecast) -> assertThat((double) forecast.cameTrue / forecast.all)
                .as(verdict.name())
                .isCloseTo(forecast.stated / forecast.all, within(0.04)));
    }
}
