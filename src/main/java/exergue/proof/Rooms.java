package exergue.proof;

import exergue.proof.Finder.Hits;
import exergue.typeset.DrawnPages;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands under which address. There is no other: no address names a file of the source or of the disk. */
final class Rooms {

    private static final String TEMPLATES = "exergue/templates/shared/proof/";
    private static final String FACES = "exergue/fonts/GentiumBookPlus-";

    /** Address to resource and type. */
    private static final Map<String, String[]> PARTS = Map.of(
            "/", new String[] {TEMPLATES + "proof.html", "text/html; charset=utf-8"},
            "/proof.css", new String[] {TEMPLATES + "proof.css", "text/css; charset=utf-8"},
            "/proof.js", new String[] {TEMPLATES + "proof.js", "text/javascript; charset=utf-8"},
            "/mark.svg", new String[] {TEMPLATES + "mark.svg", "image/svg+xml"},
            "/face/regular.ttf", new String[] {FACES + "Regular.ttf", "font/ttf"},
            "/face/italic.ttf", new String[] {FACES + "Italic.ttf", "font/ttf"},
            "/face/bold.ttf", new String[] {FACES + "Bold.ttf", "font/ttf"});

    private static final Pattern LEAF = Pattern.compile("/leaf/([0-9]{1,9})-([0-9]{1,9})(\\.png)?");
    private static final int[] SHARPNESS = {72, 96, 144, 192, 288};
    private static final int LONGEST_QUESTION = 200;
    /** In points; until there is a page. */
    private static final int A4_WIDTH = 595;
    private static final int A4_HEIGHT = 842;

    private final ProofTable table;

    Rooms(ProofTable table) {
        this.table = table;
    }

    /**
     * @param path  decoded
     * @param value of what is asked after the question mark; empty if there is nothing
     * @throws IOException if a page cannot be drawn
     */
    Answer answer(String path, String value) throws IOException {
        if (PARTS.containsKey(path)) {
            return part(PARTS.get(path));
        }
        if (path.equals("/now")) {
            return now();
        }
        if (path.equals("/find")) {
            return value.length() > LONGEST_QUESTION ? Answer.refusal(Answer.BAD_REQUEST, "That is too long to look for.")
                    : Answer.json(ProofJson.hits(find(value)));
        }
        Matcher leaf = LEAF.matcher(path);
        return leaf.matches() ? leaf(leaf, value) : Answer.refusal(Answer.NOT_FOUND, "There is nothing at this address.");
    }

    private Answer now() {
        Proof now = table.now();
        Optional<PageSet> set = now.leaves().isEmpty() ? Optional.empty() : table.set(now.leaves().get(0).set());
        return Answer.json(ProofJson.now(now, set.map(PageSet::sheet).orElse(List.of(A4_WIDTH, A4_HEIGHT))));
    }

    private Hits find(String words) throws IOException {
        return new Finder(table.now(), table).find(words);
    }

    private Answer leaf(Matcher name, String dpi) throws IOException {
        Optional<PageSet> set = table.set(Integer.parseInt(name.group(1)));
        int page = Integer.parseInt(name.group(2));
        if (set.isEmpty() || page >= set.get().count()) {
            return Answer.refusal(Answer.GONE, "This page has been set anew since.");
        }
        try {
            if (name.group(3) != null) {
                return Answer.png(set.get().png(page, sharpness(dpi)));
            }
            return Answer.json(ProofJson.leaf(set.get().leaves(page, page + 1, false).get(0), set.get().lines(page)));
        } catch (DrawnPages.LaidAside e) {
            return Answer.refusal(Answer.GONE, "This page has been set anew since.");
        }
    }

    /** The least that is enough. */
    private static int sharpness(String asked) {
        int wanted = asked.matches("[0-9]{1,4}") ? Integer.parseInt(asked) : SHARPNESS[1];
        return Arrays.stream(SHARPNESS).filter(dpi -> dpi >= wanted).findFirst().orElse(SHARPNESS[SHARPNESS.length - 1]);
    }

    private static Answer part(String[] resourceAndType) throws IOException {
        try (InputStream in = Rooms.class.getClassLoader().getResourceAsStream(resourceAndType[0])) {
            if (in == null) {
                throw new IllegalStateException(resourceAndType[0] + " is not in the program");
            }
            return new Answer(Answer.OK, resourceAndType[1], in.readAllBytes());
        }
    }
}
