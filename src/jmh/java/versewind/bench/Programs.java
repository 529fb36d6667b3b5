package versewind.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.sound.OrganSound;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.WhenChanged;

/** The programs that are compared, and the plans that they are given, in a folder of their own. */
final class Programs {

    /** A plan of 4 hymns on the organ of 26 stops. */
    static final String SMALL = "plans/harvest-festival.json";

    /** A plan of 10 hymns and 60 verses on the organ of 102 stops. */
    static final String LARGE = "plans/large.json";

    private static final int HYMNS = 10;
    private static final int VERSES = 5;

    private final Path program;
    private final Path scratch;

    Programs(Path program, Path scratch) throws IOException, BadFile {
        this.program = program;
        this.scratch = scratch;
        for (String shelf : List.of("instruments", "plans")) {
            copy(program.resolve(shelf), scratch.resolve(shelf));
        }
        Library library = new Library(scratch);
        library.savePlan(
                library.newPlan(
                        "large",
                        large(library),
                        library.openOrgan("ostmere-cathedral").organ()),
                WhenChanged.REFUSE);
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
    }

    private static Plan large(Library library) throws BadFile {
        Instrument organ = library.openInstrument("ostmere-cathedral");
        return proposed(OrganSound.open(organ), HYMNS, VERSES);
    }

    /** A plan with its registrations as they are proposed. */
    static Plan proposed(OrganSound sound, int hymns, int verses) {
        Plan plan = blank(sound.organ(), hymns, verses);
        return RegistrationProposer.of(sound)
                .forService(plan, SearchProgress.PATIENT)
                .on(plan);
    }

    /** A plan in which nothing is drawn; a hymn of so many verses has an introduction besides. */
    static Plan blank(Instrument organ, int hymns, int verses) {
        Random random = new Random(3);
        List<Hymn> all = new ArrayList<>();
        for (int hymn = 0; hymn < hymns; hymn++) {
            List<Verse> some = new ArrayList<>(Verses.ofNewHymn(organ, verses));
            some.replaceAll(verse -> verse.withSinging(Singing.values()[random.nextInt(Singing.values().length)]));
            all.add(new Hymn("", "Hymn " + hymn, "", "", "", OptionalInt.of(96), "", some));
        }
        return new Plan(new ServiceHeading("A service", Optional.empty(), 400, ""), "ostmere-cathedral", all);
    }

    Path scratch() {
        return scratch;
    }

    Session editor(String... arguments) throws IOException {
        return editor(scratch, arguments);
    }

    /** The editor on another library. */
    Session editor(Path library, String... arguments) throws IOException {
        try (Stream<Path> plans = Files.list(library.resolve("plans"))) {
            // a session that was ended left its work there, and the next would ask about it
            for (Path kept : plans.filter(file -> file.getFileName().toString().startsWith("."))
                    .toList()) {
                Files.delete(kept);
            }
        }
        List<String> command = new ArrayList<>(List.of(launcher(), "--library", library.toString()));
        for (String argument : arguments) {
            command.add(library.resolve(argument).toString());
        }
        return Session.of(scratch, command);
    }

    String launcher() {
        return program.resolve("bin/versewind").toAbsolutePath().toString();
    }

    /** HelloWorld with Java as it comes. */
    Session helloWorld(String... arguments) throws IOException {
        return java(List.of(), arguments);
    }

    /** HelloWorld with the launcher's options: as far as anything written in Java can go. */
    Session floor() throws IOException {
        return java(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData", "-Xshare:auto"));
    }

    private Session java(List<String> options, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin/java").toString()));
        command.addAll(options);
        // a folder with nothing else in it, so that no long class path is searched
        Path alone = scratch.resolve("hello/versewind/bench/HelloWorld.class");
        if (Files.notExists(alone)) {
            Files.createDirectories(alone.getParent());
            try (var bytes = HelloWorld.class.getResourceAsStream("HelloWorld.class")) {
                Files.copy(bytes, alone);
            }
        }
        command.addAll(List.of("-cp", scratch.resolve("hello").toString(), HelloWorld.class.getName()));
        command.addAll(List.of(arguments));
        return Session.of(scratch, command);
    }
}
