package versewind.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import versewind.organ.BoxPosition;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;
import versewind.rules.Advice;
import versewind.rules.Assessment;
import versewind.rules.Caution;
import versewind.schema.KnownOrgan;
import versewind.sheet.LevelText;
import versewind.sheet.Wording;
import versewind.sound.Balance;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.store.BadFile;

/** {@code versewind estimate INSTRUMENT --draw STOPS}: how one registration sounds. */
final class EstimateCommand {

    static final String BOX = "--box";
    static final String BOXES = "A swell box: " + PlayingOptions.words(BoxPosition.values());
    private static final String TREMULANT = "--tremulant";
    private static final String TEMPO = "--tempo";
    private static final Pattern FOLDERS_AND_ENDING = Pattern.compile("^.*[/\\\\]|\\.json$");
    private static final int USUAL_PEOPLE = 100;

    private final Typed typed;
    private final Instrument instrument;
    private final PlayingOptions playing;

    private EstimateCommand(Typed typed, Instrument instrument) {
        this.typed = typed;
        this.instrument = instrument;
        this.playing = PlayingOptions.of(typed, instrument);
    }

    static Command command() {
        Command command = Command.of(
                        Subcommand.ESTIMATE,
                        "Estimates one registration: the organ, the singing, and whether the organ leads.",
                        EstimateCommand::run)
                .operand("INSTRUMENT", Command.INSTRUMENT)
                .neededOption(
                        PlayingOptions.DRAW,
                        "STOPS",
                        "The stops drawn: \"Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16; couplers: Great to"
                                + " Pedal\". Line ends may replace semicolons.")
                .repeatedOption(BOX, "DIVISION=POSITION", BOXES + ". Boxes not named are open.")
                .repeatedOption(TREMULANT, "NAME", "A tremulant to draw.")
                .option(
                        PlayingOptions.PEOPLE,
                        "N",
                        "People present, " + USUAL_PEOPLE + " if not given; with a small choir, its voices.");
        return PlayingOptions.addTo(command)
                .option(TEMPO, "N", "Beats a minute, to give the lag in beats as well.")
                .json()
                .footer(
                        "Capitals and accents make no difference in names, and names may be shortened",
                        "as long as only one matches: \"open 8\" for \"Open Diapason 8\".")
                .statuses()
                .examples("versewind estimate st-tethwin --draw \"Great: open 8, princ; couplers: gr to ped\"");
    }

    private static Reply run(Typed typed, Commands commands) throws BadFile, NotationException {
        KnownOrgan organ = commands.library().openOrgan(typed.operand()).organ();
        EstimateCommand command = new EstimateCommand(typed, organ.instrument());
        Verse verse = command.verse();
        int people = verse.mode() == Mode.SMALL_CHOIR
                ? USUAL_PEOPLE
                : command.playing.people().orElse(USUAL_PEOPLE);
        OptionalInt tempo = typed.whole(TEMPO, Hymn.SLOWEST_TEMPO, Hymn.FASTEST_TEMPO);
        OrganSound sound = organ.sound();
        Assessment.OfVerse assessed = new Assessment.OfVerse(verse, sound.estimate(verse, people, tempo));
        String id = FOLDERS_AND_ENDING.matcher(typed.operand()).replaceAll("");
        return Reply.good(commands.shown(
                typed,
                new OneEstimate(
                        id, sound, people, assessed, KnownOrgan.fromUsual(organ.experience(), sound, verse, people))));
    }

    private Verse verse() throws NotationException {
        Verse verse = playing.on(Verses.blank(instrument, VerseKind.VERSE).withLabel(""));
        return verse.withPeople(verse.mode() == Mode.SMALL_CHOIR ? playing.people() : OptionalInt.empty())
                .withRegistration(registration());
    }

    private Registration registration() throws NotationException {
        Registration drawn = playing.drawn();
        for (String box : typed.values(BOX)) {
            drawn = playing.text().withBoxes(drawn, box);
        }
        for (String tremulant : typed.values(TREMULANT)) {
            drawn = playing.text().withTremulant(drawn, tremulant);
        }
        return drawn;
    }

    /** The estimate of one registration: stops drawn, singers, levels and verdict. */
    private record OneEstimate(
            String id, OrganSound sound, int people, Assessment.OfVerse assessed, Optional<String> usual)
            implements Report {

        private static final int HEAD = 11;

        @Override
        public void print(Page page) {
            page.line(sound.organ().toString());
            page.blank();
            for (RegistrationText.Part part :
                    new RegistrationText(sound.organ()).parts(assessed.verse().registration())) {
                row(page, part.where(), part.text());
            }
            row(page, "hands", Wording.hands(sound.organ(), assessed.verse().hands()));
            row(page, "singing", singing());
            page.blank();
            levels(page, assessed.estimate());
            page.blank();
            page.paragraph(Caution.ESTIMATE);
            Caution.people(people, sound.organ().room()).ifPresent(page::paragraph);
            Caution.organ(sound.organ()).forEach(page::paragraph);
            Caution.hearing(assessed.loudestDba()).ifPresent(page::paragraph);
        }

        private static void row(Page page, String head, String text) {
            page.hanging(page.left(head, HEAD) + " ", text);
        }

        private String singing() {
            String how = ", " + assessed.verse().singing().word();
            int singers = assessed.estimate().singers();
            if (!assessed.verse().isPlayed()) {
                return "unaccompanied" + how;
            }
            return switch (assessed.verse().mode()) {
                case CONGREGATION -> "congregation" + how + "; " + singers + " of " + people + " sing";
                case SMALL_CHOIR -> "small choir of " + singers + how + "; " + people + " listening";
                case SOLO_VOICE -> "soloist" + how + "; " + people + " listening";
                case MELODY_SOLOED -> "nobody; the melody is soloed, " + people + " listening";
            };
        }

        private void levels(Page page, Estimate estimate) {
            row(
                    page,
                    "organ",
                    estimate.dynamic()
                            .map(dynamic -> dynamic.word() + ", " + LevelText.organ(estimate))
                            .orElse("silent: nothing drawn sounds"));
            if (estimate.singersDba().isPresent()) {
                String level = LevelText.whole(
                        estimate.singersDba(), estimate.plusMinus().singersDb());
                row(page, "singers", level + " dB(A)");
            }
            Balance balance = estimate.balance();
            String share = Wording.share(balance).map(each -> "; " + each).orElse("");
            String other = Advice.on(sound)
                    .otherwise(assessed.verse(), balance)
                    .map(each -> "; " + each.words())
                    .orElse("");
            row(page, head(balance.kind()), balance.words() + share + other);
            if (assessed.verse().isSung()) {
                String beats = estimate.lagBeats().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                ", %.2f of a beat",
                                estimate.lagBeats().getAsDouble())
                        : "";
                row(page, "lag", LevelText.whole(estimate.lagMs()) + " ms" + beats);
            }
            usual.ifPresent(words -> row(page, "usual", words));
        }

        private static String head(Balance.Kind kind) {
            return switch (kind) {
                case LEAD, ORGAN_ALONE -> "lead";
                case VOICE -> "words";
                case SOLO_LINE -> "melody";
            };
        }

        @Override
        public Json json() {
            Json json = new Json()
                    .put("instrument", id)
                    .with(ReportFields.drawn(sound.organ(), assessed.verse().registration()))
                    .with(ReportFields.verse(assessed.verse()))
                    .with(ReportFields.levels(assessed.estimate()));
            assessed.estimate().lagBeats().ifPresent(beats -> json.put("lagBeats", beats, 2));
            json.putIfPresent("fromUsual", usual);
            return json;
        }
    }
}
