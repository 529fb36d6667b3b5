package versewind.stoplist;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The heading of a part of a list that holds no stops.
 *
 * @param kind what the part holds
 * @param head its words
 * @param inline what follows on the same line
 */
record SectionWord(Kind kind, String head, String inline) {

    /** What a part of a list holds. */
    enum Kind {
        COUPLERS,
        ACCESSORIES,
        TREMULANTS,
        PISTONS,
        NOTES,
        /** A line that only says that a list follows. */
        TITLE
    }

    private static final Set<String> COUPLERS =
            Spelling.set("couplers coupler couplings coupling koppeln koppel koppelungen kopplungen koppels "
                    + "koppelingen koppeling koppelung normalkoppeln normalkoppel accouplements accouplement "
                    + "copulae copule tirasses acoplamientos acoplamiento enganches acoplos acoples unioni "
                    + "unione accoppiamenti accoppiamento koplinger koplingar kopplingar koppling koblinger "
                    + "kobler koppler koppeler kopler superoktavkoppeln suboktavkoppeln superkoppeln subkoppeln "
                    + "oktavkoppeln manualkoppeln pedalkoppeln superoktavkoppel suboktavkoppel "
                    + "superoctaafkoppels octaafkoppels unisonkoppeln superoctavkoppeln suboctavkoppeln "
                    + "oktavkopplingar manualkoppels pedaalkoppels pedaalkoppelingen manuaalkoppels "
                    + "manuaalkoppelingen superkoppel subkoppel coppelungen coppeln subkoppels superkoppels "
                    + "enganche kollektivkoppeln");
    private static final Set<String> ACCESSORIES =
            Spelling.set("spielhilfen speelhulpen accessories accessory accessori accessoires aids nebenregister "
                    + "nevenregisters nebenzuge accesorios mechanicals mechanical hilfsregister tilbehor "
                    + "hjelpemidler spelhjalp spelhjalpmedel annessi pedaletti effekter hjelpeutstyr spielhilfe "
                    + "werktuigelijke werktuiglijke effects effektregister extras spillehjelpemidler "
                    + "spillehjaelp hjalpregister ayudas mecanismos nebenzuege varia sonstiges toys traps "
                    + "zubehor speelhulp speltekniska");
    private static final Set<String> TREMULANTS =
            Spelling.set("tremulants tremulanten tremblants tremulanter tremoli tremolos tremulantes");
    private static final Set<String> PISTONS =
            Spelling.set("pistons combinations kombinationen combinaisons combinazioni setzer studs combinaties "
                    + "setzeranlage kombinasjoner kombinationer combinaciones pistonknopfe toestuds studsets");
    private static final Set<String> NOTES =
            Spelling.set("notes history historie geschichte bemerkungen remarks remark anmerkungen opmerkingen "
                    + "remarques compositions zusammensetzung mixturzusammensetzung samenstelling legend "
                    + "legende abbreviations details literatur literature bibliography references sources "
                    + "weblinks links quellen discography photos contact summary statistics composizione note "
                    + "historique geschiedenis historia breaks composicion blower casework breakdown");
    private static final Set<String> TITLES =
            Spelling.set("disposition specification specifications stoplist stop list dispositie dispositionen "
                    + "disposizione disposicion disposisjon composition fonica stoplists tonal register "
                    + "registri registers registros jeux manuals manuale registerliste dispositon opus schedule "
                    + "scheme the organ orgel orgue organo die der orgels stops manual speaking");
    private static final Set<String> FILLERS =
            Spelling.set("und and en et e y och og other electric electrical manual manuals pedal inter intra "
                    + "divisional normal mechanische elektrische elektrisch mechanisch manuale pedale di de the "
                    + "thumb toe foot general generals octave unison playing registers register intermanual "
                    + "intramanual a sub super oktav oktave ottava meccaniche meccanici elettrici usual tilt "
                    + "tablets sonstige weitere overige andre feste freie fixes libres free fixed pedals "
                    + "pedalkoppeln koppeln standard console 16 8 4 system adjustable composition mixture "
                    + "mixturen sostituto tecnicas table ranks action combination mixtures for of by knob "
                    + "rocker elettriche");
    private static final Pattern COUPLER_ALONE = Pattern.compile(
            "koppel|koppeling|coupler|accouplement|acoplamiento|unione|enganche|koppling|koppelung|normalkoppel|superoktavkoppel|suboktavkoppel");

    private static final Pattern COLLECTIVE = Pattern.compile(
            ".*(?:koppeln|koppels|koppelingen|couplers|couplings|accouplements|tirasses|acoplamientos|enganches|unioni|koplinger|kopplingar)|spielhilfen|accessories|speelhulpen|aids|accessoires|accessori");

    /** Reads the heading of such a part, if a line is one. */
    static Optional<SectionWord> read(String line, String language) {
        int colon = line.indexOf(':');
        if (colon > 0) {
            Optional<SectionWord> before =
                    head(line.substring(0, colon), line.substring(colon + 1).strip(), true, language);
            if (before.isPresent()) {
                return before;
            }
        }
        String bare = line.replaceAll("[(\\[][^)\\]]*[)\\]]", " ");
        return head(bare, "", line.stripTrailing().endsWith(":"), language);
    }

    private static Optional<SectionWord> head(String head, String inline, boolean colon, String language) {
        List<String> words = Spelling.words(head);
        if (words.isEmpty() || words.size() > 6) {
            return Optional.empty();
        }
        boolean one = words.stream()
                        .anyMatch(word -> COUPLER_ALONE.matcher(word).matches())
                && words.stream().noneMatch(word -> COLLECTIVE.matcher(word).matches());
        if (!colon && one && !(words.size() == 1 && language.equals("nordic"))) {
            return Optional.empty();
        }
        for (Kind kind : Kind.values()) {
            Set<String> named = words(kind);
            boolean all = words.stream()
                    .allMatch(word -> named.contains(word) || (kind != Kind.TITLE && isFiller(word, kind)));
            if (all && words.stream().anyMatch(named::contains)) {
                return Optional.of(new SectionWord(kind, head.strip().toLowerCase(Locale.ROOT), inline));
            }
        }
        return Optional.empty();
    }

    private static boolean isFiller(String word, Kind kind) {
        return FILLERS.contains(word)
                || (kind != Kind.NOTES
                        && (COUPLERS.contains(word)
                                || ACCESSORIES.contains(word)
                                || TREMULANTS.contains(word)
                                || (PISTONS.contains(word) && kind != Kind.PISTONS)));
    }

    private static Set<String> words(Kind kind) {
        return switch (kind) {
            case COUPLERS -> COUPLERS;
            case ACCESSORIES -> ACCESSORIES;
            case TREMULANTS -> TREMULANTS;
            case PISTONS -> PISTONS;
            case NOTES -> NOTES;
            case TITLE -> TITLES;
        };
    }
}
