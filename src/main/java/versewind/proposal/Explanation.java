package versewind.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;

/** What speaks for a registration, in one sentence. */
final class Explanation {

    private static final double RESERVATION = 0.6;
    private static final double WORTH_A_WORD_DB = 1;

    private final OrganFacts organ;
    private final Requirement requirement;
    private final DraftAnalysis sounding;

    Explanation(OrganFacts organ, Requirement requirement) {
        this.organ = organ;
        this.requirement = requirement;
        sounding = new DraftAnalysis(organ);
    }

    String of(Draft draft, Score score, double marginDb) {
        sounding.look(draft);
        String sound = sounding.isSoloed() ? soloed(draft) : chorus(draft) + coupled(draft) + feet(draft);
        String sentence = sound + ": " + balance(marginDb);
        boolean isWeak =
                requirement.isPeople() && marginDb < requirement.target().lowDb() - WORTH_A_WORD_DB;
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + reservation(score, isWeak) + ".";
    }

    private String name(int division) {
        return organ.organ().divisions().get(division).name();
    }

    /** Of the divisions under the hands the one of which most is drawn. */
    private int fullest(Draft draft) {
        int fullest = draft.hands().right();
        for (int division : organ.organ().manualDivisions()) {
            if (organ.isOneKeyboard(division, fullest)
                    && sounding.drawn().drawnIn(division) > sounding.drawn().drawnIn(fullest)) {
                fullest = division;
            }
        }
        return fullest;
    }

    private String soloed(Draft draft) {
        return names(draft, draft.hands().right()) + " for the melody over "
                + names(draft, draft.hands().left());
    }

    private String names(Draft draft, int division) {
        List<String> names = new ArrayList<>();
        draft.stops().forEach(stop -> {
            if (organ.isOneKeyboard(organ.divisionOf(stop), division)) {
                names.add(organ.stop(stop).label());
            }
        });
        int fullest = names.isEmpty() || sounding.drawn().drawnIn(division) > 0 ? division : fullest(draft);
        return name(fullest) + " " + (names.isEmpty() ? "with nothing drawn" : listed(names));
    }

    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private String chorus(Draft draft) {
        String where = " on the " + name(fullest(draft));
        boolean hasReed =
                sounding.drawn().inRight(StopClass.REED_8) + sounding.drawn().inRight(StopClass.REED_16) > 0;
        if (hasReed) {
            return (sounding.drawn().inRight(StopClass.MIXTURE) > 0
                            ? "the chorus with mixture and reeds"
                            : "the chorus with its reeds")
                    + where;
        }
        if (sounding.drawn().inRight(StopClass.MIXTURE) > 0) {
            return "the principal chorus to the mixture" + where;
        }
        List<String> pitches = new ArrayList<>();
        addPitch(pitches, "8", StopClass.PRINCIPAL_8);
        addPitch(pitches, "4", StopClass.PRINCIPAL_4);
        addPitch(pitches, "2", StopClass.PRINCIPAL_2);
        List<String> flutes = new ArrayList<>();
        addPitch(flutes, "8", StopClass.FLUTE_8);
        addPitch(flutes, "4", StopClass.FLUTE_4);
        addPitch(flutes, "2", StopClass.FLUTE_2);
        List<String> groups = new ArrayList<>();
        addGroup(groups, "principal", pitches);
        addGroup(groups, "flute", flutes);
        if (sounding.drawn().inRight(StopClass.STRING_8) > 0) {
            groups.add("string 8");
        }
        return (groups.isEmpty() ? "stops" : String.join(" with ", groups)) + where;
    }

    private void addPitch(List<String> pitches, String feet, StopClass layer) {
        if (sounding.drawn().inRight(layer) > 0) {
            pitches.add(feet);
        }
    }

    private static void addGroup(List<String> groups, String family, List<String> pitches) {
        if (!pitches.isEmpty()) {
            groups.add(family + (pitches.size() > 1 ? "s " : " ") + listed(pitches));
        }
    }

    private String coupled(Draft draft) {
        String names = draft.couplers().stream()
                .filter(coupler -> organ.keyboardOf(coupler) != organ.pedal())
                .filter(coupler -> organ.keyboardOf(coupler) != organ.sourceOf(coupler))
                .filter(coupler -> sounding.isUnderHandOrFoot(organ.keyboardOf(coupler)))
                .filter(coupler -> !organ.isOneKeyboard(
                        organ.sourceOf(coupler), draft.hands().right()))
                .mapToObj(coupler -> name(organ.sourceOf(coupler)))
                .distinct()
                .collect(Collectors.joining(" and "));
        return names.isEmpty() ? "" : " with the " + names + " coupled";
    }

    private String feet(Draft draft) {
        if (!draft.hands().layout().usesPedal()) {
            return ", hands only";
        }
        if (draft.hands().layout() == Layout.COUPLED_DOWN) {
            return ", the feet without 16 ft";
        }
        if (organ.pedal() == OrganFacts.NO_PEDAL) {
            return "";
        }
        List<String> pitches = new ArrayList<>();
        addFeet(pitches, "32", StopClass.PEDAL_32);
        addFeet(pitches, "16", StopClass.PEDAL_16);
        addFeet(pitches, "8", StopClass.PEDAL_8);
        addFeet(pitches, "4", StopClass.PEDAL_4);
        IndexSet couplers = draft.couplers();
        boolean isCoupled = couplers.stream().anyMatch(coupler -> organ.keyboardOf(coupler) == organ.pedal());
        String own = pitches.isEmpty() ? "pedal" : "pedal " + listed(pitches);
        boolean isReedy = sounding.drawn().inFeet(StopClass.PEDAL_REED_16)
                        + sounding.drawn().inFeet(StopClass.PEDAL_REED_8)
                > 0;
        own = isReedy ? own + " with reed" : own;
        return ", " + own + (isCoupled ? " coupled" : "");
    }

    private void addFeet(List<String> pitches, String feet, StopClass layer) {
        if (sounding.drawn().inFeet(layer) > 0) {
            pitches.add(feet);
        }
    }

    private String balance(double marginDb) {
        Target target = requirement.target();
        boolean isLess = marginDb < target.lowDb() - WORTH_A_WORD_DB;
        boolean isMore = marginDb > target.highDb() + WORTH_A_WORD_DB;
        return switch (requirement.role()) {
            case PEOPLE -> people(isLess, isMore);
            case CHOIR, SOLOIST, SOLO_LINE -> voice(isLess, isMore);
            case UNDER_SOLO -> melody(isLess, isMore);
        };
    }

    private String people(boolean isLess, boolean isMore) {
        String whom = requirement.company().isSung() ? "leads" : "is there for the people to follow";
        if (isLess) {
            return requirement.company().isSung()
                    ? "it leads less firmly than it should"
                    : "it is softer than it should be";
        }
        return isMore
                ? "it leads more strongly than it should"
                : "it " + whom + " as a " + requirement.mood().word() + " verse wants";
    }

    private String voice(boolean isLess, boolean isMore) {
        String voices = requirement.role() == Role.SOLOIST ? "voice" : "voices";
        if (isLess) {
            return "it comes near to covering the words";
        }
        return isMore
                ? "it stays far beneath the " + voices
                : requirement.company().isSung()
                        ? "it carries the " + voices + " and lets the words through"
                        : "it is as soft as the " + voices + " will want it";
    }

    private static String melody(boolean isLess, boolean isMore) {
        if (isLess) {
            return "the melody stands out only a little";
        }
        return isMore ? "the melody stands far out" : "the melody stands out";
    }

    /** What speaks against it; of what is too weak not that it has stops too many. */
    private static String reservation(Score score, boolean isWeak) {
        return score.parts().stream()
                .filter(part -> part.kind() != PartKind.BALANCE && part.kind() != PartKind.SPARING)
                .filter(part -> !isWeak || part.kind() != PartKind.COLOUR)
                .filter(part -> part.points() >= RESERVATION)
                .max(Comparator.comparingDouble(ScorePart::points))
                .map(part -> "; but " + lower(part.sentence()))
                .orElse("");
    }

    /** A sentence as part of another: names keep their capital letters. */
    private static String lower(String sentence) {
        String words = sentence.substring(0, sentence.length() - 1);
        boolean isName = words.contains(":") && words.indexOf(':') < words.indexOf(' ');
        return isName ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }
}
