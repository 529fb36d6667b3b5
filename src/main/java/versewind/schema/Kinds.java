package versewind.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import versewind.organ.Decimal;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.organ.Worded;

/** The kinds of value that several fields share. */
public final class Kinds {
    static final String YES = "yes";
    static final String NO = "no";

    /** A text, which may be blank. */
    static final Kind<String> TEXT = new Text("");

    /** A name, which must not be blank. */
    static final Kind<String> NAME = new Text("a name");

    /** True or false; typed as yes or no. */
    static final Kind<Boolean> FLAG = new Flag(YES);

    /**
     * A number that was measured, written with one decimal at least: 3.0.
     *
     * @param value the number
     */
    public record Measured(double value) {}

    private Kinds() {}

    static Kind<Integer> whole(int least, int most) {
        return new Whole(least, most);
    }

    static Kind<Double> decimal(double least, double most) {
        return new Decimals(least, most);
    }

    static <E extends Worded> Kind<E> choice(E[] values) {
        return new ChoiceKind<>(List.of(values), Worded::word);
    }

    /** A text. */
    static final class Text extends Kind<String> {
        Text(String limits) {
            super("Enter ", limits);
        }

        @Override
        String read(Found found, OrganNames names) throws Refused {
            String text = found.text();
            if (text.isBlank() && !takesBlank()) {
                throw found.bad("this must not be blank", remedy());
            }
            return text;
        }

        @Override
        Object shaped(String typed) {
            return typed;
        }

        @Override
        String hint() {
            return "";
        }

        @Override
        boolean takesBlank() {
            return remedy().isEmpty();
        }
    }

    /** A text that stands for a value. */
    static class Parsed<V> extends Kind<V> {
        private final String what;
        private final Function<String, Optional<V>> parse;
        private final Function<V, String> write;

        /** A kind; {@code what} it is with its article, as "a date". */
        Parsed(String what, String limits, Function<String, Optional<V>> parse, Function<V, String> write) {
            super("Enter " + what + ", ", limits);
            this.what = what;
            this.parse = parse;
            this.write = write;
        }

        @Override
        V read(Found found, OrganNames names) throws Refused {
            Optional<V> value = parse.apply(found.text());
            if (value.isEmpty()) {
                throw found.bad(Quoted.text(found.text()) + " is not " + what, remedy());
            }
            return value.get();
        }

        @Override
        Object plain(V value, OrganNames names) {
            return write.apply(value);
        }
    }

    /** A name that stands for a value, with all blanks in it. */
    static final class Name<V> extends Parsed<V> {
        Name(String what, String limits, Function<String, Optional<V>> parse, Function<V, String> write) {
            super(what, limits, parse, write);
        }

        @Override
        Object shaped(String typed) {
            return typed;
        }
    }

    /** One of the names of the organ's parts. */
    static class Known extends Kind<String> {
        private final String thing;
        private final Function<OrganNames, List<String>> known;

        Known(String thing, Function<OrganNames, List<String>> known) {
            super("Enter ", "the name of a " + thing);
            this.thing = thing;
            this.known = known;
        }

        @Override
        String read(Found found, OrganNames names) throws Refused {
            return require(found, found.text(), names);
        }

        @Override
        Object shaped(String typed) {
            return typed;
        }

        @Override
        String hint() {
            return "";
        }

        @Override
        List<String> words(OrganNames names) {
            return known.apply(names);
        }

        String require(Found found, String name, OrganNames names) throws Refused {
            List<String> all = known.apply(names);
            if (!all.contains(name)) {
                throw found.bad(
                        "there is no " + thing + " " + Quoted.text(name),
                        Nearest.sentence(name, all, "The " + thing + "s are"));
            }
            return name;
        }
    }

    /** True or false; typed as yes or no. */
    static final class Flag extends Kind<Boolean> {
        private final String truth;

        /** A kind; {@code truth} is the word that is typed for true: "no" where a form asks for the opposite. */
        Flag(String truth) {
            super("Enter ", YES + " or " + NO);
            this.truth = truth;
        }

        @Override
        Boolean read(Found found, OrganNames names) throws Refused {
            return found.truth(found.isTyped() ? remedy() : "Write it without quotation marks.");
        }

        @Override
        Object shaped(String typed) {
            Optional<String> word = ChoiceKind.of(typed, words());
            return word.isPresent() ? (Object) word.get().equals(truth) : typed;
        }

        @Override
        String typed(Boolean value, OrganNames names) {
            return value == truth.equals(YES) ? YES : NO;
        }

        @Override
        public List<String> words() {
            return List.of(YES, NO);
        }
    }

    /** A whole number. */
    static class Whole extends Kind<Integer> {
        /** From here on a limit is not worth telling. */
        private static final int MANY = 1_000_000;

        final int least;
        final int most;

        Whole(int least, int most) {
            super("Enter a whole number from ", "");
            this.least = least;
            this.most = most;
        }

        @Override
        public String limits() {
            return least + " to " + most;
        }

        @Override
        String hint() {
            return most < MANY ? super.hint() : ", " + least + " or more";
        }

        @Override
        Integer read(Found found, OrganNames names) throws Refused {
            return found.whole(least, most, remedy());
        }

        @Override
        Object shaped(String typed) {
            return Decimals.number(typed);
        }
    }

    /** A number. */
    static class Decimals extends Kind<Double> {
        private static final int MOST_DIGITS = 50;

        final double least;
        final double most;

        Decimals(double least, double most) {
            super("Enter a number from ", "");
            this.least = least;
            this.most = most;
        }

        @Override
        public String limits() {
            return Decimal.of(least) + " to " + Decimal.of(most);
        }

        @Override
        Double read(Found found, OrganNames names) throws Refused {
            return found.number(least, most, remedy());
        }

        @Override
        Object shaped(String typed) {
            return number(typed);
        }

        /** A number written in digits, with a point or a comma; the text itself where it is none. */
        static Object number(String typed) {
            String plain = typed.strip();
            boolean isNumber = plain.length() <= MOST_DIGITS
                    && plain.chars().allMatch(c -> (c >= '0' && c <= '9') || "+-.,".indexOf(c) >= 0);
            try {
                return isNumber ? (Object) Double.parseDouble(plain.replace(',', '.')) : plain;
            } catch (NumberFormatException strayMark) {
                return plain;
            }
        }
    }

    /** A value or nothing. */
    static final class IfAny<V> extends Kind<Optional<V>> {
        final Kind<V> kind;

        IfAny(Kind<V> kind) {
            super(kind);
            this.kind = kind;
        }

        @Override
        public String limits() {
            return kind.limits();
        }

        @Override
        Optional<V> read(Found found, OrganNames names) throws Refused {
            return Optional.of(kind.read(found, names));
        }

        @Override
        boolean isOfOrgan() {
            return kind.isOfOrgan();
        }

        @Override
        Object plain(Optional<V> value, OrganNames names) {
            return value.isPresent() ? kind.plain(value.get(), names) : "";
        }

        @Override
        String typed(Optional<V> value, OrganNames names) {
            return value.isPresent() ? kind.typed(value.get(), names) : "";
        }

        @Override
        Object shaped(String typed) {
            return kind.shaped(typed);
        }

        @Override
        String hint() {
            return kind.hint();
        }

        @Override
        public List<String> words() {
            return kind.words();
        }

        @Override
        List<String> words(OrganNames names) {
            return kind.words(names);
        }
    }

    /** A value of a table, as an object. */
    static class Nested<V> extends Kind<V> {
        private final Supplier<Table<V>> table;

        /** A kind; the table is asked for when it is needed first. */
        Nested(Supplier<Table<V>> table) {
            super("", "");
            this.table = table;
        }

        Table<V> table() {
            return table.get();
        }

        @Override
        V read(Found found, OrganNames names) throws Refused {
            return table().read(found, names);
        }

        @Override
        Object plain(V value, OrganNames names) {
            return new Table.Row<>(table(), value);
        }
    }

    /** Any number of values. */
    static class Items<V> extends Kind<List<V>> {
        final Kind<V> kind;

        Items(Kind<V> kind, String limits) {
            super("Write ", limits);
            this.kind = kind;
        }

        /** Values of a table, as objects. */
        static <V> Kind<List<V>> of(Table<V> table) {
            return new Items<>(new Nested<>(() -> table), "");
        }

        @Override
        List<V> read(Found found, OrganNames names) throws Refused {
            List<V> list = new ArrayList<>();
            for (Found each : found.items(remedy())) {
                list.add(kind.read(each, names));
            }
            return list;
        }

        @Override
        Object plain(List<V> values, OrganNames names) {
            List<Object> list = new ArrayList<>();
            for (V each : values) {
                list.add(kind.plain(each, names));
            }
            return list;
        }
    }
}
