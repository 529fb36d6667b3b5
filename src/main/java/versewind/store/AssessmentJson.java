package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import versewind.advice.Assessment;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.sound.Estimate;

/**
 * Assessments as JSON, for other programs.
 *
 * <p>Levels in dB and dB(A), loudness in sone and phon, lags in ms, all with one decimal; null where nothing sounds.
 * Everything outside of printable ASCII is escaped, so that neither a character set nor a terminal can be disturbed.
 */
public final class AssessmentJson {
    private AssessmentJson() {}

    /**
     * A plan: its title ("plan"), the name of its instrument's file without the ending, the people expected, and for every
     * hymn its verses.
     */
    public static String of(Plan plan, Assessment assessment) {
        return Generated.json(json -> {
            json.writeStringField("plan", plan.heading().title());
            json.writeStringField("instrument", plan.instrument());
            json.writeNumberField("people", plan.heading().people());
            json.writeArrayFieldStart("hymns");
            for (Assessment.OfHymn hymn : assessment.hymns()) {
                json.writeStartObject();
                json.writeStringField("number", hymn.hymn().number());
                json.writeStringField("title", hymn.hymn().title());
                json.writeArrayFieldStart("verses");
                for (Assessment.OfVerse verse : hymn.verses()) {
                    json.writeStartObject();
                    VerseJson.write(json, verse);
                    json.writeEndObject();
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    /**
     * One registration: the name of the instrument's file without the ending, what is drawn in the words of a plan's file,
     * and the fields of a verse; with a tempo the lag in beats besides.
     *
     * @param file the name
     */
    public static String of(String file, Instrument instrument, Assessment.OfVerse verse) {
        return Generated.json(json -> {
            json.writeStringField("instrument", file);
            DrawnJson.write(json, instrument, verse.verse().registration());
            VerseJson.write(json, verse);
            lagBeats(json, verse.estimate());
        });
    }

    private static void lagBeats(JsonGenerator json, Estimate estimate) throws IOException {
        if (estimate.lagBeats().isPresent()) {
            json.writeFieldName("lagBeats");
            json.writeNumber(Generated.rounded(estimate.lagBeats().getAsDouble(), 2));
        }
    }
}
