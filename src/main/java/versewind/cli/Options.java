package versewind.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import versewind.organ.NotationException;

/** How commands, options and operands are described. */
final class Options {

    static final String JSON = "--json";

    /** The operand that stands for the standard input. */
    static final String INPUT = "-";

    static final String OR_INPUT = "With - the standard input is read.";
    static final String PLAN = "A plan's file, or its name among the plans.";
    private static final int COLUMNS = 80;

    private Options() {}

    static CommandSpec command(String name, String description) {
        CommandSpec spec = CommandSpec.create().name(name);
        spec.usageMessage().description(description).width(COLUMNS).sortOptions(false);
        return spec;
    }

    /** The operand that a command needs. */
    static PositionalParamSpec operand(String name, String description) {
        return required(name, description).build();
    }

    /** The operand that a command needs, where another may follow. */
    static PositionalParamSpec firstOperand(String name, String description) {
        return required(name, description).index("0").build();
    }

    private static PositionalParamSpec.Builder required(String name, String description) {
        return PositionalParamSpec.builder()
                .paramLabel(name)
                .type(String.class)
                .arity("1")
                .required(true)
                .description(description);
    }

    /** An operand that may follow the one that a command needs. */
    static PositionalParamSpec secondOperand(String name, String description) {
        return PositionalParamSpec.builder()
                .paramLabel(name)
                .type(String.class)
                .index("1")
                .arity("0..1")
                .description(description)
                .build();
    }

    /** The operand that was typed. */
    static String operand(ParseResult typed) {
        return typed.matchedPositionalValue(0, "");
    }

    /** An option without a value. */
    static OptionSpec.Builder flag(String description, String... names) {
        return OptionSpec.builder(names).type(boolean.class).arity("0").description(description);
    }

    /** An option with a value. */
    static OptionSpec valued(String name, String value, String description) {
        return value(name, value, description).type(String.class).build();
    }

    /** An option with a value that has a short name too. */
    static OptionSpec valued(String shortName, String name, String value, String description) {
        return OptionSpec.builder(shortName, name)
                .arity("1")
                .paramLabel(value)
                .description(description)
                .type(String.class)
                .build();
    }

    /** An option with a value, which must be typed. */
    static OptionSpec needed(String name, String value, String description) {
        return value(name, value, description).type(String.class).required(true).build();
    }

    /** An option with a value, which can be typed several times. */
    static OptionSpec repeated(String name, String value, String description) {
        return value(name, value, description)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .build();
    }

    private static OptionSpec.Builder value(String name, String value, String description) {
        return OptionSpec.builder(name).arity("1").paramLabel(value).description(description);
    }

    /** A whole number that was typed for an option. */
    static int whole(String option, String typed, int least, int most) throws NotationException {
        boolean isWhole = typed.matches("[0-9]{1,9}");
        if (!isWhole || Integer.parseInt(typed) < least || Integer.parseInt(typed) > most) {
            throw new UsageException(
                    option + " takes a whole number from " + least + " to " + most + ", not \"" + typed + "\".");
        }
        return Integer.parseInt(typed);
    }

    static OptionSpec json() {
        return flag("Write JSON instead of text.", JSON).build();
    }

    /** With the options that all commands have. */
    static CommandSpec withHelp(CommandSpec spec) {
        spec.addOption(valued(
                LibraryLocator.OPTION,
                "DIR",
                "The folder that has plans and instruments in it. If not given: the folder in "
                        + LibraryLocator.VARIABLE + ", or the working folder if it has both, or your own."));
        spec.addOption(flag("Show this help.", "-h", "--help").usageHelp(true).build());
        spec.addOption(
                flag("Show the version.", "-V", "--version").versionHelp(true).build());
        return spec;
    }

    /** With the options that all commands have, and the meaning of the exit status. */
    static CommandSpec withExitStatus(CommandSpec spec, String wantsAttention) {
        return withExitStatus(spec, Map.of(" " + Reply.WANTS_ATTENTION, wantsAttention));
    }

    /** With the options that all commands have, and the meaning of the exit status, where nothing can want attention. */
    static CommandSpec withExitStatus(CommandSpec spec) {
        return withExitStatus(spec, Map.of());
    }

    private static CommandSpec withExitStatus(CommandSpec spec, Map<String, String> between) {
        Map<String, String> statuses = new LinkedHashMap<>();
        statuses.put(" " + Reply.GOOD, "All is well.");
        statuses.putAll(between);
        statuses.put(" " + Reply.BAD, "Something typed or read is wrong.");
        spec.usageMessage().exitCodeListHeading("%nExit status:%n").exitCodeList(statuses);
        return withHelp(spec);
    }
}
