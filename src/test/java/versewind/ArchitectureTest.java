package versewind;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.Location;
import java.io.File;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which package may know which: the arrows between the rooms of the house. */
class ArchitectureTest {

    static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ArchitectureTest::isOfTheProgram)
            .importPackages("versewind");

    /** True for a class that has its source under src/main/java, wherever program and tests were compiled to. */
    private static boolean isOfTheProgram(Location location) {
        String source = location.asURI()
                .toString()
                .replaceFirst(".*/versewind/", "versewind/")
                .replaceFirst("(\\$.*)?\\.class$", ".java");
        return Files.exists(Path.of("src/main/java", source));
    }

    private static final String[] CORE = {
        "versewind.acoustics",
        "versewind.calibration",
        "versewind.organ",
        "versewind.plan",
        "versewind.sound",
        "versewind.rules",
        "versewind.schema",
        "versewind.proposal",
        "versewind.sheet",
        "versewind.screen..",
        "versewind.stoplist"
    };

    private static final String CORE_OF_SCREENS = "acoustics organ plan sound calibration rules schema proposal sheet"
            + " stoplist screen.toolkit screen.state";

    @Test
    void many_classes_are_looked_at() {
        assertThat(CLASSES.size()).isGreaterThan(500);
    }

    @ParameterizedTest
    @CsvSource({
        "acoustics, ''",
        "organ,    ''",
        "plan,     organ",
        "sound,    acoustics organ plan",
        "calibration, acoustics organ plan sound",
        "rules,   acoustics organ plan sound",
        "schema,   acoustics organ plan sound calibration rules",
        "proposal, acoustics organ plan sound rules",
        "sheet,    acoustics organ plan sound rules proposal",
        "screen.toolkit, organ sound",
        "screen.state, organ plan sound calibration rules schema stoplist screen.toolkit",
        "screen.plan, " + CORE_OF_SCREENS,
        "screen.library, " + CORE_OF_SCREENS,
        "screen.organ, " + CORE_OF_SCREENS,
        "screen.desk, " + CORE_OF_SCREENS,
        "screen, " + CORE_OF_SCREENS + " screen.plan screen.library screen.organ screen.desk",
        "stoplist, organ schema",
        "store,    acoustics organ plan sound calibration rules schema proposal sheet stoplist",
        "terminal, acoustics organ plan sound calibration rules schema proposal sheet screen stoplist store"
                + " screen.toolkit screen.state screen.plan screen.library screen.organ screen.desk",
        "cli,      acoustics organ plan sound calibration rules schema proposal sheet screen stoplist store"
                + " screen.toolkit screen.plan terminal",
    })
    void a_package_knows_only_those_below_it(String room, String below) {
        String known = ("versewind." + room + " " + below.replaceAll("([\\w.]+)", "versewind.$1")).strip();
        String[] allowed = known.split(" +");
        classes()
                .that()
                .resideInAPackage("versewind." + room)
                .should()
                .onlyDependOnClassesThat(
                        resideInAnyPackage(allowed).or(DescribedPredicate.not(resideInAnyPackage("versewind.."))))
                .check(CLASSES);
    }

    @Test
    void no_two_packages_know_each_other() {
        slices().matching("versewind.(*)..").should().beFreeOfCycles().check(CLASSES);
        slices().matching("versewind.screen.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void the_core_knows_no_files_no_clock_no_randomness_no_threads_no_json_and_no_terminal() {
        noClasses()
                .that()
                .resideInAnyPackage(CORE)
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "java.nio.file..",
                        "java.util.concurrent",
                        "java.util.concurrent.locks",
                        "java.net..",
                        "com.fasterxml..",
                        "com.googlecode.lanterna..",
                        "picocli.."))
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAnyPackage(CORE)
                .should()
                .dependOnClassesThat(JavaClass.Predicates.belongToAnyOf(
                        File.class,
                        FileInputStream.class,
                        FileOutputStream.class,
                        Clock.class,
                        Random.class,
                        Thread.class))
                .check(CLASSES);
        noClasses()
                .that()
                .resideInAnyPackage(CORE)
                .should()
                .callMethod(LocalDate.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .check(CLASSES);
    }

    @Test
    void only_the_store_knows_json() {
        noClasses()
                .that()
                .resideOutsideOfPackage("versewind.store")
                .should()
                .dependOnClassesThat(resideInAnyPackage("com.fasterxml.."))
                .check(CLASSES);
    }

    @Test
    void only_the_terminal_knows_lanterna() {
        noClasses()
                .that()
                .resideOutsideOfPackage("versewind.terminal")
                .should()
                .dependOnClassesThat(resideInAnyPackage("com.googlecode.lanterna.."))
                .check(CLASSES);
    }

    @Test
    void only_main_ends_the_process() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("versewind.Main")
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class)
                .check(CLASSES);
    }

    @Test
    void nobody_writes_files_but_the_store() {
        DescribedPredicate<JavaCall<?>> writesFiles =
                DescribedPredicate.describe("write files", ArchitectureTest::writesFiles);
        noClasses()
                .that()
                .resideOutsideOfPackage("versewind.store")
                .should()
                .callMethodWhere(writesFiles)
                .check(CLASSES);
    }

    private static boolean writesFiles(JavaCall<?> call) {
        return call.getTargetOwner().isEquivalentTo(Files.class)
                && call.getName().matches("(write|newOutput|newBuffered|copy|move|delete|create).*");
    }
}
