package versewind.cli;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.ChurchYear;
import versewind.plan.HandsAndFeet;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Figure;
import versewind.rules.Finding;
import versewind.rules.Mend;
import versewind.rules.Touch;
import versewind.sound.Balance;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/**
 * The fields that several reports have in common in JSON.
 *
 * <p>Levels in dB and dB(A), loudness in sone and phon, lags in ms, all with one decimal; null where nothing sounds.
 */
final class ReportFields {

    private static final double HUNDRED = 100;

    private ReportFields() {}

    /**
     * A plan: its title, its date and what that is in the church's year, the id of its instrument, the people expected.
     */
    static Json heading(Plan plan) {
        return new Json()
                .put("plan", plan.heading().title())
                .with(date(plan.heading().date()))
                .put("occasion", plan.heading().occasion().word())
                .put("instrument", plan.instrument())
                .put("people", plan.heading().people())
                .put("singingInTen", plan.heading().inTen())
                .put("player", plan.heading().player().word());
    }

    /** A date ("date"), and the day of the church's year ("day"); null where there is none. */
    static Json date(Optional<LocalDate> date) {
        return new Json()
                .put("date", date.map(Object::toString))
                .put("day", date.flatMap(ChurchYear::day).map(day -> new Json()
                        .put("season", day.season().word())
                        .put("name", day.name())
                        .put("also", day.also())
                        .put("occasion", day.occasion().word())));
    }

    /** The hymns of a part of a plan, each with its verses ("hymns"). */
    static Json hymns(Plan plan, PartOfPlan part, Function<VersePlace, Json> verse) {
        return new Json().list("hymns", part.hymns(plan), hymn -> new Json()
                .put("number", plan.hymns().get(hymn).number())
                .put("title", plan.hymns().get(hymn).title())
                .list("verses", part.places(plan, hymn), verse));
    }

    /** Names of verses with their hymns, each once: "208 V1, 208 Refrain (2 times)". */
    static String names(Plan plan, Stream<VersePlace> places) {
        Map<String, Long> names = places.map(place ->
                        (plan.hymn(place).number() + " " + plan.verse(place).label()).strip())
                .collect(Collectors.groupingBy(name -> name, LinkedHashMap::new, Collectors.counting()));
        return names.entrySet().stream()
                .map(name -> name.getKey() + (name.getValue() == 1 ? "" : " (" + name.getValue() + " times)"))
                .collect(Collectors.joining(", "));
    }

    static Json verse(Verse verse) {
        return new Json()
                .put("label", verse.label())
                .put("kind", verse.kind().word())
                .put("optional", verse.isOptional())
                .put("mode", verse.sungBy().word());
    }

    /** The sound of a registration. */
    static Json levels(Estimate estimate) {
        Balance balance = estimate.balance();
        return new Json()
                .put(
                        "organ",
                        level("dbA", estimate.organDba(), estimate.plusMinus().organDb())
                                .put("sone", estimate.isSilent() ? Double.NaN : estimate.sone(), 1)
                                .put(
                                        "sonePlusMinus",
                                        plusMinus(estimate.loudnessPlusMinus().sone()),
                                        0)
                                .put("phon", estimate.phon(), 1)
                                .put(
                                        "phonPlusMinus",
                                        plusMinus(estimate.loudnessPlusMinus().phon()),
                                        0)
                                .put("dynamic", estimate.dynamic().map(Dynamic::word)))
                .put(
                        "singers",
                        level("dbA", estimate.singersDba(), estimate.plusMinus().singersDb())
                                .put("count", estimate.singers()))
                .put(
                        switch (balance.kind()) {
                            case LEAD, ORGAN_ALONE -> "lead";
                            case VOICE -> "voice";
                            case SOLO_LINE -> "soloLine";
                        },
                        new Json()
                                .put("share", balance.share(), 3)
                                .put("verdict", balance.verdict().word())
                                .put("odds", odds(balance)))
                .put("lagMs", estimate.lagMs(), 1);
    }

    /**
     * The odds of every verdict on such a verse, by its word, in hundredths that add up to 1; where nothing is in doubt
     * one of them is 1, and where the organ plays alone or has no tune it is the only one.
     */
    private static Json odds(Balance balance) {
        Json odds = new Json();
        if (balance.odds().isEmpty()) {
            List<Verdict> all = Verdict.beside(balance.verdict());
            all.forEach(verdict -> odds.put(verdict.word(), verdict == balance.verdict() ? 1 : 0));
            return odds;
        }
        balance.odds().hundredths().forEach((verdict, hundredths) -> odds.put(verdict.word(), hundredths / HUNDRED, 2));
        return odds;
    }

    /** A level with one standard deviation in whole dB. */
    static Json level(String name, OptionalDouble level, double plusMinusDb) {
        return new Json()
                .put(name, level, 1)
                .put("plusMinus", level.isPresent() ? plusMinus(plusMinusDb) : Double.NaN, 0);
    }

    /** At least 1, since nothing is known more exactly; null where nothing sounds. */
    private static double plusMinus(double sd) {
        return sd > 0 ? Math.max(1, sd) : Double.NaN;
    }

    /** How the keys are touched. */
    static Json touch(Touch touch) {
        return new Json()
                .put("manner", touch.manner().word())
                .put("holdBeats", touch.holdBeats(), 3)
                .put("breathBeats", touch.breathBeats())
                .put("lagBeats", touch.lagBeats(), 2)
                .put("sentence", touch.sentence())
                .put("breath", touch.breath())
                .put("lag", touch.lag());
    }

    /** A finding; places count hymns and verses from 0. */
    static Json finding(Plan plan, Finding finding) {
        VersePlace place = finding.place();
        Json numbers = new Json();
        for (Figure figure : finding.numbers()) {
            int decimals = figure.unit().decimals();
            numbers.put(figure.name(), figure.value(), decimals);
            figure.plusMinusDb().ifPresent(db -> numbers.put(figure.name() + "PlusMinus", db, decimals));
        }
        return new Json()
                .put("severity", finding.severity().word())
                .put("rule", finding.rule().word())
                .put(
                        "place",
                        new Json()
                                .put("hymn", place.hymn())
                                .put("verse", place.verse())
                                .put("label", plan.verse(place).label()))
                .put("numbers", numbers)
                .put("sentence", finding.sentence())
                .put("mend", finding.mend().map(Mend::words))
                .putIfPresent("silenced", finding.silence());
    }

    /** Hands and feet, and their keyboards. */
    static Json hands(Instrument organ, HandsAndFeet hands) {
        return new Json()
                .put("hands", hands.layout().word())
                .put("right", organ.divisionNames().get(hands.right()))
                .put("left", organ.divisionNames().get(hands.left()));
    }

    /** What is drawn, in the fields of a plan's file: "drawn", "couplers", "boxes", "tremulants". */
    static Json drawn(Instrument organ, Registration drawn) {
        Json stops = new Json();
        for (int index = 0; index < organ.divisions().size(); index++) {
            int division = index;
            List<String> here = drawn.stops().stream()
                    .mapToObj(organ.stops()::get)
                    .filter(placed -> placed.division() == division)
                    .map(placed -> placed.name().label())
                    .toList();
            stops.putIfPresent(organ.divisionNames().get(division), some(here));
        }
        Json boxes = boxes(organ, drawn);
        return new Json()
                .put("drawn", stops)
                .putIfPresent("couplers", some(couplers(organ, drawn)))
                .putIfPresent("boxes", boxes.isEmpty() ? Optional.empty() : Optional.of(boxes))
                .putIfPresent(
                        "tremulants",
                        some(drawn.tremulants().stream()
                                .mapToObj(organ.tremulantNames()::get)
                                .toList()));
    }

    private static Optional<List<String>> some(List<String> names) {
        return Optional.of(names).filter(each -> !each.isEmpty());
    }

    static List<String> couplers(Instrument organ, Registration drawn) {
        return drawn.couplers().stream().mapToObj(organ.couplerNames()::get).toList();
    }

    /** The position of every box. */
    static Json boxes(Instrument organ, Registration drawn) {
        Json boxes = new Json();
        for (int division = 0; division < organ.divisions().size(); division++) {
            if (organ.divisions().get(division).isEnclosed()) {
                boxes.put(
                        organ.divisionNames().get(division),
                        drawn.boxes().get(division).word());
            }
        }
        return boxes;
    }
}
