package versewind.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;

/** Writes what the parts of an instrument were called before. */
final class FormerlyWriter {
    private FormerlyWriter() {}

    static String names(Block block, FormerNames names) {
        all(block, "divisions", names.divisions());
        Map<String, Row> divisions = new LinkedHashMap<>();
        names.stops().forEach((was, now) -> divisions
                .computeIfAbsent(was.division(), division -> new Row())
                .text(was.label(), now.name().map(Object::toString).orElse("")));
        if (!divisions.isEmpty()) {
            Block stops = block.inner();
            divisions.forEach((division, row) -> stops.field(division, row.braced()));
            block.field("stops", stops.object());
        }
        all(block, "couplers", names.couplers());
        all(block, "tremulants", names.tremulants());
        if (!names.boxes().isEmpty()) {
            block.field("boxes", Row.list(List.copyOf(names.boxes())));
        }
        return block.object();
    }

    private static void all(Block block, String field, Map<String, Now<String>> names) {
        if (!names.isEmpty()) {
            Row row = new Row();
            names.forEach((was, now) -> row.text(was, now.name().orElse("")));
            block.field(field, row.braced());
        }
    }
}
