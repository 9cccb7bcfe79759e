package exergue.exchange.list;

import exergue.measure.Units;
import exergue.source.list.ColumnContent;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Words that stand over columns in lists of coins, in English, French, German and Italian. Common practice, no source. Words that mean
 * two things (provenance: an owner or a find-spot) are not here, and neither is what a reference cites.
 */
final class HeadingWords {

    private static final List<Map.Entry<ColumnContent, String>> WORDS = List.of(
            Map.entry(ColumnContent.INVENTORY_NUMBER, "inv|inv no|inventory|inventory no|inventory number|acc|acc no|accession|accession no"
                    + "|accession number|reg no|registration number|museum no|museum number|no inv|n inv|inventaire|no d inventaire"
                    + "|numero d inventaire|inv nr|invnr|inventarnr|inventarnummer|inventar|inventario|numero di inventario|num inv"),
            Map.entry(ColumnContent.WEIGHT, "wt|weight|mass|poids|pds|masse|gew|gewicht|peso"),
            Map.entry(ColumnContent.DIAMETER, "diam|diameter|dm|dia|ø|diametre|module|durchmesser|durchm|diametro"),
            Map.entry(ColumnContent.AXIS, "axis|die axis|axe|axe des coins|orientation|stempelstellung|stempelst|stst|stempelachse|asse|asse di conio"),
            Map.entry(ColumnContent.THICKNESS, "thickness|epaisseur|dicke|spessore"),
            Map.entry(ColumnContent.DENSITY, "density|specific gravity|sg|densite|dichte|densita|peso specifico"),
            Map.entry(ColumnContent.MINT, "mint|atelier|munzstatte|muenzstaette|mzst|pragestatte|zecca"),
            Map.entry(ColumnContent.RULER, "ruler|issuer|authority|king|emperor|souverain|autorite|emetteur|herrscher|munzherr|sovrano|autorita"),
            Map.entry(ColumnContent.DENOMINATION, "denomination|denom|valeur|nominal|nominale|valore"),
            Map.entry(ColumnContent.METAL, "metal|material|metall|metallo"),
            Map.entry(ColumnContent.TYPE, "type|type no|typ|tipo"),
            Map.entry(ColumnContent.OBVERSE_LEGEND, "obverse legend|obv legend|legende droit|legende avers|av legende|vs legende|leggenda dritto"),
            Map.entry(ColumnContent.REVERSE_LEGEND, "reverse legend|rev legend|legende revers|rv legende|rs legende|leggenda rovescio"),
            Map.entry(ColumnContent.OBVERSE_DESCRIPTION, "obverse|obv|droit|avers|vorderseite|vs|dritto|diritto"),
            Map.entry(ColumnContent.REVERSE_DESCRIPTION, "reverse|rev|revers|ruckseite|rs|rovescio"),
            Map.entry(ColumnContent.OBVERSE_DIE, "obverse die|obv die|coin de droit|av stempel|vs stempel|conio di dritto"),
            Map.entry(ColumnContent.REVERSE_DIE, "reverse die|rev die|coin de revers|rv stempel|rs stempel|conio di rovescio"),
            Map.entry(ColumnContent.COLLECTION, "collection|museum|musee|sammlung|collezione|museo"),
            Map.entry(ColumnContent.FIND_SPOT, "find spot|findspot|found|found at|lieu de decouverte|trouvaille|fundort|fundstelle"
                    + "|luogo di rinvenimento|rinvenimento"),
            Map.entry(ColumnContent.FIND_NUMBER, "find no|find number|small find no|no de fouille|fundnummer|fundnr|fund nr|numero di scavo"),
            Map.entry(ColumnContent.FIND_CONTEXT, "context|layer|contexte|couche|befund|schicht|contesto|strato"),
            Map.entry(ColumnContent.PROVENANCE, "pedigree|acquired|acquisition|former collection|ancienne collection|erwerb|erworben|erwerbung"
                    + "|vorbesitzer|acquisizione"),
            Map.entry(ColumnContent.COUNTERMARK, "countermark|contremarque|gegenstempel|contromarca"),
            Map.entry(ColumnContent.NOTE, "note|notes|remark|remarks|comment|comments|condition|remarques|observations|etat|bemerkung"
                    + "|bemerkungen|anmerkung|erhaltung|osservazioni|stato di conservazione"));

    /** Over columns that hold one thing in some lists and another in others. Common practice, no source. */
    static final Set<String> TWO_MEANINGS = Set.of("provenance", "provenience", "provenienz", "herkunft", "provenienza", "origin", "origine");

    /** Over columns of references, of which the work must be said. Common practice, no source. */
    static final Set<String> CITES = Set.of("ref", "refs", "reference", "references", "lit", "literature", "literatur", "bibliography",
            "bibliographie", "bibliografia", "zitat", "cat", "catalogue");

    /** Units of which even the program cannot say which is meant, and does not guess. */
    private static final Set<String> UNCLEAR_UNITS = Set.of("gr", "grs", "oz", "dr");

    private static final Pattern UNIT = Pattern.compile("[(\\[]\\s*([^)\\]]{1,20}?)\\s*[)\\]]|,\\s*(\\S{1,8})$|\\s+in\\s+(\\S{1,8})$");

    private static final Map<String, ColumnContent> BY_WORD = byWord();

    private HeadingWords() { }

    private static Map<String, ColumnContent> byWord() {
        Map<String, ColumnContent> byWord = new HashMap<>();
        WORDS.forEach(entry -> List.of(entry.getValue().split("\\|")).forEach(word -> byWord.put(word, entry.getKey())));
        return byWord;
    }

    /** What a column of this heading most often holds. */
    static Optional<ColumnContent> content(String heading) {
        return Optional.ofNullable(BY_WORD.get(plain(heading)));
    }

    /** The unit that a heading names: "Gew. (g)", "Weight, grains", "Dm. in mm". */
    static Optional<String> unit(String heading) {
        Matcher unit = UNIT.matcher(heading);
        while (unit.find()) {
            String word = unit.group(1) != null ? unit.group(1) : unit.group(2) != null ? unit.group(2) : unit.group(3);
            String bare = word.toLowerCase(Locale.ROOT).replaceAll("\\.$", "");
            if (UNCLEAR_UNITS.contains(bare) || Units.named(bare).isPresent()) {
                return Optional.of(bare);
            }
        }
        return Optional.empty();
    }

    /** In small letters without accents, marks and what names a unit. */
    static String plain(String heading) {
        String words = unit(heading).isPresent() ? UNIT.matcher(heading).replaceAll("") : heading;
        return Normalizer.normalize(words.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFD).replaceAll("\\p{M}", "")
                .replaceAll("[^\\p{L}\\p{N}]+", " ").strip().replaceAll("^n(r|o|um)? (?=inv)", "no ");
    }
}
