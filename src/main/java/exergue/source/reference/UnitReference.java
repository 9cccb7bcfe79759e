package exergue.source.reference;

import exergue.measure.Dimension;
import exergue.measure.SizeScale;
import exergue.measure.Unit;
import exergue.measure.Units;
import exergue.measure.Working;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** docs/reference/units.md: every unit with its factor and source, and the printed size scales, from the tables that read entries. */
public final class UnitReference {

    private final StringBuilder page = new StringBuilder();

    private UnitReference() { }

    /** The page in Markdown. */
    public static String markdown() {
        UnitReference reference = new UnitReference();
        reference.line("# Units");
        reference.line("");
        reference.line("This page is written by the program from the table it converts with. `exergue reading --units` prints the same.");
        reference.line("Factors are exact; where one is a fraction, it is kept as one. “From memory” means that the publication was not "
                + "at hand when the factor was entered.");
        reference.line("");
        reference.line("Four words stand for more than one unit and are settled by what stands beside them or by the convention: `gr` "
                + "(grains or grammes: never guessed), `grain` (the English one unless the company is French), `oz` (troy or avoirdupois), `dram` or `dr` "
                + "(apothecaries’ or avoirdupois).");
        for (Dimension dimension : Dimension.values()) {
            reference.units(heading(dimension), Units.of(dimension));
        }
        reference.sizes();
        return reference.page.toString();
    }

    private static String heading(Dimension dimension) {
        return switch (dimension) {
            case MASS -> "Weight";
            case LENGTH -> "Diameter and thickness";
            case TURN -> "Die-axis";
            case DENSITY -> "Density";
            case AREA -> "Surface";
        };
    }

    private void units(String heading, List<Unit> units) {
        line("");
        line("## " + heading);
        line("");
        line("| Unit | Factor | Written as | Source |");
        line("| --- | --- | --- | --- |");
        units.forEach(unit -> line("| " + unit.name() + " | " + Working.factor(unit) + " | "
                + unit.spellings().stream().map(spelling -> "`" + spelling + "`").collect(Collectors.joining(" ")) + " | "
                + unit.source().noted() + " |"));
    }

    private void sizes() {
        List<SizeScale> scales = SizeScale.all();
        line("");
        line("## Numbered sizes, in millimetres");
        line("");
        line("Source: " + SizeScale.SOURCE + ", as quoted by " + SizeScale.QUOTED_BY
                + ". Good to half a millimetre at best. A convention names the printing with `size-scale`.");
        line("");
        line("| Size | " + scales.stream().map(SizeScale::id).collect(Collectors.joining(" | ")) + " |");
        line("| --- |" + " --- |".repeat(scales.size()));
        int largest = scales.stream().mapToInt(scale -> scale.diameters().size()).max().orElse(0);
        IntStream.rangeClosed(1, largest).forEach(size -> line("| " + size + " | " + scales.stream()
                .map(scale -> size <= scale.diameters().size() ? scale.diameters().get(size - 1).toPlainString() : "–")
                .collect(Collectors.joining(" | ")) + " |"));
    }

    private void line(String text) {
        page.append(text).append('\n');
    }
}
