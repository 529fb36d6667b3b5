package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import versewind.plan.Plan;
import versewind.rules.Figure;
import versewind.rules.Finding;
import versewind.rules.Mend;
import versewind.rules.Touch;

/** Writes findings and touch as JSON. */
final class AdviceJson {
    private AdviceJson() {}

    /** The findings of a plan; places count hymns and verses from 0. */
    static void findings(JsonGenerator json, Plan plan, List<Finding> findings) throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("severity", finding.severity().word());
            json.writeStringField("rule", finding.rule().word());
            place(json, plan, finding);
            json.writeObjectFieldStart("numbers");
            for (Figure figure : finding.numbers()) {
                json.writeFieldName(figure.name());
                json.writeNumber(Generated.rounded(figure.value(), figure.unit().decimals()));
                if (figure.plusMinusDb().isPresent()) {
                    json.writeFieldName(figure.name() + "PlusMinus");
                    json.writeNumber(Generated.rounded(
                            figure.plusMinusDb().getAsDouble(), figure.unit().decimals()));
                }
            }
            json.writeEndObject();
            json.writeStringField("sentence", finding.sentence());
            mend(json, finding.mend());
            if (finding.isSilenced()) {
                json.writeStringField("silenced", finding.silence().orElse(""));
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void place(JsonGenerator json, Plan plan, Finding finding) throws IOException {
        int hymn = finding.place().hymn();
        int verse = finding.place().verse();
        json.writeObjectFieldStart("place");
        json.writeNumberField("hymn", hymn);
        json.writeNumberField("verse", verse);
        json.writeStringField(
                "label", plan.hymns().get(hymn).verses().get(verse).label());
        json.writeEndObject();
    }

    /** How a verse is played. */
    static void touch(JsonGenerator json, Touch touch) throws IOException {
        json.writeObjectFieldStart("touch");
        json.writeStringField("manner", touch.manner().word());
        json.writeFieldName("holdBeats");
        json.writeNumber(Generated.rounded(touch.holdBeats(), 3));
        json.writeNumberField("breathBeats", touch.breathBeats());
        json.writeFieldName("lagBeats");
        if (touch.lagBeats().isPresent()) {
            json.writeNumber(Generated.rounded(touch.lagBeats().getAsDouble(), 2));
        } else {
            json.writeNull();
        }
        json.writeStringField("sentence", touch.sentence());
        json.writeStringField("breath", touch.breath());
        textOrNull(json, "lag", touch.lag());
        json.writeEndObject();
    }

    /** What to do, in words; null where there is nothing. */
    static void mend(JsonGenerator json, Optional<Mend> mend) throws IOException {
        textOrNull(json, "mend", mend.map(Mend::words));
    }

    private static void textOrNull(JsonGenerator json, String name, Optional<String> text) throws IOException {
        if (text.isPresent()) {
            json.writeStringField(name, text.get());
        } else {
            json.writeNullField(name);
        }
    }
}
