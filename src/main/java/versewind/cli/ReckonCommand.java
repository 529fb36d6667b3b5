package versewind.cli;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.Names;
import versewind.organ.NotationException;

/** {@code versewind reckon WHAT}: the published methods by themselves, for numbers that were measured or printed. */
final class ReckonCommand {

    static final String NAME = "reckon";

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

    private static final List<String> WHAT = List.of("loudness", "audibility", "room", "dose", "pitch");

    private ReckonCommand() {}

    static CommandSpec spec() {
        CommandSpec spec = Options.command(
                NAME,
                "Reckons by the published methods alone: loudness, audibility, a room, a day's noise, a stop's pitch.");
        spec.addPositional(Options.operand("WHAT", "One of: " + String.join(", ", WHAT) + "."));
        addSpectra(spec);
        addRoom(spec);
        spec.addOption(Options.valued(
                PARTS, "LEVEL:MINUTES...", "dose: the parts of a day, in dB(A) and minutes, like 94:30,88:60."));
        spec.addOption(Options.valued(FEET, "FEET", "pitch: a footage, like \"2 2/3\"."));
        spec.addOption(Options.json());
        spec.usageMessage()
                .footer(
                        "",
                        "Numbers stand between blanks or commas; a hyphen is a level of nothing. JSON",
                        "has more of them than the text, and more decimals.");
        return Options.withHelp(spec);
    }

    private static void addSpectra(CommandSpec spec) {
        spec.addOption(Options.valued(
                LEVELS,
                "DB...",
                "loudness: levels of the 28 third octaves from 25 Hz to 12.5 kHz, or of some: \"500=60 1000=64\"."));
        spec.addOption(Options.valued(FIELD, "FIELD", "loudness: diffuse (as far from an organ), or free."));
        spec.addOption(Options.valued(
                TARGET,
                "DB...",
                "audibility: spectrum levels of what should be heard, one a band, or a vocal effort: normal, raised,"
                        + " loud, shout. 28 levels, or some like \"1000=64\", are levels of third octaves."));
        spec.addOption(Options.valued(NOISE, "DB...", "audibility: the same of what disturbs; silence if not given."));
        spec.addOption(Options.valued(
                THRESHOLD, "DB...", "audibility: hearing threshold re normal, one a band; 0 if not given."));
        spec.addOption(Options.valued(
                BANDS, "PROCEDURE", "audibility: third octave, octave, critical band, or equally contributing."));
        spec.addOption(Options.valued(
                IMPORTANCE,
                "OF",
                "audibility: a kind of speech, like short passages, or a number a band; average speech if not given."));
    }

    private static void addRoom(CommandSpec spec) {
        spec.addOption(Options.valued(VOLUME, "M3", "room: its volume."));
        spec.addOption(Options.valued(
                SURFACES,
                "M2:COEFFICIENT...",
                "room: area and absorption coefficient of every surface, like \"60:0.3 40:0.6\"."));
        spec.addOption(Options.valued(AIR, "M", "room: what the air takes away, in 0.001 Np/m; 0 if not given."));
        spec.addOption(Options.valued(TIME, "S", "room: reverberation time instead of surfaces."));
        spec.addOption(Options.valued(DISTANCE, "M", "room: from the source to a seat."));
        spec.addOption(Options.valued(DIRECTIVITY, "Q", "room: directivity of the source; 1 if not given."));
    }

    static Reply run(ParseResult typed, CharsetFallback lettering) throws NotationException {
        ComputedFigures figures = figures(Options.operand(typed), new Numbers(typed));
        return Reply.good(typed.hasMatchedOption(Options.JSON) ? figures.json() : figures.text(lettering));
    }

    private static ComputedFigures figures(String what, Numbers numbers) throws NotationException {
        int place = new Names("There is nothing to reckon called", "There are", WHAT).find(what);
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
