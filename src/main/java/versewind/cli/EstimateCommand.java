package versewind.cli;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.BoxPosition;
import versewind.organ.Instrument;
import versewind.organ.Names;
import versewind.organ.NotationException;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.rules.Assessment;
import versewind.sound.OrganSound;
import versewind.store.AssessmentJson;
import versewind.store.BadFile;
import versewind.store.KnownOrgan;
import versewind.store.Library;

/** {@code versewind estimate INSTRUMENT --draw STOPS}: how one registration stands. */
final class EstimateCommand {

    static final String NAME = "estimate";

    private static final String DRAW = "--draw";
    private static final String BOX = "--box";
    private static final String TREMULANT = "--tremulant";
    private static final String PEOPLE = "--people";
    private static final String SINGING = "--singing";
    private static final String MODE = "--mode";
    private static final String HANDS = "--hands";
    private static final String RIGHT = "--right";
    private static final String LEFT = "--left";
    private static final String TEMPO = "--tempo";
    private static final Pattern FOLDERS_AND_ENDING = Pattern.compile("^.*[/\\\\]|\\.json$");
    private static final int USUAL_PEOPLE = 100;

    private final ParseResult typed;
    private final KnownOrgan organ;
    private final Instrument instrument;
    private final RegistrationText text;

    private EstimateCommand(ParseResult typed, KnownOrgan organ) {
        this.typed = typed;
        this.organ = organ;
        this.instrument = organ.instrument();
        this.text = new RegistrationText(instrument);
    }

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME, "Estimates one registration: the organ, the singing, and whether the organ leads.");
        spec.addPositional(Options.operand("INSTRUMENT", "An instrument's file, or its name among the instruments."));
        addDrawing(spec);
        addSinging(spec);
        addPlaying(spec);
        spec.addOption(Options.json());
        spec.usageMessage()
                .footer(
                        "",
                        "Capitals and accents make no difference in names, and names may be shortened",
                        "as long as only one is meant: \"open 8\" for \"Open Diapason 8\".");
        return Options.withExitStatus(spec, "The registration wants attention.");
    }

    private static void addDrawing(CommandSpec spec) {
        spec.addOption(Options.needed(
                DRAW,
                "STOPS",
                "What is drawn: \"Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16; couplers: Great to Pedal\"."
                        + " Line ends do for semicolons."));
        spec.addOption(Options.repeated(
                BOX,
                "DIVISION=POSITION",
                "A swell box: " + words(BoxPosition.values(), BoxPosition::word) + ". Boxes not named are open."));
        spec.addOption(Options.repeated(TREMULANT, "NAME", "A tremulant that is drawn."));
    }

    private static void addSinging(CommandSpec spec) {
        spec.addOption(Options.valued(
                PEOPLE, "N", "People present, " + USUAL_PEOPLE + " if not given; with a small choir, its voices."));
        spec.addOption(Options.valued(MODE, "WHOM", "Who is accompanied: " + words(Mode.values(), Mode::word) + "."));
        spec.addOption(
                Options.valued(SINGING, "HOW", "How they sing: " + words(Singing.values(), Singing::word) + "."));
    }

    private static void addPlaying(CommandSpec spec) {
        spec.addOption(Options.valued(
                HANDS,
                "LAYOUT",
                "Hands and feet: " + words(HandsAndFeet.Layout.values(), HandsAndFeet.Layout::word) + "."));
        spec.addOption(
                Options.valued(RIGHT, "DIVISION", "Where the right hand plays; the main division if not given."));
        spec.addOption(Options.valued(LEFT, "DIVISION", "Where the left hand plays; with the right if not given."));
        spec.addOption(Options.valued(TEMPO, "N", "Beats a minute, to have the lag in beats too."));
    }

    private static <T> String words(T[] values, Function<T, String> word) {
        return Stream.of(values).map(word).collect(Collectors.joining(", "));
    }

    static Reply run(ParseResult typed, Library library, CharsetFallback lettering) throws BadFile, NotationException {
        KnownOrgan organ = library.openOrgan(Options.operand(typed)).organ();
        return new EstimateCommand(typed, organ).reply(lettering);
    }

    private Reply reply(CharsetFallback lettering) throws NotationException {
        Verse verse = verse();
        int people = verse.mode() == Mode.SMALL_CHOIR ? USUAL_PEOPLE : people().orElse(USUAL_PEOPLE);
        OptionalInt tempo = number(TEMPO, Hymn.SLOWEST_TEMPO, Hymn.FASTEST_TEMPO);
        OrganSound sound = organ.sound();
        Assessment.OfVerse assessed = new Assessment.OfVerse(verse, sound.estimate(verse, people, tempo));
        String results = typed.hasMatchedOption(Options.JSON)
                ? AssessmentJson.of(fileName(), instrument, assessed)
                : EstimateText.of(instrument, people, assessed, lettering);
        return new Reply(assessed.wantsAttention() ? Reply.WANTS_ATTENTION : Reply.GOOD, results, "");
    }

    /** The name of the instrument's file, as plans write it. */
    private String fileName() {
        return FOLDERS_AND_ENDING.matcher(Options.operand(typed)).replaceAll("");
    }

    private Verse verse() throws NotationException {
        Mode mode = choice(MODE, Mode.values(), Mode::word, Mode.CONGREGATION);
        OptionalInt voices = mode == Mode.SMALL_CHOIR ? people() : OptionalInt.empty();
        return Verses.blank(instrument, VerseKind.VERSE)
                .withLabel("")
                .withMode(mode)
                .withPeople(voices)
                .withSinging(choice(SINGING, Singing.values(), Singing::word, Singing.ORDINARY))
                .withHands(hands())
                .withRegistration(registration());
    }

    private OptionalInt people() throws NotationException {
        return number(PEOPLE, 1, Verse.MOST_PEOPLE);
    }

    private HandsAndFeet hands() throws NotationException {
        HandsAndFeet.Layout layout =
                choice(HANDS, HandsAndFeet.Layout.values(), HandsAndFeet.Layout::word, HandsAndFeet.Layout.FOUR_PARTS);
        int right = manual(RIGHT, instrument.mainDivision());
        return new HandsAndFeet(layout, right, manual(LEFT, right));
    }

    private int manual(String option, int otherwise) throws NotationException {
        return typed.hasMatchedOption(option) ? text.manual(typed.matchedOptionValue(option, "")) : otherwise;
    }

    private Registration registration() throws NotationException {
        Registration drawn = text.parse(typed.matchedOptionValue(DRAW, ""));
        for (String box : typed.matchedOptionValue(BOX, List.<String>of())) {
            drawn = text.withBoxes(drawn, box);
        }
        for (String tremulant : typed.matchedOptionValue(TREMULANT, List.<String>of())) {
            drawn = text.withTremulant(drawn, tremulant);
        }
        return drawn;
    }

    private <T> T choice(String option, T[] values, Function<T, String> word, T otherwise) throws NotationException {
        if (!typed.hasMatchedOption(option)) {
            return otherwise;
        }
        Names names = new Names(
                option + " cannot be", "It can be", Stream.of(values).map(word).toList());
        return values[names.find(typed.matchedOptionValue(option, ""))];
    }

    private OptionalInt number(String option, int least, int most) throws NotationException {
        if (!typed.hasMatchedOption(option)) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(Options.whole(option, typed.matchedOptionValue(option, ""), least, most));
    }
}
