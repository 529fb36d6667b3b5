package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Pipe;

/**
 * A stop as it was read.
 *
 * @param name its name as it is written
 * @param footage its pitch; a compound stop may be without
 * @param supposed true if the pitch is not given and the usual one of its name is assumed
 * @param ranks pipes a note
 * @param family its tonal family
 * @param pipe the kind of pipe it is made of
 * @param how how sure the family is
 * @param strengthDb how much stronger than is usual for its family the lexicon says it is, in dB; an estimate
 * @param remarks what else the list says of it, and what was assumed
 * @param line where it stands, counted from 1
 */
public record ReadStop(
        String name,
        Optional<Footage> footage,
        boolean supposed,
        int ranks,
        Family family,
        Pipe pipe,
        Confidence how,
        double strengthDb,
        List<String> remarks,
        int line) {

    public ReadStop {
        remarks = List.copyOf(remarks);
    }

    ReadStop named(String other, String remark) {
        ReadStop more = remarked(remark);
        return new ReadStop(other, footage, supposed, ranks, family, pipe, how, strengthDb, more.remarks, line);
    }

    /** With something more that the list says of it. */
    ReadStop remarked(String remark) {
        List<String> more = new ArrayList<>(remarks);
        more.add(remark);
        return new ReadStop(name, footage, supposed, ranks, family, pipe, how, strengthDb, more, line);
    }

    /** With the pitch that a later line gives it. */
    ReadStop pitched(Footage feet, int at) {
        return new ReadStop(name, Optional.of(feet), false, ranks, family, pipe, how, strengthDb, List.of(), at);
    }

    /** With the ranks that a later line gives it, and the pitch if it has none. */
    ReadStop ranked(int pipes, Optional<Footage> feet, int at) {
        return new ReadStop(name, footage.or(() -> feet), supposed, pipes, family, pipe, how, strengthDb, remarks, at);
    }

    /** Whether it stands in a swell box, where a remark says so. */
    public Optional<Boolean> isBoxed() {
        return remarks.stream()
                .filter(remark -> WordList.of("enclosed").in(remark)
                        || WordList.of("unenclosed").in(remark))
                .findFirst()
                .map(remark -> !WordList.of("unenclosed").in(remark));
    }

    /** Its pitch in figures: "2 2/3", or "" for a compound stop without one. */
    public String feet() {
        return footage.map(Footage::toString).orElse("");
    }
}
