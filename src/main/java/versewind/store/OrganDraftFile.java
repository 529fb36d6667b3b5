package versewind.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.workshop.DraftLine;
import versewind.workshop.OrganDraft;
import versewind.workshop.RowKind;

/**
 * The file in which the draft of an instrument is kept until it is saved: its lines as they were typed, and of which
 * instrument's file it began as the draft.
 */
final class OrganDraftFile {
    private OrganDraftFile() {}

    static byte[] bytes(OrganDraft draft, Fingerprint began) {
        Block file = Block.file();
        file.field("format", Written.number(Format.NUMBER));
        file.text("of", began.digest());
        Block lines = file.inner();
        for (DraftLine line : draft.lines()) {
            Row row = new Row().text("part", line.part().word());
            line.origin().ifPresent(origin -> row.number("origin", origin));
            lines.row(row.add("values", Row.list(line.values())).braced());
        }
        file.field("lines", lines.list());
        return (file.object() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Reads a draft; of one that began as another file, nothing is known of where its lines come from. */
    static OrganDraft read(Path path, byte[] bytes, Fingerprint now) throws BadFile {
        LocatedValue root = JsonTree.read(path, bytes);
        Format.check(root);
        Fields fields = root.fields("format", "of", "lines");
        boolean same = fields.text("of").equals(now.digest());
        List<DraftLine> lines = new ArrayList<>();
        for (LocatedValue each : fields.items("lines")) {
            Fields line = each.fields("part", "origin", "values");
            RowKind part = line.at("part").choice(List.of(RowKind.values()), RowKind::word);
            Optional<LocatedValue> origin = line.find("origin");
            int place = origin.isPresent() ? origin.get().whole() : 0;
            List<String> values = new ArrayList<>();
            for (LocatedValue value : line.items("values")) {
                values.add(value.text());
            }
            lines.add(each.make(() -> new DraftLine(
                    part, same && origin.isPresent() ? OptionalInt.of(place) : OptionalInt.empty(), values)));
        }
        for (RowKind part : RowKind.values()) {
            if (!part.isRepeated() && lines.stream().noneMatch(line -> line.part() == part)) {
                throw root.bad("a line is missing: " + part.word(), "Take the file away.");
            }
        }
        return new OrganDraft(lines);
    }
}
