package versewind.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Instrument;
import versewind.organ.Quoted;
import versewind.schema.DraftLine;
import versewind.schema.FileFormat;
import versewind.schema.Found;
import versewind.schema.OrganDraft;
import versewind.schema.Refused;
import versewind.schema.RowKind;

/**
 * The file in which the draft of an instrument is kept until it is saved: its lines as they were typed, and of which
 * instrument's file it began as the draft.
 */
final class OrganDraftFile {
    private OrganDraftFile() {}

    static byte[] bytes(OrganDraft draft, Fingerprint began) {
        List<Object> lines = new ArrayList<>();
        for (DraftLine line : draft.lines()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("part", line.part().word());
            line.origin().ifPresent(origin -> row.put("origin", origin));
            row.put("values", line.values());
            lines.add(row);
        }
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("format", FileFormat.NUMBER);
        file.put("of", began.digest());
        file.put("lines", lines);
        return JsonText.bytes(file);
    }

    /** Reads a draft; of one that began as another file, nothing is known of where its lines come from. */
    static OrganDraft read(Path path, byte[] bytes, Fingerprint now) throws BadFile {
        try {
            return draft(JsonTree.read(path, bytes), now);
        } catch (Refused wrong) {
            throw BadFile.of(path, wrong);
        }
    }

    private static OrganDraft draft(Found root, Fingerprint now) throws Refused {
        FileFormat.require(root);
        boolean same = root.hasText("of", now.digest());
        List<DraftLine> lines = new ArrayList<>();
        for (Found each : root.at("lines").items("")) {
            RowKind part = part(each.at("part"));
            Optional<Found> origin = each.find("origin");
            OptionalInt place = same && origin.isPresent()
                    ? OptionalInt.of(origin.get().whole(0, Instrument.MOST_STOPS, ""))
                    : OptionalInt.empty();
            List<String> values = new ArrayList<>();
            for (Found value : each.at("values").items("")) {
                values.add(value.text());
            }
            // fields that were added at the end of a row since the draft was kept are blank
            values.addAll(Collections.nCopies(Math.max(0, part.fields().size() - values.size()), ""));
            lines.add(each.make(() -> new DraftLine(part, place, values)));
        }
        for (RowKind part : RowKind.values()) {
            if (!part.isRepeated() && lines.stream().noneMatch(line -> line.part() == part)) {
                throw root.bad("a line is missing: " + part.word(), "Delete the file.");
            }
        }
        return new OrganDraft(lines);
    }

    private static RowKind part(Found found) throws Refused {
        for (RowKind part : RowKind.values()) {
            if (part.word().equals(found.text())) {
                return part;
            }
        }
        throw found.bad("there is no such line as " + Quoted.text(found.text()), "Delete the file.");
    }
}
