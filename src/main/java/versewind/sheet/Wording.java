package versewind.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Count;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Share;
import versewind.plan.Singing;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.rules.StopChangesByDivision;
import versewind.sound.Balance;
import versewind.sound.Estimate;

/** What is said of a verse in whole words, the same wherever there is room for them. */
public final class Wording {

    /** Of stops that are drawn and do not sound in this verse. */
    public static final String WAITS = "not heard here";

    private static final String CONGREGATION = "congregation of ";
    private static final String SINGING = ", singing ";
    private static final String RIGHT_HAND = ", right hand ";
    private static final String LEFT_HAND = ", left ";

    private Wording() {}

    /** Who sings and how: "congregation of 180, singing strongly", "organ alone". */
    public static String who(Verse verse, int people, Estimate estimate) {
        if (verse.isPlayed() && verse.kind().isOrganAlone() && verse.sungBy() != SungBy.MELODY_SOLOED) {
            return "organ alone";
        }
        String strength = singing(verse.singing());
        int present = verse.people().orElse(people);
        return switch (verse.sungBy()) {
            case CONGREGATION -> CONGREGATION + present + inTen(verse);
            case SMALL_CHOIR -> "small choir of " + estimate.singers() + strength;
            case SOLO_VOICE -> "soloist" + strength;
            case MELODY_SOLOED -> "the melody soloed";
            case DESCANT -> "descant over a " + CONGREGATION + present + inTen(verse);
            case TREBLES -> estimate.singers() + " trebles" + strength;
            case ALTERNATION -> CONGREGATION + present + " in alternation" + inTen(verse);
            case UNACCOMPANIED -> "unaccompanied";
            case VOICES_ALONE -> "choir, unaccompanied";
            case ONE_ALONE -> "solo voice, unaccompanied";
        };
    }

    /** How strongly they sing, where it is not as usual: ", singing gently". */
    private static String singing(Singing singing) {
        return switch (singing) {
            case ORDINARY -> "";
            case GENTLE -> SINGING + "gently";
            case STRONG -> SINGING + "strongly";
            case FULL_VOICE -> SINGING + "with full voice";
        };
    }

    /** The same, after how many of those present sing, where it is not as many as usual: ", 3 in 10 singing gently". */
    private static String inTen(Verse verse) {
        int inTen = verse.sung().share().inTen();
        String strength = singing(verse.singing());
        return inTen == Share.USUAL_IN_TEN
                ? strength
                : ", " + inTen + " in 10 " + (strength.isEmpty() ? "singing" : strength.substring(2));
    }

    /** A verse in a sentence: "V2"; one that bears its usual name "the last verse", "the introduction", "the Amen". */
    public static String called(Verse verse) {
        boolean isUsual = verse.label().equals(verse.kind().usualLabel());
        return isUsual ? "the " + verse.kind().word() : verse.label();
    }

    /** A key as it is printed: "E\u266d" for "E flat", "f\u266f minor" for "f sharp minor". */
    public static String key(String typed) {
        return typed.replaceFirst("^([A-Ga-g])(?:[ -]?flat|b)(?![a-z])", "$1\u266d")
                .replaceFirst("^([A-Ga-g])(?:[ -]?sharp|#)(?![a-z])", "$1\u266f");
    }

    /** What hands and feet play, and where: "four parts on Great". */
    public static String hands(Instrument organ, HandsAndFeet hands) {
        List<Division> divisions = organ.divisions();
        String right = divisions.get(hands.right()).name();
        String left = divisions.get(hands.left()).name();
        String where = hands.right() == hands.left() ? " on " + right : RIGHT_HAND + right + LEFT_HAND + left;
        return hands.layout().word() + where;
    }

    /** What hands and feet play in a sentence: "manuals only, on the Great"; on two manuals where they are. */
    public static String handsInWords(Instrument organ, HandsAndFeet hands) {
        return hands.layout().word() + ", " + manuals(organ, hands);
    }

    /** Where the hands are: "on the Great", "right hand Swell, left hand Great". */
    public static String manuals(Instrument organ, HandsAndFeet hands) {
        String right = organ.divisions().get(hands.right()).name();
        String left = organ.divisions().get(hands.left()).name();
        return hands.right() == hands.left() ? "on the " + right : "right hand " + right + ", left hand " + left;
    }

    /** All that is drawn, and how it is played: "V2: Great Principal 4; manuals only, on the Great; piston G3.". */
    public static String registered(Instrument organ, Verse verse, IndexSet sounding) {
        String piston = verse.piston().isBlank() ? "" : "; piston " + verse.piston();
        return verse.label() + ": "
                + (verse.isPlayed()
                        ? drawn(organ, verse.registration(), sounding) + "; " + handsInWords(organ, verse.hands())
                        : "nobody plays")
                + piston + ".";
    }

    /** All that is drawn: "Great Open Diapason 8, Principal 4; Swell Oboe 8; Swell box half open; Swell to Great". */
    public static String drawn(Instrument organ, Registration drawn, IndexSet sounding) {
        List<String> words = new ArrayList<>();
        for (DivisionLine line : DivisionLine.of(organ, drawn, sounding)) {
            String place = line.where().equals(StopChangesByDivision.COUPLERS) ? "" : line.where() + " ";
            words.add(place + String.join(", ", line.knobs()) + (line.waits() ? ", " + WAITS : ""));
            line.box().ifPresent(box -> words.add(place + "box " + box.opened()));
        }
        return words.isEmpty() ? "nothing is drawn" : String.join("; ", words);
    }

    /** The same with hands on two manuals said as in print: "four parts, R.H. Swell, L.H. Great". */
    public static String shortHands(String words) {
        return words.replace(RIGHT_HAND, ", R.H. ").replace(LEFT_HAND, ", L.H. ");
    }

    /** Who sings in fewer words: "480 people, strongly". */
    public static String shortWho(String words) {
        return words.replaceFirst("(?:a )?" + CONGREGATION + "(\\d+)", "$1 people")
                .replace(SINGING, ", ");
    }

    /** Both: "congregation of 180; four parts on Great". */
    public static String playing(Verse verse, int people, Estimate estimate, Instrument organ) {
        String also =
                (verse.mood() == Mood.PLAIN ? "" : "; to sound " + verse.mood().word())
                        + (verse.isOptional() ? "; may be left out" : "");
        return String.join("; ", whoAndHands(verse, people, estimate, organ)) + also;
    }

    /** Who sings and what hands and feet play; once, where the hands solo the melody to which nobody sings. */
    public static List<String> whoAndHands(Verse verse, int people, Estimate estimate, Instrument organ) {
        String who = who(verse, people, estimate);
        if (!verse.isPlayed()) {
            return List.of(who);
        }
        String hands = hands(organ, verse.hands());
        boolean isSaid =
                verse.mode() == Mode.MELODY_SOLOED && verse.hands().layout().isSoloed();
        return isSaid ? List.of("the " + hands) : List.of(who, hands);
    }

    /** The verdict on the organ, the words or the melody, with its odds: "lead only just, 6 in 10". */
    public static String verdict(Balance balance) {
        return verdict(balance, balance.words());
    }

    /** The same without its odds: "lead only just". */
    public static String verdictAlone(Balance balance) {
        return verdict(balance, balance.verdict().word());
    }

    private static String verdict(Balance balance, String words) {
        return switch (balance.verdict()) {
            case LEADS, ORGAN_ALONE, UNACCOMPANIED, NO_TUNE -> words;
            case LOST, LEAD_ONLY_JUST -> "lead " + words;
            case TOO_STRONG -> "organ " + words;
            case COVERED, VOICE_ONLY_JUST, CLEAR -> "words " + words;
            case BURIED, SOLO_LINE_ONLY_JUST, STANDS_OUT -> "melody " + words;
        };
    }

    /** The number behind the verdict: "share 23%", for words "index 64%"; empty where nothing is in doubt. */
    public static Optional<String> share(Balance balance) {
        String what = balance.kind() == Balance.Kind.VOICE ? "index " : "share ";
        return balance.odds().isEmpty()
                ? Optional.empty()
                : Optional.of(what + LevelText.percent(balance.share().orElseThrow()));
    }

    /** ", with its 5 verses in place of 4", where a hymn is copied over another; blank for as many. */
    public static String otherVerses(Hymn before, Hymn after) {
        long was = before.verses().stream().filter(Verse::isSung).count();
        long is = after.verses().stream().filter(Verse::isSung).count();
        return was == is ? "" : ", with its " + Count.of(is, "verse") + " in place of " + was;
    }
}
