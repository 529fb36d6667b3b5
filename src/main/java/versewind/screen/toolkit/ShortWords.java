package versewind.screen.toolkit;

import java.time.LocalDate;
import versewind.organ.BoxPosition;
import versewind.organ.DayWords;
import versewind.sound.Balance;
import versewind.sound.Verdict;

/** The short words with which the screen names things where room is scarce. */
public final class ShortWords {
    private ShortWords() {}

    /** "Sun 4 Oct 2026". */
    public static String day(LocalDate date) {
        return DayWords.of(date);
    }

    /** The shape of a verdict, plain where it is sure and hollow where it is not. */
    public static String mark(Marks marks, Balance balance) {
        boolean isSure = balance.isSure();
        return switch (balance.verdict()) {
            case LOST, NO_TUNE, BURIED -> (isSure ? Mark.WEAK : Mark.PERHAPS_WEAK).in(marks);
            case LEAD_ONLY_JUST, SOLO_LINE_ONLY_JUST, VOICE_ONLY_JUST ->
                (isSure ? Mark.ONLY_JUST : Mark.PERHAPS_ONLY_JUST).in(marks);
            case LEADS, CLEAR, STANDS_OUT -> (isSure ? Mark.RIGHT : Mark.PERHAPS_RIGHT).in(marks);
            case TOO_STRONG, COVERED -> (isSure ? Mark.STRONG : Mark.PERHAPS_STRONG).in(marks);
            case ORGAN_ALONE, UNACCOMPANIED -> " ";
        };
    }

    public static Style style(Verdict verdict) {
        return switch (verdict) {
            case LOST, NO_TUNE, BURIED, TOO_STRONG, COVERED -> Style.BAD;
            case LEAD_ONLY_JUST, VOICE_ONLY_JUST, SOLO_LINE_ONLY_JUST -> Style.NEAR;
            case LEADS, CLEAR, STANDS_OUT -> Style.GOOD;
            case ORGAN_ALONE, UNACCOMPANIED -> Style.FAINT;
        };
    }

    /** How far a box stands open, in eight letters at most. */
    public static String box(BoxPosition position) {
        return switch (position) {
            case CLOSED -> "closed";
            case QUARTER -> "box 1/4";
            case HALF -> "box 1/2";
            case THREE_QUARTERS -> "box 3/4";
            case OPEN -> "box open";
        };
    }

    /** The same; where it is heard, in words that say what it is. */
    public static String box(Marks marks, BoxPosition position) {
        return marks == Marks.WORDS ? "box " + position.opened() : box(position);
    }

    public static int longestBox() {
        return "box open".length();
    }
}
