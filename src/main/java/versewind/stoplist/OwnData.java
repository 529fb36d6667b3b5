package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import versewind.stoplist.DataText.Field;
import versewind.stoplist.DataText.Fields;
import versewind.stoplist.DataText.Items;
import versewind.stoplist.DataText.Node;
import versewind.stoplist.DataText.Value;

/**
 * A stop list as data of somebody's own making, spelled out as the lines of a printed list. Which field is the name of
 * a stop and which its pitch is told by the words of its table, and where those do not say by what the fields hold.
 */
final class OwnData {

    private static final Pattern ENTRY = Pattern.compile("\\s*- +(?:\\{.*|[\\p{L}_]\\w{0,20}: .*)");
    private static final Pattern NAMED = Pattern.compile("\\s*(?:- +)?[\\p{L}_]\\w{0,20}:.*");
    private static final Pattern OPENING = Pattern.compile("\\s*(?:\\{\\s*[\"']|\\[\\s*(?:\\{|\"|\\[\\s*\"))");
    private static final Set<String> YES = Set.of("true", "yes");
    private static final String NOTE = "Note: ";

    private final List<PageText.Numbered> called = new ArrayList<>();
    private final List<PageText.Numbered> notes = new ArrayList<>();
    private final List<PageText.Numbered> lines = new ArrayList<>();

    private OwnData() {}

    /** True if a text is data rather than a list for people. */
    static boolean isOne(String text) {
        return isInBrackets(text) || isIndented(text);
    }

    private static boolean isInBrackets(String text) {
        return OPENING.matcher(text).lookingAt() && text.indexOf('"') >= 0;
    }

    private static boolean isIndented(String text) {
        List<String> filled = text.lines().filter(each -> !each.isBlank()).toList();
        long entries =
                filled.stream().filter(each -> ENTRY.matcher(each).matches()).count();
        long named =
                filled.stream().filter(each -> NAMED.matcher(each).matches()).count();
        boolean heads = filled.stream()
                .anyMatch(each -> NAMED.matcher(each).matches() && each.strip().endsWith(":"));
        return entries > 1 && heads && 2 * (entries + named) > filled.size();
    }

    private static Optional<Node> node(String text) {
        return isInBrackets(text)
                ? DataText.inBrackets(text, 1)
                : IndentedData.of(text.lines().toList());
    }

    /** True if all of it can be read. */
    static boolean isWhole(String text) {
        return node(text).isPresent();
    }

    /** The lines of the list that it holds; none where it cannot be read. */
    static List<PageText.Numbered> lines(String text) {
        OwnData data = new OwnData();
        node(text).ifPresent(each -> data.read(each, true));
        return Stream.of(data.called, data.lines, data.notes)
                .flatMap(List::stream)
                .map(each -> new PageText.Numbered(each.number(), Typography.plain(each.text())))
                .toList();
    }

    private void add(int line, String text) {
        lines.add(new PageText.Numbered(line, text));
    }

    private void read(Node node, boolean isTop) {
        if (node instanceof Value value) {
            add(value.line(), value.text());
        } else if (node instanceof Items items) {
            items.items().forEach(this::item);
        } else if (node instanceof Fields fields && parts(fields).isEmpty()) {
            flat(fields);
        } else if (node instanceof Fields fields) {
            fields(fields, isTop);
        }
    }

    /** An entry of a list: a text, or a stop with its fields in order. */
    private void item(Node node) {
        boolean isStop = node instanceof Items items && items.items().stream().allMatch(Value.class::isInstance);
        if (isStop) {
            List<Field> fields = ((Items) node)
                    .items().stream().map(each -> new Field("", each)).toList();
            add(node.line(), DataStop.text(fields));
        } else {
            read(node, false);
        }
    }

    /** A stop with its fields, or several stops, each with its pitch: "Principal": 4. */
    private void flat(Fields node) {
        long stops = node.fields().stream()
                .filter(each -> Lexicon.kindOf(each.name()).isPresent())
                .count();
        boolean isOfStops =
                node.fields().size() > 1 && 2 * stops > node.fields().size();
        if (isOfStops) {
            node.fields()
                    .forEach(each -> add(
                            each.node().line(),
                            DataStop.text(List.of(
                                    new Field(
                                            "",
                                            new Value(each.name(), each.node().line())),
                                    new Field("", each.node())))));
        } else {
            add(node.line(), DataStop.text(node.fields()));
        }
    }

    /** What holds stops or further parts: a division, or the whole organ. */
    private void fields(Fields node, boolean isTop) {
        Optional<Field> title = isLowest(node) ? title(node) : Optional.empty();
        title.ifPresent(each -> heading(value(each), node, each.node().line()));
        boolean isWhole = isTop && parts(node).stream().anyMatch(each -> !isLeaf(each.node()));
        for (Field value : node.fields()) {
            boolean isNote = value.node() instanceof Value && !title.equals(Optional.of(value));
            if (isNote) {
                boolean names = called.isEmpty() && lines.isEmpty();
                (names ? called : notes)
                        .add(new PageText.Numbered(
                                value.node().line(), (names ? "" : NOTE + value.name() + " ") + value(value)));
            }
        }
        for (Field part : parts(node)) {
            boolean isPart = SectionWord.read(part.name() + ":", "")
                    .filter(each -> each.kind() != SectionWord.Kind.TITLE)
                    .isPresent();
            if (isPart || isCouplers(part.node())) {
                add(part.node().line(), "");
                add(part.node().line(), isPart ? part.name() + ":" : "Couplers:");
            } else if (isDivision(part.name())) {
                heading(part.name(), node, part.node().line());
            } else if (isWhole && isLeaf(part.node()) && !isOf("column stop", part.name())) {
                values(part.node())
                        .forEach(each ->
                                notes.add(new PageText.Numbered(each.line(), NOTE + part.name() + " " + each.text())));
                continue;
            }
            read(part.node(), false);
        }
    }

    private void heading(String name, Fields node, int line) {
        boolean boxed = node.fields().stream()
                .anyMatch(each -> WordList.of("enclosed").in(each.name())
                        && each.node() instanceof Value value
                        && YES.contains(Spelling.spelled(value.text())));
        add(line, "");
        add(line, name + (boxed ? " (enclosed)" : ""));
    }

    /** The parts that are more than a text. */
    private static List<Field> parts(Fields node) {
        return node.fields().stream()
                .filter(each -> !(each.node() instanceof Value))
                .toList();
    }

    /** True if nothing in it has parts of its own. */
    private static boolean isLowest(Fields node) {
        return parts(node).stream().allMatch(each -> below(each.node()).stream()
                .noneMatch(inner ->
                        inner instanceof Fields fields && !parts(fields).isEmpty()));
    }

    private static List<Node> below(Node node) {
        return node instanceof Items items
                ? items.items()
                : node instanceof Fields fields
                        ? Stream.concat(
                                        Stream.of(node),
                                        fields.fields().stream().map(Field::node))
                                .toList()
                        : List.of(node);
    }

    /** True if it holds texts and nothing else. */
    private static boolean isLeaf(Node node) {
        return below(node).stream().allMatch(each -> each instanceof Value || each == node);
    }

    private static List<Value> values(Node node) {
        return below(node).stream()
                .flatMap(each -> each instanceof Value value ? Stream.of(value) : Stream.empty())
                .toList();
    }

    private static Optional<Field> title(Fields node) {
        List<Field> values = node.fields().stream()
                .filter(each -> each.node() instanceof Value)
                .toList();
        Optional<Field> division =
                values.stream().filter(each -> isDivision(value(each))).findFirst();
        return division.or(() -> values.stream()
                .filter(each -> Spelling.hasWord(value(each))
                        && (isOf("column stop", each.name()) || isOf("column division", each.name())))
                .findFirst());
    }

    private static boolean isDivision(String text) {
        return DivisionHeading.read(text, "")
                .filter(each -> each.inline().isEmpty())
                .isPresent();
    }

    private static boolean isCouplers(Node node) {
        List<Value> values = values(node);
        return !values.isEmpty()
                && isLeaf(node)
                && values.stream()
                        .noneMatch(each -> CouplerLine.read(each.text(), CouplerLine.Where.AMONG_COUPLERS, Set.of(), "")
                                .couplers()
                                .isEmpty())
                && values.stream()
                        .allMatch(each -> CouplerWords.of(each.text(), "").joins());
    }

    private static boolean isOf(String kind, String name) {
        return WordList.of(kind).isAll(Spelling.words(name));
    }

    private static String value(Field field) {
        return field.node() instanceof Value value ? value.text() : "";
    }
}
