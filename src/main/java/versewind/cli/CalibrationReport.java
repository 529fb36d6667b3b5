package versewind.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.calibration.Experience;
import versewind.calibration.Fit;
import versewind.calibration.MeterReading;
import versewind.calibration.ReadingDesign;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.organ.Trims;
import versewind.sheet.LevelText;
import versewind.sound.Offsets;

/**
 * The outcome of a calibration: readings, trims, and what to read next.
 *
 * @param before the instrument with the trims that it had before any reading
 * @param known what its organist knows without a meter
 * @param fit what the readings tell, if there are any
 * @param next the readings to take next
 * @param asked how many of these were asked for
 * @param plan the plan for which they are proposed, if it is one
 */
record CalibrationReport(
        Instrument before,
        Experience known,
        Optional<Fit> fit,
        List<ReadingDesign.Proposed> next,
        int asked,
        Optional<String> plan)
        implements Report {

    private static final String HEADS = "     read  before  now   off   sd   where    drawn";
    private static final int[] COLUMNS = {-3, 1, -5, -8, -5, -6, -5};
    private static final double WORTH_TELLING_DB = 0.5;
    private static final int MOST_TRIMS = 12;

    @Override
    public void print(Page page) {
        page.line(before.toString());
        page.blank();
        if (fit.isPresent()) {
            readings(page, fit.get().judged());
            found(page, fit.get());
        } else {
            page.paragraph("Not calibrated yet: every level is an estimate from the stop list"
                    + switch (known.all().size()) {
                        case 0 -> ". What you usually draw tells much without a meter: see versewind help usual.";
                        case 1 -> " and from what you said of one registration.";
                        default -> " and from what you said of " + known.all().size() + " registrations.";
                    });
        }
        if (!next.isEmpty()) {
            next(page);
        }
        if (next.size() < asked) {
            page.blank();
            page.paragraph(ReadingDesign.NONE_IS_WORTH_IT);
        }
        page.blank();
        page.paragraph(
                "A phone may read too high or too low throughout. Take all readings with the same phone in the same"
                        + " places; a calibrated meter is better.");
    }

    private void readings(Page page, List<Fit.Judged> judged) {
        page.line(HEADS);
        for (int i = 0; i < judged.size(); i++) {
            Fit.Judged each = judged.get(i);
            MeterReading reading = each.kept().reading();
            String numbers = page.cells(
                    "",
                    COLUMNS,
                    Integer.toString(i + 1),
                    each.isOutlier() ? "!" : " ",
                    LevelText.whole(reading.dba()),
                    LevelText.whole(each.kept().beforeDba()),
                    LevelText.whole(each.kept().afterDba()),
                    LevelText.signed(OptionalDouble.of(each.kept().residualDb())),
                    LevelText.signed(OptionalDouble.of(each.distanceSds())));
            page.hanging(numbers + "   " + page.left(reading.seat().word(), 8) + " ", drawn(reading));
        }
        page.blank();
        int farthest = IntStream.range(0, judged.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> Math.abs(judged.get(i).distanceSds())))
                .orElseThrow();
        Fit.Judged worst = judged.get(farthest);
        if (worst.isOutlier()) {
            page.paragraph("Reading " + (farthest + 1) + " does not fit the others. Was something else drawn, or a door"
                    + " open? Use --leave-out " + (farthest + 1) + " to ignore it.");
        }
    }

    /** The change of a level, in dB. */
    private record Moved(String name, double byDb) {}

    private void found(Page page, Fit found) {
        Trims was = Trims.of(before);
        Trims is = Trims.of(found.instrument());
        Offsets offsets = found.calibration().offsets();
        page.paragraph("The whole organ: " + moved(is.organDb() - was.organDb()) + ".");
        Stream.of(new Moved("The singers", offsets.singersDb()), new Moved("The room", offsets.roomDb()))
                .filter(each -> told(each.byDb()))
                .forEach(each -> page.paragraph(each.name() + ": " + moved(each.byDb()) + "."));
        List<Moved> moved = Stream.concat(
                        IntStream.range(0, was.stopsDb().size())
                                .mapToObj(stop -> new Moved(
                                        before.stops().get(stop).name().toString(),
                                        is.stopsDb().get(stop) - was.stopsDb().get(stop))),
                        IntStream.range(0, was.boxesDb().size())
                                .mapToObj(box -> new Moved(
                                        before.divisionNames().get(box) + " swell box",
                                        is.boxesDb().get(box) - was.boxesDb().get(box))))
                .filter(each -> told(each.byDb()))
                .sorted(Comparator.comparingDouble(each -> -Math.abs(each.byDb())))
                .toList();
        moved.stream().limit(MOST_TRIMS).forEach(each -> page.hanging("  ", each.name() + ": " + moved(each.byDb())));
        if (moved.size() > MOST_TRIMS) {
            page.line("  and " + (moved.size() - MOST_TRIMS) + " more, by less");
        }
    }

    private static boolean told(double db) {
        return Math.abs(db) >= WORTH_TELLING_DB;
    }

    private static String moved(double db) {
        long whole = Math.round(Math.abs(db));
        if (whole == 0) {
            return "as estimated";
        }
        return whole + " dB " + (db > 0 ? "louder" : "softer") + " than estimated";
    }

    private void next(Page page) {
        page.blank();
        page.paragraph(
                plan.isPresent()
                        ? "Readings to take next, to make the verdicts of this plan more certain:"
                        : "Readings to take next, to make all levels more certain:");
        for (int i = 0; i < next.size(); i++) {
            ReadingDesign.Proposed proposed = next.get(i);
            page.hanging(
                    page.right(Integer.toString(i + 1), 3) + "  ",
                    proposed.words(before) + ". " + proposed.gain() + " Expected level: "
                            + LevelText.whole(proposed.reading().dba()) + " dB(A).");
        }
        page.paragraph(
                "Put the meter in the middle of the nave, empty but where people sing, play a hymn for half a minute,"
                        + " and read the mean level in dB(A).");
    }

    private String drawn(MeterReading reading) {
        Registration drawn = reading.registration();
        String stops = new RegistrationText(before).format(drawn);
        String sung = reading.sung()
                .map(sing ->
                        "; " + sing.singers() + " singing, " + sing.strength().word())
                .orElse("");
        return (stops.isEmpty() ? RegistrationText.NOTHING : stops) + sung;
    }

    /** Levels in dB(A) and dB with one decimal. */
    @Override
    public Json json() {
        List<Fit.Judged> judged = fit.map(Fit::judged).orElse(List.of());
        return new Json()
                .put("instrument", before.name())
                .list("readings", judged, each -> reading(each.kept().reading())
                        .put("dBA", each.kept().reading().dba(), 1)
                        .put("before", each.kept().beforeDba(), 1)
                        .put("after", each.kept().afterDba(), 1)
                        .put("residual", each.kept().residualDb(), 1)
                        .put("distanceSds", each.distanceSds(), 1)
                        .put("fitsNothing", each.isOutlier()))
                .putIfPresent("trims", fit.map(CalibrationReport::trims))
                .list("next", next, proposed -> reading(proposed.reading())
                        .put("expected", proposed.reading().dba(), 1)
                        .put("plusMinusBefore", proposed.beforeDb(), 1)
                        .put("plusMinusAfter", proposed.afterDb(), 1)
                        .put("verdictsBefore", proposed.beforeOdds(), 2)
                        .put("verdictsAfter", proposed.afterOdds(), 2));
    }

    private static Json trims(Fit fit) {
        Instrument organ = fit.instrument();
        Trims trims = Trims.of(organ);
        Json stops = new Json();
        for (int stop = 0; stop < organ.stops().size(); stop++) {
            stops.put(organ.stops().get(stop).name().toString(), trims.stopsDb().get(stop), 1);
        }
        Json boxes = new Json();
        for (int division = 0; division < organ.divisions().size(); division++) {
            if (organ.divisions().get(division).isEnclosed()) {
                boxes.put(organ.divisionNames().get(division), trims.boxesDb().get(division), 1);
            }
        }
        Offsets offsets = fit.calibration().offsets();
        return new Json()
                .put("organ", trims.organDb(), 1)
                .put("singers", offsets.singersDb(), 1)
                .put("room", offsets.roomDb(), 1)
                .put("stops", stops)
                .put("boxes", boxes);
    }

    private Json reading(MeterReading reading) {
        return new Json()
                .putIfPresent("date", Optional.of(reading.date()).filter(date -> !date.isBlank()))
                .put("seat", reading.seat().word())
                .put("people", reading.present())
                .putIfPresent("singers", reading.sung().map(MeterReading.Sung::singers))
                .putIfPresent(
                        "singing", reading.sung().map(sung -> sung.strength().word()))
                .with(ReportFields.hands(before, reading.hands()))
                .with(ReportFields.drawn(before, reading.registration()));
    }
}
