package versewind.schema;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import versewind.organ.FormerNames;
import versewind.organ.FormerNames.Now;
import versewind.organ.Instrument;
import versewind.organ.Names;
import versewind.organ.Quoted;
import versewind.organ.StopName;
import versewind.schema.Field.Layout;

/** The fields of the former names of an instrument's parts; a part that is gone has a blank name. */
final class FormerFields {
    static final Table<FormerNames> TABLE = Table.block(
            "What parts of the instrument were called before, so that plans written then can be read.",
            "",
            values -> new FormerNames(
                    values.get(FormerFields.DIVISIONS),
                    values.get(FormerFields.STOPS),
                    values.get(FormerFields.COUPLERS),
                    values.get(FormerFields.TREMULANTS),
                    values.get(FormerFields.BOXES)),
            FormerFields::of);

    private static final Field<FormerNames, Map<String, Now<String>>> DIVISIONS =
            names("divisions", (organ, name) -> organ.division(name).isPresent());

    private static final Field<FormerNames, Map<StopName, Now<StopName>>> STOPS = TABLE.add(
                    "stops",
                    new Stops(),
                    "by their division; today's name is written with its division: \"Great: Principal 8\"")
            .orElse(Map.of())
            .laid(Layout.BLOCK);

    private static final Field<FormerNames, Map<String, Now<String>>> COUPLERS =
            names("couplers", (organ, name) -> organ.coupler(name).isPresent());

    private static final Field<FormerNames, Map<String, Now<String>>> TREMULANTS =
            names("tremulants", (organ, name) -> organ.tremulant(name).isPresent());

    private static final Field<FormerNames, Set<String>> BOXES = TABLE.add(
                    "boxes", new Boxes(), "divisions that stood in a swell box before")
            .orElse(Set.of());

    private FormerFields() {}

    private static Object of(FormerNames former, String field) {
        return switch (field) {
            case "stops" -> former.stops();
            case "boxes" -> former.boxes();
            case "divisions" -> former.divisions();
            case "couplers" -> former.couplers();
            case "tremulants" -> former.tremulants();
            default -> throw Table.without(field);
        };
    }

    private static Field<FormerNames, Map<String, Now<String>>> names(
            String field, BiPredicate<Instrument, String> exists) {
        return TABLE.add(field, new Names(exists), "by each former name today's name; \"\" for what is gone")
                .orElse(Map.of());
    }

    private static Refused missing(Found found, String name) {
        return found.bad(
                "the organ has no " + Quoted.text(name) + " today", "Write today's name, or \"\" if it is gone.");
    }

    /** Names by former names. */
    static final class Names extends Kind<Map<String, Now<String>>> {
        private final BiPredicate<Instrument, String> exists;

        Names(BiPredicate<Instrument, String> exists) {
            super("", "");
            this.exists = exists;
        }

        @Override
        Map<String, Now<String>> read(Found found, OrganNames names) throws Refused {
            Map<String, Now<String>> all = new LinkedHashMap<>();
            for (Map.Entry<String, Found> entry : found.entries("").entrySet()) {
                String name = entry.getValue().text();
                if (!name.isEmpty() && !exists.test(names.organ(), name)) {
                    throw missing(entry.getValue(), name);
                }
                all.put(entry.getKey(), name.isEmpty() ? Now.gone() : Now.called(name));
            }
            return all;
        }

        @Override
        Object plain(Map<String, Now<String>> all, OrganNames names) {
            Map<String, String> today = new LinkedHashMap<>();
            all.forEach((was, now) -> today.put(was, now.name().orElse("")));
            return today;
        }
    }

    /** Stops by their former names, these by division. */
    static final class Stops extends Kind<Map<StopName, Now<StopName>>> {
        Stops() {
            super("", "");
        }

        @Override
        Map<StopName, Now<StopName>> read(Found found, OrganNames names) throws Refused {
            Map<StopName, Now<StopName>> all = new LinkedHashMap<>();
            for (Map.Entry<String, Found> division : found.entries("").entrySet()) {
                for (Map.Entry<String, Found> stop :
                        division.getValue().entries("").entrySet()) {
                    all.put(new StopName(division.getKey(), stop.getKey()), now(stop.getValue(), names));
                }
            }
            return all;
        }

        private static Now<StopName> now(Found found, OrganNames names) throws Refused {
            if (found.text().isEmpty()) {
                return Now.gone();
            }
            StopName name = StopFields.STOP_NAME.read(found, names);
            if (names.organ().stop(name).isEmpty()) {
                throw missing(found, found.text());
            }
            return Now.called(name);
        }

        @Override
        Object plain(Map<StopName, Now<StopName>> all, OrganNames names) {
            Map<String, Map<String, String>> today = new LinkedHashMap<>();
            all.forEach((was, now) -> today.computeIfAbsent(was.division(), division -> new LinkedHashMap<>())
                    .put(was.label(), now.name().map(StopName::toString).orElse("")));
            return today;
        }
    }

    /** Divisions, each once. */
    static final class Boxes extends Kind<Set<String>> {
        Boxes() {
            super("", "");
        }

        @Override
        Set<String> read(Found found, OrganNames names) throws Refused {
            Set<String> boxes = new LinkedHashSet<>();
            for (Found each : found.items("")) {
                if (!names.divisions().contains(each.text())) {
                    throw missing(each, each.text());
                }
                boxes.add(each.text());
            }
            return boxes;
        }

        @Override
        Object plain(Set<String> boxes, OrganNames names) {
            return List.copyOf(boxes);
        }
    }
}
