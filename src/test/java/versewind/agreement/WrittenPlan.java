package versewind.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.NotationException;
import versewind.organ.RegistrationText;
import versewind.organ.Worded;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.Verses;

/** Plans of one hymn written on one line each, in files of {@code src/test/resources/agreement}; see their heads. */
final class WrittenPlan {

    /** Share of the seats that is taken. */
    private static final double TAKEN = 0.6;

    private static final Path FOLDER = Path.of("src", "test", "resources", "agreement");

    private WrittenPlan() {}

    /** The cells of every line of a file. */
    static List<List<String>> lines(String file) {
        try (Stream<String> lines = Files.lines(FOLDER.resolve(file))) {
            return lines.filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> List.of(line.split(" ! ")))
                    .toList();
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    /** A plan of one hymn with these verses. */
    static Plan of(Instrument organ, List<String> verses) {
        List<Verse> read = new ArrayList<>();
        for (String verse : verses) {
            read.add(verse(organ, verse));
        }
        int people = (int) Math.round(TAKEN * organ.room().seats());
        Hymn hymn = new Hymn("", "A hymn", "", "", "", OptionalInt.of(96), "", Verses.allLabelled(read));
        return new Plan(new ServiceHeading("A service", Optional.empty(), people, ""), "organ", List.of(hymn));
    }

    private static Verse verse(Instrument organ, String written) {
        String[] parts = written.split(" / ", 3);
        try {
            return sung(Verses.blank(organ, VerseKind.VERSE).withLabel(""), parts[0].strip())
                    .withHands(hands(organ, parts[1].strip()))
                    .withRegistration(new RegistrationText(organ).parse(parts[2].strip()));
        } catch (NotationException wrong) {
            throw new IllegalArgumentException(written + ": " + wrong.getMessage(), wrong);
        }
    }

    private static Verse sung(Verse blank, String words) {
        Verse verse = blank;
        boolean isSinging = true;
        for (String word : words.split(" ", -1)) {
            Optional<Singing> singing =
                    word.equals("full") ? Optional.of(Singing.FULL_VOICE) : ofWord(Singing.values(), word);
            if (word.matches("[0-9]+")) {
                verse = verse.withPeople(OptionalInt.of(Integer.parseInt(word)));
            } else if (word.startsWith("@")) {
                verse = verse.withPiston(word.substring(1));
            } else if (isSinging && singing.isPresent()) {
                verse = verse.withSinging(singing.get());
                isSinging = false;
            } else if (ofWord(Mood.values(), word).isPresent()) {
                verse = verse.withMood(ofWord(Mood.values(), word).get());
            } else {
                verse = kindOrMode(verse, word);
            }
        }
        return verse;
    }

    private static <E extends Worded> Optional<E> ofWord(E[] values, String word) {
        return Stream.of(values).filter(each -> each.word().equals(word)).findFirst();
    }

    private static Verse kindOrMode(Verse verse, String word) {
        return switch (word) {
            case "people" -> verse.withMode(Mode.CONGREGATION);
            case "choir" -> verse.withMode(Mode.SMALL_CHOIR);
            case "solo" -> verse.withMode(Mode.SOLO_VOICE);
            case "soloed" -> verse.withMode(Mode.MELODY_SOLOED);
            default ->
                verse.withKind(Stream.of(VerseKind.values())
                        .filter(kind -> kind.usualLabel().equals(word))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("no word: " + word)));
        };
    }

    private static HandsAndFeet hands(Instrument organ, String words) {
        Layout layout = Stream.of(Layout.values())
                .filter(each -> words.toLowerCase(Locale.ROOT).startsWith(each.word()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no hands: " + words));
        String[] manuals = words.substring(layout.word().length()).strip().split(" over ", -1);
        int right = organ.division(manuals[0]).orElseThrow();
        int left = organ.division(manuals[manuals.length - 1]).orElseThrow();
        return new HandsAndFeet(layout, right, left);
    }
}
