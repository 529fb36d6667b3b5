package versewind.screen.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Pressed;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.PistonChoice;
import versewind.rules.StopChanges;
import versewind.rules.StopChangesByDivision;
import versewind.rules.Touch;
import versewind.screen.state.PlanEdit;
import versewind.screen.toolkit.Flow;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.ShortWords;
import versewind.screen.toolkit.Style;
import versewind.sheet.DivisionLine;
import versewind.sheet.Wording;
import versewind.sound.Balance;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;

/** What is said on the desk of a verse: what is moved, what is drawn, what comes next, what would help. */
final class DeskWords {

    private final Marks marks;
    private final PlanEdit work;
    private final DeskNotes notes;
    private final VersePlace here;
    private final Instrument organ;

    /** As it is played now. */
    private final Plan plan;

    DeskWords(Marks marks, PlanEdit work, DeskNotes notes) {
        this.marks = marks;
        this.work = work;
        this.notes = notes;
        this.here = work.place();
        this.organ = work.instrument();
        this.plan = notes.played(work);
    }

    private Verse verse(VersePlace place) {
        return plan.verse(place);
    }

    private Hymn hymn(VersePlace place) {
        return plan.hymn(place);
    }

    private Estimate estimate(VersePlace place) {
        return work.sound()
                .estimate(verse(place), plan.heading().people(), hymn(place).tempo());
    }

    /** The label, who sings and how, and if there is room hands and feet. */
    Flow who(int columns) {
        Verse verse = verse(here);
        int people = plan.heading().people();
        Estimate estimate = estimate(here);
        String hands = String.join("; ", Wording.whoAndHands(verse, people, estimate, organ));
        Flow who = new Flow();
        for (String words : List.of(
                Wording.playing(verse, people, estimate, organ),
                hands,
                Wording.shortHands(hands),
                Wording.shortHands(hands).replace(", singing ", ", "),
                Wording.who(verse, people, estimate))) {
            who = new Flow().add(verse.label(), Style.STRONG).add(words, Style.STRONG);
            if (who.fits(columns, 1)) {
                return who;
            }
        }
        return who;
    }

    /** Whether it is right for those who sing; if there is room how strong it is, and how to touch the keys. */
    Flow level(int columns) {
        Estimate estimate = estimate(here);
        String level = estimate.isSilent() ? "silent" : level(estimate);
        Flow all = stepped().add(level, Style.STRONG);
        Flow flow = verdict(all, estimate.balance());
        if (!flow.fits(columns, 1)) {
            return verdict(stepped(), estimate.balance());
        }
        Touch touch = Advice.on(work.sound()).touch(plan, here);
        return flow.ifRoom().add(touch.words(), Style.TEXT);
    }

    private Flow stepped() {
        String words = stepped(notes.steps(here));
        return words.isEmpty() ? new Flow() : new Flow().add(words + ",", Style.NEAR);
    }

    /** How many steps louder or softer than planned: "2 steps softer"; empty for none. */
    static String stepped(int steps) {
        int size = Math.abs(steps);
        return steps == 0 ? "" : size + (size == 1 ? " step " : " steps ") + (steps > 0 ? "louder" : "softer");
    }

    private Flow verdict(Flow flow, Balance balance) {
        String mark = ShortWords.mark(marks, balance);
        String words = (mark + " " + Wording.verdict(balance)).strip();
        return flow.add(" " + words + " ", ShortWords.style(balance.verdict()));
    }

    private String level(Estimate estimate) {
        return estimate.dynamic().map(Dynamic::word).orElse("");
    }

    /** What is moved since the verse before; where a piston does it, by hand only if there is room. */
    Flow now() {
        Flow flow = new Flow();
        if (!verse(here).isPlayed()) {
            return flow.add("Nobody plays" + (isSetMeanwhile() ? ": set the next verse now." : "."), Style.STRONG);
        }
        Optional<VersePlace> before = before(here);
        if (before.isEmpty()) {
            flow.add("Set this before the service" + (hasPiston(here) ? ":" : "."), Style.STRONG);
            if (hasPiston(here)) {
                flow.add(pistonWords(here), Style.DRAWN);
            }
            return flow;
        }
        moves(flow, before.get(), here);
        StopChanges byHand = StopChanges.between(drawn(before.get()), drawn(here));
        if (byHand.count() > 0 && !set(before.get(), here).equals(drawn(before.get()))) {
            knobs(flow.ifRoom().add("or by hand,", Style.HEADING), byHand, here, Style.TEXT);
        }
        plan.before(here).stream().skip(1).forEach(other -> {
            flow.ifRoom().paragraph().add("or from " + verse(other).label() + ":", Style.HEADING);
            moves(flow, other, here);
        });
        return flow;
    }

    /** The verse from which one is set, as it is planned. */
    private Optional<VersePlace> before(VersePlace place) {
        return plan.before(place).stream().findFirst();
    }

    private boolean hasPiston(VersePlace place) {
        return pressed(place).sets();
    }

    private Pressed pressed(VersePlace place) {
        return Pressed.of(organ, verse(place).piston());
    }

    private String pistonWords(VersePlace place) {
        return "piston " + verse(place).piston();
    }

    /** What is drawn at a verse: where nobody plays, what was drawn before, or is for the first that is played. */
    private Registration drawn(VersePlace place) {
        if (verse(place).isPlayed()) {
            return verse(place).registration();
        }
        return before(place)
                .or(() -> plan.places().stream()
                        .filter(other -> verse(other).isPlayed())
                        .findFirst())
                .map(this::drawn)
                .orElse(Registration.silent(organ));
    }

    /** Whether nobody plays here and something is moved for the next verse. */
    private boolean isSetMeanwhile() {
        return plan.further(here, 1)
                .filter(next -> verse(next).isPlayed() && before(next).isPresent())
                .filter(next -> !drawn(next).equals(drawn(here)))
                .isPresent();
    }

    /** The piston of a verse that would set something else, as the plan has it. */
    private Optional<PistonChoice.HeldElsewhere> heldElsewhere(VersePlace place) {
        return PistonChoice.heldElsewhere(work.plan(), organ, place);
    }

    /** The piston of the verse; blank where it has none, or one that sets something else. */
    String piston() {
        String name = organ.pistons().any() ? verse(here).piston().strip() : "";
        return name.isEmpty() || heldElsewhere(here).isPresent() ? "" : name;
    }

    /** What is moved from verse to verse: the piston, and what it leaves to be moved; or all by hand. */
    private void moves(Flow flow, VersePlace before, VersePlace place) {
        StopChanges moves = StopChanges.between(drawn(before), drawn(place));
        if (moves.count() == 0) {
            flow.add("No changes.", Style.STRONG);
            return;
        }
        heldElsewhere(place).ifPresent(held -> flow.add(held.words() + ".", Style.NEAR));
        Registration set = set(before, place);
        if (!set.equals(drawn(before))) {
            flow.add(pistonWords(place), Style.DRAWN);
            moves = StopChanges.between(set, drawn(place));
        }
        List<StopChangesByDivision> movements = StopChangesByDivision.of(organ, moves);
        knobs(flow, moves, place, Style.STRONG);
        movements.stream().filter(each -> each.box().isPresent()).forEach(each -> flow.paragraph()
                .add(each.where() + " box " + each.box().get().opened(), Style.STRONG));
    }

    /** What is drawn once the piston of a verse is pressed, if it has one that sets it. */
    private Registration set(VersePlace before, VersePlace place) {
        if (heldElsewhere(place).isPresent()) {
            return drawn(before);
        }
        Registration planned = work.plan().verse(place).registration();
        return pressed(place).press(organ, drawn(before), planned);
    }

    /** What is moved for a verse; what is drawn and not heard in it is said apart, and last. */
    private void knobs(Flow flow, StopChanges moves, VersePlace place, Style style) {
        IndexSet sounding = work.sound().sounding(drawn(place), verse(place).hands());
        List<StopChangesByDivision> heard = StopChangesByDivision.of(organ, moves.sounding(sounding));
        knobs(flow, heard, Registration.PUT_IN, StopChangesByDivision::putIn, Style.TEXT);
        knobs(flow, heard, "draw", StopChangesByDivision::drawn, style);
        List<StopChangesByDivision> waiting = StopChangesByDivision.of(organ, moves.waiting(sounding));
        knobs(flow, waiting, "draw, " + Wording.WAITS + ":", StopChangesByDivision::drawn, Style.TEXT);
    }

    private static void knobs(
            Flow flow,
            List<StopChangesByDivision> movements,
            String lead,
            Function<StopChangesByDivision, List<String>> which,
            Style style) {
        List<StopChangesByDivision> moved =
                movements.stream().filter(each -> !which.apply(each).isEmpty()).toList();
        if (moved.isEmpty()) {
            return;
        }
        flow.paragraph().add(lead, Style.HEADING);
        for (int i = 0; i < moved.size(); i++) {
            List<String> names = new ArrayList<>(which.apply(moved.get(i)));
            int last = names.size() - 1;
            names.set(last, names.get(last) + (i < moved.size() - 1 ? ";" : ""));
            flow.addNames(place(moved.get(i)), names, style);
        }
    }

    /** Couplers say themselves where they are. */
    private static String place(StopChangesByDivision movements) {
        return movements.where().equals(StopChangesByDivision.COUPLERS) ? "" : movements.where();
    }

    /** The most rows that each block takes in a verse of the service, as it is planned. */
    static DeskLayout.Needs needs(Marks marks, PlanEdit work, DeskNotes notes, int columns) {
        return work.plan().places().stream()
                .map(place -> new DeskWords(marks, work.at(place), notes).needs(columns))
                .reduce(DeskLayout.Needs.NONE, DeskLayout.Needs::most);
    }

    private DeskLayout.Needs needs(int columns) {
        Flow moved = new Flow();
        before(here).filter(from -> verse(here).isPlayed()).ifPresent(from -> moves(moved, from, here));
        return new DeskLayout.Needs(
                moved.rows(columns),
                drawn().whole().rows(columns),
                drawn().byTheRest().rows(columns));
    }

    /** The same in sentences, with hands and feet. */
    String registered() {
        Verse verse = verse(here);
        return Wording.registered(organ, verse, work.sound().sounding(verse.registration(), verse.hands()));
    }

    /** All that is drawn. */
    DrawnWords drawn() {
        IndexSet sounding = verse(here).isPlayed()
                ? work.sound().sounding(drawn(here), verse(here).hands())
                : drawn(here).stops();
        return new DrawnWords(marks, organ, DivisionLine.of(organ, drawn(here), sounding));
    }

    /** What comes next, how it differs, and what is moved for it. */
    Flow next() {
        Flow flow = new Flow();
        Optional<VersePlace> next = plan.further(here, 1);
        if (next.isEmpty()) {
            return flow.add("This is the last verse.", Style.TEXT);
        }
        VersePlace there = next.get();
        Verse verse = verse(there);
        if (there.hymn() != here.hymn()) {
            flow.add((hymn(there).number() + " " + hymn(there).title()).strip() + ":", Style.STRONG);
        }
        flow.add(verse.label(), Style.STRONG);
        String difference = difference(estimate(there), estimate(here));
        boolean isPlayedOtherwise =
                verse.isPlayed() && !verse.hands().equals(verse(here).hands());
        List<String> said = Stream.of(
                        Wording.who(verse, plan.heading().people(), estimate(there)),
                        difference,
                        verse.isOptional() ? "may be left out" : "",
                        isPlayedOtherwise ? Wording.hands(organ, verse.hands()) : "")
                .filter(words -> !words.isEmpty())
                .toList();
        for (int i = 0; i < said.size(); i++) {
            boolean isLast = i == said.size() - 1;
            Style style = isLast && isPlayedOtherwise ? Style.STRONG : Style.TEXT;
            flow.add(said.get(i) + (isLast ? "" : ","), style);
        }
        if (!verse.isPlayed()) {
            return flow;
        }
        flow.paragraph();
        before(there).ifPresent(from -> moves(flow, from, there));
        return flow;
    }

    private String difference(Estimate there, Estimate now) {
        if (there.isSilent() || now.isSilent()) {
            return "";
        }
        long db = Math.round(there.organDba().getAsDouble() - now.organDba().getAsDouble());
        return db == 0 ? "same level" : Math.abs(db) + " dB " + (db > 0 ? "stronger" : "softer");
    }

    /** What makes the verse stronger, or softer: the next two steps of the ladder, in as many words as fit. */
    Flow steps(int way, int columns, int rows) {
        return notes.ladder(work, here)
                .map(ladder -> new LadderWords(marks, organ, ladder, work.plan().verse(here), notes.steps(here))
                        .fitting(way, columns, rows))
                .orElseGet(() -> new Flow().add(Mark.CUT.in(marks), Style.TEXT));
    }
}
