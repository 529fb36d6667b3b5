package versewind.plan;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An estimate of the duration of a verse from its hymn's metre and tempo.
 *
 * <p>A line takes a beat a syllable, its number of syllables rounded up to a multiple of four, and eight beats at least
 * from five syllables on: 8 and 7 and 6 take eight, 10 and 11 twelve. "D" doubles the lines; CM, LM and SM stand for
 * theirs; "with refrain" adds two lines, "with alleluias" one. Without a metre a verse has four lines of eight. Before
 * every verse comes a breath of two beats. An introduction, an interlude or a refrain is half a verse, an Amen a line.
 * Where no tempo is set, 88 beats a minute. Common practice, no source.
 *
 * <p>Range: within a third for most tunes; a tune that holds the ends of its lines is longer.
 *
 * <p>Checked against: {@code SoundingTimeTest}.
 */
public final class SoundingTime {

    private static final int LINE_BEATS = 8;
    private static final int BREATH_BEATS = 2;
    private static final int USUAL_LINES = 4;
    private static final int USUAL_TEMPO = 88;
    private static final int BAR_BEATS = 4;
    private static final int MOST_SYLLABLES = 24;
    private static final Pattern NUMBER = Pattern.compile("\\d{1,2}");
    private static final Pattern DOUBLED = Pattern.compile("\\bD\\b|\\bD[CLS]M\\b|\\b[CLS]MD\\b");
    private static final Pattern NAMED = Pattern.compile("\\bD?[CLS]MD?\\b");

    private SoundingTime() {}

    /** Duration of a verse in minutes, with the breath before it. */
    public static double minutes(Hymn hymn, Verse verse) {
        double verseBeats = beats(hymn.metre());
        double beats =
                switch (verse.kind()) {
                    case VERSE, LAST_VERSE -> verseBeats;
                    case INTRODUCTION, INTERLUDE, REFRAIN -> verseBeats / 2;
                    case AMEN -> LINE_BEATS;
                };
        return (beats + BREATH_BEATS) / hymn.tempo().orElse(USUAL_TEMPO);
    }

    /** Beats of a verse of a metre. */
    static int beats(String metre) {
        int lines = NAMED.matcher(metre).find() ? USUAL_LINES * LINE_BEATS : counted(metre);
        if (lines == 0) {
            lines = USUAL_LINES * LINE_BEATS;
        }
        int verse = DOUBLED.matcher(metre).find() ? 2 * lines : lines;
        int refrain = metre.contains("refrain") ? 2 * LINE_BEATS : 0;
        int alleluias = metre.contains("lleluia") ? LINE_BEATS : 0;
        return verse + refrain + alleluias;
    }

    private static int counted(String metre) {
        int beats = 0;
        Matcher numbers = NUMBER.matcher(metre);
        while (numbers.find()) {
            int syllables = Math.min(MOST_SYLLABLES, Integer.parseInt(numbers.group()));
            int bars = (syllables + BAR_BEATS - 1) / BAR_BEATS;
            beats += bars * BAR_BEATS;
        }
        return beats;
    }
}
