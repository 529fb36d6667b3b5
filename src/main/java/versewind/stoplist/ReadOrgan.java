package versewind.stoplist;

import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.schema.InstrumentFields;
import versewind.schema.OrganDraft;

/**
 * A text that holds a stop list, as anybody published it or as {@link TradeList} prints it, and the instrument that can
 * be made of it.
 *
 * @param list what was read
 * @param printed what it says besides, if it is one that was printed here
 * @param heading the line above the list that seems to name the organ; blank where there is none
 */
public record ReadOrgan(StopList list, Optional<TradeList.Read> printed, String heading) {

    /** Reads a text. */
    public static ReadOrgan of(String text) {
        if (TradeList.isOne(text)) {
            StopList list = StopList.read(TradeList.withoutParticulars(text));
            TradeList.Read printed = TradeList.read(text, published(list).map(NewInstrument::instrument));
            boolean isNamed = printed.isPrinted() || !list.title().isEmpty();
            String name = isNamed ? printed.draft().lines().get(0).at(InstrumentFields.NAME) : "";
            return new ReadOrgan(list, Optional.of(printed), name);
        }
        StopList list = StopList.read(text);
        return new ReadOrgan(list, Optional.empty(), list.title());
    }

    private static Optional<NewInstrument> published(StopList list) {
        return NewInstrument.of(list, list.title().isEmpty() ? "New organ" : list.title());
    }

    /**
     * The instrument.
     *
     * @param name what it is called
     * @return empty where no instrument can be made of the text
     */
    public Optional<NewInstrument> made(String name) {
        if (printed.isEmpty()) {
            return NewInstrument.of(list, name);
        }
        OrganDraft draft = printed.get().draft();
        OrganDraft named = draft.with(
                0, draft.lines().get(0).with(InstrumentFields.NAME, name).values());
        Optional<Instrument> organ = printed.get().troubles().isEmpty() ? named.instrument() : Optional.empty();
        return organ.map(each -> new NewInstrument(each, assumed()));
    }

    /** What an organ made of the list takes for granted, but for its action and room: a sentence each. */
    public List<String> assumed() {
        return printed.filter(TradeList.Read::isPrinted).isPresent()
                ? List.of()
                : published(list).map(NewInstrument::withoutRoom).orElse(List.of());
    }

    /** What keeps a list that was printed here from being an instrument, a sentence each. */
    public List<String> objections() {
        return printed.map(TradeList.Read::objections).orElse(List.of());
    }
}
