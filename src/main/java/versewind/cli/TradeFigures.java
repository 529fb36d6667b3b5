package versewind.cli;

import static versewind.cli.CalcCommand.FEET;
import static versewind.cli.CalcCommand.PARTS;

import java.util.List;
import versewind.acoustics.NoiseDose;
import versewind.acoustics.NoiseDose.EuropeanValue;
import versewind.acoustics.NoiseDose.Exposure;
import versewind.organ.Footage;
import versewind.organ.NotationException;
import versewind.rules.Caution;
import versewind.sheet.LevelText;

/** Daily noise exposure, and the pitch of a footage. */
final class TradeFigures {

    private static final int MINUTES_A_DAY = 24 * 60;
    private static final int BOTTOM_C = 36;
    private static final int MIDDLE_C = 60;

    private TradeFigures() {}

    static Figures dose(Numbers numbers) throws NotationException {
        List<Exposure> day = numbers.pairs(PARTS).stream()
                .map(pair -> new Exposure(pair[0], pair[1]))
                .toList();
        double minutes = day.stream().mapToDouble(Exposure::minutes).sum();
        if (minutes > MINUTES_A_DAY) {
            throw new UsageException("A day has " + MINUTES_A_DAY + " minutes, and these parts have "
                    + LevelText.whole(minutes) + ". Leave some out.");
        }
        double dayDba = NoiseDose.dayLevelDbA(day);
        Figures figures = new Figures(
                        "NIOSH publication 98-126 (1998); ISO 9612:2009; directive 2003/10/EC. " + Caution.DEFERENCE)
                .with("share of NIOSH's daily dose", "nioshPercent", 100 * NoiseDose.nioshShare(day), 1, "%")
                .with("level over a day of 8 hours", "dayDbA", dayDba, 1, "dB(A)")
                .with(
                        "EU value that is reached",
                        "europeanValue",
                        EuropeanValue.reachedBy(dayDba).map(TradeFigures::words).orElse("none"))
                .heads("dB(A)", "minutes", "allowed");
        for (Exposure part : day) {
            figures.row(part.levelDbA(), 1, part.minutes(), NoiseDose.nioshMinutes(part.levelDbA()));
        }
        return figures.with(
                "nioshMinutes",
                day.stream()
                        .mapToDouble(part -> NoiseDose.nioshMinutes(part.levelDbA()))
                        .toArray());
    }

    private static String words(EuropeanValue value) {
        return switch (value) {
            case LOWER_ACTION -> "lower action value";
            case UPPER_ACTION -> "upper action value";
            case LIMIT -> "exposure limit";
        };
    }

    static Figures pitch(Numbers numbers) throws NotationException {
        String typed = numbers.needed(FEET).strip();
        Footage footage = Footage.parse(typed)
                .orElseThrow(
                        () -> new UsageException("\"" + typed + "\" is no footage. Write it like 8 or \"2 2/3\"."));
        double semitones = footage.semitones();
        return new Figures("ISO 16:1975 (a1 = 440 Hz) and the harmonic series")
                .with("footage", "feet", footage.toString())
                .with("harmonic of 8 ft", "harmonic", footage.harmonic(), 3, "")
                .with("at the bottom C", "bottomCHz", footage.frequencyHz(BOTTOM_C), 4, "Hz")
                .with("at middle C", "middleCHz", footage.frequencyHz(MIDDLE_C), 4, "Hz")
                .with("above 8 ft", "semitones", semitones, 4, "semitones")
                .with("pure over tempered", "cents", 100 * (semitones - Math.rint(semitones)), 2, "cents");
    }
}
