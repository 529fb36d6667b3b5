package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import versewind.organ.Footage;
import versewind.organ.Stop;

/** The text of one stop while it is taken apart: what is understood is cut out, and what is left is its name. */
final class StopWording {

    private static final Pattern PARENTHESES = Pattern.compile("[(\\[{]([^)\\]}]*)[)\\]}]?");
    private static final Pattern BULLET =
            Pattern.compile("^[\\s*\u2022\u00b7\u25cf\u25cb\u25aa\u25e6\u2023\u25a0\u25b6>+=~|\u2020\u2021#-]+");
    private static final Pattern ORDINAL = Pattern.compile(
            "^(?:(?:No|Nr)\\.?\\s?)?\\d{1,3}\\s?[.):\\]]\\s*(?!\\d\\s?/)(?=[^\\d.,]|\\d+\\s?['\\s])|^\\[\\d{1,3}\\]\\s*|^[a-z]\\)\\s+");
    private static final Pattern LEADING = Pattern.compile("^(\\d{1,3})(?:\\s+|\\s*-\\s+)(?=\\p{L})");
    private static final Pattern PIPES = Pattern.compile(
            "(?i)\\b\\d{1,4}\\s*(?:pipes?|notes?|pfeifen|tuyaux|pijpen|canne|tubos|piber|pipor|t\u00f6ne|tasten|bars?|bells|tubes|toner|chimes|tones|p\\b)|\\(?\\b(?:TC|CC|GG|FF)\\b\\)?");
    private static final Pattern COMPASS = Pattern.compile("(?i)\\b(?:from|ab|vanaf|fra|fr\u00e5n|depuis|\u00e0 partir"
            + " d[eu']|dal?|desde|v\\.?\\s?a\\.?|ten\\.?|tenor|from tenor|from"
            + " middle|to|bis)\\s*(?:the\\s)?(?:tenor\\s|middle\\s|fiddle\\s)?[a-g](?:is|#)?\\s?[\\d'\u00b0]{0,4}(?![\\p{L}])|\\b[CFGacfg][#]?[\\d'\u00b0]{0,3}\\s?-\\s?[a-g][#]?[\\d'\u00b0]{1,3}(?![\\p{L}\\d])|\\b(?:tenor|middle)"
            + " [cfg]\\b|\\bgrooved\\b.*$");
    private static final Pattern INTERVALS = Pattern.compile(
            "(?<![\\d/'])(?:1|5|8|12|15|17|19|21|22|24|26|29|33|36)(?:\\s?[.,\u00b7-]\\s?(?:5|8|10|12|15|17|19|21|22|24|26|28|29|31|33|36|40|43)){1,8}\\.?(?![\\d/'])");
    private static final Pattern MATERIAL = Pattern.compile(
            "(?i)\\b(?:\\d{1,3}\\s?%\\s?(?:tin|zinn|lead|blei|antimony|etain)?|spotted metal|plain metal|common"
                    + " metal)\\b");
    private static final Pattern BARE_RANKS =
            Pattern.compile("(?<![\\d/.,\\p{L}])(\\d{1,2})(?:\\s?[-/]\\s?(\\d{1,2}))?(?![\\d/\\p{L}'])");
    private static final Pattern IN_NAME =
            Pattern.compile("(?i)(?:\\bin|\\bno\\.?|\\bnr\\.?|\\bn\u00b0|\\ben|\\bde)\\s*$");
    private static final Pattern SPACES = Pattern.compile("[ \\t]+");
    private static final Pattern EDGES =
            Pattern.compile("^[\\s.,;:*\u2022\u2020\u2021=~|/#+>-]+|[\\s.,;:*\u2022\u2020\u2021=~|/#+>-]+$");
    private static final char GAP = '\u0001';

    private final ListStyle style;
    private final List<Footage> feet = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private StopLine.Mark mark = StopLine.Mark.NONE;
    private int ranks;
    private String numeral = "";
    private String text;

    StopWording(String text, ListStyle style) {
        this.style = style;
        this.text = ORDINAL.matcher(BULLET.matcher(text).replaceFirst("")).replaceFirst("");
        this.text = BULLET.matcher(this.text).replaceFirst("");
    }

    StopLine taken() {
        parentheses();
        text = COMPASS.matcher(PIPES.matcher(MATERIAL.matcher(text).replaceAll(GAP + ""))
                        .replaceAll(GAP + ""))
                .replaceAll(GAP + "");
        boolean compound = isCompound();
        intervals(compound);
        leading();
        markedRanks(compound);
        markedFeet();
        numeral();
        if (feet.isEmpty()) {
            bare(compound);
        } else if (compound && ranks == 0) {
            bareRanks();
        }
        String name = "";
        for (String piece : text.split(String.valueOf(GAP), -1)) {
            String trimmed =
                    EDGES.matcher(SPACES.matcher(piece).replaceAll(" ")).replaceAll("");
            if (trimmed.isEmpty()) {
                continue;
            }
            if (StopLine.isHalf(trimmed) && !name.isEmpty()) {
                name = name + " " + trimmed;
            } else if (name.isEmpty() && trimmed.matches(".*\\p{L}.*")) {
                name = trimmed.replaceAll("(?i)\\s(?:de|en|in|di)$", "");
            } else {
                remarks.add(trimmed);
            }
        }
        if (name.isEmpty() && !numeral.isEmpty()) {
            name = numeral;
            numeral = "";
        }
        List<String> halves = remarks.stream().filter(StopLine::isHalf).toList();
        if (!name.isEmpty() && halves.size() == 1) {
            name = name + " " + halves.get(0);
            remarks.remove(halves.get(0));
        }
        return new StopLine(name, List.copyOf(feet), mark, ranks, numeral, List.copyOf(remarks));
    }

    /** What stands in parentheses is a remark, unless it is nothing but a pitch or ranks. */
    private void parentheses() {
        Matcher matcher = PARENTHESES.matcher(text);
        StringBuilder kept = new StringBuilder();
        while (matcher.find()) {
            String inside = matcher.group(1).strip();
            boolean pitch = isWhole(Feet.MARKED, inside)
                    || isWhole(RankCount.MARKED, inside)
                    || isWhole(RankCount.NUMERAL, inside)
                    || inside.matches("32|16|8|4|2|\\d \\d/\\d")
                    || isWhole(INTERVALS, inside);
            if (!pitch && !inside.isEmpty() && !PIPES.matcher(inside).matches()) {
                remarks.add(inside);
            }
            matcher.appendReplacement(kept, pitch ? Matcher.quoteReplacement(" " + inside + " ") : String.valueOf(GAP));
        }
        text = matcher.appendTail(kept).toString();
    }

    private static boolean isWhole(Pattern pattern, String text) {
        return pattern.matcher(text).matches();
    }

    private boolean isCompound() {
        String letters = text.replaceAll("[^\\p{L}' -]", " ")
                .replaceAll("\\b(?:fach|rangs?|ranks?|rks?|rgs?|sterk|[IVX]+|f|ft|st|foot|feet)\\b", " ")
                .replaceAll("'", " ");
        return Lexicon.get()
                .known(letters.strip(), style.setting())
                .map(found -> found.kind().family().isCompound())
                .orElse(false);
    }

    private void intervals(boolean compound) {
        Matcher matcher = INTERVALS.matcher(text);
        if (matcher.find()) {
            int count = matcher.group().split("[.,\u00b7-]", -1).length;
            if (compound || count >= 3) {
                remarks.add(matcher.group());
                ranks = compound
                        ? (int) Stream.of(matcher.group().split("[.,\u00b7-]", -1))
                                .filter(each -> !each.isBlank())
                                .count()
                        : 0;
                cut(matcher.start(), matcher.end());
            }
        }
    }

    /** A number before the name: the stop's number in the list, or its pitch. */
    private void leading() {
        Matcher matcher = LEADING.matcher(text);
        if (!matcher.find()
                || Feet.MARKED.matcher(text).lookingAt()
                || RankCount.MARKED.matcher(text).lookingAt()) {
            return;
        }
        String rest = text.substring(matcher.end());
        boolean pitchLater = Feet.MARKED.matcher(rest).find() || endsInPitch(rest);
        Optional<Footage> pitch = Feet.read(matcher.group(1)).filter(Feet::isUsual);
        if (pitchLater || style.numbered() || pitch.isEmpty()) {
            text = rest;
        } else {
            feet.add(pitch.get());
            mark = StopLine.Mark.BARE;
            text = rest;
        }
    }

    private static boolean endsInPitch(String rest) {
        Matcher matcher = Feet.BARE.matcher(rest);
        boolean found = false;
        while (matcher.find()) {
            found |= !IN_NAME.matcher(rest.substring(0, matcher.start())).find()
                    && Feet.read(matcher.group(1)).filter(Feet::isUsual).isPresent()
                    && matcher.end() >= rest.stripTrailing().length() - 1;
        }
        return found;
    }

    private void markedRanks(boolean compound) {
        Matcher matcher = RankCount.MARKED.matcher(text);
        while (matcher.find()) {
            boolean fuss = !compound && matcher.group().matches("(?i)\\d+[\\s.]*f\\.?") && matcher.group(2) == null;
            boolean letter = !compound && matcher.group().matches("(?i).*[\\dIVX]\\s+[hkrx]\\.?");
            if (!fuss && !letter) {
                ranks = RankCount.of(matcher);
                cut(matcher.start(), matcher.end());
                return;
            }
        }
    }

    private void markedFeet() {
        Matcher matcher = Feet.MARKED.matcher(text);
        StringBuilder kept = new StringBuilder();
        while (matcher.find()) {
            Optional<Footage> each = Feet.read(matcher.group(1));
            each.ifPresent(feet::add);
            mark = each.isPresent() ? StopLine.Mark.UNIT : mark;
            matcher.appendReplacement(
                    kept, each.isPresent() ? String.valueOf(GAP) : Matcher.quoteReplacement(matcher.group()));
        }
        text = matcher.appendTail(kept).toString();
    }

    private void numeral() {
        Matcher matcher = RankCount.NUMERAL.matcher(text);
        while (matcher.find()) {
            if (!matcher.group(1).isEmpty()
                    && !IN_NAME.matcher(text.substring(0, matcher.start())).find()) {
                numeral = matcher.group().replaceAll("[.\\s]+$", "");
                ranks = ranks == 0 ? RankCount.of(matcher) : ranks;
                cut(matcher.start(), matcher.end());
                return;
            }
        }
    }

    private void bare(boolean compound) {
        Matcher matcher = Feet.BARE.matcher(text);
        List<int[]> places = new ArrayList<>();
        List<Footage> pitches = new ArrayList<>();
        while (matcher.find()) {
            Optional<Footage> each = Feet.read(matcher.group(1)).filter(Feet::isUsual);
            boolean named = IN_NAME.matcher(text.substring(0, matcher.start())).find()
                    && !text.substring(0, matcher.start()).strip().matches("(?i).*\\bde$");
            boolean palms =
                    matcher.group(1).matches("13|26|52") && !style.language().equals("es");
            if (each.isPresent() && !named && !palms) {
                places.add(new int[] {matcher.start(), matcher.end()});
                pitches.add(each.get());
            }
        }
        if (compound) {
            compoundBare(places, pitches);
        } else if (!pitches.isEmpty()) {
            take(places.get(places.size() - 1), pitches.get(pitches.size() - 1));
        }
        if (compound && ranks == 0) {
            bareRanks();
        }
    }

    /** Of a compound stop, 1 1/3 is a pitch and 3 are ranks; 2 is either. */
    private void compoundBare(List<int[]> places, List<Footage> pitches) {
        for (int i = pitches.size() - 1; i >= 0; i--) {
            Footage pitch = pitches.get(i);
            boolean whole = pitch.denominator() == 1;
            boolean pair = text.matches("(?i).*(?:sesq|terti|terzi|rausch|ruis).*");
            if (!whole
                    || pitch.numerator() >= 8
                    || pitch.numerator() == 1
                    || (pitch.numerator() == 2 && !pair)
                    || ranks > 0) {
                take(places.get(i), pitch);
                return;
            }
        }
    }

    private void take(int[] place, Footage pitch) {
        feet.add(pitch);
        mark = StopLine.Mark.BARE;
        cut(place[0], place[1]);
    }

    private void bareRanks() {
        Matcher matcher = BARE_RANKS.matcher(text);
        if (matcher.find()) {
            int count = RankCount.of(matcher);
            if (count >= 2 && count <= Stop.MOST_RANKS) {
                ranks = count;
                cut(matcher.start(), matcher.end());
            }
        }
    }

    private void cut(int from, int to) {
        text = text.substring(0, from) + GAP + text.substring(to);
    }
}
