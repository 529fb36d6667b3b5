package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.Assessment;
import versewind.rules.Attendance;
import versewind.rules.NoiseExposure;
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
     * A plan: its title ("plan"), its date, what that is in the church's year ("day"), the name of its instrument's file without the ending, the people expected, for every hymn
     * its verses, how each is played, how much louder it is than the verse before ("step") and what was said of it
     * ("heard", "present"; null where nothing was), what it means for the ears, and what was found.
     */
    public static String of(Plan plan, Assessment assessment, NoiseExposure ears, Advice advice) {
        return Generated.json(json -> {
            heading(json, plan);
            hymns(json, plan, place -> {
                VerseJson.write(json, assessment.at(place));
                VerseJson.step(json, assessment.at(place).step());
                VerseJson.answer(json, assessment.at(place).verse());
                AdviceJson.touch(json, advice.touch(plan, place));
            });
            EarsJson.write(json, ears);
            AdviceJson.findings(json, plan, advice.findings(plan));
        });
    }

    /**
     * A plan before different numbers of people: in every verse, "people" has an object for each number, with the number as
     * "count", the fields of a verse that depend on it, and what makes it hold where it fails ("mend"; null where it does
     * not, or nothing does).
     */
    public static String of(Plan plan, Attendance attendance) {
        return Generated.json(json -> {
            heading(json, plan);
            hymns(json, plan, place -> {
                VerseJson.head(json, plan.hymns().get(place.hymn()).verses().get(place.verse()));
                json.writeArrayFieldStart("people");
                for (int i = 0; i < attendance.people().size(); i++) {
                    json.writeStartObject();
                    json.writeNumberField("count", attendance.people().get(i));
                    VerseJson.levels(
                            json, attendance.assessments().get(i).at(place).estimate());
                    AdviceJson.mend(
                            json,
                            Optional.ofNullable(attendance.remedies().get(i).get(place)));
                    json.writeEndObject();
                }
                json.writeEndArray();
            });
        });
    }

    private static void heading(JsonGenerator json, Plan plan) throws IOException {
        json.writeStringField("plan", plan.heading().title());
        ChurchDayJson.write(json, plan.heading().date());
        json.writeStringField("instrument", plan.instrument());
        json.writeNumberField("people", plan.heading().people());
    }

    /** Writes the fields of the verse at a place. */
    @FunctionalInterface
    private interface VerseFields {
        void write(VersePlace place) throws IOException;
    }

    private static void hymns(JsonGenerator json, Plan plan, VerseFields fields) throws IOException {
        json.writeArrayFieldStart("hymns");
        for (int hymn = 0; hymn < plan.hymns().size(); hymn++) {
            json.writeStartObject();
            json.writeStringField("number", plan.hymns().get(hymn).number());
            json.writeStringField("title", plan.hymns().get(hymn).title());
            json.writeArrayFieldStart("verses");
            for (int verse = 0; verse < plan.hymns().get(hymn).verses().size(); verse++) {
                json.writeStartObject();
                fields.write(new VersePlace(hymn, verse));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
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
