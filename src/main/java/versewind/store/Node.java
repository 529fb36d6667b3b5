package versewind.store;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of a JSON file that knows its line; a field's value has the line of the field's name. */
sealed interface Node {

    /** Line of the file, counted from 1. */
    int line();

    /** What kind of value it is, for a sentence. */
    String what();

    /** An object. */
    record Fields(int line, Map<String, Node> byName) implements Node {
        public Fields {
            byName = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
        }

        @Override
        public String what() {
            return "an object";
        }
    }

    /** A list. */
    record Items(int line, List<Node> list) implements Node {
        public Items {
            list = List.copyOf(list);
        }

        @Override
        public String what() {
            return "a list";
        }
    }

    /** A text. */
    record Text(int line, String value) implements Node {
        @Override
        public String what() {
            return "a text";
        }
    }

    /** A number. */
    record Numeral(int line, double value) implements Node {
        @Override
        public String what() {
            return "a number";
        }
    }

    /** True or false. */
    record Truth(int line, boolean value) implements Node {
        @Override
        public String what() {
            return value ? "true" : "false";
        }
    }

    /** Null. */
    record Nothing(int line) implements Node {
        @Override
        public String what() {
            return "null";
        }
    }
}
