package versewind.screen.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Count;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.rules.Advice;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;
import versewind.sound.Balance;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/** A plan for who hears it read aloud or has it under the fingers: one stop or one verse in a row, all in words. */
final class SpokenView {

    /** Verses that are named one by one; more are counted. */
    private static final int MOST_NAMED = 2;

    private SpokenView() {}

    /** Draws the side that has the keys: all stops, or the verses of the hymn. */
    static void paint(Frame frame, State state, PlanEdit work) {
        Layout layout = Layout.of(state);
        int columns = frame.width() - 3;
        boolean isStops = work.side() == PlanEdit.Side.STOPS;
        String heading = isStops
                ? stopsHeading(work)
                : "Verses of " + work.hymn().map(Hymn::title).orElse("no hymn");
        List<String> head = Text.wrapped(heading, columns);
        int rows = Math.max(1, layout.height() - head.size() - StatusView.furtherRows(frame, state, work));
        Box.write(frame, 1, layout.top(), head, head.size(), Style.HEADING);
        Box window = new Box(2, layout.top() + head.size(), columns, rows);
        ListBox<String> list = isStops
                ? new ListBox<>(knobs(work), work.item())
                : new ListBox<>(
                        work.verses().stream().map(verse -> verse(work, verse)).toList(),
                        work.place().verse());
        list.paintWords(frame, window, row -> row);
    }

    private static List<String> knobs(PlanEdit work) {
        IndexSet sounding = StopGridView.sounding(work);
        return StopGridLayout.items(work.instrument()).stream()
                .map(item -> knob(work, sounding, item))
                .toList();
    }

    private static String stopsHeading(PlanEdit work) {
        Instrument organ = work.instrument();
        return "Stops of " + work.verse().map(Verse::label).orElse("no verse")
                + IntStream.range(0, organ.divisions().size())
                        .filter(division -> organ.divisions().get(division).isEnclosed())
                        .mapToObj(division ->
                                ", " + organ.divisions().get(division).name() + " box "
                                        + work.verse()
                                                .map(verse -> verse.registration()
                                                        .boxes()
                                                        .get(division)
                                                        .opened())
                                                .orElse(""))
                        .collect(Collectors.joining());
    }

    /**
     * Where we are after something happened: the hymn and verse where the plan was opened or come back to, or that is
     * another, with what is moved and the weightiest finding; else the stop or verse chosen, and after a stop was moved
     * what comes of it.
     */
    static String here(State before, State now, PlanEdit work) {
        Optional<PlanEdit> open = before.work().filter(other -> other.id().equals(work.id()));
        PlanEdit was = open.orElse(work);
        boolean isBack = open.isEmpty() || !(before.top() instanceof PlanScreen);
        String place = place(was, work, isBack, open.isEmpty());
        String side = was.side() == work.side() ? "" : work.side() == PlanEdit.Side.STOPS ? "Stops. " : "Verses. ";
        if (work.verse().isEmpty()) {
            boolean isNews = isBack
                    || was.verse().isPresent()
                    || was.place().hymn() != work.place().hymn();
            return side + place + (isNews || work.side() == PlanEdit.Side.VERSES ? "" : stop(work) + ".");
        }
        return side + place + here(now, was, work, work.verse().get());
    }

    private static String here(State now, PlanEdit was, PlanEdit work, Verse verse) {
        if (isOtherVerse(was, work)) {
            return verse(work, verse) + ". " + MovesLine.inSentence(now, work, verse) + remark(work, List.of());
        }
        Registration drawn = verse.registration();
        boolean isMoved = !was.verse().get().registration().equals(drawn);
        boolean isPlayedOtherwise = !was.verse().get().withRegistration(drawn).equals(verse);
        boolean isSame = was.item() == work.item() && stop(was).equals(stop(work));
        String sound = sound(work.estimate(verse));
        if (isMoved && !isPlayedOtherwise && (isSame || work.side() == PlanEdit.Side.VERSES)) {
            return "Now " + sound + "." + remark(work, mentions(was));
        }
        if (isPlayedOtherwise || work.side() == PlanEdit.Side.VERSES) {
            return verse(work, verse) + "." + (isPlayedOtherwise ? remark(work, mentions(was)) : "");
        }
        return stop(work) + (isMoved ? andSound(work.estimate(verse)) + "." + remark(work, mentions(was)) : ".");
    }

    private static boolean isOtherVerse(PlanEdit was, PlanEdit work) {
        boolean isBeside = was.verses().size() != work.verses().size();
        return isBeside || was.verse().isEmpty() || !was.place().equals(work.place());
    }

    /** "Hymn 88, verse 2 of 3. " on the way back; with its title, where it is another: "88 The day is past. ". */
    private static String place(PlanEdit was, PlanEdit work, boolean isBack, boolean isOpened) {
        if (work.hymn().isEmpty()) {
            return isBack || was.hymn().isPresent() ? PlanScreen.NO_HYMNS : "";
        }
        Hymn hymn = work.hymn().get();
        boolean isOther = isOpened
                || was.place().hymn() != work.place().hymn()
                || !was.hymn().map(Hymn::name).equals(Optional.of(hymn.name()));
        if (!isBack && !isOther) {
            return "";
        }
        String name = isOther || hymn.number().isBlank() ? hymn.name() : hymn.number();
        String verse = work.verse().isEmpty()
                ? ". " + PlanScreen.NO_VERSES
                : isBack && !isOtherVerse(was, work)
                        ? ", " + Verses.inWords(hymn.verses(), work.place().verse()) + ". "
                        : ". ";
        return (isBack && !hymn.number().isBlank() ? "Hymn " : "") + name + verse;
    }

    /** The weightiest finding on the verse that is not among some: " Caution: The lead is lost.". */
    private static String remark(PlanEdit work, List<String> known) {
        return mentions(work).stream()
                .filter(words -> !known.contains(words))
                .findFirst()
                .map(words -> " " + Text.capital(heard(work.instrument(), words)))
                .orElse("");
    }

    /** Without the colon after a division: another stands before it. */
    private static String heard(Instrument organ, String sentence) {
        String heard = sentence;
        for (String division : organ.divisionNames()) {
            heard = heard.replace(division + ": ", division + " ");
        }
        return heard;
    }

    private static List<String> mentions(PlanEdit work) {
        return work.verse().isEmpty()
                ? List.of()
                : Advice.on(work.sound()).mentions(work.plan(), work.place()).stream()
                        .map(AdviceLine::words)
                        .toList();
    }

    /** The stop chosen: "Great: Open Diapason 8, drawn". */
    static String stop(PlanEdit work) {
        Item item = StopGridLayout.items(work.instrument()).get(work.item());
        return knob(work, StopGridView.sounding(work), item);
    }

    private static String knob(PlanEdit work, IndexSet sounding, Item item) {
        return Item.fullName(work.instrument(), item) + ", "
                + switch (StopGridView.mark(work, sounding, item)) {
                    case DRAWN -> "drawn";
                    case WAITS -> "drawn, " + Wording.WAITS;
                    default -> "in";
                }
                + StopGridView.lock(work, item).map(lock -> "; " + lock).orElse("");
    }

    /** "V2: congregation of 480, ordinary; fff, 84 dB, leads, 9 in 10". */
    private static String verse(PlanEdit work, Verse verse) {
        Estimate estimate = work.estimate(verse);
        return verse.label() + ": " + Wording.who(verse, work.plan().heading().people(), estimate) + andSound(estimate);
    }

    /** "; fff, 84 dB, leads, 9 in 10"; blank where nothing sounds and nobody sings. */
    private static String andSound(Estimate estimate) {
        String sound = sound(estimate);
        return sound.isEmpty() ? "" : "; " + sound;
    }

    /** "fff, 84 dB, leads, 9 in 10"; where nobody sings to an organ that plays, the level alone. */
    static String sound(Estimate estimate) {
        Stream<String> level = Stream.concat(
                estimate.dynamic().map(Dynamic::word).stream(),
                estimate.organDba().stream().mapToObj(dba -> Math.round(dba) + " dB"));
        boolean isJudged = estimate.balance().kind() != Balance.Kind.ORGAN_ALONE;
        Stream<String> verdict = isJudged ? Stream.of(Wording.verdict(estimate.balance())) : Stream.empty();
        return Stream.concat(level, verdict).collect(Collectors.joining(", "));
    }

    /**
     * How a service stands, in short: "13 of 15 verses lead; lead only just: 12, V2. Softest: 12, V1. Strongest: 130,
     * Last.".
     */
    static String summary(PlanEdit work) {
        Plan plan = work.plan();
        Map<VersePlace, Estimate> sung = new LinkedHashMap<>();
        plan.places().stream()
                .filter(place -> plan.verse(place).isSung())
                .forEach(place -> sung.put(place, work.at(place).estimate(plan.verse(place))));
        if (sung.isEmpty()) {
            return "There is no sung verse.";
        }
        Map<String, List<String>> others = new LinkedHashMap<>();
        sung.forEach((place, estimate) -> {
            if (estimate.balance().verdict() != Verdict.LEADS) {
                others.computeIfAbsent(Wording.verdictAlone(estimate.balance()), words -> new ArrayList<>())
                        .add(name(plan, place));
            }
        });
        int leading =
                sung.size() - others.values().stream().mapToInt(List::size).sum();
        String lead = leading == sung.size()
                ? (leading == 1 ? "The verse leads" : "All " + leading + " verses lead")
                : leading + " of " + Count.of(sung.size(), "verse") + (leading == 1 ? " leads" : " lead");
        return lead
                + others.entrySet().stream()
                        .map(each -> "; " + each.getKey() + ": "
                                + (each.getValue().size() > MOST_NAMED
                                        ? Count.of(each.getValue().size(), "verse")
                                        : String.join(" and ", each.getValue())))
                        .collect(Collectors.joining())
                + "." + extremes(plan, sung);
    }

    private static String extremes(Plan plan, Map<VersePlace, Estimate> sung) {
        List<VersePlace> played = sung.keySet().stream()
                .filter(place -> sung.get(place).organDba().isPresent())
                .sorted(Comparator.comparingDouble(
                        place -> sung.get(place).organDba().getAsDouble()))
                .toList();
        return played.size() < 2
                ? ""
                : " Softest: " + name(plan, played.get(0)) + ". Strongest: " + name(plan, played.get(played.size() - 1))
                        + ".";
    }

    /** "12, V1". */
    private static String name(Plan plan, VersePlace place) {
        return called(plan.hymn(place)) + ", " + plan.verse(place).label();
    }

    /** The number of a hymn, or its title. */
    static String called(Hymn hymn) {
        return hymn.number().isBlank() ? hymn.title() : hymn.number();
    }

    /** How a service rises and falls, in dynamics and dB(A): "208: Intro f 77, V1 fff 81". */
    static String curve(PlanEdit work) {
        Plan plan = work.plan();
        return IntStream.range(0, plan.hymns().size())
                        .mapToObj(index -> {
                            Hymn hymn = plan.hymns().get(index);
                            List<String> verses = hymn.verses().stream()
                                    .map(verse -> {
                                        Estimate estimate = work.sound()
                                                .estimate(verse, plan.heading().people(), hymn.tempo());
                                        return verse.label()
                                                + estimate.dynamic()
                                                        .map(Dynamic::word)
                                                        .map(word -> " " + word)
                                                        .orElse("")
                                                + (estimate.organDba().isPresent()
                                                        ? " "
                                                                + Math.round(estimate.organDba()
                                                                        .getAsDouble())
                                                        : " silent");
                                    })
                                    .toList();
                            return called(hymn) + ": " + String.join(", ", verses);
                        })
                        .collect(Collectors.joining("; "))
                + ".";
    }
}
