package versewind.cli;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Contradiction;
import versewind.calibration.Experience;
import versewind.calibration.HeardEffect;
import versewind.calibration.HeardRegistration;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.organ.RegistrationText;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.schema.KnownOrgan;
import versewind.sheet.Wording;
import versewind.store.BadFile;
import versewind.store.OpenOrgan;

/** {@code versewind usual INSTRUMENT}: the registrations that are usually drawn on an organ. */
final class UsualCommand {

    private static final String NAME = "--name";
    private static final String FELT = "--felt";
    private static final String REMOVE = "--remove";
    private static final String ORDINARY = "ordinary";

    private final Typed typed;
    private final Commands commands;
    private final OpenOrgan open;

    private UsualCommand(Typed typed, Commands commands, OpenOrgan open) {
        this.typed = typed;
        this.commands = commands;
        this.open = open;
    }

    static Command command() {
        Command command = Command.of(
                        Subcommand.USUAL,
                        "Lists the registrations that you usually draw on an organ, and the feedback after services;"
                                + " keeps one, or removes one."
                                + " Everything else is measured against them.",
                        UsualCommand::run)
                .operand("INSTRUMENT", Command.INSTRUMENT)
                .option(
                        NAME,
                        "NAME",
                        "What you call it: ordinary, gentle, full church; " + ORDINARY + " if not given. Up to "
                                + Experience.MOST_USUAL + " names.")
                .option(
                        PlayingOptions.DRAW,
                        "STOPS",
                        "The stops drawn: \"Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16; couplers: Great to"
                                + " Pedal; Swell closed\".")
                .option(
                        PlayingOptions.PEOPLE,
                        "N",
                        "People present then; half the seats if not given. With a small choir, its voices.")
                .option(
                        FELT,
                        "HOW",
                        "How the organ feels then: "
                                + Stream.of(HeardAs.values()).map(HeardAs::felt).collect(Collectors.joining(", "))
                                + "; right if not given.");
        return PlayingOptions.addTo(command)
                .flag(REMOVE, "Remove the one of this name.")
                .json()
                .footer("With the name of one that is kept already, only what is given changes.")
                .statuses("Some of them contradict each other.")
                .examples(
                        "versewind usual st-tethwin --draw \"Great: open 8, princ, fif; Swell: open, princ; couplers:"
                                + " swell to great\" --people 150",
                        "versewind usual st-tethwin --felt \"a little soft\"");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        UsualCommand command =
                new UsualCommand(typed, commands, commands.library().openOrgan(typed.operand()));
        if (typed.has(REMOVE)) {
            return command.remove();
        }
        return command.keepsOne() ? command.keep() : command.shown(command.open.organ(), "");
    }

    private Experience experience() {
        return open.organ().experience();
    }

    private Instrument instrument() {
        return open.organ().instrument();
    }

    private boolean keepsOne() {
        return typed.result().matchedOptions().stream()
                .anyMatch(option -> !option.longestName().equals(Command.JSON)
                        && !option.longestName().equals(LibraryLocator.OPTION));
    }

    private Reply remove() throws BadFile, NotationException {
        String name = typed.value(NAME).orElseThrow(() -> new UsageException("Say which with " + NAME + "."));
        Optional<HeardRegistration> heard = experience().all().stream()
                .filter(each -> each.name().equals(name) || each.inWords().equals(name))
                .findFirst();
        return saved(experience().without(heard.orElseThrow(() -> unknown(name))));
    }

    private UsageException unknown(String name) {
        String names =
                experience().usual().stream().map(HeardRegistration::name).collect(Collectors.joining(", "));
        return new UsageException(instrument().name() + " has no usual registration " + Quoted.text(name) + ". "
                + (names.isEmpty() ? "Keep one with " + PlayingOptions.DRAW + "." : "It has " + names + "."));
    }

    private Reply keep() throws BadFile, NotationException {
        String name = typed.value(NAME).map(String::strip).orElse(ORDINARY);
        Optional<HeardRegistration> kept = experience().usual(name);
        if (kept.isEmpty() && !typed.has(PlayingOptions.DRAW)) {
            throw unknown(name);
        }
        if (name.isBlank()) {
            throw new UsageException("Enter a name, such as " + ORDINARY + ".");
        }
        if (kept.isEmpty() && experience().usual().size() == Experience.MOST_USUAL) {
            throw new UsageException("There are " + Experience.MOST_USUAL + " usual registrations already. Remove one"
                    + " first, with " + REMOVE + ".");
        }
        HeardRegistration usual = asTyped(name, kept);
        if (usual.registration().stops().isEmpty()) {
            throw new UsageException("A usual registration needs a stop. Name the stops with " + PlayingOptions.DRAW
                    + ", or remove the registration with " + REMOVE + ".");
        }
        return saved(experience().keeping(usual));
    }

    private HeardRegistration asTyped(String name, Optional<HeardRegistration> kept) throws NotationException {
        PlayingOptions playing = PlayingOptions.of(typed, instrument());
        Verse was = kept.map(HeardRegistration::verse).orElseGet(() -> Verses.blank(instrument(), VerseKind.VERSE));
        Verse verse = playing.on(was);
        OptionalInt people = playing.people();
        boolean isChoir = verse.mode() == Mode.SMALL_CHOIR;
        HeardAs heard = typed.choice(
                FELT,
                HeardAs.values(),
                HeardAs::felt,
                kept.map(HeardRegistration::heard).orElse(HeardAs.RIGHT));
        int present = kept.map(HeardRegistration::people)
                .orElse(Math.max(1, instrument().room().seats() / 2));
        return HeardRegistration.of(
                name,
                verse.withPeople(isChoir && people.isPresent() ? people : verse.people())
                        .withRegistration(typed.has(PlayingOptions.DRAW) ? playing.drawn() : was.registration()),
                new Feedback(heard, isChoir ? present : people.orElse(present)));
    }

    private Reply saved(Experience next) throws BadFile, NotationException {
        KnownOrgan known = open.organ().with(next);
        commands.library().keepVersion(open);
        Commands.requireSaved(
                commands.library().saveOrgan(open.with(known)),
                "Not saved to " + open.path() + ": ",
                "Someone else has just changed " + open.path() + ". Nothing was written; try again.");
        return shown(known, WrittenOver.organ(open, commands));
    }

    private Reply shown(KnownOrgan known, String words) {
        UsualReport report = new UsualReport(known.instrument(), known.calibrated());
        int status = report.known().contradictions().isEmpty() ? Reply.GOOD : Reply.WANTS_ATTENTION;
        return new Reply(status, commands.shown(typed, report), words);
    }

    /** The usual registrations of an organ. */
    private record UsualReport(Instrument instrument, CalibratedOrgan known) implements Report {

        @Override
        public void print(Page page) {
            page.line(instrument.toString());
            page.blank();
            if (known.experience().usual().isEmpty()) {
                page.paragraph("No usual registrations yet. What do you draw for an ordinary hymn, and for how many?"
                        + " Say it with " + PlayingOptions.DRAW + " and " + PlayingOptions.PEOPLE + ".");
            }
            known.experience()
                    .usual()
                    .forEach(each -> print(page, each, each.heard().felt()));
            if (!known.experience().answers().isEmpty()) {
                page.blank();
                page.line("Feedback after services:");
                known.experience()
                        .answers()
                        .forEach(each -> print(page, each, each.heard().word()));
            }
            known.lastHeard().flatMap(HeardEffect::sentence).ifPresent(sentence -> {
                page.blank();
                page.paragraph(sentence);
            });
        }

        private void print(Page page, HeardRegistration each, String heard) {
            String drawn = new RegistrationText(instrument).format(each.registration());
            page.line((known.experience().usual().contains(each) ? each.name() : each.inWords()) + ": " + who(each)
                    + ", " + heard);
            page.hanging(
                    "  ",
                    (drawn.isEmpty() ? RegistrationText.NOTHING : drawn) + "; "
                            + Wording.hands(instrument, each.hands()));
            known.contradiction(each).ifPresent(clash -> page.hanging("  ", clash.sentence()));
        }

        private static String who(HeardRegistration usual) {
            String whom =
                    usual.mode() == Mode.CONGREGATION ? "" : ", " + usual.by().word();
            return usual.people() + " people" + whom + ", singing "
                    + usual.singing().word();
        }

        @Override
        public Json json() {
            return new Json()
                    .put("instrument", instrument.name())
                    .list("usual", known.experience().usual(), each -> json(each)
                            .put("felt", each.heard().felt()))
                    .list("answers", known.experience().answers(), each -> json(each)
                            .put("heard", each.heard().word()));
        }

        private Json json(HeardRegistration each) {
            return new Json()
                    .put("name", each.name())
                    .put("people", each.people())
                    .put("mode", each.by().word())
                    .put("singing", each.singing().word())
                    .put("contradicts", known.contradiction(each).isPresent())
                    .putIfPresent("contradicted", known.contradiction(each).map(Contradiction::whom))
                    .putIfPresent("voices", each.voices().stream().boxed().findFirst())
                    .with(ReportFields.hands(instrument, each.hands()))
                    .with(ReportFields.drawn(instrument, each.registration()));
        }
    }
}
