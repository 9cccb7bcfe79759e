package exergue.exchange.list;

import exergue.finding.Findings;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a list would make of the catalogue. Nothing has been written.
 *
 * @param made     new entries by their paths in the catalogue, in the order of the list
 * @param changed  entries to which figures are added, whole
 * @param rows     by the path of each entry, new or there: the row of the sheet that is its coin
 * @param look     at the list, for a summary; empty where it could not be read
 * @param shown    the list and the file beside it as they may be shown, without find-spots, by their paths
 * @param findings on the list and the file beside it
 */
public record Entered(Map<String, byte[]> made, Map<String, byte[]> changed, Map<String, Integer> rows, Optional<Look> look,
                      Map<String, String> shown, Findings findings) {

    public Entered {
        made = Collections.unmodifiableMap(new LinkedHashMap<>(made));
        changed = Collections.unmodifiableMap(new LinkedHashMap<>(changed));
        rows = Collections.unmodifiableMap(new LinkedHashMap<>(rows));
        shown = Collections.unmodifiableMap(new LinkedHashMap<>(shown));
    }

    /**
     * How the list was read.
     *
     * @param how         "UTF-8, cells parted by semicolons"
     * @param headingsRow row of the sheet
     * @param above       rows above the headings that are not read
     * @param leftOut     rows that are no coins
     * @param coins       rows that are
     * @param there       of these, coins that the catalogue has
     * @param without     of these, coins whose entries have no figures of the list
     */
    public record Look(String how, int headingsRow, int above, int leftOut, int coins, int there, int without) { }

    static Entered nothing(Findings findings, Map<String, String> shown) {
        return new Entered(Map.of(), Map.of(), Map.of(), Optional.empty(), shown, findings);
    }

    /** New and changed entries. */
    public Map<String, byte[]> files() {
        Map<String, byte[]> files = new LinkedHashMap<>(made);
        files.putAll(changed);
        return files;
    }
}
