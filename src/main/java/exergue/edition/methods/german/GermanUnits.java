package exergue.edition.methods.german;

import exergue.edition.methods.UnitName;
import exergue.measure.SizeScale;
import exergue.measure.Unit;

/** Units, old scales and the publications that fix them, in German; plurals as they stand after "in". */
final class GermanUnits {

    private static final String SI = "SI-Broschüre, 9. Auflage, 2019";
    private static final String POUND = "internationales Abkommen über Yard und Pfund, 1959";
    private static final String MARC = "1 Kilogramm = 18827,15 französische Grains, gewogen im Jahr 7 der Republik, nach Tralles";
    private static final String FUNT = "1 Funt = 409,51241\u00A0g, russische Maß- und Gewichtsordnung, 1899";

    private GermanUnits() { }

    /** @throws IllegalArgumentException for a unit that has no German name yet */
    static UnitName of(Unit unit) {
        return switch (unit.id()) {
            case "gram" -> new UnitName("Gramm", "Gramm", SI);
            case "milligram" -> new UnitName("Milligramm", "Milligramm", SI);
            case "kilogram" -> new UnitName("Kilogramm", "Kilogramm", SI);
            case "grain" -> new UnitName("Grain", "Grain", POUND);
            case "pennyweight" -> new UnitName("Pennyweight", "Pennyweights", POUND + ": 24 Grain");
            case "troy-ounce" -> new UnitName("Troy-Unze", "Troy-Unzen", POUND + ": 480 Grain");
            case "avoirdupois-ounce" -> new UnitName("Avoirdupois-Unze", "Avoirdupois-Unzen",
                    POUND + ": ein Sechzehntel des Pfundes von 453,59237\u00A0g");
            case "avoirdupois-dram" -> new UnitName("Avoirdupois-Dram", "Avoirdupois-Drams",
                    POUND + ": ein Sechzehntel der Avoirdupois-Unze");
            case "apothecaries-dram" -> new UnitName("Apotheker-Dram", "Apotheker-Drams", POUND + ": 60 Grain");
            case "carat" -> new UnitName("metrisches Karat", "metrischen Karat",
                    "4. Generalkonferenz für Maß und Gewicht, 1907");
            case "tola" -> new UnitName("Tola", "Tola", "10 Tola = 3,75 Troy-Unzen, je Tola also 180 Grain");
            case "french-livre" -> poidsDeMarc("Livre", "Livres", "9216");
            case "french-marc" -> poidsDeMarc("Marc", "Marcs", "4608");
            case "french-once" -> poidsDeMarc("Once", "Onces", "576");
            case "french-gros" -> poidsDeMarc("Gros", "Gros", "72");
            case "french-denier" -> poidsDeMarc("Denier", "Deniers", "24");
            case "french-grain" -> new UnitName("Grain (poids de marc)", "Grains (poids de marc)", MARC);
            case "zolotnik" -> new UnitName("Solotnik", "Solotnik", FUNT + "; ein Solotnik ist 1/96 davon");
            case "dolya" -> new UnitName("Dolja", "Doljas", FUNT + "; eine Dolja ist 1/9216 davon");
            default -> ofNoWeight(unit);
        };
    }

    private static UnitName ofNoWeight(Unit unit) {
        return switch (unit.id()) {
            case "millimetre" -> new UnitName("Millimeter", "Millimetern", SI);
            case "centimetre" -> new UnitName("Zentimeter", "Zentimetern", SI);
            case "inch" -> new UnitName("Zoll", "Zoll", POUND);
            case "sixteenth-inch" -> new UnitName("Sechzehntelzoll", "Sechzehntelzoll",
                    "Nr. 16 ist ein Zoll: Numismatic Society of Philadelphia, 1858");
            case "paris-ligne" -> new UnitName("Pariser Linie", "Pariser Linien",
                    "1 Meter = 3 Pieds 11,296 Lignes, Gesetz vom 19. Frimaire des Jahres 8 (1799)");
            case "hour" -> new UnitName("Uhrstunde", "Uhrstunden", "allgemeiner Brauch");
            case "degree" -> new UnitName("Grad", "Grad", "allgemeiner Brauch");
            case "arrow" -> new UnitName("Achtelumdrehung", "Achtelumdrehungen", "allgemeiner Brauch");
            case "gram-per-cubic-centimetre" ->
                    new UnitName("Gramm je Kubikzentimeter", "Gramm je Kubikzentimeter", SI);
            case "square-millimetre" -> new UnitName("Quadratmillimeter", "Quadratmillimetern", SI);
            case "square-centimetre" -> new UnitName("Quadratzentimeter", "Quadratzentimetern", SI);
            default -> throw new IllegalArgumentException("no German name for " + unit.id());
        };
    }

    private static UnitName poidsDeMarc(String singular, String plural, String grains) {
        return new UnitName(singular + " (poids de marc)", plural + " (poids de marc)", MARC + "; " + grains + " Grains");
    }

    /** In the genitive, as it stands after "Größe". */
    static String scale(SizeScale scale) {
        String printed = switch (scale.id()) {
            case "mionnet-1805" -> "1805";
            case "leake-1854" -> "Leake 1854";
            case "dickeson-1859" -> "Dickeson 1859";
            case "prime-1861" -> "Prime 1861";
            case "head-1887" -> "Head 1887";
            default -> throw new IllegalArgumentException("no German name for " + scale.id());
        };
        return "der Skala von Mionnet im Druck von " + printed;
    }
}
