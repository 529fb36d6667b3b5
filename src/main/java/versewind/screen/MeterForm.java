package versewind.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.plan.Verse;
import versewind.sound.MeterReading;
import versewind.sound.Seat;

/** The form of a meter's reading: what it asks, and the reading that the answers make. */
final class MeterForm {

    private static final int LEVEL = 0;
    private static final int SEAT = 1;
    private static final int PEOPLE = 2;
    private static final int SINGERS = 3;

    private MeterForm() {}

    static Panel.Form of(String verse, String expected) {
        return new Panel.Form(
                "A meter's reading of " + verse,
                List.of(
                        Panel.Field.of("Level", "", "mean level in dB(A) while it is played, as 78.5; " + expected),
                        Panel.Field.of("Seat", Seat.NAVE.word(), "where the meter stands: nave, far, choir or console"),
                        Panel.Field.of("People", "0", "in the room"),
                        Panel.Field.of("Singers", "", "how many of them sing with the organ; blank for nobody")),
                LEVEL,
                new FormAction.MeterReading(),
                "");
    }

    static MeterReading reading(FilledForm filled, Verse verse, LocalDate today) {
        Seat seat = Stream.of(Seat.values())
                .filter(each -> each.word().equalsIgnoreCase(filled.text(SEAT)))
                .findFirst()
                .orElseThrow(() -> new FilledForm.Wrong(SEAT, "The meter stands in the nave, far, choir or console."));
        int people = filled.numberIfAny(PEOPLE, 0, Verse.MOST_PEOPLE).orElse(0);
        OptionalInt singers = filled.numberIfAny(SINGERS, 2, Verse.MOST_PEOPLE);
        Optional<MeterReading.Sung> sung = singers.isPresent()
                ? Optional.of(new MeterReading.Sung(singers.getAsInt(), verse.singing()))
                : Optional.empty();
        double dba = levelDba(filled);
        try {
            return new MeterReading(today.toString(), verse.registration(), verse.hands(), seat, people, sung, dba);
        } catch (IllegalArgumentException wrong) {
            throw new FilledForm.Wrong(sung.isPresent() ? SINGERS : LEVEL, sentence(wrong.getMessage()));
        }
    }

    private static double levelDba(FilledForm filled) {
        try {
            return Double.parseDouble(filled.text(LEVEL).replace(',', '.'));
        } catch (NumberFormatException noNumber) {
            throw new FilledForm.Wrong(LEVEL, "The level is a number of dB(A), as 78.5.");
        }
    }

    private static String sentence(String message) {
        return message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1) + ".";
    }
}
