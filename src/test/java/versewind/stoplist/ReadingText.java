package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What was read, as plain lines to be compared: every stop with its reading, couplers, tremulants, lines not
 * understood.
 */
final class ReadingText {

    private ReadingText() {}

    static String of(StopList list) {
        StringBuilder text = new StringBuilder();
        if (!list.title().isEmpty()) {
            text.append(list.title()).append("\n");
        }
        for (ReadDivision division : list.divisions()) {
            text.append(division.name())
                    .append(
                            division.isPedal()
                                    ? ", pedal"
                                    : ", manual " + division.manual().getAsInt())
                    .append(division.keys().isPresent() ? ", " + division.keys().getAsInt() + " keys" : "")
                    .append(division.enclosed() ? ", enclosed" : "")
                    .append('\n');
            division.stops().forEach(stop -> text.append(stop(stop)));
        }
        list.couplers()
                .forEach(coupler -> text.append("coupler " + coupler.name() + ": " + coupler.source() + " on "
                        + coupler.keyboard() + ", " + coupler.kind() + "\n"));
        list.tremulants()
                .forEach(
                        tremulant -> text.append("tremulant " + tremulant.name() + ": " + tremulant.division() + "\n"));
        if (list.pistons().any() || list.pistons().levels() > 0) {
            text.append("pistons " + list.pistons().generals() + " generals, "
                    + list.pistons().divisionals() + ", " + list.pistons().levels() + " levels\n");
        }
        NewInstrument.of(list, "New").map(NewInstrument::instrument).ifPresent(made -> made.stops()
                .forEach(knob -> knob.stop()
                        .borrowed()
                        .ifPresent(lender -> text.append("pipes of " + lender + " for " + knob.name() + "\n"))));
        list.notUnderstood()
                .forEach(unread -> text.append(
                        unread.weight() + " " + unread.line() + ": " + unread.text() + " (" + unread.why() + ")\n"));
        return text.toString();
    }

    /** The same without families and remarks, a line for each division and for all couplers. */
    static String brief(StopList list) {
        List<String> lines = new ArrayList<>();
        if (!list.title().isEmpty()) {
            lines.add("title: " + list.title());
        }
        for (ReadDivision division : list.divisions()) {
            lines.add(division.name()
                    + (division.keys().isPresent() ? ", " + division.keys().getAsInt() + " keys" : "")
                    + (division.enclosed() ? ", boxed" : "")
                    + division.stops().stream()
                            .map(stop -> (stop.name() + " " + stop.feet()).strip()
                                    + (stop.supposed() ? "?" : "")
                                    + (stop.ranks() > 1 ? " (" + stop.ranks() + ")" : ""))
                            .collect(Collectors.joining(", ", ": ", "")));
        }
        list.couplers().stream()
                .map(each -> each.source() + ">" + each.keyboard()
                        + switch (each.kind()) {
                            case UNISON -> "";
                            case OCTAVE -> " 4";
                            case SUB_OCTAVE -> " 16";
                            case UNISON_OFF -> " off";
                        })
                .reduce((all, next) -> all + ", " + next)
                .ifPresent(all -> lines.add("couplers: " + all));
        list.tremulants().forEach(tremulant -> lines.add("tremulant: " + tremulant.division()));
        list.notUnderstood().forEach(unread -> lines.add(unread.weight() + " " + unread.line()));
        lines.add(list.wantsAttention() ? "to be checked" : "clear");
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static String stop(ReadStop stop) {
        String ranks = stop.ranks() > 1 ? " " + stop.ranks() + " ranks" : "";
        String remarks =
                stop.remarks().isEmpty() ? "" : stop.remarks().stream().collect(Collectors.joining("; ", " [", "]"));
        return "  " + stop.name() + " | " + stop.feet() + (stop.supposed() ? "?" : "") + ranks + " | "
                + stop.family().word() + ", " + stop.pipe().word() + (stop.how().isSure() ? "" : ", " + stop.how())
                + remarks + "\n";
    }
}
