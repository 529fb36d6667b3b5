package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;
import versewind.sound.Calibration;
import versewind.sound.Fit;
import versewind.sound.MeterReading;
import versewind.sound.OrganSound;
import versewind.sound.ReadingDesign;
import versewind.store.BadFile;
import versewind.store.CalibrationJson;
import versewind.store.KnownOrgan;
import versewind.store.Library;
import versewind.store.OpenOrgan;
import versewind.store.OpenPlan;
import versewind.store.PlainText;
import versewind.store.SaveOutcome;

/** {@code versewind calibrate INSTRUMENT READINGS.csv}: what a few readings of a meter tell of an organ. */
final class CalibrateCommand {

    static final String NAME = "calibrate";

    private static final String PLAN = "--plan";
    private static final String NEXT = "--next";
    private static final String LEAVE_OUT = "--leave-out";
    private static final String WRITE = "--write";
    private static final String UNDO = "--undo";
    private static final int USUAL_NEXT = 3;
    private static final int MOST_NEXT = 20;

    private final ParseResult typed;
    private final Library library;
    private final OpenOrgan open;

    private CalibrateCommand(ParseResult typed, Library library, OpenOrgan open) {
        this.typed = typed;
        this.library = library;
        this.open = open;
    }

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Learns how loud an organ truly is from readings of a sound-level meter or a phone, and says which"
                        + " reading to take next.");
        spec.addPositional(
                Options.firstOperand("INSTRUMENT", "An instrument's file, or its name among the instruments."));
        spec.addPositional(Options.secondOperand(
                "READINGS.csv",
                "A table of readings, - for the standard input. They are added to those that the instrument already"
                        + " rests on. Without it: what it rests on, and what to read next."));
        spec.addOption(Options.valued(
                PLAN, "PLAN", "Propose the readings that make this plan's verdicts surest; else levels at large."));
        spec.addOption(Options.valued(NEXT, "N", "How many readings to propose; " + USUAL_NEXT + " if not given."));
        spec.addOption(Options.repeated(
                LEAVE_OUT, "NUMBER", "Leave out a reading, by its number in the list; can be given several times."));
        spec.addOption(Options.flag("Write the trims found, and the readings, into the instrument.", WRITE)
                .build());
        spec.addOption(Options.flag("Take the calibration back: the trims are as before the first reading.", UNDO)
                .build());
        spec.addOption(Options.json());
        spec.usageMessage()
                .footer(
                        "",
                        "The table's first line names its columns: draw and dBA, and as needed date, box,",
                        "hands, right, left, seat (nave, far, choir, console), people, singers, singing:",
                        "  draw,box,dBA",
                        "  \"Great: Open Diapason 8, Principal 4\",,74",
                        "  \"Swell: Gedackt 8; couplers: Swell to Great\",Swell=closed,58.5",
                        "Play a hymn in four parts for half a minute and read the mean level, dB(A), slow.");
        return Options.withExitStatus(spec, "A reading fits nothing else.");
    }

    static Reply run(ParseResult typed, Library library, CharsetFallback lettering) throws BadFile, NotationException {
        CalibrateCommand command = new CalibrateCommand(typed, library, library.openOrgan(Options.operand(typed)));
        return typed.hasMatchedOption(UNDO) ? command.undo() : command.calibrate(lettering);
    }

    private Reply undo() throws NotationException {
        Calibration calibration = open.organ().calibration();
        if (typed.hasMatchedPositional(1) || typed.hasMatchedOption(WRITE) || typed.hasMatchedOption(LEAVE_OUT)) {
            throw new UsageException(UNDO + " stands alone: it takes the whole calibration back.");
        }
        if (calibration.before().isEmpty()) {
            throw new UsageException(open.organ().instrument() + " was never calibrated; there is nothing to undo.");
        }
        save(open.organ().fittedTo(List.of()));
        return Reply.good("The calibration of " + open.organ().instrument() + " is taken back: "
                + counted(calibration.kept().size()) + ", and the trims found by them.\n");
    }

    private Reply calibrate(CharsetFallback lettering) throws BadFile, NotationException {
        KnownOrgan organ = open.organ();
        Calibration rests = organ.calibration();
        OrganSound before = organ.soundBeforeReadings();
        List<MeterReading> readings = readings(rests, before);
        boolean isChanged = !readings.equals(rests.readings());
        Optional<Fit> fit = readings.isEmpty() ? Optional.empty() : Optional.of(Fit.of(before, readings));
        OrganSound after = fit.map(Fit::after).orElse(before);
        List<ReadingDesign.Proposed> next = next(after);
        String words = "";
        if (typed.hasMatchedOption(WRITE)) {
            if (!isChanged) {
                throw new UsageException("There is nothing new to write. Name a table of readings.");
            }
            save(organ.fittedTo(readings));
            words = "versewind: Written to " + open.path() + ". versewind calibrate " + Options.operand(typed)
                    + " --undo takes it back.\n";
        } else if (isChanged) {
            words = "versewind: Nothing is written yet; --write does that.\n";
        }
        String results = typed.hasMatchedOption(Options.JSON)
                ? CalibrationJson.of(before.organ(), fit, next)
                : CalibrationText.of(before.organ(), fit, next, plan(), lettering);
        boolean all = fit.stream().flatMap(found -> found.judged().stream()).noneMatch(Fit.Judged::fitsNothing);
        return new Reply(all ? Reply.GOOD : Reply.WANTS_ATTENTION, results, words);
    }

    private Optional<String> plan() {
        return Optional.ofNullable(typed.matchedOptionValue(PLAN, (String) null));
    }

    private List<MeterReading> readings(Calibration rests, OrganSound before) throws BadFile, NotationException {
        List<MeterReading> readings = new ArrayList<>(rests.readings());
        if (typed.hasMatchedPositional(1)) {
            String file = typed.matchedPositionalValue(1, "");
            boolean isPiped = file.equals(Options.INPUT);
            String text = isPiped ? PlainText.of(System.in) : PlainText.of(file);
            readings.addAll(ReadingsTable.read(isPiped ? "the standard input" : file, text, before));
        }
        List<Integer> out = new ArrayList<>();
        for (String number : typed.matchedOptionValue(LEAVE_OUT, List.<String>of())) {
            if (!number.matches("[0-9]{1,4}")
                    || Integer.parseInt(number) < 1
                    || Integer.parseInt(number) > readings.size()) {
                throw new UsageException(
                        "There is no reading " + number + ": there are " + counted(readings.size()) + ".");
            }
            out.add(Integer.parseInt(number) - 1);
        }
        return IntStream.range(0, readings.size())
                .filter(i -> !out.contains(i))
                .mapToObj(readings::get)
                .toList();
    }

    private List<ReadingDesign.Proposed> next(OrganSound sound) throws BadFile, NotationException {
        String number = typed.matchedOptionValue(NEXT, Integer.toString(USUAL_NEXT));
        if (!number.matches("[0-9]{1,4}") || Integer.parseInt(number) > MOST_NEXT) {
            throw new UsageException(
                    NEXT + " takes a whole number from 0 to " + MOST_NEXT + ", not \"" + number + "\".");
        }
        if (plan().isEmpty()) {
            return ReadingDesign.allRound(sound, Integer.parseInt(number));
        }
        OpenPlan plan = library.openPlan(plan().get());
        if (!plan.organ().equals(open.organ())) {
            throw new UsageException("The plan " + plan().get() + " is for another organ, " + plan.instrument() + ".");
        }
        return ReadingDesign.of(sound, plan.plan(), Integer.parseInt(number));
    }

    private void save(KnownOrgan organ) throws NotationException {
        SaveOutcome outcome = library.saveOrgan(open.with(organ));
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            throw new UsageException(
                    open.path() + " has just been changed by somebody else. Nothing is written; try again.");
        }
        if (outcome instanceof SaveOutcome.NotSaved failed) {
            throw new UsageException("Not saved to " + failed.path() + ": " + failed.why());
        }
    }

    static String counted(int readings) {
        return readings + (readings == 1 ? " reading" : " readings");
    }
}
