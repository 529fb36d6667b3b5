package versewind.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.organ.StopName;
import versewind.plan.HandsAndFeet;
import versewind.schema.Field.Layout;

/**
 * The fields of hands and registration: of a verse, and of a meter reading.
 *
 * @param <T> what has them
 */
public final class PlayedFields<T> {
    /** Stops by the names of their divisions. */
    static final Kind<IndexSet> STOPS = new Stops();

    private static final Kind<HandsAndFeet.Layout> LAYOUT = Kinds.choice(HandsAndFeet.Layout.values());

    private static final Kind<Optional<Integer>> MANUAL = new Manual();
    private static final Kind<IndexSet> COUPLERS = new Knobs(
            RegistrationText::readCouplers, OrganNames::readCouplers, OrganNames::couplers, RegistrationText::couplers);
    private static final Kind<IndexSet> TREMULANTS = new Knobs(
            RegistrationText::readTremulants,
            OrganNames::readTremulants,
            OrganNames::tremulants,
            RegistrationText::tremulants);
    private static final Kind<BoxPosition> POSITION = Kinds.choice(BoxPosition.values());

    /** The positions of the boxes of all divisions. */
    static final Kind<List<BoxPosition>> POSITIONS = new Boxes();

    private final Hands<T> hands;
    private final Drawn<T> drawn;

    /** Adds the fields to the table of something that has hands and a registration. */
    PlayedFields(Table<T> table) {
        hands = Hands.addTo(table);
        drawn = Drawn.addTo(table);
    }

    /** A registration: an object in a file, and one line in the notation of registrations where it is typed. */
    static Kind<Registration> whole() {
        return new Whole();
    }

    /** The fields of the registration that a form asks for. */
    List<Field<T, ?>> asked() {
        return List.of(drawn.stops, drawn.couplers, drawn.boxes);
    }

    /** The value of one of these fields. */
    static Object of(HandsAndFeet played, Registration registration, String field) {
        return switch (field) {
            case "hands" -> played.layout();
            case "right" -> Optional.of(played.right());
            case "left" -> Optional.of(played.left());
            default -> of(registration, field);
        };
    }

    private static Object of(Registration registration, String field) {
        return switch (field) {
            case "drawn" -> registration.stops();
            case "couplers" -> registration.couplers();
            case "boxes" -> registration.boxes();
            case "tremulants" -> registration.tremulants();
            default -> throw Table.without(field);
        };
    }

    /** Where hands and feet play. */
    HandsAndFeet played(Values values) throws Refused {
        return hands.played(values);
    }

    /**
     * The fields of hands and feet alone.
     *
     * @param layout how they are laid out
     * @param right the manual division of the right hand
     * @param left that of the left
     */
    record Hands<T>(
            Field<T, HandsAndFeet.Layout> layout, Field<T, Optional<Integer>> right, Field<T, Optional<Integer>> left) {

        /** Adds the fields to the table of something that has hands. */
        static <T> Hands<T> addTo(Table<T> table) {
            return new Hands<>(
                    table.add("hands", LAYOUT, "how hands and feet are laid out")
                            .blank(HandsAndFeet.Layout.FOUR_PARTS),
                    table.add("right", MANUAL, "the manual division that the right hand plays")
                            .blank(Optional.empty())
                            .laid(Field.Layout.BESIDE),
                    table.add("left", MANUAL, "the manual division that the left hand plays")
                            .blank(Optional.empty())
                            .laid(Field.Layout.BESIDE));
        }

        /** Where hands and feet play; a left hand that is not given is on the manual of the right. */
        HandsAndFeet played(Values values) throws Refused {
            int rightOn = values.get(right).orElse(values.names().organ().mainDivision());
            return new HandsAndFeet(
                    values.get(layout), rightOn, values.get(left).orElse(rightOn));
        }
    }

    /** The registration. */
    Registration registration(Values values) throws Refused {
        return drawn.registration(values);
    }

    /**
     * The fields of a registration alone.
     *
     * @param stops those drawn
     * @param couplers those drawn
     * @param boxes their positions; none where all are open
     * @param tremulants those drawn
     */
    private record Drawn<T>(
            Field<T, IndexSet> stops,
            Field<T, IndexSet> couplers,
            Field<T, List<BoxPosition>> boxes,
            Field<T, IndexSet> tremulants) {

        static <T> Drawn<T> addTo(Table<T> table) {
            return new Drawn<>(
                    table.add("drawn", STOPS, "the stops drawn, by division")
                            .column("stops")
                            .laid(Layout.FIT),
                    table.add("couplers", COUPLERS, "the couplers drawn")
                            .orElse(IndexSet.EMPTY)
                            .label("Coupled"),
                    table.add("boxes", POSITIONS, "position of each division's swell box, open where left out")
                            .orElse(List.of())
                            .label("Swell box"),
                    table.add("tremulants", TREMULANTS, "the tremulants drawn").orElse(IndexSet.EMPTY));
        }

        Registration registration(Values values) throws Refused {
            List<BoxPosition> positions = values.get(boxes);
            return new Registration(
                    values.get(stops),
                    values.get(couplers),
                    values.get(tremulants),
                    positions.isEmpty()
                            ? Registration.silent(values.names().organ()).boxes()
                            : positions);
        }
    }

    /** A registration. */
    private static final class Whole extends Kinds.Nested<Registration> {
        private static final Table<Registration> TABLE =
                Table.block("A registration.", "", values -> Whole.FIELDS.registration(values), PlayedFields::of);
        private static final Drawn<Registration> FIELDS = Drawn.addTo(TABLE);

        Whole() {
            super(() -> TABLE);
        }

        @Override
        boolean isOfOrgan() {
            return true;
        }

        @Override
        Registration read(Found found, OrganNames names) throws Refused {
            return found.isTyped() ? names.typed(found, RegistrationText::parse) : super.read(found, names);
        }

        @Override
        String typed(Registration drawn, OrganNames names) {
            return names.text().format(drawn);
        }
    }

    /** A part of a registration, in the notation of registrations where it is typed. */
    private abstract static class Part<V> extends Kind<V> {
        private final OrganNames.Notation<V> notation;

        Part(String ask, String limits, OrganNames.Notation<V> notation) {
            super(ask, limits);
            this.notation = notation;
        }

        @Override
        final boolean isOfOrgan() {
            return true;
        }

        @Override
        final V read(Found found, OrganNames names) throws Refused {
            return found.isTyped() ? names.typed(found, notation) : inFile(found, names);
        }

        abstract V inFile(Found found, OrganNames names) throws Refused;
    }

    /** The division of a manual. */
    private static final class Manual extends Part<Optional<Integer>> {
        Manual() {
            super("Enter ", "the name of a manual division", (text, typed) -> Optional.of(text.manual(typed)));
        }

        @Override
        Optional<Integer> inFile(Found found, OrganNames names) throws Refused {
            int division =
                    names.division(found, found.text()).orElse(names.organ().mainDivision());
            if (names.organ().divisions().get(division).isPedal()) {
                throw found.bad("a hand cannot play the pedal", remedy());
            }
            return Optional.of(division);
        }

        @Override
        Object plain(Optional<Integer> division, OrganNames names) {
            return division.isPresent() ? names.divisions().get(division.get()) : "";
        }
    }

    /** Stops by division. */
    private static final class Stops extends Part<IndexSet> {
        Stops() {
            super("Write ", "as \"Great: Open Diapason 8, Principal 4; Pedal: Bourdon 16\"", RegistrationText::stops);
        }

        @Override
        IndexSet inFile(Found found, OrganNames names) throws Refused {
            return names.stops(found.entries(""));
        }

        @Override
        Object plain(IndexSet stops, OrganNames names) {
            Map<String, List<String>> byDivision = new LinkedHashMap<>();
            stops.forEach(stop -> {
                StopName name = names.organ().stops().get(stop).name();
                byDivision
                        .computeIfAbsent(name.division(), division -> new ArrayList<>())
                        .add(name.label());
            });
            return byDivision;
        }

        @Override
        String typed(IndexSet stops, OrganNames names) {
            return names.text().stops(stops);
        }

        @Override
        boolean takesBlank() {
            return true;
        }
    }

    /** Couplers, or tremulants, by their names. */
    private static final class Knobs extends Part<IndexSet> {
        private final Reading reading;
        private final Function<OrganNames, List<String>> all;
        private final BiFunction<RegistrationText, IndexSet, String> format;

        Knobs(
                OrganNames.Notation<IndexSet> notation,
                Reading reading,
                Function<OrganNames, List<String>> all,
                BiFunction<RegistrationText, IndexSet, String> format) {
            super("Enter ", "their names", notation);
            this.reading = reading;
            this.all = all;
            this.format = format;
        }

        private interface Reading {
            IndexSet of(OrganNames names, List<Found> found) throws Refused;
        }

        @Override
        IndexSet inFile(Found found, OrganNames names) throws Refused {
            return reading.of(names, found.items(""));
        }

        @Override
        Object plain(IndexSet drawn, OrganNames names) {
            return drawn.stream().mapToObj(all.apply(names)::get).toList();
        }

        @Override
        String typed(IndexSet drawn, OrganNames names) {
            return format.apply(names.text(), drawn);
        }
    }

    /** The positions of the boxes of all divisions; those that are open are not written. */
    private static final class Boxes extends Part<List<BoxPosition>> {
        Boxes() {
            super("Write ", "as \"Swell: half; Choir: closed\"", RegistrationText::readBoxes);
        }

        @Override
        List<BoxPosition> inFile(Found found, OrganNames names) throws Refused {
            List<BoxPosition> positions =
                    new ArrayList<>(Registration.silent(names.organ()).boxes());
            for (Map.Entry<String, Found> entry : found.entries("").entrySet()) {
                Optional<Integer> division = names.box(entry.getValue(), entry.getKey());
                if (division.isPresent()) {
                    positions.set(division.get(), POSITION.read(entry.getValue(), names));
                }
            }
            return positions;
        }

        @Override
        Object plain(List<BoxPosition> positions, OrganNames names) {
            Map<String, String> byDivision = new LinkedHashMap<>();
            for (int i = 0; i < positions.size(); i++) {
                Division division = names.organ().divisions().get(i);
                if (division.isEnclosed() && positions.get(i) != BoxPosition.OPEN) {
                    byDivision.put(division.name(), positions.get(i).word());
                }
            }
            return byDivision;
        }

        @Override
        String typed(List<BoxPosition> positions, OrganNames names) {
            Registration silent = Registration.silent(names.organ());
            return names.text()
                    .boxes(new Registration(silent.stops(), silent.couplers(), silent.tremulants(), positions));
        }

        @Override
        public List<String> words() {
            return POSITION.words();
        }
    }
}
