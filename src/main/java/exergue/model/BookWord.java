package exergue.model;

import exergue.measure.Kind;
import java.util.Locale;

/**
 * Words that the tool itself puts into a book, in every language; the methods statement has its own. A house can have
 * any of them otherwise. Adjectives agree with "coin".
 */
public enum BookWord {

    CONTENTS("Contents", "Table des matières", "Inhalt", "Indice"),
    METHODS("How the coins were measured", "Comment les monnaies ont été mesurées", "Wie die Münzen gemessen wurden",
            "Come sono state misurate le monete"),
    CATALOGUE("Catalogue", "Catalogue", "Katalog", "Catalogo"),
    WORKS("Works cited", "Ouvrages cités", "Abgekürzt zitierte Literatur", "Opere citate"),
    PLATES("Plates", "Planches", "Tafeln", "Tavole"),
    PLATE("Plate", "Planche", "Tafel", "Tavola"),
    /** Before the number of a plate, in an entry. */
    PLATE_SHORT("pl.", "pl.", "Taf.", "tav."),
    /** Of an entry, over a page that it runs on to. */
    CONTINUED("continued", "suite", "Fortsetzung", "continua"),
    /** Before the number of a table, over it. */
    TABLE("Table", "Tableau", "Tabelle", "Tabella"),
    /** Before the number of a figure, below it. */
    FIGURE("Fig.", "Fig.", "Abb.", "Fig."),
    TABLES("Tables", "Tableaux", "Tabellen", "Tabelle"),
    FIGURES("Figures", "Figures", "Abbildungen", "Figure"),
    AND("and", "et", "und", "e"),
    SCALE("scale", "échelle", "Maßstab", "scala"),
    /** After the scale of the plates, where some coins have another. */
    UNLESS_BY_NUMBER("unless another stands by the number", "sauf autre indication auprès du numéro",
            "sofern bei der Nummer nichts anderes steht", "salvo diversa indicazione accanto al numero"),
    NOT_TO_SCALE("not to scale", "hors échelle", "nicht maßstäblich", "non in scala"),
    NUMBER("no.", "n°", "Nr.", "n."),
    NUMBERS("nos", "n°s", "Nr.", "nn."),
    /** Before the number of a coin of the same type that has been described already. */
    AS_NUMBER("as no.", "comme n°", "wie Nr.", "come n."),
    ABBREVIATIONS("Abbreviations", "Abréviations", "Abkürzungen", "Abbreviazioni"),

    FINDS("Find tables", "Tableaux des trouvailles", "Fundtabellen", "Tabelle dei rinvenimenti"),
    CONCORDANCES("Concordances", "Tables de concordance", "Konkordanzen", "Concordanze"),
    INDEXES("Indexes", "Index", "Register", "Indici"),
    CREDITS("Picture credits", "Crédits photographiques", "Bildnachweis", "Crediti fotografici"),

    CONCORDANCE_NOTE("The numbers on the right are those of this catalogue. In bold: the very coin; otherwise coins of the same type.",
            "Les numéros à droite sont ceux de ce catalogue. En gras\u00A0: l’exemplaire même\u202F; sinon, des monnaies du même type.",
            "Rechts stehen die Nummern dieses Katalogs. Fett: das Exemplar selbst; sonst Münzen desselben Typs.",
            "A destra i numeri di questo catalogo. In grassetto: l’esemplare stesso; altrimenti monete dello stesso tipo."),
    INDEX_NOTE("The numbers are those of the catalogue.", "Les numéros sont ceux du catalogue.",
            "Die Zahlen sind Katalognummern.", "I numeri sono quelli del catalogo."),
    INDEX_NOTE_PAGES("The numbers are those of the pages.", "Les numéros sont ceux des pages.",
            "Die Zahlen sind Seitenzahlen.", "I numeri sono quelli delle pagine."),
    INDEX_MINTS("Mints", "Ateliers", "Münzstätten", "Zecche"),
    INDEX_RULERS("Rulers and magistrates", "Souverains et magistrats", "Herrscher und Beamte", "Autorità e magistrati"),
    INDEX_LEGENDS("Legends", "Légendes", "Legenden", "Legende"),
    INDEX_TYPES("Types and attributes", "Types et attributs", "Typen und Attribute", "Tipi e attributi"),
    INDEX_FIND_SPOTS("Find-spots", "Lieux de trouvaille", "Fundorte", "Luoghi di rinvenimento"),
    INDEX_COLLECTIONS("Collections and provenances", "Collections et provenances", "Sammlungen und Provenienzen",
            "Collezioni e provenienze"),
    INDEX_COUNTERMARKS("Countermarks", "Contremarques", "Gegenstempel", "Contromarche"),
    SEE("see", "voir", "siehe", "vedi"),
    SEE_ALSO("see also", "voir aussi", "siehe auch", "vedi anche"),
    NUMBER_HEAD("No.", "N°", "Nr.", "N."),
    THIS_CATALOGUE("Catalogue", "Catalogue", "Katalog", "Catalogo"),
    FORMER_NUMBERS("Former numbers", "Anciens numéros", "Frühere Nummern", "Numeri precedenti"),
    VAR("var.", "var.", "Var.", "var."),
    PAGE("p.", "p.", "S.", "p."),
    COUNTERMARK("countermark", "contremarque", "Gegenstempel", "contromarca"),

    /** After the name of a find-spot, in the captions of its tables. */
    BY_TYPE("by type", "par type", "nach Typen", "per tipo"),
    BY_PERIOD("by period", "par période", "nach Zeitabschnitten", "per periodo"),
    BY_CONTEXT("by context", "par contexte", "nach Fundzusammenhang", "per contesto"),
    WITH_OTHER_FINDS("compared with other finds", "comparaison avec d’autres trouvailles", "verglichen mit anderen Funden",
            "a confronto con altri ritrovamenti"),
    CLOSING_DATE("Closing date", "Date de clôture", "Schlussdatum", "Data di chiusura"),
    MINT("Mint", "Atelier", "Münzstätte", "Zecca"),
    PERIOD("Period", "Période", "Zeitabschnitt", "Periodo"),
    DENOMINATION("Denomination", "Dénomination", "Nominal", "Nominale"),
    METAL("Metal", "Métal", "Metall", "Metallo"),
    COINS("Coins", "Monnaies", "Münzen", "Monete"),
    CONTEXT("Context", "Contexte", "Fundzusammenhang", "Contesto"),
    YEARS("Years", "Années", "Jahre", "Anni"),
    TOTAL("Total", "Total", "Summe", "Totale"),
    PER_THOUSAND("Per thousand", "Pour mille", "Promille", "Per mille"),
    PER_YEAR("Per thousand and year", "Pour mille et par an", "Promille je Jahr", "Per mille e per anno"),
    COMPARED_WITH("Compared with", "Comparaison avec", "Verglichen mit", "Confronto con"),
    ELSEWHERE("Elsewhere, per thousand", "Ailleurs, pour mille", "Anderswo, Promille", "Altrove, per mille"),
    DIFFERENCE("Difference", "Différence", "Differenz", "Differenza"),
    RUNNING_SUM("Running sum", "Somme courante", "Laufende Summe", "Somma progressiva"),
    OTHER_PERIODS("Other periods", "Autres périodes", "Andere Zeitabschnitte", "Altri periodi"),
    COMPARED_NOTE("Difference: per thousand here less per thousand elsewhere. Its running sum, after Reece 1995, rises where the site "
            + "has more than its share and falls where it has less.",
            "Différence\u00A0: pour mille ici moins pour mille ailleurs. Sa somme courante, d’après Reece 1995, monte là où le site a plus "
            + "que sa part et baisse là où il a moins.",
            "Differenz: Promille hier weniger Promille anderswo. Ihre laufende Summe, nach Reece 1995, steigt, wo der Ort mehr als seinen "
            + "Anteil hat, und fällt, wo er weniger hat.",
            "Differenza: per mille qui meno per mille altrove. La sua somma progressiva, secondo Reece 1995, sale dove il sito ha più "
            + "della sua parte e scende dove ne ha meno."),
    LOSS_NOTE("Per thousand: coins of the period × 1000 ÷ all coins of the find (Reece 1995). Per thousand and year: the same ÷ the "
            + "years of the period (Casey 1986), which are counted from the first year to the last of its dates and are as uncertain as these.",
            "Pour mille\u00A0: monnaies de la période × 1000 ÷ toutes les monnaies du site (Reece 1995). Pour mille et par an\u00A0: le même "
            + "nombre ÷ les années de la période (Casey 1986), comptées de la première à la dernière de ses dates et aussi incertaines qu’elles.",
            "Promille: Münzen des Zeitabschnitts × 1000 ÷ alle Münzen des Fundes (Reece 1995). Promille je Jahr: dasselbe ÷ die Jahre des "
            + "Zeitabschnitts (Casey 1986), gezählt vom ersten bis zum letzten Jahr und so unsicher wie diese.",
            "Per mille: monete del periodo × 1000 ÷ tutte le monete del sito (Reece 1995). Per mille e per anno: lo stesso ÷ gli anni del "
            + "periodo (Casey 1986), contati dal primo all’ultimo e incerti quanto questi."),
    PHOTOGRAPHS("Photographs", "Photographies", "Fotografien", "Fotografie"),
    PERMISSION("Permission", "Autorisation", "Genehmigung", "Autorizzazione"),

    OBVERSE("Obv.", "D/", "Vs.", "D/"),
    REVERSE("Rev.", "R/", "Rs.", "R/"),
    OBVERSE_OF("Obverse of no.", "Droit du n°", "Vorderseite von Nr.", "Dritto del n."),
    REVERSE_OF("Reverse of no.", "Revers du n°", "Rückseite von Nr.", "Rovescio del n."),
    LEGEND("legend", "légende", "Legende", "legenda"),
    RETROGRADE("retrograde", "rétrograde", "rückläufig", "retrograda"),
    UNIFACE("uniface", "uniface", "einseitig", "uniface"),

    WEIGHT("weight", "poids", "Gewicht", "peso"),
    DIAMETER("diameter", "diamètre", "Durchmesser", "diametro"),
    AXIS("die-axis", "axe", "Stempelstellung", "asse"),
    THICKNESS("thickness", "épaisseur", "Dicke", "spessore"),
    DENSITY("density", "densité", "Dichte", "densità"),
    SURFACE("surface", "surface", "Oberfläche", "superficie"),
    /** With places for the share, the metal it is a share of, and the other metal. */
    FINENESS("by its density {share} per cent {metal} if alloyed with nothing but {other}",
            "{metal} {share}\u202F% d’après la densité, si allié au seul {other}",
            "nach der Dichte {share}\u00A0% {metal}, sofern nur mit {other} legiert",
            "{metal} {share}\u00A0% secondo la densità, se in lega con il solo {other}"),
    GOLD("gold", "or", "Gold", "oro"),
    SILVER("silver", "argent", "Silber", "argento"),
    COPPER("copper", "cuivre", "Kupfer", "rame"),

    THIS_COIN("this coin", "cet exemplaire", "dieses Exemplar", "questo esemplare"),
    SAME_DIES("same dies", "mêmes coins", "stempelgleich", "stessi conii"),
    VARIANT("variant", "variante", "Variante", "variante"),
    NOT_IN("not in", "absent de", "nicht in", "assente in"),

    BROKEN("broken", "brisée", "gebrochen", "spezzata"),
    CHIPPED("chipped", "ébréchée", "ausgebrochen", "scheggiata"),
    PIERCED("pierced", "percée", "gelocht", "forata"),
    CLIPPED("clipped", "rognée", "beschnitten", "tosata"),
    MOUNTED("mounted", "montée en bijou", "gefasst", "montata"),
    PLUGGED("plugged", "rebouchée", "gestopft", "otturata"),
    CORRODED("corroded", "corrodée", "korrodiert", "corrosa"),
    UNCLEANED("uncleaned", "non nettoyée", "ungereinigt", "non pulita"),

    STRUCK("struck", "frappée", "geprägt", "coniata"),
    CAST("cast", "coulée", "gegossen", "fusa"),
    PUNCHED("punched", "poinçonnée", "gepunzt", "punzonata"),
    MACHINE_STRUCK("machine-struck", "frappée à la machine", "maschinengeprägt", "coniata a macchina"),

    ROUND("round", "ronde", "rund", "rotonda"),
    OVAL("oval", "ovale", "oval", "ovale"),
    SQUARE("square", "carrée", "quadratisch", "quadrata"),
    RECTANGULAR("rectangular", "rectangulaire", "rechteckig", "rettangolare"),
    POLYGONAL("polygonal", "polygonale", "vieleckig", "poligonale"),
    IRREGULAR("irregular", "irrégulière", "unregelmäßig", "irregolare");

    private final InEveryLanguage words;

    BookWord(String english, String french, String german, String italian) {
        this.words = new InEveryLanguage(english, french, german, italian);
    }

    public String in(Language language) {
        return words.in(language);
    }

    /** As the house style names it: {@code obverse-of}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static BookWord of(Kind kind) {
        return valueOf(kind.name());
    }

    /** @param metal as an alloy names it: "gold" */
    public static BookWord metal(String metal) {
        return valueOf(metal.toUpperCase(Locale.ROOT));
    }

    public static BookWord of(Damage damage) {
        return valueOf(damage.name());
    }

    public static BookWord of(Making making) {
        return valueOf(making.name());
    }

    public static BookWord of(Shape shape) {
        return valueOf(shape.name());
    }
}
