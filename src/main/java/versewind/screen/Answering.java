package versewind.screen;

import java.util.Map;
import java.util.Optional;
import versewind.plan.Answer;
import versewind.plan.Heard;
import versewind.plan.Verse;
import versewind.sound.Margin;

/** What the organist says of the verses after the service, and heeding it. */
final class Answering {
    private Answering() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.ANSWER, Handler.verse(Answering::answer));
        handlers.put(Command.HEED, Handler.work(Answering::heed));
    }

    /** From nothing said to too soft, right, too strong, nothing said. */
    private static Step answer(State state, Work work, Verse verse) {
        if (StatusView.estimate(work, verse).margin().kind() == Margin.Kind.ORGAN_ALONE) {
            return Step.says(
                    state, "The organ plays alone here; there is nobody it could be too soft or too strong for.");
        }
        Optional<Answer> next = next(verse, work.plan().heading().people());
        Step step = Handler.change(state, work, verse.withAnswer(next));
        String said = next.map(
                        answer -> verse.label() + " was " + answer.heard().word() + ", with " + answer.present()
                                + " present." + (work.isHeeding() ? "" : " Y takes it into account."))
                .orElse("Nothing is said of " + verse.label() + ".");
        return step.saying(said);
    }

    private static Optional<Answer> next(Verse verse, int present) {
        int at = verse.answer().map(answer -> answer.heard().ordinal() + 1).orElse(0);
        int then = verse.answer().map(Answer::present).orElse(present);
        return at < Heard.values().length ? Optional.of(new Answer(Heard.values()[at], then)) : Optional.empty();
    }

    private static Step heed(State state, Work work) {
        if (work.isHeeding()) {
            return Step.says(
                    state.with(work.unheeding()), "What was said of the verses is not taken into account any more.");
        }
        int answered = work.plan().answered().size();
        if (answered == 0) {
            return Step.says(state, "Of no verse is it said yet how it was. y says it of this one.");
        }
        return Step.says(
                state.with(work.heeding()),
                "What was said of " + (answered == 1 ? "one verse" : answered + " verses")
                        + " is taken into account: levels move to it and are surer.");
    }
}
