package versewind.screen.plan;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import versewind.calibration.Experience;
import versewind.calibration.HeardRegistration;
import versewind.organ.Count;
import versewind.plan.HeardAs;
import versewind.screen.toolkit.ShortWords;

/**
 * A row of what an organist knows of an organ: a usual registration, a service with the feedback on its verses, or the
 * feedback on one of these.
 *
 * @param kind which of them
 * @param heard what was heard; of a service every verse
 */
record UsualRow(Kind kind, List<HeardRegistration> heard) {

    enum Kind {
        USUAL,
        SERVICE,
        ANSWER
    }

    UsualRow {
        heard = List.copyOf(heard);
    }

    /** What is usual, then the services, the last one first, with their verses below those that are unfolded. */
    static List<UsualRow> of(Experience known, Collection<String> unfolded) {
        List<UsualRow> rows = new ArrayList<>();
        known.usual().forEach(each -> rows.add(new UsualRow(Kind.USUAL, List.of(each))));
        Map<String, List<HeardRegistration>> services = known.answers().stream()
                .collect(Collectors.groupingBy(HeardRegistration::service, LinkedHashMap::new, Collectors.toList()));
        List<String> latestFirst = new ArrayList<>();
        services.keySet().forEach(service -> latestFirst.add(0, service));
        for (String service : latestFirst) {
            rows.add(new UsualRow(Kind.SERVICE, services.get(service)));
            if (unfolded.contains(service)) {
                services.get(service).forEach(each -> rows.add(new UsualRow(Kind.ANSWER, List.of(each))));
            }
        }
        return rows;
    }

    boolean isService() {
        return kind == Kind.SERVICE;
    }

    /** What was heard; of a service the first verse. */
    HeardRegistration first() {
        return heard.get(0);
    }

    /** The service of feedback. */
    String service() {
        return first().service();
    }

    /** What it is called: "full church", "Sun 29 Nov 2026", below that "31 V1". */
    String name() {
        return switch (kind) {
            case USUAL -> first().name();
            case SERVICE -> day(service());
            case ANSWER -> "  " + first().name().substring(service().length()).replaceFirst("^, ", "");
        };
    }

    /** The day of a service as people say it, or its title. */
    static String day(String service) {
        try {
            return ShortWords.day(LocalDate.parse(service));
        } catch (DateTimeParseException isTitle) {
            return service;
        }
    }

    /** How it was, and for whom: "right, 150 people, singing ordinary"; of a service "3 answers: 1 too soft". */
    String felt() {
        HeardRegistration one = first();
        String how =
                switch (kind) {
                    case USUAL -> one.heard().felt();
                    case ANSWER -> one.heard().word();
                    case SERVICE -> "";
                };
        return isService()
                ? counted()
                : how + ", " + one.people() + " people, singing "
                        + one.singing().word();
    }

    private String counted() {
        Map<HeardAs, Long> counts = heard.stream()
                .collect(Collectors.groupingBy(
                        HeardRegistration::heard, () -> new EnumMap<>(HeardAs.class), Collectors.counting()));
        return Count.of(heard.size(), "answer") + ": "
                + counts.entrySet().stream()
                        .map(each -> each.getValue() + " " + each.getKey().word())
                        .collect(Collectors.joining(", "));
    }
}
