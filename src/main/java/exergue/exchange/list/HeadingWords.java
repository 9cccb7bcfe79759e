package exergue.exchange.list;

import exergue.measure.Units;
import exergue.source.list.ColumnContent;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Words that stand over columns in lists of coins, in English, French, German and Italian. Common practice, no source. Words that mean
 * two things (provenance: an owner or a find-spot) are not here, and neither is what a reference cites.
 */
final class HeadingWords {

    private static final List<Map.Entry<ColumnContent, String>> WORDS = List.of(
            Map.entry(ColumnContent.INVENTORY_NUMBER, "inv|inv no|inv n|n d inv|no d inv|inventar nr|inventory|inventory no|inventory number|acc|acc no|accession|accession no"
                    + "|accession number|reg no|registration number|museum no|museum number|no inv|n inv|inventaire|no d inventaire"
                    + "|numero d inventaire|inv nr|invnr|inventarnr|inventarnummer|inventar|inventario|numero di inventario|n inventario|num inv"),
            Map.entry(ColumnContent.WEIGHT, "wt|wgt|weight|mass|poids|pds|masse|gew|gewicht|peso"),
            Map.entry(ColumnContent.DIAMETER, "diam|diameter|dm|dia|ø|diametre|module|durchmesser|durchm|diametro"),
            Map.entry(ColumnContent.AXIS, "axis|die axis|axe|axe des coins|orientation|stempelstellung|stempelst|stempst|stst|stempelachse|achse|orient|die axes|asse|asse di conio|asse dei coni"),
            Map.entry(ColumnContent.THICKNESS, "thickness|epaisseur|dicke|spessore"),
            Map.entry(ColumnContent.DENSITY, "density|specific gravity|sg|densite|dichte|densita|peso specifico"),
            Map.entry(ColumnContent.MINT, "mint|atelier|munzstatte|munzst|muenzstaette|mzst|pragestatte|zecca"),
            Map.entry(ColumnContent.RULER, "ruler|issuer|authority|king|emperor|souverain|autorite|emetteur|herrscher|munzherr|sovrano|autorita"),
            Map.entry(ColumnContent.DENOMINATION, "denomination|denom|valeur|nominal|nominale|valore"),
            Map.entry(ColumnContent.METAL, "metal|material|metall|metallo"),
            Map.entry(ColumnContent.TYPE, "type|type no|typ|typ nr|tipo"),
            Map.entry(ColumnContent.OBVERSE_LEGEND, "obverse legend|obv legend|legend obv|leg obv|legende droit|legende du droit|leg droit|leg dr|legende avers|av legende|vs legende|legende vs|legende av|leggenda dritto|leggenda del dritto"),
            Map.entry(ColumnContent.REVERSE_LEGEND, "reverse legend|rev legend|legend rev|leg rev|legende revers|legende du revers|leg revers|leg rv|rv legende|rs legende|legende rs|legende rv|leggenda rovescio|leggenda del rovescio"),
            Map.entry(ColumnContent.OBVERSE_DESCRIPTION, "obverse|obv|droit|avers|vorderseite|vs|dritto|diritto"),
            Map.entry(ColumnContent.REVERSE_DESCRIPTION, "reverse|rev|revers|ruckseite|rs|rovescio"),
            Map.entry(ColumnContent.OBVERSE_DIE, "obverse die|obv die|die obv|coin de droit|coin droit|coin dr|av stempel|vs stempel|stempel vs|stempel av|conio di dritto"),
            Map.entry(ColumnContent.REVERSE_DIE, "reverse die|rev die|die rev|coin de revers|coin revers|coin rv|rv stempel|rs stempel|stempel rs|stempel rv|conio di rovescio"),
            Map.entry(ColumnContent.COLLECTION, "collection|museum|musee|sammlung|collezione|museo"),
            Map.entry(ColumnContent.FIND_SPOT, "find spot|findspot|found|found at|lieu de decouverte|lieu de trouvaille|trouvaille|fundort|fo|fundstelle"
                    + "|luogo di rinvenimento|rinvenimento|luogo di ritrovamento|ritrovamento"),
            Map.entry(ColumnContent.FIND_NUMBER, "find no|find number|small find no|no de fouille|fundnummer|fundnr|fund nr|numero di scavo"),
            Map.entry(ColumnContent.FIND_CONTEXT, "context|layer|contexte|couche|befund|schicht|contesto|strato"),
            Map.entry(ColumnContent.PROVENANCE, "pedigree|acquired|acquisition|former collection|former owner|ancienne collection|anc coll|erwerb|erworben|erwerbung"
                    + "|vorbesitzer|acquisizione"),
            Map.entry(ColumnContent.COUNTERMARK, "countermark|contremarque|gegenstempel|contromarca"),
            Map.entry(ColumnContent.NOTE, "note|notes|remark|remarks|rem|comment|comments|condition|remarque|remarques|observations|obs|etat|etat de conservation|bem|bemerkung"
                    + "|bemerkungen|anm|anmerkung|anmerkungen|erh|erhaltung|zustand|oss|osservazioni|annotazioni|stato di conservazione"));

    /** Over columns that hold one thing in some lists and another in others. Common practice, no source. */
    static final Set<String> TWO_MEANINGS = Set.of("provenance", "prov", "provenience", "provenienz", "herkunft", "provenienza", "origin", "origine");

    /** Over columns of references, of which the work must be said. Common practice, no source. */
    static final Set<String> CITES = Set.of("ref", "refs", "reference", "references", "lit", "literature", "literatur", "bibliography",
            "bibliographie", "bibliografia", "bibl", "zitat", "zit", "cat", "cat no", "catalogue", "kat", "kat nr", "katalog", "catalogo", "rif",
            "riferimento", "riferimenti", "referenz", "referenzen");

    /** Units of which even the program cannot say which is meant, and does not guess. */
    private static final Set<String> UNCLEAR_UNITS = Set.of("gr", "grs", "oz", "dr");

    private static final Pattern UNIT = Pattern.compile("[(\\[]\\s*([^)\\]]{1,20}?)\\s*[)\\]]|,\\s*(\\S{1,8})$|\\s+in\\s+(\\S{1,8})$|\\s+([^\\s()\\[\\]]{1,8})$");

    /** A year or a number behind the word for a reading: the second column of weights, that of 1890. */
    private static final Pattern COUNTED = Pattern.compile(" (\\d|1[5-9]\\d\\d|20\\d\\d)$");

    private static final Map<String, ColumnContent> BY_WORD = byWord();

    private HeadingWords() { }

    private static Map<String, ColumnContent> byWord() {
        Map<String, ColumnContent> byWord = new HashMap<>();
        WORDS.forEach(entry -> List.of(entry.getValue().split("\\|")).forEach(word -> byWord.put(word, entry.getKey())));
        return byWord;
    }

    /** What a column of this heading most often holds. */
    static Optional<ColumnContent> content(String heading) {
        String plain = plain(heading);
        return Optional.ofNullable(BY_WORD.get(plain)).or(() -> Optional.ofNullable(BY_WORD.get(COUNTED.matcher(plain).replaceAll("")))
                .filter(content -> content.kind().isPresent()));
    }

    /** The unit that a heading names: "Gew. (g)", "Weight, grains", "Dm. in mm", "Ø mm". */
    static Optional<String> unit(String heading) {
        return UNIT.matcher(heading).results().map(HeadingWords::unit).flatMap(Optional::stream).findFirst();
    }

    private static Optional<String> unit(MatchResult match) {
        String word = IntStream.rangeClosed(1, match.groupCount()).mapToObj(match::group).filter(Objects::nonNull).findFirst().orElseThrow();
        String bare = word.toLowerCase(Locale.ROOT).replaceAll("\\.$", "");
        boolean droit = match.group(match.groupCount()) != null && bare.equals("dr"); // of a side, not a dram, where nothing sets it off
        return Optional.of(bare).filter(one -> !droit && (UNCLEAR_UNITS.contains(one) || Units.named(one).isPresent()));
    }

    /** In small letters without accents, marks and what names a unit. */
    static String plain(String heading) {
        String words = UNIT.matcher(heading).replaceAll(match -> unit(match).isPresent() ? "" : Matcher.quoteReplacement(match.group()))
                .replaceAll("[∅⌀]", "ø");
        return Normalizer.normalize(words.toLowerCase(Locale.ROOT).replace("ß", "ss"), Normalizer.Form.NFD).replaceAll("\\p{M}", "")
                .replaceAll("[^\\p{L}\\p{N}]+", " ").strip().replaceAll("^n(r|o|um)? (?=inv)", "no ");
    }
}
