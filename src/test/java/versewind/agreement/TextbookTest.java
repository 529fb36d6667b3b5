package versewind.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.Shipped;
import versewind.agreement.Fault.Remark;
import versewind.agreement.Program.Said;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Verse;

/**
 * What is found in registrations of the textbook, where a teacher finds nothing, and in faults that are made on
 * purpose. Both are listed on the console.
 */
class TextbookTest {

    private static final int PLANTED = 60;

    /** What a book of rules should find of them; an estimate of what a teacher notices. */
    private static final int FOUND_AT_LEAST = 52;

    /** Of so many verses of the textbook so many findings may be false; an estimate of what a teacher bears with. */
    private static final int OF_VERSES = 32;

    private static final int FALSE_AT_MOST = 2;

    private static final Map<String, Program> PROGRAMS = Shipped.ORGANS.stream()
            .collect(Collectors.toMap(Function.identity(), id -> new Program(Shipped.instrument(id))));

    static List<List<String>> textbook() {
        return WrittenPlan.lines("textbook.txt");
    }

    static List<List<String>> planted() {
        return WrittenPlan.lines("planted.txt");
    }

    private static List<Said> found(List<String> line, int firstVerse) {
        Program program = PROGRAMS.get(line.get(0));
        return program.findings(plan(line, firstVerse)).stream().toList();
    }

    private static Plan plan(List<String> line, int firstVerse) {
        return WrittenPlan.of(PROGRAMS.get(line.get(0)).organ(), line.subList(firstVerse, line.size()));
    }

    private static String told(List<Said> said) {
        return said.stream()
                .map(each -> (each.isCaution() ? "CAUTION " : "") + each.rule() + ": " + each.sentence())
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @MethodSource("textbook")
    void the_teacher_finds_nothing_hard_in_the_textbook(List<String> line) {
        Instrument organ = PROGRAMS.get(line.get(0)).organ();
        Plan plan = plan(line, 2);
        Verse verse = plan.hymns().get(0).verses().get(0);

        assertThat(Teacher.hard(organ, plan, verse))
                .as(String.join(" ! ", line))
                .isEmpty();
        assertThat(SoftTeacher.mentions(organ, plan, verse))
                .extracting(Remark::sentence)
                .isEmpty();
    }

    @Test
    void findings_in_the_textbook_are_few() {
        List<List<String>> lines = textbook();
        List<String> wrong = lines.stream()
                .filter(line -> !found(line, 2).isEmpty())
                .map(line -> line.get(0) + ", " + line.get(1) + ": " + told(found(line, 2)))
                .toList();
        System.out.printf(
                "Textbook: findings in %d of %d verses%n    %s%n",
                wrong.size(), lines.size(), String.join("\n    ", wrong));

        assertThat(lines).hasSizeGreaterThanOrEqualTo(40);
        assertThat(wrong.size() * OF_VERSES).isLessThanOrEqualTo(FALSE_AT_MOST * lines.size());
    }

    @Test
    void faults_made_on_purpose_are_found() {
        List<List<String>> lines = planted();
        List<String> missed = lines.stream()
                .filter(line -> !isFound(line))
                .map(line -> line.get(0) + ", " + line.get(1) + ": " + told(found(line, 3)))
                .toList();
        System.out.printf(
                "Planted faults: %d of %d found; missed:%n    %s%n",
                lines.size() - missed.size(), lines.size(), String.join("\n    ", missed));

        assertThat(lines).hasSize(PLANTED);
        assertThat(missed).hasSizeLessThanOrEqualTo(PLANTED - FOUND_AT_LEAST);
    }

    private static boolean isFound(List<String> line) {
        Pattern words = Pattern.compile(line.get(2), Pattern.CASE_INSENSITIVE);
        return found(line, 3).stream().anyMatch(said -> words.matcher(said.rule() + ": " + said.sentence())
                .find());
    }
}
