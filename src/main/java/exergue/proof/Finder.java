package exergue.proof;

import exergue.typeset.Area;
import exergue.typeset.DrawnPages.Line;
import java.io.IOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Looks for numbers, ids and words in the pages as they are printed. Capitals and accents do not count. */
final class Finder {

    private static final int MOST = 60;
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern SPACE = Pattern.compile("\\s+");

    /**
     * @param leaf   from 0
     * @param anchor of the entry or coin it is in; empty where there is none
     * @param text   of the line; of a number or id, what it belongs to
     * @param line   where on the leaf the words are; empty if the whole entry is meant
     */
    record Hit(int leaf, String anchor, String text, Optional<Line> line) { }

    /** @param all how many there are, of which only the first are told */
    record Hits(List<Hit> first, int all) { }

    private static final Pattern LEADERS = Pattern.compile("\\h*(?:\\.\\h+){4,}");

    private final Proof proof;
    private final ProofTable table;

    Finder(Proof proof, ProofTable table) {
        this.proof = proof;
        this.table = table;
    }

    /** @throws IOException if a page cannot be read */
    Hits find(String asked) throws IOException {
        List<Hit> hits = new ArrayList<>();
        List<String> words = Arrays.stream(SPACE.split(plain(asked).strip())).filter(word -> !word.isEmpty()).toList();
        if (words.isEmpty()) {
            return new Hits(List.of(), 0);
        }
        named(String.join(" ", words), hits);
        for (int leaf = 0; leaf < proof.leaves().size(); leaf++) {
            onLeaf(leaf, words, hits);
        }
        return new Hits(List.copyOf(hits.subList(0, Math.min(MOST, hits.size()))), hits.size());
    }

    /** Entries of that number or id; of a shorter piece of an id, too. */
    private void named(String asked, List<Hit> hits) {
        Map<String, Integer> leaves = proof.firstLeaves();
        for (Known entry : proof.entries()) {
            boolean meant = plain(entry.number()).equals(asked) || plain(entry.id()).contains(asked);
            if (meant && leaves.containsKey(entry.anchor())) {
                hits.add(new Hit(leaves.get(entry.anchor()), entry.anchor(), (entry.number() + " " + entry.id()).strip(), Optional.empty()));
            }
        }
    }

    private void onLeaf(int number, List<String> words, List<Hit> hits) throws IOException {
        Leaf leaf = proof.leaves().get(number);
        Optional<PageSet> set = table.set(leaf.set());
        List<Line> lines = set.isEmpty() ? List.of() : set.get().lines(leaf.page());
        for (int i = 0; i < lines.size(); i++) {
            String text = plain(whole(lines, i));
            if (words.stream().allMatch(text::contains)) {
                hits.add(new Hit(number, anchor(leaf, lines.get(i)), withoutLeaders(lines.get(i).text()), Optional.of(lines.get(i))));
            }
        }
    }

    /** A word that is divided at the end of the line is found where it begins. */
    private static String whole(List<Line> lines, int at) {
        String text = lines.get(at).text().stripTrailing();
        boolean divided = (text.endsWith("-") || text.endsWith("\u2010") || text.endsWith("\u00AD")) && at + 1 < lines.size();
        return divided ? text.substring(0, text.length() - 1) + SPACE.split(lines.get(at + 1).text().strip())[0] : text;
    }

    /** The dots that lead to the page number in a list of contents would hide the words. */
    static String withoutLeaders(String line) {
        return LEADERS.matcher(line).replaceAll(" … ").strip();
    }

    /** Of what is smallest there: a coin rather than its entry. */
    private static String anchor(Leaf leaf, Line line) {
        int middle = (line.top() + line.bottom()) / 2;
        return leaf.areas().stream().filter(area -> area.top() <= middle && middle <= area.bottom())
                .min(Comparator.comparingInt(area -> area.bottom() - area.top())).map(Area::anchor).orElse("");
    }

    private static String plain(String text) {
        String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
        return bare.toLowerCase(Locale.ROOT).replace('ς', 'σ').replace('\u00A0', ' ').replace('\u202F', ' ');
    }
}
