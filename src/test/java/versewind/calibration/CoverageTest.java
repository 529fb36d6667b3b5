package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.Feedback;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.sound.OrganSound;
import versewind.sound.OtherOrgan;
import versewind.sound.RandomOrgans;
import versewind.sound.Seat;

/**
 * How often the truth lies within the bands that are stated, where the truth does not come from the program's own
 * prior: half of the variance of a stop is its family's, the boxes let out up to 6 dB more or less and are tilted by 1
 * dB an octave, all reverberation times are 10 % too long or too short, the singers off by 3 dB and each octave of
 * their voices by 3 dB more, the taste by 1.5 dB and the device by 1.5 dB. Prints the table.
 *
 * <p>Readings are those proposed for all levels, of the organ alone, and those proposed for a service, where the
 * singing alone is one of them. The program allows 2 dB for the device. Where it is off by 1.5 only, the level after
 * readings of the organ alone is stated too cautiously, and by nothing else: with 4 dB for the organ and any number of
 * readings it is off by (0.2^2 4^2 + 0.8^2 1.5^2)^0.5 = 1.4 dB where 1.8 dB is stated, and 78 of 100 lie within; of a
 * device that is off by 2 dB, 68. The singing alone tells of the device too.
 */
@Tag("slow")
class CoverageTest {

    private static final int ORGANS = 400;
    private static final int ASKED = 40;
    private static final double FAMILY_DB = 3 / Math.sqrt(2);
    private static final double STOP_DB = 3 / Math.sqrt(2);
    private static final double BOX_DB = 6;
    private static final double BOX_TILT_DB = 1;
    private static final double ROOM_DB = ThirdOctaves.powerToDb(1.1);
    private static final double ORGAN_DB = 4;
    private static final double SINGERS_DB = 3;
    private static final double SPECTRUM_DB = 3;
    private static final int VOICE_OCTAVES = 7;
    private static final double COMMON_DB = 1.5;
    private static final double ALLOWED_DEVICE_DB = 2;
    private static final double FELT_DB = 3;
    private static final String FOR_SERVICE = "for a service";

    private static final Map<String, Count> COUNTS = new LinkedHashMap<>();

    private static Instrument organ;
    private static OrganSound estimated;

    /** How often the truth lay within the bands of levels and of differences, and how far off levels were. */
    private static final class Count {
        private int all;
        private int within68;
        private int within95;
        private double squares;

        private void add(double error, double sdDb) {
            all++;
            within68 += Math.abs(error) <= sdDb ? 1 : 0;
            within95 += Math.abs(error) <= 1.96 * sdDb ? 1 : 0;
            squares += error * error;
        }

        private double percent68() {
            return 100.0 * within68 / all;
        }

        private double percent95() {
            return 100.0 * within95 / all;
        }

        private double errorDb() {
            return Math.sqrt(squares / all);
        }
    }

    /** What is heard of one organ: levels of many registrations, or differences of each from the one before. */
    private record Heard(MeterReading reading, double trueDba) {}

    @BeforeAll
    static void listen() throws Exception {
        organ = Shipped.instrument("st-tethwin");
        estimated = OrganSound.open(organ);
        Random random = new Random(11);
        Random slips = new Random(13);
        RandomOrgans drawing = new RandomOrgans(12);
        List<MeterReading> proposed = readings(ReadingDesign.allRound(estimated, 5, 0));
        Plan service = Shipped.plan("harvest-festival").plan();
        List<MeterReading> forService = readings(ReadingDesign.of(estimated, service, 5, 0));
        for (int each = 0; each < ORGANS; each++) {
            OrganSound truth = truth(random);
            List<Heard> asked = asked(truth, drawing);
            count("before anything", estimated, asked);
            for (double deviceDb : List.of(COMMON_DB, ALLOWED_DEVICE_DB)) {
                List<MeterReading> taken = taken(truth, proposed, deviceDb * random.nextGaussian(), random);
                learn(taken, "device " + deviceDb, asked);
            }
            learn(taken(truth, forService, COMMON_DB * random.nextGaussian(), random), FOR_SERVICE, asked);
            List<HeardRegistration> answers = answers(truth, drawing, random);
            List<HeardRegistration> erring =
                    answers.stream().map(answer -> erring(answer, slips)).toList();
            for (int number : List.of(4, 13)) {
                count("after " + number + " answers", after(answers.subList(0, number)), asked);
                count("after " + number + " answers, one in ten wrong", after(erring.subList(0, number)), asked);
            }
        }
        System.out.println("                                     level 68%  95%  error   difference 68%  95%  error");
        COUNTS.keySet().stream().filter(name -> !name.startsWith("difference")).forEach(CoverageTest::print);
    }

    private static List<MeterReading> readings(List<ReadingDesign.Proposed> proposed) {
        return proposed.stream().map(ReadingDesign.Proposed::reading).toList();
    }

    private static void learn(List<MeterReading> taken, String how, List<Heard> asked) {
        for (int readings : List.of(1, 3, 5)) {
            OrganSound taught = Fit.of(estimated, taken.subList(0, readings)).after();
            count(after(readings, how), taught, asked);
        }
    }

    private static String after(int readings, String how) {
        return "after " + readings + " readings, " + how;
    }

    private static void print(String name) {
        Count level = COUNTS.get(name);
        Count difference = COUNTS.get("difference " + name);
        System.out.printf(
                Locale.ROOT,
                "%-38s %7.0f %4.0f %6.2f %16.0f %4.0f %6.2f%n",
                name,
                level.percent68(),
                level.percent95(),
                level.errorDb(),
                difference.percent68(),
                difference.percent95(),
                difference.errorDb());
    }

    private static OrganSound truth(Random random) {
        Map<Family, Double> ofFamily = new EnumMap<>(Family.class);
        for (Family family : Family.values()) {
            ofFamily.put(family, FAMILY_DB * random.nextGaussian());
        }
        List<Double> stopsDb = organ.stops().stream()
                .map(knob ->
                        knob.stop().trimDb() + ofFamily.get(knob.stop().family()) + STOP_DB * random.nextGaussian())
                .toList();
        List<Double> boxesDb = each(organ.divisions(), () -> BOX_DB * (2 * random.nextDouble() - 1));
        List<Double> tiltsDb = each(organ.divisions(), () -> eitherWay(BOX_TILT_DB, random));
        double[] voiceDb = new double[VOICE_OCTAVES];
        double singersDb = SINGERS_DB * random.nextGaussian();
        Arrays.setAll(voiceDb, octave -> singersDb + eitherWay(SPECTRUM_DB, random));
        Trims trims = new Trims(organ.trimDb() + ORGAN_DB * random.nextGaussian(), stopsDb, boxesDb);
        return OtherOrgan.open(trims.on(organ), eitherWay(ROOM_DB, random), tiltsDb, voiceDb);
    }

    private static List<Double> each(List<?> parts, Supplier<Double> error) {
        return parts.stream().map(any -> error.get()).toList();
    }

    private static double eitherWay(double db, Random random) {
        return random.nextBoolean() ? db : -db;
    }

    private static List<Heard> asked(OrganSound truth, RandomOrgans drawing) {
        List<Heard> asked = new ArrayList<>();
        while (asked.size() < ASKED) {
            MeterReading reading = new MeterReading(
                    "", drawing.registration(organ), drawing.hands(organ), Seat.NAVE, 0, Optional.empty(), 70);
            reading.expectedDba(truth).ifPresent(dba -> asked.add(new Heard(reading, dba)));
        }
        return asked;
    }

    private static List<MeterReading> taken(
            OrganSound truth, List<MeterReading> proposed, double deviceDb, Random random) {
        return proposed.stream()
                .map(reading -> new MeterReading(
                        "",
                        reading.registration(),
                        reading.hands(),
                        reading.seat(),
                        reading.present(),
                        reading.sung(),
                        reading.expectedDba(truth).orElseThrow() + deviceDb + random.nextGaussian()))
                .toList();
    }

    /** Answers on registrations of all strengths, as felt: too soft, right or too strong. */
    private static List<HeardRegistration> answers(OrganSound truth, RandomOrgans drawing, Random random) {
        double tasteDb = COMMON_DB * random.nextGaussian();
        List<HeardRegistration> answers = new ArrayList<>();
        while (answers.size() < 13) {
            Registration drawn = drawing.registration(organ);
            HandsAndFeet hands = drawing.hands(organ);
            Singing singing = Singing.values()[random.nextInt(Singing.values().length)];
            HeardRegistration asked = new HeardRegistration(
                    "answer " + answers.size(),
                    SungBy.CONGREGATION,
                    singing,
                    200,
                    OptionalInt.empty(),
                    hands,
                    drawn,
                    HeardAs.RIGHT);
            Verse verse = asked.verse();
            truth.rightBand(verse, 200).ifPresent(band -> {
                double feltDb = tasteDb + FELT_DB * random.nextGaussian();
                HeardAs heard = feltDb < band.fromDb()
                        ? HeardAs.TOO_SOFT
                        : feltDb > band.toDb() ? HeardAs.TOO_STRONG : HeardAs.RIGHT;
                answers.add(new HeardRegistration(
                        asked.name(),
                        asked.by(),
                        asked.singing(),
                        asked.people(),
                        asked.voices(),
                        asked.hands(),
                        asked.registration(),
                        heard));
            });
        }
        return answers;
    }

    private static OrganSound after(List<HeardRegistration> answers) {
        return new FeedbackUpdate(estimated, answers).sound();
    }

    /** One answer in ten is another, any of the two. */
    private static HeardRegistration erring(HeardRegistration answer, Random random) {
        int choices = HeardAs.values().length;
        int other = (answer.heard().ordinal() + 1 + random.nextInt(choices - 1)) % choices;
        return random.nextInt(10) == 0
                ? HeardRegistration.of(
                        answer.name(), answer.verse(), new Feedback(HeardAs.values()[other], answer.people()))
                : answer;
    }

    private static void count(String name, OrganSound taught, List<Heard> asked) {
        Count levels = COUNTS.computeIfAbsent(name, any -> new Count());
        Count differences = COUNTS.computeIfAbsent("difference " + name, any -> new Count());
        double[] gradient = new double[taught.parameters().count()];
        double[] before = new double[gradient.length];
        double beforeError = 0;
        for (int i = 0; i < asked.size(); i++) {
            Heard heard = asked.get(i);
            double error = heard.reading().expectedDba(taught, gradient).orElseThrow() - heard.trueDba();
            levels.add(error, taught.covariance().sdDb(gradient));
            if (i > 0) {
                double[] difference = gradient.clone();
                for (int place = 0; place < difference.length; place++) {
                    difference[place] -= before[place];
                }
                differences.add(error - beforeError, taught.covariance().sdDb(difference));
            }
            System.arraycopy(gradient, 0, before, 0, before.length);
            beforeError = error;
        }
    }

    @Test
    void readings_leave_no_more_than_is_promised() {
        assertThat(COUNTS.get(after(1, "device " + COMMON_DB)).errorDb()).isLessThan(2.6);
        assertThat(COUNTS.get(after(5, "device " + COMMON_DB)).errorDb()).isLessThan(1.9);
    }

    @Test
    void the_bands_hold_the_truth_as_often_as_they_say() {
        COUNTS.forEach((name, count) -> {
            boolean isCautious = name.endsWith("device " + COMMON_DB) && !name.startsWith("difference");
            assertThat(count.percent68()).as(name + " 68").isBetween(62.0, isCautious ? 78.0 : 74.0);
            assertThat(count.percent95()).as(name + " 95").isBetween(92.0, 98.0);
        });
    }
}
