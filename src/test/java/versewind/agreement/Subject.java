package versewind.agreement;

import java.util.List;
import java.util.stream.Stream;
import versewind.Shipped;
import versewind.organ.Instrument;

/**
 * An organ on which is measured.
 *
 * @param id name of its file, or "random-2-7" for the seventh drawn at random with two manuals
 * @param size what it is counted under
 */
record Subject(String id, String size, Instrument organ) {

    private static final String SHIPPED = "shipped";

    /** The shipped organs, the smallest first, and those drawn at random. */
    static Stream<Subject> all() {
        return Stream.concat(
                shipped().stream(),
                RandomInstruments.all().stream().map(organ -> new Subject(organ.name(), size(organ), organ)));
    }

    static List<Subject> shipped() {
        return Shipped.ORGANS.stream()
                .map(id -> new Subject(id, SHIPPED, Shipped.instrument(id)))
                .toList();
    }

    boolean isShipped() {
        return size.equals(SHIPPED);
    }

    private static String size(Instrument organ) {
        int manuals = organ.manualDivisions().size();
        return manuals + (manuals == 1 ? " manual" : " manuals");
    }
}
