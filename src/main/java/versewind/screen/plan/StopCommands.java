package versewind.screen.plan;

import java.util.List;
import java.util.stream.IntStream;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Question;
import versewind.screen.state.State;
import versewind.sheet.Wording;

/** Registering and putting in: stops, couplers, tremulants, boxes, whole registrations. */
final class StopCommands {
    private StopCommands() {}

    static State putAllIn(State state, PlanEdit work, Verse verse) {
        return PlanChanges.told(
                state, PlanChanges.change(state, work, verse.withRegistration(allIn(verse))), "Everything put in.");
    }

    /** As a general cancel does it: no box moves. */
    private static Registration allIn(Verse verse) {
        return new Registration(
                IndexSet.EMPTY,
                IndexSet.EMPTY,
                IndexSet.EMPTY,
                verse.registration().boxes());
    }

    /** All that is drawn, how it is played, and the piston. */
    static State tell(State state, PlanEdit work, Verse verse) {
        return state.says(Wording.registered(work.instrument(), verse, StopGridView.sounding(work)));
    }

    static State toggle(State state, PlanEdit work, Verse verse) {
        List<Item> items = StopGridLayout.items(work.instrument());
        if (work.item() >= items.size()) {
            return state.says("This organ has no stops.");
        }
        return PlanChanges.change(
                state, work, verse.withRegistration(toggled(verse.registration(), items.get(work.item()))));
    }

    /** What the stop under the cursor is. */
    static State describe(State state, PlanEdit work) {
        List<Item> items = StopGridLayout.items(work.instrument());
        if (work.item() >= items.size() || !(items.get(work.item()) instanceof Item.StopItem stop)) {
            return state.says("Select a stop to see what it is.");
        }
        var described = work.instrument().stops().get(stop.stop()).stop();
        boolean isDrawn = work.verse()
                .filter(verse -> verse.registration().stops().contains(stop.stop()))
                .isPresent();
        String label = Item.fullName(work.instrument(), stop) + (isDrawn ? ", drawn" : ", not drawn");
        return Question.ofStop(state, label, described.name());
    }

    private static Registration toggled(Registration registration, Item item) {
        if (item instanceof Item.StopItem stop) {
            return registration.toggleStop(stop.stop());
        }
        if (item instanceof Item.CouplerItem coupler) {
            return registration.toggleCoupler(coupler.coupler());
        }
        return registration.toggleTremulant(((Item.TremulantItem) item).tremulant());
    }

    static State moveBox(State state, PlanEdit work, Verse verse, int step) {
        int division = boxToMove(work, verse);
        if (division < 0) {
            return state.says("This organ has no swell box.");
        }
        BoxPosition from = verse.registration().boxes().get(division);
        BoxPosition to = step > 0 ? from.wider() : from.narrower();
        String name = work.instrument().divisions().get(division).name();
        if (to == from) {
            return state.says(name + " box " + to.opened() + " already.");
        }
        State moved = PlanChanges.change(
                state, work, verse.withRegistration(verse.registration().withBox(division, to)));
        return PlanChanges.told(state, moved, name + " box " + to.opened() + ".");
    }

    /**
     * The division whose box a key means: that of the knob where we are, else one that a hand plays, else the first
     * that has a box; -1 where there is none.
     */
    private static int boxToMove(PlanEdit work, Verse verse) {
        Instrument instrument = work.instrument();
        List<Division> divisions = instrument.divisions();
        List<Item> items = StopGridLayout.items(work.instrument());
        IntStream here = work.item() < items.size() ? division(instrument, items.get(work.item())) : IntStream.empty();
        IntStream hands = IntStream.of(verse.hands().right(), verse.hands().left());
        return IntStream.concat(IntStream.concat(here, hands), IntStream.range(0, divisions.size()))
                .filter(division -> divisions.get(division).isEnclosed())
                .findFirst()
                .orElse(-1);
    }

    /** The division of a stop or a tremulant; couplers have none. */
    static IntStream division(Instrument instrument, Item item) {
        if (item instanceof Item.StopItem stop) {
            return IntStream.of(instrument.stops().get(stop.stop()).division());
        }
        if (item instanceof Item.TremulantItem tremulant) {
            String home = instrument.tremulants().get(tremulant.tremulant()).division();
            return instrument.division(home).stream();
        }
        return IntStream.empty();
    }

    static State takeOver(State state, PlanEdit work, Verse verse) {
        return work.before()
                .map(before -> PlanChanges.told(
                        state,
                        PlanChanges.change(
                                state,
                                work,
                                verse.withRegistration(before.registration()).withHands(handsFor(verse, before))),
                        "Copied from " + before.label() + "."))
                .orElseGet(() -> state.says("This is the first verse of the service."));
    }

    static State carryOn(State state, PlanEdit work, Verse verse) {
        int at = work.place().verse();
        List<Verse> verses = work.verses();
        if (at + 1 >= verses.size()) {
            return state.says("This is the last verse of the hymn.");
        }
        List<Verse> carried = IntStream.range(0, verses.size())
                .mapToObj(i -> i <= at || verses.get(i).sungBy() != verse.sungBy()
                        ? verses.get(i)
                        : verses.get(i)
                                .withRegistration(verse.registration())
                                .withHands(handsFor(verses.get(i), verse)))
                .toList();
        int after = verses.size() - 1 - at;
        int same = (int) verses.stream()
                .skip(at + 1)
                .filter(each -> each.sungBy() == verse.sungBy())
                .count();
        if (same == 0) {
            return state.says("The following verses have other singers or hands; they are unchanged.");
        }
        if (carried.equals(verses)) {
            return state.says("No change: it is the same already.");
        }
        Plan plan = work.plan().withVerses(work.place().hymn(), carried);
        String said = carriedOn(same, after - same);
        return Question.before(
                same, state, "Draw the same in " + same + " verses after this one?", closed -> PlanChanges.edit(
                                closed, work, plan, work.place())
                        .says(said));
    }

    private static String carriedOn(int verses, int leftAlone) {
        return "Carried on to the " + (verses == 1 ? "verse" : verses + " verses") + " after"
                + switch (leftAlone) {
                    case 0 -> ".";
                    case 1 -> "; 1 with other singers or hands is unchanged.";
                    default -> "; " + leftAlone + " that others sing or play are left alone.";
                };
    }

    /** Copying a registration copies the hands too, but for a melody that is or was soloed. */
    private static HandsAndFeet handsFor(Verse verse, Verse from) {
        boolean soloed =
                verse.hands().layout().isSoloed() || from.hands().layout().isSoloed();
        return soloed ? verse.hands() : from.hands();
    }
}
