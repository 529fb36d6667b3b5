package versewind.cli;

import java.util.List;
import java.util.Locale;
import versewind.organ.Names;
import versewind.organ.NotationException;

/** {@code versewind calc WHAT}: the published methods on their own, for measured or printed numbers. */
final class CalcCommand {

    static final String LEVELS = "--levels";
    static final String FIELD = "--field";
    static final String TARGET = "--target";
    static final String NOISE = "--noise";
    static final String THRESHOLD = "--threshold";
    static final String BANDS = "--bands";
    static final String IMPORTANCE = "--importance";
    static final String VOLUME = "--volume";
    static final String SURFACES = "--surfaces";
    static final String AIR = "--air";
    static final String TIME = "--time";
    static final String DISTANCE = "--distance";
    static final String DIRECTIVITY = "--directivity";
    static final String PARTS = "--parts";
    static final String FEET = "--feet";

    static final List<String> WHAT = List.of("loudness", "audibility", "room", "dose", "pitch");

    private CalcCommand() {}

    static Command command() {
        Command command = Command.of(
                        Subcommand.CALC,
                        "Calculates with the published methods alone: loudness, audibility, a room, a day's noise, a"
                                + " stop's pitch.",
                        (typed, commands) ->
                                Reply.good(commands.shown(typed, figures(typed.operand(), new Numbers(typed)))))
                .operand("WHAT", "One of: " + String.join(", ", WHAT) + ".");
        return withRoom(withSpectra(command))
                .option(PARTS, "LEVEL:MINUTES...", "dose: the parts of a day, in dB(A) and minutes, like 94:30,88:60.")
                .option(FEET, "FEET", "pitch: a footage, like \"2 2/3\".")
                .json()
                .footer(
                        "Separate numbers with blanks or commas; a hyphen means silence. JSON has more of",
                        "them than the text, with more decimals.")
                .examples(
                        "versewind calc loudness --levels \"125=62 250=66 500=70 1000=64 2000=55\"",
                        "versewind calc dose --parts 94:30,88:60");
    }

    private static Command withSpectra(Command command) {
        return command.option(
                        LEVELS,
                        "DB...",
                        "loudness: levels of the 28 third octaves from 25 Hz to 12.5 kHz, or of some: \"500=60"
                                + " 1000=64\".")
                .option(FIELD, "FIELD", "loudness: diffuse (as far from an organ), or free.")
                .option(
                        TARGET,
                        "DB...",
                        "audibility: spectrum levels of the sound to be heard, one per band, or a vocal effort: normal,"
                                + " raised, loud, shout. 28 levels, or some like \"1000=64\", are levels of third"
                                + " octaves.")
                .option(NOISE, "DB...", "audibility: the same for the disturbing sound; silence if not given.")
                .option(THRESHOLD, "DB...", "audibility: hearing threshold re normal, one a band; 0 if not given.")
                .option(BANDS, "PROCEDURE", "audibility: third octave, octave, critical band, or equally contributing.")
                .option(
                        IMPORTANCE,
                        "OF",
                        "audibility: a kind of speech, like short passages, or a number a band; average speech if not"
                                + " given.");
    }

    private static Command withRoom(Command command) {
        return command.option(VOLUME, "M3", "room: its volume.")
                .option(
                        SURFACES,
                        "M2:COEFFICIENT...",
                        "room: area and absorption coefficient of every surface, like \"60:0.3 40:0.6\".")
                .option(AIR, "M", "room: what the air takes away, in 0.001 Np/m; 0 if not given.")
                .option(TIME, "S", "room: reverberation time instead of surfaces.")
                .option(DISTANCE, "M", "room: from the source to a seat.")
                .option(DIRECTIVITY, "Q", "room: directivity of the source; 1 if not given.");
    }

    private static Figures figures(String what, Numbers numbers) throws NotationException {
        int place = new Names("There is no calculation called", "There are", WHAT).find(what);
        try {
            return switch (WHAT.get(place)) {
                case "loudness" -> SpectrumFigures.loudness(numbers);
                case "audibility" -> SpectrumFigures.audibility(numbers);
                case "room" -> RoomFigures.of(numbers);
                case "dose" -> TradeFigures.dose(numbers);
                default -> TradeFigures.pitch(numbers);
            };
        } catch (IllegalArgumentException impossible) {
            String sentence = impossible.getMessage();
            throw new UsageException(sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1) + ".");
        }
    }
}
