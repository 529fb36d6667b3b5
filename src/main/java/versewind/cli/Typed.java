package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.ParseResult;
import versewind.organ.Names;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.organ.Worded;
import versewind.plan.Keywords;

/** The operands and options given to a command. */
record Typed(ParseResult result) {

    /** The operand that stands for the standard input. */
    static final String INPUT = "-";

    /** The first operand, if there is one. */
    String operand() {
        return operand(0).orElse("");
    }

    /** An operand, counted from 0. */
    Optional<String> operand(int index) {
        return Optional.ofNullable(result.matchedPositionalValue(index, (String) null));
    }

    /** The words of {@link Command#words}, with blanks between them. */
    String words() {
        return String.join(" ", result.matchedPositionalValue(0, List.<String>of()));
    }

    /** True if any option was typed that is none of these. */
    boolean hasBesides(String... options) {
        return result.matchedOptions().stream()
                .anyMatch(option -> !List.of(options).contains(option.longestName()));
    }

    boolean has(String option) {
        return result.hasMatchedOption(option);
    }

    boolean wantsJson() {
        return has(Command.JSON);
    }

    /** The value of an option. */
    Optional<String> value(String option) {
        return Optional.ofNullable(result.matchedOptionValue(option, (String) null));
    }

    /** The values of a repeatable option. */
    List<String> values(String option) {
        return result.matchedOptionValue(option, List.<String>of());
    }

    /** The whole number of an option. */
    OptionalInt whole(String option, int least, int most) throws UsageException {
        return has(option) ? OptionalInt.of(whole(option, value(option).orElse(""), least, most)) : OptionalInt.empty();
    }

    /** A whole number within limits. */
    static int whole(String option, String typed, int least, int most) throws UsageException {
        boolean isWhole = typed.matches("[0-9]{1,9}");
        if (!isWhole || Integer.parseInt(typed) < least || Integer.parseInt(typed) > most) {
            throw new UsageException("Enter a whole number from " + least + " to " + most + " for " + option + ", not "
                    + Quoted.text(typed) + ".");
        }
        return Integer.parseInt(typed);
    }

    /** The value that a word stands for, or a default without the option. */
    <T extends Worded> T choice(String option, T[] values, T otherwise) throws NotationException {
        return choice(option, values, Worded::word, otherwise);
    }

    /** The same by other words of theirs. */
    <T> T choice(String option, T[] values, Function<? super T, String> word, T otherwise) throws NotationException {
        if (!has(option)) {
            return otherwise;
        }
        Names names = new Names(
                "Unknown value for " + option + ":",
                "Use",
                Stream.of(values).map(word).toList());
        return values[names.find(Keywords.today(value(option).orElse("")))];
    }
}
