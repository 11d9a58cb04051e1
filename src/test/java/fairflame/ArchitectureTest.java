package fairflame;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the map of packages in DEVELOPERS.md: who may import whom, and what each row may touch outside. */
class ArchitectureTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("fairflame");

    /** Fewer classes than this means that the scan missed something, and every rule below would hold in vain. */
    private static final int FEWEST_CLASSES = 200;

    private static final int MOST_LINES = 300;

    private static final Set<String> GROUND = Set.of("wording", "quantity", "money");

    /** What each package may import of the project, the root aside; a package not named here is refused. */
    private static final Map<String, Set<String>> MAY_IMPORT = Map.ofEntries(
            Map.entry("wording", Set.of()),
            Map.entry("quantity", Set.of()),
            Map.entry("money", Set.of()),
            Map.entry("gas", GROUND),
            Map.entry("diagnosis", Set.of("wording", "quantity", "gas")),
            Map.entry("catalog", GROUND),
            Map.entry("repair", with(GROUND, "gas", "diagnosis", "catalog")),
            Map.entry("quote", with(GROUND, "gas", "diagnosis", "catalog", "repair")),
            Map.entry("agreement", with(GROUND, "gas", "diagnosis", "catalog", "repair", "quote")),
            Map.entry("invoice", with(GROUND, "gas", "diagnosis", "catalog", "repair", "quote", "agreement")),
            Map.entry("store", domain()),
            Map.entry("document", domain()),
            Map.entry("visit", with(domain(), "store", "document")),
            Map.entry("screen", with(domain(), "visit")),
            Map.entry("command", with(domain(), "visit")),
            Map.entry("start", with(domain(), "store", "document", "visit", "screen", "command")));

    /** The two places where tables and knowledge that travel with the program are read from the class path. */
    private static final DescribedPredicate<JavaClass> CLASS_PATH_READER =
            nameMatching("fairflame\\.(gas\\.GasTables|diagnosis\\.Knowledge)").forSubtype();

    private static Set<String> domain() {
        return with(GROUND, "gas", "diagnosis", "catalog", "repair", "quote", "agreement", "invoice");
    }

    private static Set<String> with(Set<String> some, String... more) {
        return Stream.concat(some.stream(), Stream.of(more)).collect(Collectors.toUnmodifiableSet());
    }

    @Test
    void theScanFindsTheProgram() {
        assertThat(CLASSES.size()).isGreaterThan(FEWEST_CLASSES);
        assertThat(packages()).allSatisfy(name -> assertThat(MAY_IMPORT).containsKey(name));
    }

    private static List<String> packages() {
        return CLASSES.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> !name.equals("fairflame"))
                .map(name -> name.substring("fairflame.".length()))
                .map(name -> name.split("\\.")[0])
                .distinct()
                .sorted()
                .toList();
    }

    @ParameterizedTest
    @MethodSource("packages")
    void eachPackageImportsOnlyRowsAboveIt(String name) {
        var allowed = MAY_IMPORT.getOrDefault(name, Set.of());
        var forbidden = describe(
                "classes of fairflame outside " + allowed,
                (JavaClass other) -> other.getPackageName().startsWith("fairflame.")
                        && !other.getPackageName().split("\\.")[1].equals(name)
                        && !allowed.contains(other.getPackageName().split("\\.")[1]));
        noClasses()
                .that()
                .resideInAPackage("fairflame." + name + "..")
                .should()
                .dependOnClassesThat(forbidden)
                .because("imports go up the map in DEVELOPERS.md, never down or sideways")
                .check(CLASSES);
    }

    @Test
    void theRootImportsNothingOfTheProject() {
        noClasses()
                .that()
                .resideInAPackage("fairflame")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("fairflame.*..")
                .check(CLASSES);
    }

    @Test
    void noPackagesFormACycle() {
        slices().matching("fairflame.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void onlyScreensAndStartTouchJavaFx() {
        noClasses()
                .that(not(resideInAnyPackage("fairflame.screen..", "fairflame.start..")))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx..")
                .because("the command line runs where there is no display")
                .check(CLASSES);
    }

    @Test
    void viewModelsKnowNoWindow() {
        classes()
                .that()
                .resideInAPackage("fairflame.screen..")
                .and()
                .haveSimpleNameEndingWith("Model")
                .should()
                .onlyDependOnClassesThat(
                        not(resideInAnyPackage("javafx.scene..", "javafx.stage..", "javafx.application..")))
                .because("view models are tested without a toolkit")
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void theDomainTouchesNothingOutside() {
        noClasses()
                .that(inDomain().and(not(CLASS_PATH_READER)))
                .should()
                .dependOnClassesThat(outside())
                .orShould()
                .callMethodWhere(describe(
                        "a resource is read", access -> access.getName().startsWith("getResource")))
                .because("files are read at the edge and handed in as text")
                .check(CLASSES);
    }

    @Test
    void theReadersOfTheClassPathReadNothingElse() {
        noClasses()
                .that(CLASS_PATH_READER)
                .should()
                .dependOnClassesThat(outside()
                        .and(not(nameMatching("java\\.io\\.InputStream").forSubtype())))
                .check(CLASSES);
    }

    @Test
    void theDomainKnowsNeitherClockNorChance() {
        noClasses()
                .that(inDomain())
                .should()
                .callMethodWhere(clockOrChance())
                .orShould()
                .dependOnClassesThat(nameMatching("java\\.time\\.(Clock|InstantSource)"
                                + "|java\\.util\\.Random|java\\.util\\.random\\..*|java\\.security\\.SecureRandom"
                                + "|java\\.util\\.concurrent\\.ThreadLocalRandom")
                        .forSubtype())
                .because("the same input gives the same output, byte for byte")
                .check(CLASSES);
    }

    private static DescribedPredicate<JavaClass> inDomain() {
        var names = domain().stream().map(name -> "fairflame." + name + "..").toArray(String[]::new);
        return resideInAnyPackage(names).or(resideInAPackage("fairflame"));
    }

    private static DescribedPredicate<JavaClass> outside() {
        // Readers and writers of text in memory, and the exceptions that parsers of text declare, touch no file.
        var inMemory = nameMatching(
                        "java\\.io\\.(Serializable|IOException|UncheckedIOException|StringReader|StringWriter"
                                + "|ByteArrayInputStream|ByteArrayOutputStream|Reader|Writer)")
                .<JavaClass>forSubtype();
        return resideInAnyPackage(
                        "java.io..",
                        "java.nio.file..",
                        "java.nio.channels..",
                        "java.net..",
                        "java.sql..",
                        "javax.sql..",
                        "java.util.logging..",
                        "org.slf4j..",
                        "org.jdbi..",
                        "org.sqlite..",
                        "org.flywaydb..",
                        "picocli..",
                        "java.awt..",
                        "javax.swing..")
                .and(not(inMemory));
    }

    private static DescribedPredicate<JavaAccess<?>> clockOrChance() {
        return describe("the clock or chance", access -> {
            var owner = access.getTargetOwner().getName();
            var name = access.getName();
            return owner.startsWith("java.time.") && name.equals("now")
                    || owner.equals("java.lang.System")
                            && Set.of("currentTimeMillis", "nanoTime", "getProperty", "getenv")
                                    .contains(name)
                    || owner.equals("java.lang.Math") && name.equals("random")
                    || owner.equals("java.util.UUID") && name.equals("randomUUID");
        });
    }

    @Test
    void nobodyPrintsPastTheCommandLine() {
        noClasses()
                .that(not(resideInAPackage("fairflame.start..")))
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(CLASSES);
    }

    @Test
    void theSqlStaysInsideTheStore() {
        classes()
                .that()
                .resideInAPackage("fairflame.store")
                .and()
                .haveSimpleNameStartingWith("Sqlite")
                .should()
                .notBePublic()
                .check(CLASSES);
        noClasses()
                .that()
                .resideOutsideOfPackage("fairflame.store..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.sqlite..", "org.flywaydb..")
                .check(CLASSES);
    }

    @Test
    void aClassIsNamedAfterTheThingItIs() {
        noClasses()
                .should()
                .haveNameMatching(".*(Util|Utils|Helper|Helpers|Manager|Processor)([A-Z$].*)?")
                .check(CLASSES);
    }

    @Test
    void moneyIsNeverABinaryFraction() {
        noFields()
                .that()
                .haveNameMatching("(?i).*(price|cost|total|amount|tax|deposit|discount|balance).*")
                .should()
                .haveRawType(describe("double or float", ArchitectureTest::isBinaryFraction))
                .check(CLASSES);
    }

    private static boolean isBinaryFraction(JavaClass type) {
        return Set.of("double", "float", "java.lang.Double", "java.lang.Float").contains(type.getName());
    }

    @Test
    void everyPackageSaysWhatItIsAndKnowsNoNull() {
        var bare = CLASSES.stream()
                .map(JavaClass::getPackage)
                .distinct()
                .filter(each -> !each.isAnnotatedWith(NullMarked.class))
                .map(JavaPackage::getName)
                .toList();
        assertThat(bare).as("packages without a @NullMarked package-info").isEmpty();
    }

    @Test
    void noClassDoesTwoJobs() throws IOException {
        var tooLong = new ArrayList<String>();
        try (var files = Files.walk(Path.of("src/main/java"))) {
            for (var file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                try (var lines = Files.lines(file)) {
                    if (lines.count() > MOST_LINES) {
                        tooLong.add(file.toString());
                    }
                }
            }
        }
        assertThat(tooLong).as("files above " + MOST_LINES + " lines").isEmpty();
    }
}
