package versewind.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.schema.FileFormat;
import versewind.schema.Found;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganNames;
import versewind.schema.Refused;
import versewind.schema.ServiceFields;
import versewind.schema.Values;

/** Reads and writes the file of a plan. */
final class PlanJson {

    private static final int MOST_HYMNS = 500;
    private static final int MOST_VERSES = 200;

    private PlanJson() {}

    /** Finds the instrument that a plan names. */
    @FunctionalInterface
    interface Instruments {
        /**
         * The instrument of a name.
         *
         * @param id the name, a valid one
         * @param found where it was found
         */
        KnownOrgan find(String id, Found found) throws BadFile, Refused;
    }

    /**
     * A plan and the instrument it is made for.
     *
     * @param plan the plan with today's names
     * @param organ the instrument
     * @param outdated whether the file has a former name
     * @param gone what it draws or plays that is no longer on the instrument
     */
    record Read(Plan plan, KnownOrgan organ, boolean outdated, Set<String> gone) {}

    /**
     * Reads a plan.
     *
     * @param file its name, for the sentence if it is wrong
     * @param bytes what is in it
     * @param instruments where its instrument is found
     */
    static Read read(Path file, byte[] bytes, Instruments instruments) throws BadFile {
        try {
            Found root = JsonTree.read(file, bytes);
            FileFormat.require(root);
            requireReadable(root);
            Values values = ServiceFields.TABLE.values(root, OrganNames.NONE);
            Plan plan = ServiceFields.plan(values);
            KnownOrgan organ = instruments.find(plan.instrument(), values.found(ServiceFields.INSTRUMENT));
            OrganNames names = OrganNames.of(organ.instrument(), organ.former());
            plan = plan.withHymns(values.get(ServiceFields.HYMNS, names));
            return new Read(plan, organ, names.isOutdated(), names.gone());
        } catch (Refused wrong) {
            throw BadFile.of(file, wrong);
        }
    }

    /** Counted before any of them is read: a file of 8 MB may hold far more than can be shown. */
    private static void requireReadable(Found root) throws Refused {
        List<Found> hymns = root.each("hymns");
        if (hymns.size() > MOST_HYMNS) {
            throw root.bad("there are " + hymns.size() + " hymns", "A service has at most " + MOST_HYMNS + ".");
        }
        for (Found hymn : hymns) {
            int verses = hymn.each("verses").size();
            if (verses > MOST_VERSES) {
                throw hymn.bad("there are " + verses + " verses", "A hymn has at most " + MOST_VERSES + ".");
            }
        }
    }

    /**
     * The text of the file.
     *
     * @throws IllegalArgumentException if the plan is not made for this instrument
     */
    static String text(Plan plan, Instrument instrument) {
        return new String(bytes(plan, instrument), StandardCharsets.UTF_8);
    }

    /**
     * The same as bytes in UTF-8.
     *
     * @throws IllegalArgumentException if the plan is not made for this instrument
     */
    static byte[] bytes(Plan plan, Instrument instrument) {
        if (!plan.fits(instrument)) {
            throw new IllegalArgumentException("the plan draws what " + instrument + " does not have");
        }
        if (!FileFormat.isId(plan.instrument())) {
            throw new IllegalArgumentException("\"" + plan.instrument() + "\" is not the name of an instrument's file");
        }
        return JsonText.bytes(ServiceFields.TABLE, plan, OrganNames.of(instrument));
    }
}
