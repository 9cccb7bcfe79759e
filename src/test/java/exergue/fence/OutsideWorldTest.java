package exergue.fence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The disk is touched in one package, and neither the network nor another program anywhere. Of Java's own classes that
 * could reach outside, those that cannot are listed; what is not listed may not be used.
 */
class OutsideWorldTest {

    private static final String REACHES_OUT = "java\\.(io|nio|net|rmi)\\..*|java\\.util\\.(zip|jar|prefs|logging)\\..*"
            + "|java\\.util\\.(Scanner|Formatter|ServiceLoader)|javax\\.(net|naming|management|print|script|tools)\\..*"
            + "|java\\.(sql|awt\\.Desktop|awt\\.print)\\b.*|java\\.lang\\.(Process|ProcessBuilder|ProcessHandle|ClassLoader)"
            + "|jdk\\..*|sun\\..*|com\\.sun\\..*";

    /** In memory, or names and exceptions only. */
    private static final Set<String> HARMLESS = Set.of(
            "java.io.ByteArrayInputStream", "java.io.ByteArrayOutputStream", "java.io.DataInput", "java.io.DataInputStream",
            "java.io.DataOutput", "java.io.DataOutputStream", "java.io.IOException",
            "java.io.FileNotFoundException", "java.io.InputStream", "java.io.InputStreamReader", "java.io.OutputStream",
            "java.io.OutputStreamWriter", "java.io.Reader", "java.io.StringReader", "java.io.StringWriter",
            "java.io.UncheckedIOException", "java.net.URI",
            "java.nio.ByteBuffer", "java.nio.ByteOrder", "java.nio.CharBuffer", "java.nio.file.Path",
            "java.lang.ClassLoader"); // resources of the jar; see what may not be asked of it below

    /** What one room more may use, and why. */
    private static final Map<String, String> BY_ROOM = Map.of(
            // the one place that touches the disk; the number of the process names what it writes beside its target; Git's
            // library wants the folder of a repository as a File
            "files", "java\\.io\\.File|java\\.io\\.BufferedOutputStream|java\\.nio\\.file\\..*|java\\.nio\\.channels\\.(FileChannel|FileLock"
                    + "|OverlappingFileLockException)|java\\.lang\\.ProcessHandle",
            // the one place that listens to the network, on the machine's own address: see below
            "proof", "com\\.sun\\.net\\.httpserver\\..*|java\\.net\\.(InetAddress|InetSocketAddress)|java\\.nio\\.file\\.NoSuchFileException",
            // silences what libraries log
            "typeset", "java\\.util\\.logging\\.(Logger|Level)",
            // the process's own two streams, and what a failed disk says
            "cli", "java\\.io\\.(PrintWriter|FileDescriptor|FileOutputStream|Console)|java\\.nio\\.file\\.[A-Za-z]*Exception|java\\.net\\.BindException");

    @Test
    void onlyWhatIsListedMayReachOutside() {
        assertEquals(List.of(), own().flatMap(c -> c.getDirectDependenciesFromSelf().stream())
                .filter(d -> target(d).matches(REACHES_OUT) && !allowed(room(d.getOriginClass()), target(d)))
                .map(Dependency::getDescription).distinct().sorted().toList());
    }

    @Test
    void streamsOfTheCommandLineAreThoseOfTheProcess() {
        assertEquals(List.of(), calls(call -> call.getName().equals("<init>")
                && owner(call).matches("java\\.io\\.(PrintWriter|FileOutputStream|FileInputStream)")
                && parameters(call).stream().anyMatch(Set.of("java.lang.String", "java.io.File")::contains)));
        assertEquals(List.of("exergue.cli.Terminal"), own().filter(c -> c.getDirectDependenciesFromSelf().stream()
                .anyMatch(d -> target(d).equals("java.io.FileOutputStream"))).map(JavaClass::getName).distinct().toList());
    }

    /** Neither names are looked up nor all addresses of the machine taken; that it is 127.0.0.1 is tested with the server. */
    @Test
    void theNetworkIsOnlyTheMachineItself() {
        assertEquals(List.of("java.net.InetAddress.getByAddress([B)"), own()
                .flatMap(c -> c.getAccessesFromSelf().stream()).filter(call -> owner(call).equals("java.net.InetAddress"))
                .map(call -> call.getTarget().getFullName()).distinct().toList());
        assertEquals(List.of(), calls(call -> owner(call).equals("java.net.InetSocketAddress") && call.getName().equals("<init>")
                && !parameters(call).equals(List.of("java.net.InetAddress", "int"))));
    }

    /** A path is a name; these of its methods look at the disk all the same. */
    @Test
    void pathsAreOnlyNamesOutsideFiles() {
        assertEquals(List.of(), calls(call -> !room(call.getOriginOwner()).equals("files")
                && owner(call).equals("java.nio.file.Path") && call.getName().matches("toRealPath|toFile|toUri|register")));
    }

    /** Libraries that open what a text names. */
    @Test
    void noLibraryIsGivenAFileNameOrAnAddressToOpen() {
        assertEquals(List.of(), calls(call -> owner(call).matches("javax\\.xml\\..*|org\\.apache\\.pdfbox\\..*|org\\.xml\\.sax\\..*")
                && call.getName().matches("parse|save|load|loadPDF|transform|newTransformer|newSchema")
                && parameters(call).stream().anyMatch(Set.of("java.lang.String", "java.io.File", "java.net.URL")::contains)));
    }

    /** Of Git's library only what reads a repository on the disk: not what fetches, checks out, runs hooks or signs. */
    @Test
    void repositoriesAreOnlyRead() {
        assertEquals(List.of(), own().flatMap(c -> c.getDirectDependenciesFromSelf().stream())
                .filter(d -> target(d).matches("org\\.eclipse\\.jgit\\.(api|transport|hooks|gitrepo|submodule|dircache|merge|lfs)\\..*"))
                .map(Dependency::getDescription).distinct().sorted().toList());
    }

    @Test
    void noOtherProgramIsStartedAndNoCodeLoaded() {
        assertEquals(List.of(), calls(call -> owner(call).equals("java.lang.Runtime") && call.getName().matches("exec|load.*")
                || owner(call).equals("java.lang.System") && call.getName().matches("load|loadLibrary")
                || owner(call).equals("java.lang.Class") && call.getName().equals("forName")
                || owner(call).equals("java.lang.ClassLoader") && !call.getName().matches("getResource|getResourceAsStream")));
    }

    @Test
    void theListIsNoLongerThanWhatIsUsed() {
        Set<String> used = Set.copyOf(own().flatMap(c -> c.getDirectDependenciesFromSelf().stream())
                .map(OutsideWorldTest::target).toList());
        assertTrue(used.contains("java.nio.file.Files"), "the disk is not seen at all");
        assertEquals(List.of(), HARMLESS.stream().filter(name -> !used.contains(name)).sorted().toList());
    }

    private static boolean allowed(String room, String name) {
        return HARMLESS.contains(name) || name.startsWith("java.nio.charset.")
                || BY_ROOM.containsKey(room) && name.matches(BY_ROOM.get(room));
    }

    private static Stream<JavaClass> own() {
        return House.classes().stream();
    }

    private static String room(JavaClass c) {
        return House.room(c.getPackageName());
    }

    private static String target(Dependency dependency) {
        return dependency.getTargetClass().getBaseComponentType().getName();
    }

    private static String owner(JavaAccess<?> access) {
        return access.getTargetOwner().getName();
    }

    private static List<String> parameters(JavaAccess<?> access) {
        return access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget target
                ? target.getRawParameterTypes().stream().map(JavaClass::getName).toList() : List.of();
    }

    private static List<String> calls(Predicate<JavaAccess<?>> forbidden) {
        return own().flatMap(c -> c.getAccessesFromSelf().stream()).filter(forbidden)
                .map(JavaAccess::getDescription).distinct().sorted().toList();
    }
}
