package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;
import versewind.sound.Fit;
import versewind.sound.MeterReading;
import versewind.sound.Offsets;
import versewind.sound.ReadingDesign;

/** What readings tell of an organ, as plain text: the readings, the trims, what to read next. */
final class CalibrationText {

    private static final String HEADS = "     read  before  now   off   sd   where    drawn";
    private static final double WORTH_TELLING_DB = 0.5;
    private static final int MOST_TRIMS = 12;

    private final Page page;
    private final Instrument before;

    private CalibrationText(Page page, Instrument before) {
        this.page = page;
        this.before = before;
    }

    static String of(
            Instrument before,
            Optional<Fit> fit,
            List<ReadingDesign.Proposed> next,
            Optional<String> plan,
            CharsetFallback lettering) {
        Page page = new Page(lettering);
        CalibrationText text = new CalibrationText(page, before);
        page.line(before.toString());
        page.blank();
        if (fit.isPresent()) {
            text.readings(fit.get().judged());
            text.found(fit.get());
        } else {
            page.paragraph("It was never calibrated: every level is an estimate from its stop list, ±6 dB or more.");
        }
        if (!next.isEmpty()) {
            text.next(next, plan);
        }
        page.blank();
        page.paragraph("A phone's reading may be off as a whole. Take all of them with the same phone, in the same"
                + " places; a meter that was checked is better.");
        return page.text();
    }

    private void readings(List<Fit.Judged> judged) {
        page.line(HEADS);
        for (int i = 0; i < judged.size(); i++) {
            Fit.Judged each = judged.get(i);
            MeterReading reading = each.kept().reading();
            String numbers = page.right(Integer.toString(i + 1), 3) + (each.fitsNothing() ? "!" : " ")
                    + page.right(LevelText.whole(reading.dba()), 5)
                    + page.right(LevelText.whole(each.kept().beforeDba()), 8)
                    + page.right(LevelText.whole(each.kept().afterDba()), 5)
                    + page.right(LevelText.signed(OptionalDouble.of(each.kept().residualDb())), 6)
                    + page.right(LevelText.signed(OptionalDouble.of(each.distanceSds())), 5)
                    + "   " + page.left(reading.seat().word(), 8) + " ";
            page.hanging(numbers, drawn(reading));
        }
        page.blank();
        int farthest = 0;
        for (int i = 0; i < judged.size(); i++) {
            boolean isFarther = Math.abs(judged.get(i).distanceSds())
                    > Math.abs(judged.get(farthest).distanceSds());
            farthest = isFarther ? i : farthest;
        }
        Fit.Judged worst = judged.get(farthest);
        if (worst.fitsNothing()) {
            page.paragraph("Reading " + (farthest + 1) + " fits nothing else: it lies "
                    + LevelText.whole(Math.abs(worst.distanceSds()))
                    + " standard deviations from what all the others make expect. Was something else drawn, or a"
                    + " door open? --leave-out " + (farthest + 1) + " does without it.");
        }
    }

    private void found(Fit fit) {
        Trims was = Trims.of(before);
        Trims is = Trims.of(fit.instrument());
        page.paragraph("The whole organ: " + moved(is.organDb() - was.organDb()) + ".");
        Offsets offsets = fit.calibration().offsets();
        if (told(offsets.singersDb())) {
            page.paragraph("The singers: " + moved(offsets.singersDb()) + ".");
        }
        if (told(offsets.roomDb())) {
            page.paragraph("The room: " + moved(offsets.roomDb()) + ".");
        }
        record Moved(String name, double byDb) {}
        List<Moved> moved = Stream.concat(
                        IntStream.range(0, was.stopsDb().size())
                                .mapToObj(stop -> new Moved(
                                        before.stops().get(stop).name().toString(),
                                        is.stopsDb().get(stop) - was.stopsDb().get(stop))),
                        IntStream.range(0, was.boxesDb().size())
                                .mapToObj(box -> new Moved(
                                        "the box of "
                                                + before.divisions().get(box).name(),
                                        is.boxesDb().get(box) - was.boxesDb().get(box))))
                .filter(each -> told(each.byDb()))
                .sorted((one, other) -> Double.compare(Math.abs(other.byDb()), Math.abs(one.byDb())))
                .toList();
        for (Moved each : moved.subList(0, Math.min(MOST_TRIMS, moved.size()))) {
            page.hanging("  ", each.name() + ": " + moved(each.byDb()));
        }
        if (moved.size() > MOST_TRIMS) {
            page.line("  and " + (moved.size() - MOST_TRIMS) + " more, less than these");
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

    private void next(List<ReadingDesign.Proposed> next, Optional<String> plan) {
        page.blank();
        page.paragraph(
                plan.isPresent()
                        ? "What to read next, so that the verdicts of this plan become surer:"
                        : "What to read next, so that all levels become surer:");
        for (int i = 0; i < next.size(); i++) {
            ReadingDesign.Proposed proposed = next.get(i);
            page.hanging(
                    page.right(Integer.toString(i + 1), 3) + "  ",
                    drawn(proposed.reading()) + "; " + hands(proposed.reading().hands())
                            + ". It takes the mean from ±" + tenths(proposed.beforeDb()) + " to ±"
                            + tenths(proposed.afterDb()) + " dB; expected "
                            + LevelText.whole(proposed.reading().dba()) + " dB(A).");
        }
        page.paragraph("Meter in the middle of the nave, nobody else there; play a hymn for half a minute and read the"
                + " mean level, dB(A).");
    }

    /** The gain of one reading is often less than a whole dB. */
    private static String tenths(double db) {
        return LevelText.sone(db);
    }

    private String hands(HandsAndFeet hands) {
        return hands.layout().word() + " on "
                + before.divisions().get(hands.right()).name();
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
}
