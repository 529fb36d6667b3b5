package versewind.cli;

import static versewind.cli.CalcCommand.AIR;
import static versewind.cli.CalcCommand.DIRECTIVITY;
import static versewind.cli.CalcCommand.DISTANCE;
import static versewind.cli.CalcCommand.SURFACES;
import static versewind.cli.CalcCommand.TIME;
import static versewind.cli.CalcCommand.VOLUME;

import java.util.Arrays;
import java.util.List;
import versewind.acoustics.BarronRevisedTheory;
import versewind.acoustics.DiffuseField;
import versewind.acoustics.Reverberation;
import versewind.acoustics.RoomConstant;
import versewind.acoustics.SchroederFrequency;
import versewind.organ.NotationException;

/** Room acoustics in one band. */
final class RoomFigures {

    private RoomFigures() {}

    static Figures of(Numbers numbers) throws NotationException {
        double volumeM3 = numbers.one(VOLUME);
        if (numbers.has(TIME) == numbers.has(SURFACES)) {
            throw new UsageException("A room needs either " + SURFACES + " or " + TIME + ".");
        }
        Figures figures = new Figures(
                "Sabine with the air as EN 12354-6:2003; Eyring 1930; Millington 1932; Schroeder and Kuttruff 1962;"
                        + " Barron's revised theory, Barron and Lee 1988");
        double timeS =
                numbers.has(TIME) ? timed(figures, volumeM3, numbers.one(TIME)) : surfaces(figures, volumeM3, numbers);
        double absorptionM2 = Reverberation.absorptionM2(volumeM3, timeS);
        double directivity = numbers.one(DIRECTIVITY, 1);
        figures.with("Schroeder frequency", "schroederHz", SchroederFrequency.frequencyHz(volumeM3, timeS), 1, "Hz")
                .with(
                        "critical distance",
                        "criticalDistanceM",
                        DiffuseField.criticalDistanceM(directivity, absorptionM2),
                        2,
                        "m");
        if (numbers.has(DISTANCE)) {
            at(figures, numbers.one(DISTANCE), volumeM3, timeS, directivity);
        }
        return figures;
    }

    private static double timed(Figures figures, double volumeM3, double timeS) {
        figures.with("absorption area", "absorptionM2", Reverberation.absorptionM2(volumeM3, timeS), 2, "m2");
        return timeS;
    }

    private static double surfaces(Figures figures, double volumeM3, Numbers numbers) throws NotationException {
        List<double[]> pairs = numbers.pairs(SURFACES);
        double[] areasM2 = pairs.stream().mapToDouble(pair -> pair[0]).toArray();
        double[] coefficients = pairs.stream().mapToDouble(pair -> pair[1]).toArray();
        double areaM2 = Arrays.stream(areasM2).sum();
        double wallsM2 = Reverberation.surfaceAbsorptionM2(areasM2, coefficients);
        double airM2 = Reverberation.airAbsorptionM2(volumeM3, numbers.one(AIR, 0) / 1000);
        double timeS = Reverberation.sabineS(volumeM3, wallsM2 + airM2);
        figures.with("surface", "surfaceM2", areaM2, 2, "m2")
                .with("absorption area of the surfaces", "wallsM2", wallsM2, 2, "m2")
                .with("absorption area with the air", "absorptionM2", wallsM2 + airM2, 2, "m2")
                .with(
                        "mean absorption coefficient",
                        "meanAbsorption",
                        RoomConstant.meanAbsorption(areaM2, wallsM2),
                        3,
                        "")
                .with("room constant", "roomConstantM2", RoomConstant.roomConstantM2(areaM2, wallsM2), 2, "m2")
                .with("reverberation time by Sabine", "sabineS", timeS, 3, "s")
                .with("by Eyring", "eyringS", Reverberation.eyringS(volumeM3, areaM2, wallsM2, airM2), 3, "s");
        if (Arrays.stream(coefficients).allMatch(coefficient -> coefficient < 1)) {
            figures.with(
                    "by Millington",
                    "millingtonS",
                    Reverberation.millingtonS(volumeM3, areasM2, coefficients, airM2),
                    3,
                    "s");
        }
        return timeS;
    }

    private static void at(Figures figures, double distanceM, double volumeM3, double timeS, double directivity) {
        double absorptionM2 = Reverberation.absorptionM2(volumeM3, timeS);
        BarronRevisedTheory barron = BarronRevisedTheory.at(volumeM3, timeS, directivity, distanceM);
        figures.with(
                        "level - power level, classical",
                        "classicalDb",
                        DiffuseField.levelDb(0, directivity, distanceM, absorptionM2),
                        2,
                        "dB")
                .with("level - power level, Barron", "barronDb", barron.levelDb(0), 2, "dB")
                .with("strength G, Barron", "strengthDb", barron.strengthDb(), 2, "dB")
                .with("clarity C80, Barron", "clarityDb", barron.clarityDb(), 2, "dB");
    }
}
