package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import versewind.rules.StopChangesByDivision;

/** One verse in HTML: its label and piston, what changes, what is played, what is drawn, how it stands. */
final class VerseHtml {

    /** More than can be moved by hand in a breath, and more than can be read in one: set smaller. */
    private static final int MANY = 10;

    private VerseHtml() {}

    /**
     * A verse.
     *
     * @param verse the verse
     * @param id of its heading, unique on the page
     * @param stops whether all that is drawn is listed, or only what changes
     */
    static String of(VerseSheet verse, String id, Stops stops) {
        String mark = Html.line(
                        "h3 id=\"" + id + "\"",
                        verse.verse().label().isBlank() ? "-" : verse.verse().label())
                + piston(verse);
        String rest = moves(verse)
                + play(verse)
                + stops.html(verse)
                + touchAndBreath(verse)
                + Html.line("p class=\"note\"", verse.verse().note())
                + steps(verse);
        return Html.block(
                "article class=\"verse\" aria-labelledby=\"" + id + "\"",
                Html.block("div class=\"mark\"", mark) + Html.block("div", rest));
    }

    /** Whether all that is drawn is listed. */
    enum Stops {
        LISTED,
        LEFT_OUT;

        String html(VerseSheet verse) {
            return switch (this) {
                case LISTED -> stops(verse);
                case LEFT_OUT -> "";
            };
        }
    }

    private static String piston(VerseSheet verse) {
        String piston = verse.verse().piston();
        return piston.isBlank()
                ? ""
                : Html.element(
                                "p class=\"piston\"",
                                Html.element("span class=\"apart\"", "piston ") + Html.text(piston))
                        + "\n";
    }

    private static String play(VerseSheet verse) {
        String verdict = Html.text(SheetLevels.verdict(verse));
        String marked = verse.wantsAttention() ? Html.element("strong", verdict) : verdict;
        return Html.block(
                "div class=\"play\"",
                Html.line("p", verse.playing())
                        + Html.element("p class=\"level\"", Html.text(verse.levelWords()) + ", " + marked) + "\n");
    }

    private static String moves(VerseSheet verse) {
        if (verse.before().isEmpty()) {
            return Html.line("p class=\"still\"", "Set before the service:");
        }
        if (verse.changes().isEmpty()) {
            return Html.line("p class=\"still\"", "Nothing moves.");
        }
        int knobs = verse.changes().stream()
                .mapToInt(each -> each.putIn().size() + each.drawn().size())
                .sum();
        return Html.block(knobs > MANY ? "dl class=\"moves many\"" : "dl class=\"moves\"", rows(verse.changes()));
    }

    private static String rows(List<StopChangesByDivision> changes) {
        return row("put in", "dd class=\"in\"", joined(changes, StopChangesByDivision::putIn))
                + row("draw", "dd", joined(changes, StopChangesByDivision::drawn))
                + row("box", "dd", boxes(changes));
    }

    private static String row(String head, String start, String content) {
        return content.isEmpty() ? "" : Html.element("dt", head) + Html.element(start, content) + "\n";
    }

    /** "Great Mixture III, Twelfth 2 2/3; Swell Cornopean 8". */
    static String joined(List<StopChangesByDivision> changes, Function<StopChangesByDivision, List<String>> knobs) {
        return changes.stream()
                .filter(each -> !knobs.apply(each).isEmpty())
                .map(each -> place(each.where()) + labels(knobs.apply(each)))
                .collect(Collectors.joining("; "));
    }

    /** Couplers say themselves where they are. */
    private static String place(String where) {
        return where.equals(StopChangesByDivision.COUPLERS) ? "" : Html.element("b", Html.text(where)) + " ";
    }

    static String labels(List<String> knobs) {
        return knobs.stream().map(Html::label).collect(Collectors.joining(", "));
    }

    private static String boxes(List<StopChangesByDivision> changes) {
        return changes.stream()
                .filter(each -> each.box().isPresent())
                .map(each -> place(each.where()) + Html.text(each.box().get().word()))
                .collect(Collectors.joining("; "));
    }

    private static String stops(VerseSheet verse) {
        if (verse.drawn().isEmpty()) {
            return Html.line("p", "Nothing is drawn.");
        }
        String caption = Html.element(
                "caption",
                Html.element(
                        "span class=\"apart\"",
                        Html.text("Drawn for " + verse.verse().label())));
        return Html.block("table class=\"stops\"", caption + drawnRows(verse.drawn()));
    }

    private static String drawnRows(List<DivisionLine> drawn) {
        return drawn.stream()
                .map(each -> Html.element(
                                "tr",
                                Html.element("th scope=\"row\"", Html.text(each.where()))
                                        + Html.element("td", labels(each.knobs()) + box(each)))
                        + "\n")
                .collect(Collectors.joining());
    }

    private static String box(DivisionLine drawn) {
        return drawn.box()
                .map(position -> " " + Html.element("span class=\"box\"", "box " + position.word()))
                .orElse("");
    }

    private static String touchAndBreath(VerseSheet verse) {
        List<String> said = new ArrayList<>();
        verse.touch().ifPresent(said::add);
        verse.breath().ifPresent(said::add);
        return Html.line("p class=\"touch\"", String.join(" ", said));
    }

    private static String steps(VerseSheet verse) {
        if (verse.stronger().isEmpty() && verse.softer().isEmpty()) {
            return "";
        }
        return Html.block("dl class=\"steps\"", steps("stronger", verse.stronger()) + steps("softer", verse.softer()));
    }

    private static String steps(String way, List<VerseSheet.Step> steps) {
        return row(way, "dd", steps.stream().map(VerseHtml::step).collect(Collectors.joining("; then ")));
    }

    private static String step(VerseSheet.Step step) {
        List<String> parts = new ArrayList<>();
        add(parts, "put in ", joined(step.movements(), StopChangesByDivision::putIn));
        add(parts, "draw ", joined(step.movements(), StopChangesByDivision::drawn));
        add(parts, "box ", boxes(step.movements()));
        return String.join("; ", parts) + " (" + Html.text(step.changeWords()).replace(" ", "&#160;") + ")";
    }

    private static void add(List<String> parts, String head, String content) {
        if (!content.isEmpty()) {
            parts.add(head + content);
        }
    }
}
