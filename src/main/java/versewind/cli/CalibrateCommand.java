package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.calibration.Calibration;
import versewind.calibration.Fit;
import versewind.calibration.MeterReading;
import versewind.calibration.ReadingDesign;
import versewind.organ.Count;
import versewind.organ.NotationException;
import versewind.schema.KnownOrgan;
import versewind.sound.OrganSound;
import versewind.store.BadFile;
import versewind.store.BadRows;
import versewind.store.OpenOrgan;
import versewind.store.OpenPlan;
import versewind.store.ReadingsCsv;

/** {@code versewind calibrate INSTRUMENT READINGS.csv}: what a few meter readings tell about an organ. */
final class CalibrateCommand {

    private static final String PLAN = "--plan";
    private static final String NEXT = "--next";
    private static final String LEAVE_OUT = "--leave-out";
    private static final String WRITE = "--write";
    private static final String UNDO = "--undo";
    private static final int USUAL_NEXT = 3;
    private static final int MOST_NEXT = 20;

    private final Typed typed;
    private final Commands commands;
    private final OpenOrgan open;
    private final KnownOrgan organ;

    private CalibrateCommand(Typed typed, Commands commands, OpenOrgan open) {
        this.typed = typed;
        this.commands = commands;
        this.open = open;
        this.organ = open.organ();
    }

    static Command command() {
        return Command.of(
                        Subcommand.CALIBRATE,
                        "Calibrates an organ from readings of a sound-level meter or a phone, and proposes the"
                                + " readings to take next.",
                        CalibrateCommand::run)
                .operand("INSTRUMENT", Command.INSTRUMENT)
                .optionalOperand(
                        "READINGS.csv",
                        "A table of readings, or - for the standard input, to be added to those the instrument already"
                                + " has. Without it: the readings so far, and those to take next.")
                .option(
                        PLAN,
                        "PLAN",
                        "Propose the readings that make this plan's verdicts most certain; otherwise all levels.")
                .option(NEXT, "N", "How many readings to propose; " + USUAL_NEXT + " if not given.")
                .repeatedOption(
                        LEAVE_OUT, "NUMBER", "Ignore a reading, by its number in the list; can be given several times.")
                .flag(WRITE, "Write the trims and the readings into the instrument.")
                .flag(UNDO, "Remove the calibration: the trims are again as before the first reading.")
                .json()
                .footer(
                        "The table's first line names its columns: draw and dBA, and as needed date, box,",
                        "hands, right, left, seat (nave, far, choir, console), people, singers, singing:",
                        "  draw,box,dBA",
                        "  \"Great: Open Diapason 8, Principal 4\",,74",
                        "  \"Swell: Gedackt 8; couplers: Swell to Great\",Swell=closed,58.5",
                        "Play a hymn in four parts for half a minute and read the mean level, dB(A), slow.")
                .statuses("A reading does not fit the others.")
                .examples(
                        "versewind calibrate st-tethwin --plan harvest-festival",
                        "versewind calibrate st-tethwin readings.csv --write");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        OpenOrgan open = commands.library().openOrgan(typed.operand());
        CalibrateCommand command = new CalibrateCommand(typed, commands, open);
        if (typed.has(UNDO)) {
            return command.undo();
        }
        try {
            return command.calibrate(command.table());
        } catch (BadRows wrong) {
            return Reply.bad(command.place() + ", ", wrong.sentences(), "");
        }
    }

    private Reply undo() throws BadFile, NotationException {
        Calibration calibration = organ.calibration();
        if (typed.operand(1).isPresent() || typed.has(WRITE) || typed.has(LEAVE_OUT)) {
            throw new UsageException("Use " + UNDO + " alone: it removes the whole calibration.");
        }
        if (calibration.before().isEmpty()) {
            throw new UsageException(organ.instrument() + " has not been calibrated, so there is nothing to undo.");
        }
        save(organ.fittedTo(List.of()));
        return Reply.good("Removed the calibration of " + organ.instrument() + ": "
                + Count.of(calibration.kept().size(), "reading") + ", and the trims they gave.\n");
    }

    private Reply calibrate(List<MeterReading> added) throws BadFile, NotationException {
        List<MeterReading> rests = organ.calibration().readings();
        List<MeterReading> readings = readings(rests, added);
        OrganSound before = organ.soundBeforeReadings();
        Optional<Fit> fit = readings.isEmpty() ? Optional.empty() : Optional.of(Fit.of(before, readings));
        List<ReadingDesign.Proposed> next = next(organ.fittedTo(readings).sound());
        String words = written(readings, !readings.equals(rests));
        boolean isOdd = fit.stream().flatMap(found -> found.judged().stream()).anyMatch(Fit.Judged::isOutlier);
        return new Reply(
                isOdd ? Reply.WANTS_ATTENTION : Reply.GOOD,
                commands.shown(
                        typed,
                        new CalibrationReport(
                                before.organ(), organ.experience(), fit, next, asked(), typed.value(PLAN))),
                words);
    }

    private String written(List<MeterReading> readings, boolean isChanged) throws BadFile, NotationException {
        if (!typed.has(WRITE)) {
            return isChanged ? Reply.line("Nothing has been written. Add --write to save this.") : "";
        }
        if (!isChanged) {
            throw new UsageException("There are no new readings to write. Name a table of readings.");
        }
        save(organ.fittedTo(readings));
        return Reply.line("Written to " + open.path() + ". To undo it: versewind calibrate "
                + WrittenOver.word(typed.operand()) + " " + UNDO);
    }

    /** The name of the table of readings in sentences. */
    private String place() {
        return typed.operand(1).filter(file -> !file.equals(Typed.INPUT)).orElse("the standard input");
    }

    private List<MeterReading> table() throws BadFile, BadRows {
        Optional<String> file = typed.operand(1);
        return file.isEmpty() ? List.of() : ReadingsCsv.read(commands.text(file.get()), organ.soundBeforeReadings());
    }

    /** The readings that are not left out. */
    private List<MeterReading> readings(List<MeterReading> rests, List<MeterReading> added) throws UsageException {
        List<MeterReading> readings = new ArrayList<>(rests);
        readings.addAll(added);
        List<Integer> out = new ArrayList<>();
        for (String number : typed.values(LEAVE_OUT)) {
            int reading = number.matches("[0-9]{1,4}") ? Integer.parseInt(number) : 0;
            if (reading < 1 || reading > readings.size()) {
                throw new UsageException("There is no reading " + number + "; the list has "
                        + Count.of(readings.size(), "reading") + ".");
            }
            out.add(reading - 1);
        }
        return IntStream.range(0, readings.size())
                .filter(i -> !out.contains(i))
                .mapToObj(readings::get)
                .toList();
    }

    private int asked() throws UsageException {
        return typed.whole(NEXT, 1, MOST_NEXT).orElse(USUAL_NEXT);
    }

    private List<ReadingDesign.Proposed> next(OrganSound sound) throws BadFile, NotationException {
        int number = asked();
        Optional<String> named = typed.value(PLAN);
        if (named.isEmpty()) {
            return ReadingDesign.allRound(sound, number);
        }
        OpenPlan plan = commands.library().openPlan(named.get());
        if (!plan.organ().equals(organ)) {
            throw new UsageException("The plan " + named.get() + " is for another organ, " + plan.instrument() + ".");
        }
        return ReadingDesign.of(sound, plan.plan(), number);
    }

    private void save(KnownOrgan known) throws BadFile, NotationException {
        Commands.requireSaved(
                commands.library().saveOrgan(open.with(known)),
                "Not saved to " + open.path() + ": ",
                "Someone else has just changed " + open.path() + ". Nothing was written; try again.");
    }
}
