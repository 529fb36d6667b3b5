package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;
import versewind.plan.Verse;
import versewind.rules.Assessment;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;
import versewind.sound.LevelStep;
import versewind.sound.Margin;
import versewind.sound.Verdict;

/** Writes the fields of a verse that was assessed. */
final class VerseJson {
    private VerseJson() {}

    static void write(JsonGenerator json, Assessment.OfVerse of) throws IOException {
        head(json, of.verse());
        levels(json, of.estimate());
    }

    /** What the verse is. */
    static void head(JsonGenerator json, Verse verse) throws IOException {
        json.writeStringField("label", verse.label());
        json.writeStringField("kind", verse.kind().word());
        json.writeStringField("mode", verse.mode().word());
    }

    /** What it sounds like. */
    static void levels(JsonGenerator json, Estimate estimate) throws IOException {
        organ(json, estimate);
        json.writeObjectFieldStart("singers");
        Generated.level(json, "dbA", estimate.singersDba());
        plusMinus(json, estimate.singersDba().isPresent(), estimate.plusMinus().singersDb());
        json.writeNumberField("count", estimate.singers());
        json.writeEndObject();
        margin(json, estimate.margin());
        Generated.level(json, "lagMs", OptionalDouble.of(estimate.lagMs()));
    }

    /** How much louder the organ is than in the verse before, in dB; null where there is none. */
    static void step(JsonGenerator json, Optional<LevelStep> step) throws IOException {
        if (step.isEmpty()) {
            json.writeNullField("step");
            return;
        }
        json.writeObjectFieldStart("step");
        Generated.level(json, "db", OptionalDouble.of(step.get().db()));
        plusMinus(json, true, step.get().plusMinusDb());
        json.writeEndObject();
    }

    /** What was said of it after the service, and how many were present. */
    static void answer(JsonGenerator json, Verse verse) throws IOException {
        if (verse.answer().isEmpty()) {
            json.writeNullField("heard");
            json.writeNullField("present");
            return;
        }
        json.writeStringField("heard", verse.answer().get().heard().word());
        json.writeNumberField("present", verse.answer().get().present());
    }

    private static void organ(JsonGenerator json, Estimate estimate) throws IOException {
        OptionalDouble sone = estimate.isSilent() ? OptionalDouble.empty() : OptionalDouble.of(estimate.sone());
        json.writeObjectFieldStart("organ");
        Generated.level(json, "dbA", estimate.organDba());
        plusMinus(json, !estimate.isSilent(), estimate.plusMinus().organDb());
        Generated.level(json, "sone", sone);
        Generated.level(json, "phon", estimate.phon());
        Optional<String> dynamic = estimate.dynamic().map(Dynamic::word);
        if (dynamic.isPresent()) {
            json.writeStringField("dynamic", dynamic.get());
        } else {
            json.writeNullField("dynamic");
        }
        json.writeEndObject();
    }

    private static void margin(JsonGenerator json, Margin margin) throws IOException {
        json.writeObjectFieldStart(
                switch (margin.kind()) {
                    case LEAD, ORGAN_ALONE -> "lead";
                    case VOICE -> "voice";
                    case SOLO_LINE -> "soloLine";
                });
        Generated.level(json, "db", margin.db());
        plusMinus(json, margin.db().isPresent(), margin.plusMinusDb().orElse(0));
        json.writeStringField("verdict", margin.verdict().word());
        json.writeArrayFieldStart("maybe");
        for (Verdict other : margin.perhaps()) {
            json.writeString(other.word());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** One standard deviation in whole dB; null where there is no level. */
    private static void plusMinus(JsonGenerator json, boolean isThere, double plusMinusDb) throws IOException {
        json.writeFieldName("plusMinus");
        if (isThere) {
            json.writeNumber(Math.round(plusMinusDb));
        } else {
            json.writeNull();
        }
    }
}
