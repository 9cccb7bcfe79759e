package exergue.edition.methods.italian;

import exergue.edition.methods.UnitName;
import exergue.measure.SizeScale;
import exergue.measure.Unit;

/** Units, old scales and the publications that fix them, in Italian. */
final class ItalianUnits {

    private static final String SI = "Opuscolo SI, 9ª edizione, 2019";
    private static final String POUND = "accordo internazionale su iarda e libbra, 1959";
    private static final String MARC = "1 chilogrammo = 18827,15 grani, pesati nell’anno 7 della Repubblica, secondo Tralles";
    private static final String FUNT = "1 funt = 409,51241\u00A0g, regolamento russo dei pesi e delle misure, 1899";

    private ItalianUnits() { }

    /** @throws IllegalArgumentException for a unit that has no Italian name yet */
    static UnitName of(Unit unit) {
        return switch (unit.id()) {
            case "gram" -> new UnitName("grammo", "grammi", SI);
            case "milligram" -> new UnitName("milligrammo", "milligrammi", SI);
            case "kilogram" -> new UnitName("chilogrammo", "chilogrammi", SI);
            case "grain" -> new UnitName("grano inglese", "grani inglesi", POUND);
            case "pennyweight" -> new UnitName("pennyweight", "pennyweight", POUND + ": 24 grani inglesi");
            case "troy-ounce" -> new UnitName("oncia troy", "once troy", POUND + ": 480 grani inglesi");
            case "avoirdupois-ounce" -> new UnitName("oncia avoirdupois", "once avoirdupois",
                    POUND + ": un sedicesimo della libbra di 453,59237\u00A0g");
            case "avoirdupois-dram" -> new UnitName("dramma avoirdupois", "dramme avoirdupois",
                    POUND + ": un sedicesimo dell’oncia avoirdupois");
            case "apothecaries-dram" -> new UnitName("dramma da farmacista", "dramme da farmacista", POUND + ": 60 grani inglesi");
            case "carat" -> new UnitName("carato metrico", "carati metrici",
                    "4ª Conferenza generale dei pesi e delle misure, 1907");
            case "tola" -> new UnitName("tola", "tola", "10 tola = 3,75 once troy, quindi 180 grani inglesi per tola");
            case "french-livre" -> poidsDeMarc("livre", "livres", "9216");
            case "french-marc" -> poidsDeMarc("marc", "marcs", "4608");
            case "french-once" -> poidsDeMarc("once", "onces", "576");
            case "french-gros" -> poidsDeMarc("gros", "gros", "72");
            case "french-denier" -> poidsDeMarc("denier", "deniers", "24");
            case "french-grain" -> new UnitName("grano (poids de marc)", "grani (poids de marc)", MARC);
            case "zolotnik" -> new UnitName("zolotnik", "zolotnik", FUNT + "; lo zolotnik ne è 1/96");
            case "dolya" -> new UnitName("dolja", "dolja", FUNT + "; la dolja ne è 1/9216");
            default -> ofNoWeight(unit);
        };
    }

    private static UnitName ofNoWeight(Unit unit) {
        return switch (unit.id()) {
            case "millimetre" -> new UnitName("millimetro", "millimetri", SI);
            case "centimetre" -> new UnitName("centimetro", "centimetri", SI);
            case "inch" -> new UnitName("pollice", "pollici", POUND);
            case "sixteenth-inch" -> new UnitName("sedicesimo di pollice", "sedicesimi di pollice",
                    "il n. 16 è un pollice: Numismatic Society of Philadelphia, 1858");
            case "paris-ligne" -> new UnitName("linea di Parigi", "linee di Parigi",
                    "1 metro = 3 pieds 11,296 lignes, legge del 19 frimaio dell’anno 8 (1799)");
            case "hour" -> new UnitName("ora di quadrante", "ore di quadrante", "uso comune");
            case "degree" -> new UnitName("grado", "gradi", "uso comune");
            case "arrow" -> new UnitName("ottavo di giro", "ottavi di giro", "uso comune");
            case "gram-per-cubic-centimetre" ->
                    new UnitName("grammo per centimetro cubo", "grammi per centimetro cubo", SI);
            case "square-millimetre" -> new UnitName("millimetro quadrato", "millimetri quadrati", SI);
            case "square-centimetre" -> new UnitName("centimetro quadrato", "centimetri quadrati", SI);
            default -> throw new IllegalArgumentException("no Italian name for " + unit.id());
        };
    }

    private static UnitName poidsDeMarc(String singular, String plural, String grains) {
        return new UnitName(singular + " (poids de marc)", plural + " (poids de marc)", MARC + "; " + grains + " grani");
    }

    /** As it stands after "modulo". */
    static String scale(SizeScale scale) {
        String printed = switch (scale.id()) {
            case "mionnet-1805" -> "stampata nel 1805";
            case "leake-1854" -> "stampata da Leake nel 1854";
            case "dickeson-1859" -> "stampata da Dickeson nel 1859";
            case "prime-1861" -> "stampata da Prime nel 1861";
            case "head-1887" -> "stampata da Head nel 1887";
            default -> throw new IllegalArgumentException("no Italian name for " + scale.id());
        };
        return "della scala di Mionnet " + printed;
    }
}
