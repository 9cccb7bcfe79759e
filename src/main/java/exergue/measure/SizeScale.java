package exergue.measure;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The numbered sizes of nineteenth-century catalogues. Mionnet's scale was a drawing; each reprint came out in another
 * size, so a number means nothing until its printing is named.
 *
 * @param id        as a convention names it
 * @param title     for messages and the methods statement
 * @param diameters of sizes 1, 2, 3 …, in millimetres
 */
public record SizeScale(String id, String title, List<BigDecimal> diameters) {

    /** Publication the diameters come from. */
    public static final String SOURCE = "E. R. Caley, Metrological Tables, Numismatic Notes and Monographs 154, "
            + "New York 1965";

    /** Where its figures were read: the publication itself was not seen. */
    public static final String QUOTED_BY = "sizes.com";

    /**
     * The step of a size in millimetres. Caley measured the drawings to 0.1 mm and warns that no reading is good to
     * better than half a millimetre either way; a step of one is the figure plus or minus one half.
     */
    public static final BigDecimal GOOD_TO = BigDecimal.ONE;

    private static final List<SizeScale> ALL = List.of(
            scale("mionnet-1805", "Mionnet’s scale as printed in 1805", "8.9 12.1 15.4 18.1 21.2 23.7 26.6 28.9 31.8 "
                    + "35.2 37.7 40.5 43.4 51.8 56.7 60.6 64.5 70.9 78.3"),
            scale("leake-1854", "Mionnet’s scale as printed by Leake in 1854", "9.3 12.1 15.3 18.1 21.2 23.8 26.6 28.8 "
                    + "31.4 34.9 37.5 39.7"),
            scale("dickeson-1859", "Mionnet’s scale as printed by Dickeson in 1859", "9.5 12.5 15.3 18.3 21.3 24.2 26.6 "
                    + "28.9 31.3 33.9 36.5 39.0 42.1 50.4 54.9 58.7 62.8 68.8 75.9 83.1"),
            scale("prime-1861", "Mionnet’s scale as printed by Prime in 1861", "7.5 14.0 20.1 24.2 28.2 32.1 40.4 43.0 "
                    + "45.7 48.3 52.3 55.1 57.8 60.3 62.9 65.8 68.6 71.6 74.6 82.1"),
            scale("head-1887", "Mionnet’s scale as printed by Head in 1887", "9.3 12.3 15.3 17.8 21.0 23.9 26.1 28.4 "
                    + "31.2 34.7 37.5 39.7 43.2 51.0 55.9 60.1 63.2 69.8 77.0"));

    public SizeScale {
        diameters = List.copyOf(diameters);
    }

    private static SizeScale scale(String id, String title, String diameters) {
        return new SizeScale(id, title, Arrays.stream(diameters.split(" ")).map(BigDecimal::new).toList());
    }

    public static List<SizeScale> all() {
        return ALL;
    }

    public static Optional<SizeScale> byId(String id) {
        return ALL.stream().filter(scale -> scale.id.equals(id)).findFirst();
    }

    /** The scale that a unit from {@link #size} belongs to. */
    public static Optional<SizeScale> of(Unit unit) {
        return ALL.stream().filter(scale -> unit.id().startsWith(scale.id + "-size-")).findFirst();
    }

    /** "mionnet-1805, leake-1854, …", for messages. */
    public static String ids() {
        return ALL.stream().map(SizeScale::id).collect(Collectors.joining(", "));
    }

    /** One size as a unit, so that "size 5" is one of it; empty for half sizes and for sizes that were not printed. */
    public Optional<Unit> size(BigDecimal number) {
        if (number.signum() <= 0 || number.compareTo(BigDecimal.valueOf(diameters.size())) > 0
                || number.stripTrailingZeros().scale() > 0) {
            return Optional.empty();
        }
        int size = number.intValueExact();
        String name = "size " + size + " of " + title;
        return Optional.of(new Unit(id + "-size-" + size, "size " + size, name, name, Dimension.LENGTH,
                UnitSystem.SIZE_SCALE, new Ratio(diameters.get(size - 1), BigDecimal.ONE),
                UnitSource.seen(SOURCE + ", as quoted by " + QUOTED_BY), List.of()));
    }

    /** The printed sizes nearest to a number: "size 5 (21.2 mm) and size 6 (23.7 mm)". */
    String around(BigDecimal number) {
        int last = diameters.size();
        if (number.compareTo(BigDecimal.valueOf(last)) > 0) {
            return named(last - 1) + " and " + named(last);
        }
        int below = Math.max(1, Math.min(last - 1, number.intValue()));
        return named(below) + " and " + named(below + 1);
    }

    private String named(int size) {
        return "size " + size + " (" + diameters.get(size - 1) + " mm)";
    }
}
