package versewind.agreement;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import versewind.agreement.Fault.Remark;
import versewind.agreement.Program.Balance;
import versewind.agreement.Program.Offer;
import versewind.organ.Instrument;
import versewind.organ.RegistrationText;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;

/** The proposals for single verses of a plan, one beside the other, and the ladders that start from them. */
final class FiveOffers {

    private final Program program;
    private final Instrument organ;
    private final CaseCounts counts;
    private final Subject subject;
    private final String size;
    private final Situation situation;
    private final Set<Verse> climbed = new HashSet<>();

    FiveOffers(Program program, CaseCounts counts, Subject subject, Situation situation) {
        this.program = program;
        this.counts = counts;
        this.subject = subject;
        this.situation = situation;
        organ = subject.organ();
        size = subject.size();
    }

    void measure(Plan asked, Plan drawn, Measurement.Extent extent) {
        List<VersePlace> places = Measurement.places(drawn);
        int one = Math.floorMod(subject.id().hashCode() + situation.ordinal(), places.size());
        switch (extent) {
            case ONE_VERSE -> measure(asked, drawn, places.get(one));
            case EVERY_VERSE -> places.forEach(place -> measure(asked, drawn, place));
        }
    }

    private void measure(Plan asked, Plan drawn, VersePlace place) {
        List<Offer> offers = program.five(drawn, place);
        for (int i = 0; i < offers.size(); i++) {
            Verse verse = offers.get(i).verse();
            Plan with = drawn.withVerse(place, verse);
            String where = where(verse);
            counts.judged("proposals of verses", size);
            counts.broken(Claim.PROPOSAL_KEEPS_TABLE_2, Teacher.hard(organ, with, verse), size, where);
            counts.broken(Claim.ORDER, OrderTeacher.order(organ, verse), size, where);
            counts.broken(Claim.PLAN_KEPT, Teacher.fixed(asked, Program.verse(asked, place), verse), size, where);
            promise(with, place, offers.get(i), where);
            alike(offers, i);
            if (climbed.add(verse.withLabel("").withKind(VerseKind.VERSE).withPiston(""))) {
                ladder(with, place, verse, true);
                ladder(with, place, verse, false);
            }
        }
        band(drawn, place, offers);
    }

    private String where(Verse verse) {
        return Measurement.where(subject, situation, verse);
    }

    private String text(Verse verse) {
        return new RegistrationText(organ).format(verse.registration());
    }

    private void promise(Plan with, VersePlace place, Offer offer, String where) {
        if (!program.isPromiseKept(with, place, offer.why())) {
            String balance = program.balance(with, place).name();
            counts.broken(Claim.PROMISE_KEPT, balance, size, where + offer.why());
        }
    }

    private void alike(List<Offer> offers, int index) {
        Verse verse = offers.get(index).verse();
        offers.subList(0, index).stream()
                .map(Offer::verse)
                .filter(other -> Measurement.isAlike(program, verse, other))
                .findFirst()
                .ifPresent(other -> counts.broken(
                        Claim.FIVE_SOUNDS,
                        "same manual, step and colour",
                        size,
                        where(verse) + " beside " + text(other)));
    }

    /** The first of the proposals is balanced, where one is that suits the words as well. */
    private void band(Plan drawn, VersePlace place, List<Offer> offers) {
        if (offers.isEmpty() || isBalanced(drawn, place, offers.get(0))) {
            return;
        }
        offers.stream()
                .filter(offer -> isBalanced(drawn, place, offer) && isClean(drawn, offer.verse()))
                .findFirst()
                .ifPresent(offer -> counts.broken(
                        Claim.BAND,
                        "another of the five is better balanced than the first",
                        size,
                        where(offers.get(0).verse()) + " beside " + text(offer.verse())));
    }

    private boolean isBalanced(Plan drawn, VersePlace place, Offer offer) {
        Balance balance = program.balance(drawn.withVerse(place, offer.verse()), place);
        return balance == Balance.GOOD || balance == Balance.NOT_ASKED;
    }

    /** Nothing can be said against it; a gentle verse has neither mixtures nor reeds, and a tuba is for the last. */
    private boolean isClean(Plan plan, Verse verse) {
        boolean isGentle = verse.mood() == Mood.GENTLE || verse.singing() == Singing.GENTLE;
        boolean isBright = new Speaking(organ, verse.registration(), verse.hands())
                .manuals().stream()
                        .anyMatch(stop -> stop.isReed() || stop.stop().family().isCompound());
        boolean isTubaTooSoon = verse.kind() != VerseKind.LAST_VERSE
                && new Speaking(organ, verse.registration(), verse.hands())
                        .manuals().stream().anyMatch(SpeakingStop::isTuba);
        return !(isGentle && isBright)
                && !isTubaTooSoon
                && Teacher.hard(organ, plan, verse).isEmpty()
                && OrderTeacher.order(organ, verse).isEmpty()
                && SoftTeacher.mentions(organ, plan, verse).isEmpty();
    }

    private void ladder(Plan plan, VersePlace place, Verse start, boolean isStronger) {
        Verse before = start;
        for (Verse after : program.ladder(plan, place, start, isStronger)) {
            counts.judged("steps of ladders", size);
            String where = where(before) + (isStronger ? "stronger " : "softer ") + text(after) + ": ";
            Set<Remark> were = new HashSet<>(Teacher.hard(organ, plan, before));
            counts.broken(
                    Claim.STEP_KEEPS_TABLE_2,
                    Teacher.hard(organ, plan, after).stream()
                            .filter(remark -> !were.contains(remark))
                            .toList(),
                    size,
                    where);
            counts.broken(Claim.STEP_IN_ORDER, OrderTeacher.step(organ, before, after, isStronger), size, where);
            double rise = program.levelDba(after) - program.levelDba(before);
            if (isStronger ? rise <= 0 : rise >= 0) {
                String kind = isStronger ? "stronger is not louder" : "softer is not softer";
                counts.broken(Claim.STEP_HEARD, kind, size, where);
            }
            new StepSize(program, plan, before, after)
                    .tooMany()
                    .forEach(
                            part -> counts.broken(Claim.STEP_HEARD, "more than two knobs of the " + part, size, where));
            before = after;
        }
    }
}
