package exergue.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every link of a page to another file, a picture or a heading leads to something. */
class LinksTest {

    private static final Pattern CODE = Pattern.compile("(?s)```.*?```|`[^`\n]*`");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("^#+ (.*)$", Pattern.MULTILINE);

    static Stream<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        for (String folder : List.of("docs", "templates")) {
            try (Stream<Path> walk = Files.walk(Path.of(folder))) {
                walk.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
            }
        }
        return pages.stream();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkLeadsSomewhere(Path page) throws IOException {
        List<String> dead = new ArrayList<>();
        for (String target : links(page)) {
            String[] parts = target.split("#", 2);
            Path file = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]);
            if (!Files.exists(file) || parts.length > 1 && !headings(file).contains(parts[1])) {
                dead.add(target);
            }
        }
        assertEquals(List.of(), dead);
    }

    @Test
    void linksAreSeen() throws IOException {
        assertTrue(links(Path.of("README.md")).size() > 8);
    }

    /** Addresses of the web are not asked for. */
    private static List<String> links(Path page) throws IOException {
        return LINK.matcher(CODE.matcher(Files.readString(page)).replaceAll("")).results().map(link -> link.group(1))
                .filter(target -> !target.matches("[a-z]+:.*")).toList();
    }

    /** As hosts of repositories name them. */
    private static List<String> headings(Path page) throws IOException {
        return HEADING.matcher(Files.readString(page)).results().map((MatchResult heading) -> heading.group(1)
                .toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-')).toList();
    }
}
