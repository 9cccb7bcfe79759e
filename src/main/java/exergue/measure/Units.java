package exergue.measure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The one table of units. Figures that other books round are kept here as the fraction that defines them.
 *
 * <p>Four words stand for more than one unit and so are in no unit's spellings: {@code gr}, {@code oz}, {@code dram},
 * and {@code grains} beside French units. {@link UnitWords} settles them from the convention and the company they keep.
 */
public final class Units {

    private static final UnitSource SI = UnitSource.remembered("SI Brochure, 9th edition, 2019");
    private static final UnitSource POUND_1959 = UnitSource.seen("international yard and pound agreement, 1959");
    private static final UnitSource TRALLES = UnitSource.seen("1 kilogram = 18827.15 French grains, weighed in year 7 of "
            + "the Republic, as quoted from Tralles");
    private static final UnitSource METRE_1799 = UnitSource.seen("1 metre = 3 pieds 11.296 lignes, law of 19 Frimaire "
            + "year 8 (1799)");
    private static final UnitSource RUSSIA_1899 = UnitSource.seen("1 funt = 409.51241 g, Regulation of Weights and "
            + "Measures, Russia, 1899");
    private static final UnitSource PRACTICE = UnitSource.custom("common practice, no source");
    private static final String FRENCH_GRAMS = "18827.15";
    private static final String FUNT = "409.51241";

    public static final Unit GRAM = new Unit("gram", "g", "gram", "grams", Dimension.MASS, UnitSystem.METRIC,
            Ratio.ONE, SI, List.of("g", "gm", "gms", "grm", "grms", "gram", "grams", "gramme", "grammes"));
    public static final Unit MILLIGRAM = new Unit("milligram", "mg", "milligram", "milligrams", Dimension.MASS,
            UnitSystem.METRIC, Ratio.of("0.001"), SI,
            List.of("mg", "milligram", "milligrams", "milligramme", "milligrammes"));
    public static final Unit KILOGRAM = new Unit("kilogram", "kg", "kilogram", "kilograms", Dimension.MASS,
            UnitSystem.METRIC, Ratio.of("1000"), SI,
            List.of("kg", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"));
    public static final Unit GRAIN = new Unit("grain", "gr", "grain", "grains", Dimension.MASS, UnitSystem.TROY,
            Ratio.of("0.06479891"), POUND_1959,
            List.of("gn", "gns", "grn", "grns", "troy grain", "troy grains", "english grain", "english grains"));
    public static final Unit PENNYWEIGHT = new Unit("pennyweight", "dwt", "pennyweight", "pennyweights",
            Dimension.MASS, UnitSystem.TROY, Ratio.of("1.55517384"), POUND_1959.with(": 24 grains"),
            List.of("dwt", "dwts", "pennyweight", "pennyweights"));
    public static final Unit TROY_OUNCE = new Unit("troy-ounce", "oz t", "troy ounce", "troy ounces",
            Dimension.MASS, UnitSystem.TROY, Ratio.of("31.1034768"), POUND_1959.with(": 480 grains"),
            List.of("oz t", "ozt", "oz tr", "oz troy", "troy oz", "troy ounce", "troy ounces"));
    public static final Unit OUNCE = new Unit("avoirdupois-ounce", "oz av", "avoirdupois ounce",
            "avoirdupois ounces", Dimension.MASS, UnitSystem.AVOIRDUPOIS, Ratio.of("28.349523125"),
            POUND_1959.with(": one sixteenth of the pound of 453.59237 g"),
            List.of("oz av", "oz avdp", "oz avoirdupois", "avoirdupois ounce", "avoirdupois ounces"));
    public static final Unit DRAM = new Unit("avoirdupois-dram", "dr av", "avoirdupois dram", "avoirdupois drams",
            Dimension.MASS, UnitSystem.AVOIRDUPOIS, Ratio.of("1.7718451953125"),
            POUND_1959.with(": one sixteenth of the avoirdupois ounce"),
            List.of("dr av", "drs av", "dr avdp", "dram av", "drams av", "avoirdupois dram", "avoirdupois drams"));
    public static final Unit APOTHECARIES_DRAM = new Unit("apothecaries-dram", "dr ap", "apothecaries’ dram",
            "apothecaries’ drams", Dimension.MASS, UnitSystem.TROY, Ratio.of("3.8879346"), POUND_1959.with(": 60 grains"),
            List.of("dr ap", "drs ap", "dram ap", "drams ap", "apothecaries dram",
                    "apothecaries drams"));
    public static final Unit CARAT = new Unit("carat", "ct", "metric carat", "metric carats", Dimension.MASS,
            UnitSystem.JEWELLERS, Ratio.of("0.2"),
            UnitSource.seen("4th General Conference on Weights and Measures, 1907"),
            List.of("ct", "cts", "carat", "carats", "metric carat", "metric carats"));
    public static final Unit TOLA = new Unit("tola", "tola", "tola", "tolas", Dimension.MASS, UnitSystem.INDIAN,
            Ratio.of("11.6638038"), UnitSource.seen("10 tolas = 3.75 troy ounces, hence 180 grains"),
            List.of("tola", "tolas"));
    public static final Unit LIVRE = french("french-livre", "livre", "9216");
    public static final Unit MARC = french("french-marc", "marc", "4608");
    public static final Unit ONCE = french("french-once", "once", "576");
    public static final Unit GROS = french("french-gros", "gros", "72");
    public static final Unit DENIER = french("french-denier", "denier", "24");
    public static final Unit FRENCH_GRAIN = new Unit("french-grain", "gr fr", "French grain", "French grains",
            Dimension.MASS, UnitSystem.FRENCH, Ratio.of("1000", FRENCH_GRAMS), TRALLES,
            List.of("gr fr", "french grain", "french grains", "grain poids de marc", "grains poids de marc",
                    "grain de marc", "grains de marc"));
    public static final Unit ZOLOTNIK = new Unit("zolotnik", "zol", "zolotnik", "zolotniks", Dimension.MASS,
            UnitSystem.RUSSIAN, Ratio.of(FUNT, "96"), RUSSIA_1899.with("; a zolotnik is 1/96"),
            List.of("zol", "zolotnik", "zolotniks", "zolotniki", "зол", "золотник", "золотника", "золотников"));
    public static final Unit DOLYA = new Unit("dolya", "dolya", "dolya", "dolyas", Dimension.MASS,
            UnitSystem.RUSSIAN, Ratio.of(FUNT, "9216"), UnitSource.remembered(RUSSIA_1899.text() + "; a dolya is 1/9216"),
            List.of("dol", "dolya", "dolyas", "doli", "дол", "доля", "доли", "долей"));

    public static final Unit MILLIMETRE = new Unit("millimetre", "mm", "millimetre", "millimetres",
            Dimension.LENGTH, UnitSystem.METRIC, Ratio.ONE, SI,
            List.of("mm", "millimetre", "millimetres", "millimeter", "millimeters"));
    public static final Unit CENTIMETRE = new Unit("centimetre", "cm", "centimetre", "centimetres",
            Dimension.LENGTH, UnitSystem.METRIC, Ratio.of("10"), SI,
            List.of("cm", "centimetre", "centimetres", "centimeter", "centimeters"));
    public static final Unit INCH = new Unit("inch", "in", "inch", "inches", Dimension.LENGTH,
            UnitSystem.ENGLISH_LENGTH, Ratio.of("25.4"), POUND_1959, List.of("in", "ins", "inch", "inches", "\""));
    public static final Unit SIXTEENTH = new Unit("sixteenth-inch", "sixteenths", "sixteenth of an inch",
            "sixteenths of an inch", Dimension.LENGTH, UnitSystem.ENGLISH_LENGTH, Ratio.of("1.5875"),
            UnitSource.seen("no. 16 is one inch: Numismatic Society of Philadelphia, 1858"),
            List.of("sixteenth", "sixteenths", "sixteenth of an inch", "sixteenths of an inch"));
    public static final Unit LIGNE = new Unit("paris-ligne", "ligne", "Paris ligne", "Paris lignes",
            Dimension.LENGTH, UnitSystem.FRENCH, Ratio.of("1000", "443.296"), METRE_1799,
            List.of("lig", "ligne", "lignes", "paris ligne", "paris lignes", "paris line", "paris lines", "‴"));

    public static final Unit HOUR = new Unit("hour", "h", "clock hour", "clock hours", Dimension.TURN,
            UnitSystem.CLOCK, Ratio.ONE, PRACTICE, List.of("h", "hr", "hrs", "hour", "hours", "o'clock"));
    public static final Unit DEGREE = new Unit("degree", "°", "degree", "degrees", Dimension.TURN,
            UnitSystem.CLOCK, Ratio.of("1", "30"), PRACTICE.with(": 330° is 11 o'clock"),
            List.of("°", "deg", "degs", "degree", "degrees"));
    /** What an arrow shows. It is drawn, never written after a figure, and so is in no list of units to write in. */
    public static final Unit ARROW = new Unit("arrow", "arrow", "eighth of a turn", "eighths of a turn", Dimension.TURN,
            UnitSystem.CLOCK, Ratio.of("3", "2"), PRACTICE.with(": an arrow points to one of eight directions"), List.of());

    public static final Unit GRAM_PER_CM3 = new Unit("gram-per-cubic-centimetre", "g/cm³", "gram per cubic centimetre",
            "grams per cubic centimetre", Dimension.DENSITY, UnitSystem.METRIC, Ratio.ONE, SI,
            List.of("g/cm³", "g/cm3", "gram per cubic centimetre", "grams per cubic centimetre"));
    public static final Unit SQUARE_MILLIMETRE = new Unit("square-millimetre", "mm²", "square millimetre",
            "square millimetres", Dimension.AREA, UnitSystem.METRIC, Ratio.ONE, SI,
            List.of("mm²", "mm2", "sq mm", "square millimetre", "square millimetres"));
    public static final Unit SQUARE_CENTIMETRE = new Unit("square-centimetre", "cm²", "square centimetre",
            "square centimetres", Dimension.AREA, UnitSystem.METRIC, Ratio.of("100"), SI,
            List.of("cm²", "cm2", "sq cm", "square centimetre", "square centimetres"));

    private static final List<Unit> ALL = List.of(GRAM, MILLIGRAM, KILOGRAM, GRAIN, PENNYWEIGHT, TROY_OUNCE, OUNCE,
            DRAM, APOTHECARIES_DRAM, CARAT, TOLA, LIVRE, MARC, ONCE, GROS, DENIER, FRENCH_GRAIN, ZOLOTNIK, DOLYA, MILLIMETRE,
            CENTIMETRE, INCH, SIXTEENTH, LIGNE, HOUR, DEGREE, GRAM_PER_CM3, SQUARE_MILLIMETRE, SQUARE_CENTIMETRE);

    private Units() { }

    /** Every unit that can be written after a figure, in the order a table prints them: weights, lengths, turns, density, surfaces. */
    public static List<Unit> all() {
        return ALL;
    }

    public static List<Unit> of(Dimension dimension) {
        return ALL.stream().filter(unit -> unit.dimension() == dimension).toList();
    }

    public static Optional<Unit> byId(String id) {
        return ALL.stream().filter(u -> u.id().equals(id)).findFirst();
    }

    /**
     * The unit a convention names: by id, symbol or any spelling. {@code gr} names the English grain here, because
     * a convention that names its unit has said what it means.
     */
    public static Optional<Unit> named(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT).replace(".", "");
        if (plain.equals("grains")) {
            return Optional.of(GRAIN);
        }
        return ALL.stream().filter(u -> Stream.concat(Stream.of(u.id(), u.symbol(), u.name(), u.plural()),
                u.spellings().stream()).anyMatch(plain::equals)).findFirst();
    }

    /** The unit the book prints: the gram, the millimetre, the clock hour. */
    public static Unit normal(Dimension dimension) {
        return switch (dimension) {
            case MASS -> GRAM;
            case LENGTH -> MILLIMETRE;
            case TURN -> HOUR;
            case DENSITY -> GRAM_PER_CM3;
            case AREA -> SQUARE_MILLIMETRE;
        };
    }

    private static Unit french(String id, String name, String grains) {
        String plural = name.endsWith("s") ? name : name + "s";
        Ratio factor = Ratio.of(grains + "000", FRENCH_GRAMS);
        return new Unit(id, name, name, plural, Dimension.MASS, UnitSystem.FRENCH, factor,
                TRALLES.with("; a " + name + " is " + grains + " of them"),
                List.of(name, plural).stream().distinct().toList());
    }
}
