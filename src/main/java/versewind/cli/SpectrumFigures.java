package versewind.cli;

import static versewind.cli.CalcCommand.BANDS;
import static versewind.cli.CalcCommand.FIELD;
import static versewind.cli.CalcCommand.IMPORTANCE;
import static versewind.cli.CalcCommand.LEVELS;
import static versewind.cli.CalcCommand.NOISE;
import static versewind.cli.CalcCommand.TARGET;
import static versewind.cli.CalcCommand.THRESHOLD;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.acoustics.AudibilityProcedure;
import versewind.acoustics.BandAudibility;
import versewind.acoustics.SoundField;
import versewind.acoustics.Speech;
import versewind.acoustics.StationaryLoudness;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Names;
import versewind.organ.NotationException;

/** The loudness of a spectrum, and its audibility beside another. */
final class SpectrumFigures {

    private static final List<String> FIELDS = List.of("diffuse", "free");
    private static final List<SoundField> FIELD_OF = List.of(SoundField.DIFFUSE, SoundField.FREE);

    private SpectrumFigures() {}

    static Figures loudness(Numbers numbers) throws NotationException {
        double[] levelsDb = numbers.thirdOctaves(LEVELS);
        double[] power = Arrays.stream(levelsDb).map(ThirdOctaves::dbToPower).toArray();
        int field = new Names("There is no field", "The fields are", FIELDS).find(numbers.or(FIELD, FIELDS.get(0)));
        StationaryLoudness loudness = new StationaryLoudness(FIELD_OF.get(field));
        loudness.compute(levelsDb);
        double[] core = new double[StationaryLoudness.CORE_BANDS];
        Arrays.setAll(core, loudness::core);
        return new Figures("IEC 61672-1:2013 (A and C); ISO 532-1:2017, stationary (sone and phon)")
                .with("level", "db", ThirdOctaves.powerToDb(Arrays.stream(power).sum()), 1, "dB")
                .with("A-weighted", "dbA", ThirdOctaves.dbA(power), 1, "dB(A)")
                .with("C-weighted", "dbC", ThirdOctaves.dbC(power), 1, "dB(C)")
                .with("field", "field", FIELDS.get(field))
                .with("loudness", "sone", loudness.sone(), 3, "sone")
                .with("loudness level", "phon", loudness.phon(), 2, "phon")
                .with("coreSonePerBark", core)
                .with("specificSonePerBark", loudness.specific());
    }

    static Figures audibility(Numbers numbers) throws NotationException {
        AudibilityProcedure procedure = procedure(numbers);
        double[] nothing = new double[procedure.bands()];
        Arrays.fill(nothing, Double.NEGATIVE_INFINITY);
        double[] threshold = numbers.has(THRESHOLD) ? numbers.several(THRESHOLD) : new double[procedure.bands()];
        BandAudibility audibility = new BandAudibility(procedure, threshold);
        audibility.compute(
                spectrumDb(numbers, TARGET, procedure),
                numbers.has(NOISE) ? spectrumDb(numbers, NOISE, procedure) : nothing);
        Optional<double[]> importance = importance(numbers, procedure);
        double index = importance.map(audibility::index).orElseGet(audibility::index);
        Figures figures = new Figures("ANSI S3.5-1997, " + procedure.word() + " procedure. It was made for speech")
                .with("speech intelligibility index", "index", index, 4, "")
                .heads("Hz", "masking", "internal", "disturb.", "K", "L");
        double[][] columns = new double[5][procedure.bands()];
        for (int band = 0; band < procedure.bands(); band++) {
            columns[0][band] = audibility.maskingDb(band);
            columns[1][band] = audibility.internalNoiseDb(band);
            columns[2][band] = audibility.disturbanceDb(band);
            columns[3][band] = audibility.audibility(band);
            columns[4][band] = audibility.levelDistortion(band);
            figures.row(
                    procedure.centreHz(band),
                    3,
                    columns[0][band],
                    columns[1][band],
                    columns[2][band],
                    columns[3][band],
                    columns[4][band]);
        }
        return figures.with("maskingDb", columns[0])
                .with("internalNoiseDb", columns[1])
                .with("disturbanceDb", columns[2])
                .with("audibility", columns[3])
                .with("levelDistortion", columns[4]);
    }

    private static AudibilityProcedure procedure(Numbers numbers) throws NotationException {
        List<AudibilityProcedure> all = List.of(AudibilityProcedure.values());
        List<String> words = all.stream().map(AudibilityProcedure::word).toList();
        String usual = AudibilityProcedure.THIRD_OCTAVE.word();
        return all.get(new Names("There is no procedure", "The procedures are", words).find(numbers.or(BANDS, usual)));
    }

    private static double[] spectrumDb(Numbers numbers, String option, AudibilityProcedure procedure)
            throws NotationException {
        String typed = numbers.needed(option);
        for (Speech.Effort effort : Speech.Effort.values()) {
            if (effort.word().equals(typed.strip())) {
                return Speech.spectrumDb(effort, procedure);
            }
        }
        boolean isThirdOctave = procedure == AudibilityProcedure.THIRD_OCTAVE;
        if (isThirdOctave && (typed.contains("=") || numbers.several(option).length == ThirdOctaves.COUNT)) {
            double[] levelsDb = numbers.thirdOctaves(option);
            double[] spectrumDb = new double[procedure.bands()];
            for (int band = 0; band < spectrumDb.length; band++) {
                int third = band + BandAudibility.FIRST_THIRD_OCTAVE;
                spectrumDb[band] = levelsDb[third] - ThirdOctaves.bandwidthDb(third);
            }
            return spectrumDb;
        }
        return numbers.several(option);
    }

    private static Optional<double[]> importance(Numbers numbers, AudibilityProcedure procedure)
            throws NotationException {
        if (!numbers.has(IMPORTANCE)) {
            return Optional.empty();
        }
        String typed = numbers.needed(IMPORTANCE).strip();
        if (!typed.isEmpty() && Character.isDigit(typed.charAt(0))) {
            return Optional.of(numbers.several(IMPORTANCE));
        }
        List<String> materials = Stream.concat(Stream.of("average speech"), Speech.materials().stream())
                .toList();
        int place = new Names("There is no importance for", "There is one for", materials).find(typed);
        if (place == 0) {
            return Optional.empty();
        }
        Optional<double[]> found = Speech.importance(materials.get(place), procedure);
        if (found.isEmpty()) {
            throw new UsageException(
                    "The " + procedure.word() + " procedure has an importance for average speech alone.");
        }
        return found;
    }
}
