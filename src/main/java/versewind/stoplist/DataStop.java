package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import versewind.stoplist.DataText.Field;
import versewind.stoplist.DataText.Value;

/** A stop, or a coupler, whose name, pitch and ranks stand in fields of their own, as the line of a printed list. */
final class DataStop {

    private static final Set<String> YES = Set.of("true", "yes");

    private final List<Field> left;

    private DataStop(List<Field> fields) {
        this.left = new ArrayList<>(
                fields.stream().filter(each -> !value(each).isEmpty()).toList());
    }

    /** The line. */
    static String text(List<Field> fields) {
        return new DataStop(fields).text();
    }

    private String text() {
        Optional<String> name = take("column stop").or(this::known).or(this::worded);
        if (name.isEmpty()) {
            return joined();
        }
        StringBuilder text = new StringBuilder(name.get());
        take("column pitch").or(this::pitch).ifPresent(pitch -> text.append(' ').append(marked(pitch)));
        take("column ranks").or(this::numeral).ifPresent(ranks -> text.append(' ')
                .append(ranks));
        left.stream()
                .filter(each -> !(isOf("column count", each) && isNumber(value(each))))
                .forEach(each -> text.append(" (").append(remark(each)).append(')'));
        return text.toString();
    }

    /** Fields that are no stop's: names and values one after the other, or the two divisions of a coupler. */
    private String joined() {
        StringBuilder text = new StringBuilder();
        left.forEach(each -> text.append(text.isEmpty() ? "" : " ").append(remark(each)));
        return text.toString();
    }

    private Optional<String> take(String kind) {
        Optional<Field> found = left.stream()
                .filter(each -> isOf(kind, each))
                .filter(each ->
                        kind.equals("column stop") == Spelling.hasWord(value(each)) || kind.equals("column ranks"))
                .findFirst();
        return take(found);
    }

    private Optional<String> take(Optional<Field> field) {
        field.ifPresent(left::remove);
        return field.map(DataStop::value);
    }

    /** The first value that is the name of a stop. */
    private Optional<String> known() {
        return take(left.stream()
                .filter(each -> Spelling.hasWord(value(each))
                        && Lexicon.kindOf(StopLine.of(value(each), ListStyle.PLAIN)
                                        .name())
                                .isPresent())
                .findFirst());
    }

    /** The first value in words, where another is a pitch. */
    private Optional<String> worded() {
        boolean pitched = left.stream().anyMatch(each -> isPitch(value(each)));
        return take(left.stream()
                .filter(each -> pitched && Spelling.hasWord(value(each)))
                .findFirst());
    }

    private Optional<String> pitch() {
        return take(left.stream()
                .filter(each -> isPitch(value(each)) && !isOf("column count", each))
                .findFirst());
    }

    private Optional<String> numeral() {
        return take(left.stream()
                .filter(each -> {
                    Line line = new Line(value(each));
                    return line.size() > 0 && RankCount.numeral(line, 0).length() == line.size();
                })
                .findFirst());
    }

    private static boolean isPitch(String text) {
        Line line = new Line(text);
        boolean marked = line.size() > 0 && Pitches.marked(line, 0) == line.size();
        return marked
                || (line.size() == 1
                        && Pitches.isBare(line, 0)
                        && Pitches.usual(line.at(0)).isPresent());
    }

    private static String marked(String pitch) {
        Line line = new Line(pitch);
        return line.size() == 1 && Pitches.isBare(line, 0) ? pitch + "'" : pitch;
    }

    private static boolean isNumber(String text) {
        return text.chars().allMatch(Character::isDigit);
    }

    /** "from: c'" and "half_length: true" as words. */
    private static String remark(Field field) {
        String name = field.name().replace('_', ' ');
        return YES.contains(Spelling.spelled(value(field)))
                ? name
                : (name.isEmpty() || isOf("column remark", field) ? "" : name + " ") + value(field);
    }

    private static boolean isOf(String kind, Field field) {
        return WordList.of(kind).isAll(Spelling.words(field.name()));
    }

    private static String value(Field field) {
        return field.node() instanceof Value value ? value.text() : "";
    }
}
