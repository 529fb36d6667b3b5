package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Occurrence;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** What lies in a library, and what was found in it, as JSON for other programs. */
public final class LibraryJson {

    private LibraryJson() {}

    /** A plan in which something was found, and where. */
    public record FoundIn(PlanEntry entry, Plan plan, Instrument instrument, List<Occurrence> occurrences) {

        public FoundIn {
            occurrences = List.copyOf(occurrences);
        }
    }

    /**
     * Plans and instruments in the order given.
     *
     * @param troubles what is wrong with plans that cannot be read, by their ids
     */
    public static String of(List<PlanEntry> plans, Map<String, BadFile> troubles, List<InstrumentEntry> instruments) {
        return Generated.json(json -> {
            json.writeArrayFieldStart("plans");
            for (PlanEntry entry : plans) {
                json.writeStartObject();
                entry(json, entry);
                json.writeBooleanField("unsavedWork", entry.file().unsavedWork());
                Generated.textOrNull(
                        json,
                        "trouble",
                        Optional.ofNullable(troubles.get(entry.file().id())).map(BadFile::getMessage));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("instruments");
            for (InstrumentEntry entry : instruments) {
                json.writeStartObject();
                json.writeStringField("id", entry.id());
                json.writeStringField("file", entry.path().toString());
                json.writeStringField("name", entry.name());
                json.writeStringField("place", entry.place());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    /** Hymns that were found, with the verses that were, and what is drawn for each in the words of a plan's file. */
    public static String of(List<FoundIn> all) {
        return Generated.json(json -> {
            json.writeArrayFieldStart("found");
            for (FoundIn found : all) {
                for (Occurrence occurrence : found.occurrences()) {
                    json.writeStartObject();
                    entry(json, found.entry());
                    hymn(json, found, occurrence);
                    json.writeEndObject();
                }
            }
            json.writeEndArray();
        });
    }

    private static void entry(JsonGenerator json, PlanEntry entry) throws IOException {
        json.writeStringField("id", entry.file().id());
        json.writeStringField("file", entry.file().path().toString());
        json.writeStringField("plan", entry.title());
        ChurchDayJson.write(json, entry.date());
        json.writeStringField("instrument", entry.instrument());
        json.writeStringField("edited", entry.file().edited().toString());
    }

    private static void hymn(JsonGenerator json, FoundIn found, Occurrence occurrence) throws IOException {
        Hymn hymn = found.plan().hymns().get(occurrence.hymn());
        json.writeStringField("number", hymn.number());
        json.writeStringField("title", hymn.title());
        json.writeStringField("tune", hymn.tune());
        json.writeArrayFieldStart("verses");
        for (int index : occurrence.verses()) {
            Verse verse = hymn.verses().get(index);
            json.writeStartObject();
            json.writeStringField("label", verse.label());
            json.writeStringField("kind", verse.kind().word());
            json.writeStringField("mode", verse.mode().word());
            json.writeStringField("hands", verse.hands().layout().word());
            DrawnJson.write(json, found.instrument(), verse.registration());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
