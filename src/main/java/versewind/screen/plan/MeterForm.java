package versewind.screen.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.calibration.MeterReading;
import versewind.plan.Verse;
import versewind.screen.state.FormBox;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.sound.Estimate;
import versewind.sound.Seat;

/** The form of a meter's reading of the current verse. */
final class MeterForm {

    private static final int LEVEL = 0;
    private static final int SEAT = 1;
    private static final int PEOPLE = 2;
    private static final int SINGERS = 3;

    private static final String SILENT = "Nothing sounds here. Draw a registration first.";

    private MeterForm() {}

    static State open(State state, PlanEdit work, Verse verse) {
        int people = work.plan().heading().people();
        Estimate estimate = work.sound().estimate(verse, people, OptionalInt.empty());
        if (estimate.isSilent()) {
            return estimate.singers() < 2
                    ? state.says(SILENT)
                    : form(
                            state,
                            work,
                            verse,
                            "A meter's reading of the singing alone",
                            expected(
                                    state,
                                    estimate.singersDba(),
                                    estimate.plusMinus().singersDb()),
                            verse.people().orElse(people),
                            Integer.toString(estimate.singers()));
        }
        String expected = "with " + people + " people "
                + expected(state, estimate.organDba(), estimate.plusMinus().organDb());
        return form(state, work, verse, "A meter's reading of " + verse.label(), expected, 0, "");
    }

    private static String expected(State state, OptionalDouble level, double plusMinusDb) {
        return Math.round(level.orElseThrow()) + StatusView.plusMinus(state, plusMinusDb) + " is expected";
    }

    private static State form(
            State state, PlanEdit work, Verse verse, String title, String expected, int people, String singers) {
        return state.open(FormBox.of(
                title,
                List.of(
                        FormBox.Field.of("Level", "", "mean level in dB(A) meanwhile, such as 78.5; " + expected),
                        FormBox.Field.of(
                                "Seat",
                                Seat.NAVE.word(),
                                "where the meter stands: nave, far, choir or console; blank for nave"),
                        FormBox.Field.of("People", Integer.toString(people), "in the room"),
                        FormBox.Field.of("Singers", singers, "number of them who sing; blank for none")),
                (form, closed) -> taken(closed, work, reading(form, verse, closed))));
    }

    /** A reading that was typed is added to those taken. */
    private static State taken(State closed, PlanEdit work, MeterReading reading) {
        if (reading.expectedDba(work.sound()).isEmpty()) {
            return closed.says(SILENT);
        }
        List<MeterReading> readings = new ArrayList<>(work.organ().calibration().readings());
        readings.add(reading);
        return closed.wants(effects -> effects.recalibrate(List.copyOf(readings)));
    }

    private static MeterReading reading(FormBox form, Verse verse, State state) {
        Seat seat = form.isBlank(SEAT)
                ? Seat.NAVE
                : Stream.of(Seat.values())
                        .filter(each -> each.word().equalsIgnoreCase(form.text(SEAT)))
                        .findFirst()
                        .orElseThrow(() ->
                                new FormBox.Wrong(SEAT, "Enter where the meter stands: nave, far, choir or console."));
        int people = form.numberIfAny(PEOPLE, 0, Verse.MOST_PEOPLE).orElse(0);
        OptionalInt singers = form.numberIfAny(SINGERS, 2, Verse.MOST_PEOPLE);
        Optional<MeterReading.Sung> sung = singers.isPresent()
                ? Optional.of(new MeterReading.Sung(singers.getAsInt(), verse.singing()))
                : Optional.empty();
        double dba = levelDba(form);
        try {
            return new MeterReading(
                    state.today().toString(), verse.registration(), verse.hands(), seat, people, sung, dba);
        } catch (IllegalArgumentException wrong) {
            throw new FormBox.Wrong(sung.isPresent() ? SINGERS : LEVEL, sentence(wrong.getMessage()));
        }
    }

    private static double levelDba(FormBox form) {
        try {
            return Double.parseDouble(form.text(LEVEL).replace(',', '.'));
        } catch (NumberFormatException noNumber) {
            throw new FormBox.Wrong(LEVEL, "Enter a level in dB(A), such as 78.5.");
        }
    }

    private static String sentence(String message) {
        return message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1) + ".";
    }
}
