package exergue.fence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which package may know which, and which may know which library. */
class FenceTest {

    private static final Set<String> LEAVES = Set.of("files", "finding", "measure", "dating", "legend");
    private static final Set<String> MODEL = with(LEAVES, "model");
    private static final Set<String> TRADE = Set.of("finding", "measure", "dating", "legend", "model");
    private static final Set<String> EDITION = with(TRADE, "study", "photo", "edition");
    private static final Set<String> STAGES =
            with(EDITION, "files", "source", "check", "cite", "typeset");

    /** The whole table; the root package, where the pipeline is, goes by the name {@code exergue}. */
    private static final Map<String, Set<String>> MAY_USE = Map.ofEntries(
            Map.entry("files", Set.of()),
            Map.entry("finding", Set.of()),
            Map.entry("measure", Set.of()),
            Map.entry("dating", Set.of()),
            Map.entry("legend", Set.of()),
            Map.entry("model", Set.of("finding", "measure", "dating", "legend")),
            Map.entry("source", MODEL),
            Map.entry("check", TRADE),
            Map.entry("cite", MODEL),
            Map.entry("photo", MODEL),
            Map.entry("study", TRADE),
            Map.entry("edition", with(TRADE, "study", "photo")),
            Map.entry("typeset", with(EDITION, "files")),
            Map.entry("exergue", STAGES),
            Map.entry("review", with(STAGES, "exergue")),
            Map.entry("exchange", with(STAGES, "exergue")),
            Map.entry("proof", with(STAGES, "exergue")),
            Map.entry("cli", with(STAGES, "exergue", "review", "exchange", "proof")));

    /** Start of a library's package names, and the packages that may use it. */
    private static final Map<String, Set<String>> LIBRARIES = Map.ofEntries(
            Map.entry("org.yaml.snakeyaml", Set.of("source")),
            Map.entry("org.commonmark", Set.of("source")),
            Map.entry("freemarker", Set.of("typeset")),
            Map.entry("com.ibm.icu", Set.of("edition")),
            Map.entry("com.openhtmltopdf", Set.of("typeset")),
            Map.entry("org.apache.pdfbox", Set.of("typeset")),
            Map.entry("org.apache.fontbox", Set.of("typeset")),
            Map.entry("org.apache.xmpbox", Set.of("typeset")),
            Map.entry("org.apache.commons.csv", Set.of("exchange")),
            Map.entry("com.fasterxml.jackson", Set.of("source", "exchange", "proof", "cli")),
            Map.entry("de.undercouch.citeproc", Set.of("cite")),
            Map.entry("picocli", Set.of("cli")),
            Map.entry("org.eclipse.jgit", Set.of("review")),
            Map.entry("javax.imageio", Set.of("photo")),
            Map.entry("com.twelvemonkeys", Set.of("photo")),
            Map.entry("org.hipparchus", Set.of("photo", "study")),
            Map.entry("org.apache.commons.statistics", Set.of("study")),
            Map.entry("com.sun.net.httpserver", Set.of("proof")));

    /** Java itself. */
    private static final List<String> JAVA = List.of("java.", "javax.xml", "org.w3c.dom", "org.xml.sax");

    /** Fewest classes each package has; so that no rule here can pass because it saw nothing. */
    private static final Map<String, Integer> FLOOR = Map.ofEntries(
            Map.entry("files", 5), Map.entry("finding", 7), Map.entry("measure", 50),
            Map.entry("dating", 15), Map.entry("legend", 10), Map.entry("model", 40),
            Map.entry("source", 50), Map.entry("check", 40), Map.entry("cite", 10), Map.entry("study", 10), Map.entry("photo", 15), Map.entry("edition", 50),
            Map.entry("typeset", 20), Map.entry("exergue", 4), Map.entry("exchange", 3), Map.entry("review", 25), Map.entry("proof", 12), Map.entry("cli", 25));

    private final JavaClasses classes = House.classes();

    @Test
    void enoughClassesAreSeen() {
        Map<String, Long> seen = classes.stream()
                .collect(Collectors.groupingBy(c -> House.room(c.getPackageName()), Collectors.counting()));
        Map<String, String> tooFew = new TreeMap<>();
        FLOOR.forEach((room, least) -> {
            if (seen.getOrDefault(room, 0L) < least) {
                tooFew.put(room, seen.getOrDefault(room, 0L) + " of at least " + least);
            }
        });
        assertEquals(Map.of(), tooFew);
    }

    @Test
    void everyPackageStandsInTheTable() {
        Set<String> unknown = classes.stream().map(c -> House.room(c.getPackageName()))
                .filter(room -> !MAY_USE.containsKey(room)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), unknown);
    }

    @Test
    void packagesUseOnlyWhatTheTableAllows() {
        assertEquals(List.of(), crossings((from, to) -> to.startsWith("exergue.") || to.equals("exergue")
                ? !from.equals(House.room(to)) && !MAY_USE.getOrDefault(from, Set.of()).contains(House.room(to)) : false));
    }

    @Test
    void librariesStayInTheirPackages() {
        assertEquals(List.of(), crossings((from, to) -> LIBRARIES.entrySet().stream()
                .anyMatch(l -> (to + ".").startsWith(l.getKey() + ".") && !l.getValue().contains(from))));
    }

    @Test
    void onlyKnownLibrariesAreUsed() {
        assertEquals(List.of(), crossings((from, to) -> !to.startsWith("exergue") && JAVA.stream().noneMatch(to::startsWith)
                && LIBRARIES.keySet().stream().noneMatch(l -> (to + ".").startsWith(l + "."))));
    }

    @Test
    void everyFencedLibraryIsSeen() {
        Set<String> used = classes.stream().flatMap(c -> c.getDirectDependenciesFromSelf().stream())
                .map(d -> d.getTargetClass().getPackageName()).collect(Collectors.toSet());
        for (String library : List.of("org.yaml.snakeyaml", "org.commonmark", "freemarker", "com.openhtmltopdf",
                "org.apache.pdfbox", "org.apache.commons.csv", "com.fasterxml.jackson", "de.undercouch.citeproc", "picocli",
                "javax.imageio", "com.twelvemonkeys", "org.hipparchus", "org.eclipse.jgit", "com.sun.net.httpserver")) {
            assertTrue(used.stream().anyMatch(p -> (p + ".").startsWith(library + ".")), library + " is not seen at all");
        }
    }

    @Test
    void noPackagesGoRoundInCircles() {
        SlicesRuleDefinition.slices().matching("exergue.(*)..").should().beFreeOfCycles().check(classes);
    }

    private interface Forbidden {
        boolean test(String room, String targetPackage);
    }

    private List<String> crossings(Forbidden forbidden) {
        return classes.stream().flatMap(c -> c.getDirectDependenciesFromSelf().stream())
                .filter(d -> forbidden.test(House.room(d.getOriginClass().getPackageName()), target(d).getPackageName()))
                .map(Dependency::getDescription).distinct().sorted().toList();
    }

    private static JavaClass target(Dependency dependency) {
        return dependency.getTargetClass().getBaseComponentType();
    }

    private static Set<String> with(Set<String> some, String... more) {
        Set<String> all = new TreeSet<>(some);
        all.addAll(List.of(more));
        return Set.copyOf(all);
    }
}
