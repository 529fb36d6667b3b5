package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.organ.NotationException;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.plan.Feedback;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Caution;
import versewind.rules.PistonChoice;
import versewind.sheet.LevelText;
import versewind.sheet.Wording;
import versewind.sound.Estimate;
import versewind.store.BadFile;
import versewind.store.OpenPlan;
import versewind.store.SaveOutcome;
import versewind.store.WhenChanged;

/** {@code versewind change PLAN --hymn N --verse V}: changes one verse, or records feedback on it. */
final class ChangeCommand {

    private static final int TRIES = 5;
    private static final String ADD = "--add";
    private static final String PUT_IN = "--put-in";
    private static final String PISTON = "--piston";
    private static final String HEARD = "--heard";
    private static final String PRESENT = "--present";

    private ChangeCommand() {}

    static Command command() {
        Command command = VerseOptions.addTo(Command.of(
                                Subcommand.CHANGE,
                                "Changes one verse of a plan: what is drawn, the swell boxes, who sings; or records"
                                        + " feedback on it after the service. What is not named stays as it is. The"
                                        + " version before is kept among the versions of the plan.",
                                ChangeCommand::run)
                        .operand("PLAN", Command.PLAN))
                .option(
                        PlayingOptions.DRAW,
                        "STOPS",
                        "Draw these and nothing else: \"Great: Principal 4; Pedal: Bourdon 16\".")
                .option(ADD, "STOPS", "Draw these as well; couplers and tremulants too.")
                .option(PUT_IN, "STOPS", "Put these in.")
                .repeatedOption(EstimateCommand.BOX, "DIVISION=POSITION", EstimateCommand.BOXES + ".")
                .option(PISTON, "PISTON", "The piston that sets it, as G3 or 2/G3; \"\" for none.")
                .option(PlayingOptions.PEOPLE, "N", "People present in this verse, or singers of a small choir.");
        return PlayingOptions.addTo(command)
                .option(
                        HEARD,
                        "HOW",
                        "How the organ was in the service: " + PlayingOptions.words(HeardAs.values()) + ".")
                .option(PRESENT, "N", "People present then; those expected if not given.")
                .statuses()
                .examples(
                        "versewind change harvest-festival --hymn 211 --verse V2 --put-in \"Great: Mixture III\" --box"
                                + " Swell=half",
                        "versewind change harvest-festival --hymn 211 --verse V2 --heard \"too soft\" --present 320");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        return run(typed, commands, TRIES);
    }

    /** What someone else saves meanwhile is read, and the change made there. */
    private static Reply run(Typed typed, Commands commands, int tries) throws BadFile, NotationException {
        OpenPlan open = commands.plan(typed.operand());
        VerseOptions.refuseWhereUnsafe(open, "");
        VerseOptions options = new VerseOptions(typed, open.plan());
        VersePlace place = options.verse(options.hymn())
                .orElseThrow(() -> new UsageException("Say which verse, with --hymn and --verse."));
        Verse before = open.plan().verse(place);
        Verse after =
                heard(typed, changed(typed, open, before), open.plan().heading().people());
        if (after.equals(before)) {
            if (!typed.hasBesides(VerseOptions.HYMN, VerseOptions.VERSE, LibraryLocator.OPTION)) {
                throw new UsageException("Nothing is to be changed. See versewind change --help.");
            }
            return new Reply(Reply.GOOD, "", Reply.line("Nothing was changed: " + before.label() + " is so already."));
        }
        OpenPlan changed = open.with(open.plan().withVerse(place, after));
        SaveOutcome outcome = commands.library().savePlan(changed, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.ChangedOnDisk && tries > 1) {
            return run(typed, commands, tries - 1);
        }
        Commands.requireSaved(
                outcome,
                "The plan was not saved to " + open.path() + ": ",
                "Someone else has just changed the plan. Nothing was written. Try again.");
        String drawn = new RegistrationText(open.instrument()).format(after.registration());
        Page page = new Page(commands.letters());
        page.hanging(
                after.label() + ": ",
                (drawn.isEmpty() ? RegistrationText.NOTHING : drawn) + "; "
                        + Wording.hands(open.instrument(), after.hands()) + "; "
                        + after.sungBy().word() + ", "
                        + after.singing().word()
                        + after.answer()
                                .map(each -> "; it was " + each.heard().word() + " for " + Page.people(each.present()))
                                .orElse("")
                        + ".");
        String under = " ".repeat(after.label().length() + 2);
        if (after.isPlayed()) {
            page.hanging(under, sound(changed, place) + ".");
        }
        Caution.choir(after, open.instrument().room()).ifPresent(sentence -> page.hanging(under, sentence));
        pistons(open.plan(), changed, place).forEach(sentence -> page.hanging(under, sentence));
        return new Reply(
                Reply.GOOD,
                page.text(),
                WrittenOver.feedback(open.plan(), changed.plan()) + WrittenOver.plan(open, commands));
    }

    /** What the change did to pistons: that of the verse, and of verses that it had the same piston for until now. */
    private static List<String> pistons(Plan before, OpenPlan changed, VersePlace place) {
        Plan plan = changed.plan();
        Stream<String> own = PistonChoice.heldElsewhere(plan, changed.instrument(), place)
                .map(held -> held.words() + ". " + another(before, changed, place))
                .stream();
        String others = ReportFields.names(
                plan,
                plan.places().stream()
                        .filter(other -> !other.equals(place))
                        .filter(other ->
                                isHeldElsewhere(plan, changed, other) && !isHeldElsewhere(before, changed, other)));
        Stream<String> no =
                others.isEmpty() ? Stream.empty() : Stream.of("No longer what their piston holds: " + others + ".");
        return Stream.concat(own, no).toList();
    }

    /** What may be done about a piston that holds something else. */
    private static String another(Plan before, OpenPlan changed, VersePlace place) {
        Verse drawn = changed.plan().verse(place);
        String free =
                PistonChoice.redrawn(before, place, drawn, changed.instrument()).piston();
        return free.isEmpty() || free.equals(drawn.piston())
                ? "No other is free. To set it by hand: " + PISTON + " \"\"."
                : "Free for it: " + PISTON + " \"" + free + "\".";
    }

    private static boolean isHeldElsewhere(Plan plan, OpenPlan open, VersePlace place) {
        return PistonChoice.heldElsewhere(plan, open.instrument(), place).isPresent();
    }

    /** Level and verdict of a verse: "fff 84±4 dB(A), leads, 9 in 10". */
    private static String sound(OpenPlan open, VersePlace place) {
        Plan plan = open.plan();
        Estimate estimate = open.organ()
                .sound()
                .estimate(
                        plan.verse(place),
                        plan.heading().people(),
                        plan.hymn(place).tempo());
        return LevelText.words(estimate)
                + (estimate.organDba().isPresent() ? " dB(A)" : "") + ", "
                + Wording.verdict(estimate.balance());
    }

    private static Verse changed(Typed typed, OpenPlan open, Verse before) throws NotationException {
        PlayingOptions playing = PlayingOptions.of(typed, open.instrument());
        RegistrationText text = playing.text();
        Registration drawn = before.registration();
        Registration none = Registration.silent(open.instrument()).withBoxes(drawn.boxes());
        if (typed.has(PlayingOptions.DRAW)) {
            drawn = text.parse(none, typed.value(PlayingOptions.DRAW).orElse(""));
        }
        Registration more =
                text.parse(none.withBoxes(drawn.boxes()), typed.value(ADD).orElse(""));
        Registration fewer = text.parse(none, typed.value(PUT_IN).orElse(""));
        drawn = new Registration(
                drawn.stops().plus(more.stops()).minus(fewer.stops()),
                drawn.couplers().plus(more.couplers()).minus(fewer.couplers()),
                drawn.tremulants().plus(more.tremulants()).minus(fewer.tremulants()),
                more.boxes());
        for (String box : typed.values(EstimateCommand.BOX)) {
            drawn = text.withBoxes(drawn, box);
        }
        HandsAndFeet hands = playing.on(before).hands();
        HandsAndFeet.Layout layout = typed.has(PlayingOptions.HANDS)
                ? hands.layout()
                : before.hands().layout();
        Verse verse = playing.on(before)
                .withRegistration(drawn)
                .withHands(new HandsAndFeet(layout, hands.right(), hands.left()));
        if (typed.has(PISTON)) {
            verse = verse.withPiston(typed.value(PISTON).orElse("").strip());
        }
        OptionalInt people = playing.people();
        return people.isPresent() ? verse.withPeople(people) : verse;
    }

    private static Verse heard(Typed typed, Verse verse, int expected) throws NotationException {
        OptionalInt present = typed.whole(PRESENT, 1, Verse.MOST_PEOPLE);
        if (!typed.has(HEARD)) {
            if (present.isPresent()) {
                throw new UsageException("Say how the organ was, with " + HEARD + ".");
            }
            return verse;
        }
        HeardAs heard = typed.choice(HEARD, HeardAs.values(), HeardAs.RIGHT);
        return verse.withAnswer(Optional.of(new Feedback(heard, present.orElse(expected))));
    }
}
