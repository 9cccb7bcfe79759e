package exergue.exchange.list;

import exergue.finding.Place;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Parsed;
import exergue.measure.Reading;
import exergue.measure.ReadingFault;
import exergue.measure.ReadingParser;
import exergue.measure.Remark;
import exergue.source.keys.Readings;
import exergue.source.list.ListPlan;
import java.util.Optional;
import java.util.Set;

/** Readings of a list as texts for entries: in their own figures, with the unit of their column and the decimal mark of their convention. */
final class ReadingCells {

    /** What is wrong with a whole column if it is wrong with one cell. */
    private static final Set<ReadingFault> OF_THE_COLUMN = Set.of(ReadingFault.NO_UNIT, ReadingFault.GR_NOT_SAID, ReadingFault.OUNCE_NOT_SAID,
            ReadingFault.DRAM_NOT_SAID, ReadingFault.OTHER_DECIMAL_MARK, ReadingFault.NO_SIZE_SCALE, ReadingFault.THOUSANDS_MARK);

    private final ListPlan plan;
    private final RowFindings findings;

    ReadingCells(ListPlan plan, RowFindings findings) {
        this.plan = plan;
        this.findings = findings;
    }

    /** The text for the entry; empty where the cell cannot be read, which has been said then. */
    Optional<String> text(Kind kind, Taken taken, Convention convention) {
        boolean comma = plan.decimalComma().map(written -> written.value()).orElse(convention.decimalComma());
        Convention ofList = withComma(convention, comma);
        String text = withUnit(kind, taken, ofList);
        Parsed parsed = ReadingParser.parse(kind, text, ofList);
        if (parsed instanceof Parsed.Refused refused) {
            report(refused.remark(), taken);
            return Optional.empty();
        }
        if (comma == convention.decimalComma() || !(((Parsed.Accepted) parsed).reading() instanceof Reading.Read read)) {
            return Optional.of(text);
        }
        String turned = comma ? text.replaceAll("(?<=\\d),(?=\\d)", ".") : text.replaceAll("(?<=\\d)\\.(?=\\d)", ",");
        boolean same = ReadingParser.parse(kind, turned, convention) instanceof Parsed.Accepted again
                && again.reading() instanceof Reading.Read other && other.normal().equals(read.normal());
        if (!same) {
            report(new Remark(ReadingFault.OTHER_DECIMAL_MARK, 0, 0, "“" + text + "” cannot be written with the decimal mark of the convention “"
                    + convention.id() + "” without changing it.", "Write the figure in the list with that mark, and leave decimal-mark out."), taken);
        }
        return same ? Optional.of(turned) : Optional.empty();
    }

    /** A figure without a unit gets that of its column. */
    private static String withUnit(Kind kind, Taken taken, Convention convention) {
        if (taken.said().hand().unit().isEmpty()) {
            return taken.text();
        }
        boolean bare = ReadingParser.parse(kind, taken.text(), withoutUnits(convention)) instanceof Parsed.Refused refused
                && refused.remark().fault() == ReadingFault.NO_UNIT;
        return bare ? taken.text() + " " + taken.said().hand().unit().get().value() : taken.text();
    }

    private void report(Remark remark, Taken taken) {
        boolean ofColumn = OF_THE_COLUMN.contains(remark.fault());
        String where = remark.fault() == ReadingFault.THOUSANDS_MARK
                ? " In a whole column of such figures, let the spreadsheet show them without marks for thousands, and save the list again."
                : " In a whole column of such figures: unit: under the column, or the units, gr: and decimal-mark: of the convention.";
        Place cell = taken.spot().place();
        boolean within = remark.length() > 0 && remark.offset() + remark.length() <= cell.length(); // and not in a unit of the column
        RowFindings.Spot spot = new RowFindings.Spot(taken.spot().row(), taken.spot().heading(),
                within ? cell.within(remark.offset(), remark.length()) : cell);
        String alike = ofColumn ? remark.what().replaceAll("\\d+|“.*?”", "") : taken.text();
        findings.add(Readings.code(remark.fault()), spot, alike, remark.what(),
                remark.remedy() + (ofColumn ? where : ""));
    }

    private static Convention withComma(Convention c, boolean comma) {
        return new Convention(c.id(), c.title(), c.by(), c.when(), c.work(), c.weighing(), c.sizing(), c.turning(), comma, c.cleaning(),
                c.shortTitle());
    }

    private static Convention withoutUnits(Convention c) {
        return new Convention(c.id(), c.title(), c.by(), c.when(), c.work(),
                new Convention.Weighing(Optional.empty(), Optional.empty(), c.weighing().gr(), Optional.empty()),
                new Convention.Sizing(Optional.empty(), Optional.empty(), c.sizing().direction(), Optional.empty(), Optional.empty()),
                new Convention.Turning(Convention.AxisNotation.NOT_SAID, c.turning().anticlockwise(), Optional.empty()),
                c.decimalComma(), c.cleaning(), c.shortTitle());
    }
}
