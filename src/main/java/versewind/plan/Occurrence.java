package versewind.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.stream.IntStream;
import versewind.organ.Instrument;

/**
 * A hymn of a plan that matches a search.
 *
 * @param hymn index of the hymn
 * @param verses indices of the verses that contain every word, in their own texts or those of the hymn and service
 */
public record Occurrence(int hymn, List<Integer> verses) {

    private static final DateTimeFormatter IN_WORDS = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

    public Occurrence {
        verses = List.copyOf(verses);
    }

    /**
     * The hymns of a plan that contain every word: in the title, date or notes of the service, the name of the organ,
     * the texts of the hymn, or one of its verses with its stops, couplers and tremulants.
     */
    public static List<Occurrence> in(Plan plan, Instrument instrument, Sought sought) {
        String service = service(plan.heading(), instrument);
        List<Occurrence> found = new ArrayList<>();
        for (int i = 0; i < plan.hymns().size(); i++) {
            Hymn hymn = plan.hymns().get(i);
            String over = service + Sought.plain(texts(hymn));
            List<Integer> verses = IntStream.range(0, hymn.verses().size())
                    .filter(v -> sought.isInPlain(
                            over + Sought.plain(texts(hymn.verses().get(v), instrument))))
                    .boxed()
                    .toList();
            if (!verses.isEmpty() || sought.isInPlain(over)) {
                found.add(new Occurrence(i, verses));
            }
        }
        return List.copyOf(found);
    }

    private static String service(ServiceHeading heading, Instrument instrument) {
        String date = heading.date().map(Occurrence::dates).orElse("");
        return Sought.plain(lines(heading.title(), date, heading.notes(), instrument.name()));
    }

    /** A date in figures and in words, as it may be sought. */
    public static String dates(LocalDate date) {
        return date + " " + IN_WORDS.format(date);
    }

    private static String texts(Hymn hymn) {
        return lines(hymn.number(), hymn.title(), hymn.tune(), hymn.metre(), hymn.key(), hymn.notes());
    }

    private static String texts(Verse verse, Instrument instrument) {
        StringJoiner texts = new StringJoiner("\n", "", "\n");
        texts.add(lines(
                verse.label(),
                verse.kind().word(),
                verse.sungBy().word(),
                verse.hands().layout().word(),
                verse.piston(),
                verse.note()));
        verse.registration()
                .stops()
                .forEach(stop -> texts.add(instrument.stops().get(stop).name().toString()));
        verse.registration()
                .couplers()
                .forEach(coupler -> texts.add(instrument.couplers().get(coupler).name()));
        verse.registration()
                .tremulants()
                .forEach(each -> texts.add(instrument.tremulants().get(each).name()));
        return texts.toString();
    }

    /** Texts on separate lines, so that no word is found across two of them. */
    private static String lines(String... texts) {
        return String.join("\n", texts) + "\n";
    }
}
