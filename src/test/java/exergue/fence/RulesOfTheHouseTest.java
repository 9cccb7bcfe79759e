package exergue.fence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the bytecode can prove of the rules: who touches clock, chance and streams, and what records are made of. */
class RulesOfTheHouseTest {

    private static final Set<String> VALUES = Set.of("finding", "measure", "dating", "legend", "model");
    private static final Set<String> EXACT = Set.of("measure", "dating", "legend", "model", "edition");
    /** What takes the locale of the machine unless it is given one. */
    private static final String SPEAKS_A_LANGUAGE = "java\\.text\\.(NumberFormat|DecimalFormat|DecimalFormatSymbols|DateFormat"
            + "|SimpleDateFormat|DateFormatSymbols|MessageFormat|CompactNumberFormat|BreakIterator|Collator)"
            + "|java\\.time\\.format\\.(DateTimeFormatter|DateTimeFormatterBuilder)|java\\.util\\.(Formatter|Scanner|Calendar)"
            + "|com\\.ibm\\.icu\\.text\\.(Collator|NumberFormat|DecimalFormat|RuleBasedNumberFormat|BreakIterator|MessageFormat"
            + "|ListFormatter|SimpleDateFormat|DateFormat)";
    private static final Set<String> FLOATING = Set.of("double", "float", "java.lang.Double", "java.lang.Float");

    @Test
    void noClockBelowTheCommandLine() {
        assertEquals(List.of(), calls(RulesOfTheHouseTest::belowCli, call -> call.getName().equals("now")
                && owner(call).startsWith("java.time.")
                || owner(call).equals("java.lang.System") && Set.of("currentTimeMillis", "nanoTime").contains(call.getName())
                || owner(call).equals("java.time.Clock")
                || owner(call).equals("java.util.Date") && call.getName().equals("<init>") && parameters(call).isEmpty()
                || owner(call).equals("java.util.Calendar") && call.getName().equals("getInstance")));
    }

    @Test
    void noChanceBelowTheCommandLine() {
        assertEquals(List.of(), calls(RulesOfTheHouseTest::belowCli,
                call -> owner(call).matches("java\\.util\\.(Random|SplittableRandom)|java\\.security\\.SecureRandom"
                        + "|java\\.util\\.concurrent\\.ThreadLocalRandom")
                        || call.getTarget().getFullName().startsWith("java.lang.Math.random")
                        || call.getTarget().getFullName().startsWith("java.util.UUID.randomUUID")
                        || call.getTarget().getFullName().startsWith("java.util.Collections.shuffle")));
    }

    @Test
    void noDefaultLocaleAnywhere() {
        assertEquals(List.of(), calls(c -> true, call -> {
            String name = call.getName();
            List<String> parameters = parameters(call);
            boolean string = owner(call).equals("java.lang.String");
            return owner(call).equals("java.util.Locale") && name.equals("getDefault")
                    || string && Set.of("toLowerCase", "toUpperCase").contains(name) && parameters.isEmpty()
                    || (string || owner(call).equals("java.io.PrintWriter")) && Set.of("format", "printf").contains(name)
                            && !parameters.contains("java.util.Locale")
                    || string && name.equals("formatted")
                    || owner(call).matches(SPEAKS_A_LANGUAGE) && (name.equals("<init>") || takesNoObject(call))
                            && !parameters.contains("java.util.Locale") && !parameters.contains("com.ibm.icu.util.ULocale");
        }));
    }

    /** A method of the class itself, one that makes what it returns; an object made with a locale keeps it. */
    private static boolean takesNoObject(JavaAccess<?> call) {
        return call.getTarget().resolveMember().filter(member -> member.getModifiers().contains(JavaModifier.STATIC)).isPresent();
    }

    @Test
    void noDefaultCharsetAnywhere() {
        assertEquals(List.of(), calls(c -> true, call -> {
            List<String> parameters = parameters(call);
            boolean made = call.getName().equals("<init>");
            return call.getTarget().getFullName().startsWith("java.nio.charset.Charset.defaultCharset")
                    || owner(call).equals("java.lang.String") && call.getName().equals("getBytes") && parameters.isEmpty()
                    || made && owner(call).equals("java.lang.String") && Set.of(List.of("[B"), List.of("[B", "int", "int"))
                            .contains(parameters)
                    || made && owner(call).matches("java\\.io\\.(InputStreamReader|OutputStreamWriter)")
                            && parameters.size() == 1
                    || owner(call).equals("java.io.ByteArrayOutputStream") && call.getName().equals("toString")
                            && parameters.isEmpty();
        }));
    }

    @Test
    void nothingBelowTheCommandLinePrintsOrLogs() {
        assertEquals(List.of(), fieldUsers(RulesOfTheHouseTest::belowCli, "java.lang.System", Set.of("out", "err")));
        assertEquals(List.of(), calls(RulesOfTheHouseTest::belowCli,
                call -> call.getName().equals("printStackTrace") && parameters(call).isEmpty()
                        || owner(call).equals("java.lang.System") && call.getName().equals("getLogger")));
    }

    @Test
    void theProcessIsLeftInOnePlace() {
        Predicate<JavaAccess<?>> leaves = call -> owner(call).equals("java.lang.System") && call.getName().equals("exit")
                || owner(call).equals("java.lang.Runtime") && Set.of("exit", "halt").contains(call.getName());
        assertEquals(1, calls(c -> c.getName().equals("exergue.cli.Main"), leaves).size());
        assertEquals(List.of(), calls(c -> !c.getName().equals("exergue.cli.Main"), leaves));
    }

    @Test
    void valuesAreImmutable() {
        assertEquals(List.of(), own().filter(c -> VALUES.contains(House.room(c.getPackageName())))
                .filter(c -> !c.getName().endsWith("package-info") && !isGenerated(c))
                .filter(c -> !(c.isRecord() || c.isEnum() || c.isInterface() && isSealed(c) || isFinalWithFinalFields(c)))
                .map(JavaClass::getName).sorted().toList());
    }

    @Test
    void readingsAreNeverFloating() {
        assertEquals(List.of(), own().filter(c -> EXACT.contains(House.room(c.getPackageName())))
                .flatMap(c -> Stream.concat(c.getFields().stream().filter(f -> floating(f.getRawType()))
                        .map(JavaField::getFullName), c.getCodeUnits().stream().filter(RulesOfTheHouseTest::floats)
                        .map(JavaCodeUnit::getFullName))).sorted().toList());
        assertEquals(List.of(), calls(c -> EXACT.contains(House.room(c.getPackageName())),
                call -> call.getName().matches("doubleValue|floatValue|parseDouble|parseFloat")
                        || owner(call).equals("java.math.BigDecimal") && parameters(call).contains("double")));
    }

    @Test
    void namesSayWhatAThingIs() {
        assertEquals(List.of(), own().map(JavaClass::getSimpleName)
                .filter(name -> name.matches(".*(Util|Utils|Helper|Helpers|Manager)")).sorted().toList());
    }

    @Test
    void methodsTakeFewParameters() {
        assertEquals(List.of(), own().filter(c -> !c.isRecord() && !c.isEnum()).flatMap(c -> c.getCodeUnits().stream())
                .filter(unit -> !unit.getModifiers().contains(JavaModifier.SYNTHETIC))
                .filter(unit -> unit.getRawParameterTypes().size() > 5)
                .map(JavaCodeUnit::getFullName).sorted().toList());
    }

    @Test
    void filesHoldOneIdea() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
            assertTrue(sources.size() > 200, sources.size() + " source files");
            assertEquals(List.of(), sources.stream().filter(file -> lines(file) > 300).toList());
        }
    }

    private static long lines(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.count();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<JavaClass> own() {
        return House.classes().stream();
    }

    private static boolean belowCli(JavaClass c) {
        return !in(c, "cli");
    }

    private static boolean in(JavaClass c, String room) {
        return House.room(c.getPackageName()).equals(room);
    }

    private static boolean isSealed(JavaClass c) {
        return c.reflect().isSealed() || c.reflect().isAnnotation();
    }

    /** The table a {@code switch} over an enum is compiled to. */
    private static boolean isGenerated(JavaClass c) {
        return c.getModifiers().contains(JavaModifier.SYNTHETIC);
    }

    private static boolean isFinalWithFinalFields(JavaClass c) {
        return c.getModifiers().contains(JavaModifier.FINAL)
                && c.getFields().stream().allMatch(f -> f.getModifiers().contains(JavaModifier.FINAL));
    }

    private static boolean floats(JavaCodeUnit unit) {
        return floating(unit.getRawReturnType()) || unit.getRawParameterTypes().stream().anyMatch(RulesOfTheHouseTest::floating);
    }

    private static boolean floating(JavaClass type) {
        return FLOATING.contains(type.getBaseComponentType().getName());
    }

    private static String owner(JavaAccess<?> access) {
        return access.getTargetOwner().getName();
    }

    private static List<String> parameters(JavaAccess<?> access) {
        return access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget target
                ? target.getRawParameterTypes().stream().map(JavaClass::getName).toList() : List.of();
    }

    private static List<String> calls(Predicate<JavaClass> from, Predicate<JavaAccess<?>> forbidden) {
        return own().filter(from).flatMap(c -> c.getAccessesFromSelf().stream()).filter(forbidden)
                .map(JavaAccess::getDescription).distinct().sorted().toList();
    }

    private static List<String> fieldUsers(Predicate<JavaClass> from, String owner, Set<String> fields) {
        return calls(from, access -> owner(access).equals(owner) && fields.contains(access.getName())
                && access.getTarget() instanceof AccessTarget.FieldAccessTarget);
    }
}
