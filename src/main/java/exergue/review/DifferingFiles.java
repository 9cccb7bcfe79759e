package exergue.review;

import exergue.files.Tree;
import exergue.model.NaturalOrder;
import exergue.review.content.FileContent;
import exergue.review.git.RevisionTree;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The files that are not byte for byte the same in two trees.
 *
 * @param written paths of entries, chapters and other texts that the reader understands
 * @param before  contents of the others, such as photographs, as far as they differ
 */
public record DifferingFiles(List<String> written, Map<String, Object> before, Map<String, Object> after) {

    private static final Set<String> READ = Set.of("yaml", "md", "bib", "json");
    private static final int DIGEST = 12;

    public DifferingFiles {
        written = List.copyOf(written);
        before = Collections.unmodifiableMap(new LinkedHashMap<>(before));
        after = Collections.unmodifiableMap(new LinkedHashMap<>(after));
    }

    static DifferingFiles between(Tree before, Tree after) throws IOException {
        TreeSet<String> paths = new TreeSet<>(NaturalOrder.INSTANCE);
        paths.addAll(before.files());
        paths.addAll(after.files());
        List<String> written = new ArrayList<>();
        Map<String, Object> old = new LinkedHashMap<>();
        Map<String, Object> now = new LinkedHashMap<>();
        for (String path : paths) {
            if (same(path, before, after)) {
                continue;
            }
            if (READ.contains(path.substring(path.lastIndexOf('.') + 1))) {
                written.add(path);
            } else {
                put(path, before, old);
                put(path, after, now);
            }
        }
        return new DifferingFiles(written, old, now);
    }

    private static boolean same(String path, Tree before, Tree after) throws IOException {
        if (!before.has(path) || !after.has(path)) {
            return false;
        }
        if (before instanceof RevisionTree old && after instanceof RevisionTree now) {
            return old.contentName(path).equals(now.contentName(path));
        }
        return before.size(path) == after.size(path) && Arrays.equals(before.read(path), after.read(path));
    }

    private static void put(String path, Tree tree, Map<String, Object> into) throws IOException {
        if (tree.has(path)) {
            byte[] bytes = tree.read(path);
            into.put(path, new FileContent(HexFormat.of().formatHex(sha256().digest(bytes)).substring(0, DIGEST), bytes.length));
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    boolean isEmpty() {
        return written.isEmpty() && before.isEmpty() && after.isEmpty();
    }
}
