package exergue.edition.methods.french;

import exergue.edition.methods.UnitName;
import exergue.measure.SizeScale;
import exergue.measure.Unit;

/** Units, old scales and the publications that fix them, in French. */
final class FrenchUnits {

    private static final String SI = "Brochure sur le SI, 9e édition, 2019";
    private static final String POUND = "accord international sur le yard et la livre, 1959";
    private static final String MARC = "1 kilogramme = 18827,15 grains, pesée de l’an 7 de la République, d’après Tralles";
    private static final String FUNT = "1 funt = 409,51241\u00A0g, règlement russe des poids et mesures, 1899";

    private FrenchUnits() { }

    /** @throws IllegalArgumentException for a unit that has no French name yet */
    static UnitName of(Unit unit) {
        return switch (unit.id()) {
            case "gram" -> new UnitName("gramme", "grammes", SI);
            case "milligram" -> new UnitName("milligramme", "milligrammes", SI);
            case "kilogram" -> new UnitName("kilogramme", "kilogrammes", SI);
            case "grain" -> new UnitName("grain anglais", "grains anglais", POUND);
            case "pennyweight" -> new UnitName("pennyweight", "pennyweights", POUND + "\u00A0: 24 grains anglais");
            case "troy-ounce" -> new UnitName("once troy", "onces troy", POUND + "\u00A0: 480 grains anglais");
            case "avoirdupois-ounce" -> new UnitName("once avoirdupois", "onces avoirdupois",
                    POUND + "\u00A0: un seizième de la livre de 453,59237\u00A0g");
            case "avoirdupois-dram" -> new UnitName("drachme avoirdupois", "drachmes avoirdupois",
                    POUND + "\u00A0: un seizième de l’once avoirdupois");
            case "apothecaries-dram" -> new UnitName("drachme d’apothicaire", "drachmes d’apothicaire", POUND + "\u00A0: 60 grains anglais");
            case "carat" -> new UnitName("carat métrique", "carats métriques",
                    "4e Conférence générale des poids et mesures, 1907");
            case "tola" -> new UnitName("tola", "tolas", "10 tolas = 3,75 onces troy, soit 180 grains anglais par tola");
            case "french-livre" -> poidsDeMarc("livre", "livres", "9216");
            case "french-marc" -> poidsDeMarc("marc", "marcs", "4608");
            case "french-once" -> poidsDeMarc("once", "onces", "576");
            case "french-gros" -> poidsDeMarc("gros", "gros", "72");
            case "french-denier" -> poidsDeMarc("denier", "deniers", "24");
            case "french-grain" -> new UnitName("grain (poids de marc)", "grains (poids de marc)", MARC);
            case "zolotnik" -> new UnitName("zolotnik", "zolotniks", FUNT + "\u202F; le zolotnik en est 1/96");
            case "dolya" -> new UnitName("dolia", "dolias", FUNT + "\u202F; la dolia en est 1/9216");
            default -> ofNoWeight(unit);
        };
    }

    private static UnitName ofNoWeight(Unit unit) {
        return switch (unit.id()) {
            case "millimetre" -> new UnitName("millimètre", "millimètres", SI);
            case "centimetre" -> new UnitName("centimètre", "centimètres", SI);
            case "inch" -> new UnitName("pouce anglais", "pouces anglais", POUND);
            case "sixteenth-inch" -> new UnitName("seizième de pouce anglais", "seizièmes de pouce anglais",
                    "le n° 16 vaut un pouce\u00A0: Numismatic Society of Philadelphia, 1858");
            case "paris-ligne" -> new UnitName("ligne de Paris", "lignes de Paris",
                    "1 mètre = 3 pieds 11,296 lignes, loi du 19 frimaire an 8 (1799)");
            case "hour" -> new UnitName("heure de cadran", "heures de cadran", "usage courant");
            case "degree" -> new UnitName("degré", "degrés", "usage courant");
            case "arrow" -> new UnitName("huitième de tour", "huitièmes de tour", "usage courant");
            case "gram-per-cubic-centimetre" ->
                    new UnitName("gramme par centimètre cube", "grammes par centimètre cube", SI);
            case "square-millimetre" -> new UnitName("millimètre carré", "millimètres carrés", SI);
            case "square-centimetre" -> new UnitName("centimètre carré", "centimètres carrés", SI);
            default -> throw new IllegalArgumentException("no French name for " + unit.id());
        };
    }

    private static UnitName poidsDeMarc(String singular, String plural, String grains) {
        return new UnitName(singular + " (poids de marc)", plural + " (poids de marc)", MARC + "\u202F; " + grains + " grains");
    }

    /** As it stands after "de". */
    static String scale(SizeScale scale) {
        String printed = switch (scale.id()) {
            case "mionnet-1805" -> "imprimée en 1805";
            case "leake-1854" -> "imprimée par Leake en 1854";
            case "dickeson-1859" -> "imprimée par Dickeson en 1859";
            case "prime-1861" -> "imprimée par Prime en 1861";
            case "head-1887" -> "imprimée par Head en 1887";
            default -> throw new IllegalArgumentException("no French name for " + scale.id());
        };
        return "l’échelle de Mionnet telle qu’" + printed;
    }
}
