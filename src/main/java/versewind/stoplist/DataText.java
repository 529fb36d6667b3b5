package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Data of somebody's own making as text: objects and lists in brackets, or by how far their lines are indented. It is
 * read leniently: words may stand without quotes, a comma too many does no harm, # and // begin remarks.
 */
final class DataText {

    /** A piece of data, and the line it begins in, counted from 1. */
    sealed interface Node permits Value, Items, Fields {
        int line();
    }

    /** A word, a number or a text. */
    record Value(String text, int line) implements Node {}

    /** Several, one after the other. */
    record Items(List<Node> items, int line) implements Node {}

    /** Several, each with a name. */
    record Fields(List<Field> fields, int line) implements Node {}

    record Field(String name, Node node) {}

    private static final int DEEPEST = 60;
    private static final String STRUCTURE = "{}[],:\"'#";

    private final String text;
    private int at;
    private int line;
    private int depth;

    private DataText(String text, int line) {
        this.text = text;
        this.line = line;
    }

    /** Data in brackets; empty where the brackets do not match. */
    static Optional<Node> inBrackets(String text, int line) {
        DataText data = new DataText(text, line);
        Optional<Node> node = data.node();
        data.skip();
        return node.isPresent() && data.at == text.length() ? node : Optional.empty();
    }

    private char next() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    /** Goes over blanks and remarks. */
    private void skip() {
        boolean remark = false;
        while (at < text.length() && (remark || Character.isWhitespace(next()) || isRemark())) {
            remark = next() != '\n' && (remark || isRemark());
            line += next() == '\n' ? 1 : 0;
            at++;
        }
    }

    private boolean isRemark() {
        boolean apart = at == 0 || Character.isWhitespace(text.charAt(at - 1)) || text.charAt(at - 1) == ',';
        return apart && (next() == '#' || text.startsWith("//", at));
    }

    private Optional<Node> node() {
        skip();
        if (depth == DEEPEST || at == text.length()) {
            return Optional.empty();
        }
        depth++;
        Optional<Node> node = next() == '{' || next() == '[' ? many(next() == '{') : value();
        depth--;
        return node;
    }

    private Optional<Node> many(boolean named) {
        int begun = line;
        List<Field> fields = new ArrayList<>();
        at++;
        skip();
        while (at < text.length() && next() != (named ? '}' : ']')) {
            String name = "";
            if (named) {
                Optional<Node> key = value();
                skip();
                if (key.isEmpty() || next() != ':') {
                    return Optional.empty();
                }
                name = key.get() instanceof Value value ? value.text() : "";
                at++;
            }
            Optional<Node> node = node();
            if (node.isEmpty()) {
                return Optional.empty();
            }
            fields.add(new Field(name, node.get()));
            skip();
            if (next() == ',') {
                at++;
                skip();
            } else if (next() != (named ? '}' : ']')) {
                return Optional.empty();
            }
        }
        if (at == text.length()) {
            return Optional.empty();
        }
        at++;
        return Optional.of(
                named
                        ? new Fields(List.copyOf(fields), begun)
                        : new Items(fields.stream().map(Field::node).toList(), begun));
    }

    private Optional<Node> value() {
        int begun = line;
        char quote = next();
        if (quote == '"' || quote == '\'') {
            StringBuilder value = new StringBuilder();
            for (at++; at < text.length() && next() != quote && next() != '\n'; at++) {
                at += next() == '\\' && at + 1 < text.length() ? 1 : 0;
                value.append(next());
            }
            boolean closed = next() == quote;
            at++;
            return closed ? Optional.of(new Value(value.toString().strip(), begun)) : Optional.empty();
        }
        int from = at;
        while (at < text.length() && next() != '\n' && STRUCTURE.indexOf(next()) < 0) {
            at++;
        }
        String word = text.substring(from, at).strip();
        return word.isEmpty() ? Optional.empty() : Optional.of(new Value(word, begun));
    }
}
