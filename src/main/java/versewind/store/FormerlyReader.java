package versewind.store;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;
import versewind.organ.Instrument;
import versewind.organ.Quoted;
import versewind.organ.StopName;

/** Reads what the parts of an instrument were called before; what is gone has a blank name. */
final class FormerlyReader {
    private final Instrument organ;

    FormerlyReader(Instrument organ) {
        this.organ = organ;
    }

    FormerNames names(LocatedValue found) throws BadFile {
        Fields fields = found.fields("divisions", "stops", "couplers", "tremulants", "boxes");
        Map<StopName, Now<StopName>> stops = new LinkedHashMap<>();
        for (Map.Entry<String, LocatedValue> division : fields.entries("stops").entrySet()) {
            for (Map.Entry<String, LocatedValue> stop :
                    division.getValue().entries().entrySet()) {
                stops.put(new StopName(division.getKey(), stop.getKey()), stop(stop.getValue()));
            }
        }
        Set<String> boxes = new LinkedHashSet<>();
        for (LocatedValue box : fields.items("boxes")) {
            if (organ.division(box.text()).isEmpty()) {
                throw missing(box, box.text());
            }
            boxes.add(box.text());
        }
        return new FormerNames(
                all(fields, "divisions", name -> organ.division(name).isPresent()),
                stops,
                all(fields, "couplers", name -> organ.coupler(name).isPresent()),
                all(fields, "tremulants", name -> organ.tremulant(name).isPresent()),
                boxes);
    }

    private static Map<String, Now<String>> all(Fields fields, String field, Predicate<String> exists) throws BadFile {
        Map<String, Now<String>> all = new LinkedHashMap<>();
        for (Map.Entry<String, LocatedValue> entry : fields.entries(field).entrySet()) {
            String name = entry.getValue().text();
            if (!name.isEmpty() && !exists.test(name)) {
                throw missing(entry.getValue(), name);
            }
            all.put(entry.getKey(), name.isEmpty() ? Now.gone() : Now.called(name));
        }
        return all;
    }

    private Now<StopName> stop(LocatedValue found) throws BadFile {
        String text = found.text();
        if (text.isEmpty()) {
            return Now.gone();
        }
        StopName name = StopReader.stopName(found, text);
        if (organ.stop(name).isEmpty()) {
            throw missing(found, text);
        }
        return Now.called(name);
    }

    private static BadFile missing(LocatedValue found, String name) {
        return found.bad(
                "the organ has no " + Quoted.text(name) + " today",
                "Write what it is called above, or \"\" if it is gone.");
    }
}
