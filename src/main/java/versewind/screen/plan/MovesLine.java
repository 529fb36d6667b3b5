package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import versewind.organ.Count;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Pressed;
import versewind.organ.Registration;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.StopChanges;
import versewind.rules.StopChangesByDivision;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Abbreviation;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;

/** What has to be moved since the verse before, in a line or two. */
final class MovesLine {
    /** Knobs that are named in a sentence where there are many. */
    private static final int FEW = 5;
    /** Where the knobs that move stand in what is said. */
    private static final String GROUPS = "\0";

    private static final String NOTHING_MOVED = "Nothing to change: nobody plays.";

    private MovesLine() {}

    /** Since the verse before; where nobody plays, nothing: what is moved then is that of the next verse. */
    static List<String> of(State state, PlanEdit work, int columns, int rows) {
        if (work.verse().isEmpty()) {
            return List.of();
        }
        if (!work.verse().get().isPlayed()) {
            List<String> next = ofNext(state, work, columns, rows);
            return next.isEmpty() ? List.of(NOTHING_MOVED) : next;
        }
        Optional<VersePlace> before = work.plan().before(work.place()).stream().findFirst();
        if (before.isEmpty()) {
            StopChanges set = StopChanges.between(
                    Registration.silent(work.instrument()), work.verse().get().registration());
            return List.of(
                    set.count() == 0
                            ? "Nothing is drawn yet."
                            : "Stops and couplers to set before the service: " + set.count());
        }
        return of(
                state,
                work,
                "From " + placed(work, before.get()),
                "Stops as " + placed(work, before.get()),
                work.plan().verse(before.get()),
                work.verse().get(),
                columns,
                rows);
    }

    /** On arriving at a verse, of many the first few: "2 changes: draw Great Fifteenth 2; put in Swell to Great.". */
    static String inSentence(State state, PlanEdit work, Verse verse) {
        Optional<Verse> before = work.before();
        if (before.isEmpty() || !verse.isPlayed()) {
            return String.join(" ", of(state, work, Integer.MAX_VALUE / 2, 1)).replaceFirst("[.]?$", ".");
        }
        StopChanges moves = StopChanges.between(before.get().registration(), verse.registration());
        StopChanges byHand = byHand(work.instrument(), verse.piston(), moves);
        String few = few(StopChangesByDivision.words(work.instrument(), byHand));
        String count = count(work.instrument(), verse.piston(), moves).replaceFirst("[.]$", "");
        return Text.capital(count) + (few.isEmpty() ? "" : ": " + few) + ".";
    }

    /** What a piston leaves to be moved; all, where it moves nothing. */
    private static StopChanges byHand(Instrument organ, String piston, StopChanges moves) {
        Pressed pressed = Pressed.of(organ, piston);
        StopChanges besides = moves.beyond(pressed.reach(organ));
        return pressed.sets() && besides.knobs() < moves.knobs() ? besides : moves;
    }

    private static String few(List<String> phrases) {
        List<String> pieces = List.of(String.join("; ", phrases).split("(?<=[,;]) "));
        return pieces.size() <= FEW + 1
                ? String.join(" ", pieces)
                : String.join(" ", pieces.subList(0, FEW)).replaceFirst("[,;]$", "") + " and " + (pieces.size() - FEW)
                        + " more";
    }

    /** "V2"; of an earlier hymn "208 V2". */
    private static String placed(PlanEdit work, VersePlace place) {
        String label = work.plan().verse(place).label();
        return place.hymn() == work.place().hymn()
                ? label
                : (work.plan().hymn(place).number() + " " + label).strip();
    }

    /** In the next verse, since what is drawn by then; none after the last. */
    static List<String> ofNext(State state, PlanEdit work, int columns, int rows) {
        Optional<VersePlace> next = work.plan().further(work.place(), 1);
        if (work.verse().isEmpty() || next.isEmpty()) {
            return List.of();
        }
        String start = "Next, " + placed(work, next.get());
        Verse verse = work.plan().verse(next.get());
        if (!verse.isPlayed()) {
            return List.of(Text.fit(start + ": nobody plays.", columns, Mark.CUT.in(state.marks())));
        }
        Optional<VersePlace> before = work.verse().get().isPlayed()
                ? Optional.of(work.place())
                : work.plan().before(next.get()).stream().findFirst();
        return before.map(from -> of(
                        state, work, start, start + ", no changes", work.plan().verse(from), verse, columns, rows))
                .orElse(List.of());
    }

    /** What would be moved if a verse were drawn so: "Great draw Fifteenth 2; Pedal put in Trombone 16". */
    static String instead(State state, PlanEdit work, Verse now, Verse then) {
        StopChanges moves = StopChanges.between(now.registration(), then.registration());
        String hands = now.hands().equals(then.hands()) ? "" : Wording.hands(work.instrument(), then.hands());
        List<String> groups = new ArrayList<>(groups(state, work, then, moves, Detail.NAMES));
        if (!hands.isEmpty()) {
            groups.add(hands);
        }
        return groups.isEmpty() ? "As it is drawn now" : String.join("; ", groups);
    }

    /**
     * As much as fits into so many rows of so many columns: names of knobs if there is room, else their numbers.
     *
     * @param start words before what changes
     * @param still words where no knob does
     */
    private static List<String> of(
            State state, PlanEdit work, String start, String still, Verse before, Verse verse, int columns, int rows) {
        StopChanges moves = StopChanges.between(before.registration(), verse.registration());
        if (moves.count() == 0) {
            boolean isPedalNew = !before.hands().layout().usesPedal()
                    && verse.hands().layout().usesPedal();
            String now = before.hands().equals(verse.hands())
                    ? "."
                    : "; now " + Wording.hands(work.instrument(), verse.hands()) + (isPedalNew ? ", with pedal." : ".");
            return List.of(Text.fit(still + now, columns, Mark.CUT.in(state.marks())));
        }
        String step = step(state, work, before, verse);
        String count = count(work.instrument(), verse.piston(), moves);
        String hands =
                before.hands().equals(verse.hands()) ? "" : "  Then " + Wording.hands(work.instrument(), verse.hands());
        int or = count.lastIndexOf(", or ");
        List<String> ways = new ArrayList<>(List.of(count + GROUPS + hands, count + GROUPS));
        if (or >= 0) {
            String piston = count.substring(0, or);
            ways.addAll(List.of(piston + GROUPS + hands, piston + GROUPS));
        }
        for (String way : hands.isEmpty() && or < 0 ? ways.subList(0, 1) : ways) {
            for (Detail detail : Detail.values()) {
                String groups = ":  " + String.join(between(state), groups(state, work, verse, moves, detail));
                for (String begun : List.of(start + step, start)) {
                    List<String> lines = fitting(begun + ", " + way.replace(GROUPS, groups), columns, rows);
                    if (!lines.isEmpty()) {
                        return lines;
                    }
                }
            }
        }
        return List.of(Text.fit(start + ", " + count, columns, Mark.CUT.in(state.marks())));
    }

    /** The text in so many rows; none if it needs more. */
    private static List<String> fitting(String text, int columns, int rows) {
        // what changes on a large organ is long, and most of it is seen at once not to fit; blanks may be lost
        List<String> lines = text.length() > rows * (columns + 2) ? List.of() : wrapped(text, columns);
        boolean fits = lines.size() <= rows && lines.stream().allMatch(line -> Text.columns(line) <= columns);
        return fits ? lines : List.of();
    }

    private static String count(Instrument organ, String piston, StopChanges moves) {
        Pressed pressed = Pressed.of(organ, piston);
        int besides = moves.beyond(pressed.reach(organ)).knobs();
        if (!pressed.sets() || besides == moves.knobs()) {
            return Count.of(moves.count(), "change");
        }
        return "piston " + piston + (besides == 0 ? "" : " and " + besides + " by hand") + ", or " + moves.count()
                + " by hand";
    }

    /** How much louder the organ becomes. */
    private static String step(State state, PlanEdit work, Verse before, Verse verse) {
        return work.sound()
                .step(before, verse, work.plan().heading().people())
                .filter(step -> step.db() != 0 || step.plusMinusDb() != 0)
                .map(step -> state.isSpoken()
                        ? ", about " + louder(Math.round(step.db()))
                        : " " + StatusView.signed(state, step.db()) + StatusView.plusMinus(state, step.plusMinusDb())
                                + " dB")
                .orElse("");
    }

    private static String louder(long db) {
        return db == 0 ? "as loud" : Math.abs(db) + " dB " + (db > 0 ? "louder" : "softer");
    }

    /** The text in as few lines as it needs, broken after a knob or a division and never within a name. */
    private static List<String> wrapped(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int used = 0;
        for (int from = 0, to; from < text.length(); from = to) {
            to = endOfPiece(text, from);
            String piece = text.substring(from, to);
            if (used > 0 && used + Text.columns(piece.stripTrailing()) > columns) {
                lines.add(line.toString().stripTrailing());
                line.setLength(0);
                used = 0;
            }
            line.append(piece);
            used += Text.columns(piece);
        }
        lines.add(line.toString().stripTrailing());
        return lines;
    }

    private static String between(State state) {
        return state.isSpoken() ? "; " : "  ";
    }

    /** After a comma or semicolon, or after the two blanks between divisions. In every frame, so without a pattern. */
    private static int endOfPiece(String text, int from) {
        for (int i = from + 1; i < text.length(); i++) {
            if (text.charAt(i) == ' ' && ",; ".indexOf(text.charAt(i - 1)) >= 0) {
                return i + 1;
            }
        }
        return text.length();
    }

    /** How much is said, from most to least. */
    private enum Detail {
        NAMES,
        SHORT_PLACES,
        SHORT_NAMES,
        NUMBERS;

        String division(String name) {
            return this == NAMES ? name : Abbreviation.of(name.split(" ", 2)[0], SHORT_NAME, "");
        }

        String knobs(String mark, List<String> names) {
            if (names.isEmpty()) {
                return "";
            }
            return switch (this) {
                case NAMES, SHORT_PLACES -> " " + mark + " " + String.join(", ", names);
                case SHORT_NAMES ->
                    " " + mark + " "
                            + names.stream()
                                    .map(name -> Abbreviation.of(name, SHORT_KNOB, ""))
                                    .collect(Collectors.joining(", "));
                case NUMBERS -> " " + mark + (mark.length() > 1 ? " " : "") + names.size();
            };
        }
    }

    private static final int SHORT_NAME = 5;
    private static final int SHORT_KNOB = 12;

    /** What is drawn and not heard in the verse is said apart, and last. */
    private static List<String> groups(State state, PlanEdit work, Verse verse, StopChanges moves, Detail detail) {
        IndexSet sounding = work.sound().sounding(verse.registration(), verse.hands());
        List<String> groups = new ArrayList<>(groups(state, work.instrument(), moves.sounding(sounding), detail));
        List<String> waiting = groups(state, work.instrument(), moves.waiting(sounding), detail);
        for (int i = 0; i < waiting.size(); i++) {
            groups.add((i == 0 ? Wording.WAITS + ": " : "") + waiting.get(i));
        }
        return groups;
    }

    private static List<String> groups(State state, Instrument instrument, StopChanges moves, Detail detail) {
        List<String> groups = new ArrayList<>();
        for (StopChangesByDivision each : StopChangesByDivision.of(instrument, moves)) {
            boolean isBoxAlone = each.drawn().isEmpty() && each.putIn().isEmpty();
            String box = each.box()
                    .map(to -> (isBoxAlone ? " " : ", ") + ShortWords.box(state.marks(), to))
                    .orElse("");
            groups.add(detail.division(each.where())
                    + detail.knobs(Mark.DRAW.in(state.marks()), each.drawn())
                    + (state.isSpoken()
                                    && !each.drawn().isEmpty()
                                    && !each.putIn().isEmpty()
                            ? ","
                            : "")
                    + detail.knobs(Mark.PUT_IN.in(state.marks()), each.putIn())
                    + box);
        }
        return groups;
    }
}
