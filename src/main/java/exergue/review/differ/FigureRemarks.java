package exergue.review.differ;

import exergue.measure.Kind;
import exergue.measure.Meant;
import exergue.measure.PrintForm;
import exergue.measure.Printer;
import exergue.measure.Reading;
import exergue.measure.Slip;
import exergue.review.change.Remark;
import exergue.review.content.Said;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** What is to be said of a figure that has changed. The same, the other way round, is said of the change back. */
final class FigureRemarks {

    private final PrintForm before;
    private final PrintForm after;

    FigureRemarks(PrintForm before, PrintForm after) {
        this.before = before;
        this.after = after;
    }

    List<Remark> of(Said was, Said is) {
        if (!(was instanceof Said.Figure old && old.reading() instanceof Reading.Read oldRead
                && is instanceof Said.Figure now && now.reading() instanceof Reading.Read newRead)) {
            return List.of();
        }
        List<Remark> remarks = new ArrayList<>();
        Optional<Slip> slip = slip(oldRead, newRead);
        slip.ifPresent(suspected -> remarks.add(new Remark.Suspect(suspected)));
        String printedOld = Printer.print(oldRead, before).text();
        String printedNew = Printer.print(newRead, after).text();
        if (printedOld.equals(printedNew)) {
            remarks.add(new Remark.PrintedAlike(printedNew));
        } else if (oldRead.kind() != Kind.AXIS && slip.isEmpty()) {
            precision(printedOld, printedNew).ifPresent(remarks::add);
        }
        return remarks;
    }

    /** The likeliest slip that leads from one of the two to the other. */
    static Optional<Slip> slip(Reading.Read one, Reading.Read other) {
        TreeSet<Slip> slips = new TreeSet<>();
        slips(one, other.first().value(), slips);
        slips(other, one.first().value(), slips);
        return slips.stream().findFirst();
    }

    private static void slips(Reading.Read read, BigDecimal meant, TreeSet<Slip> into) {
        Meant.by(read).stream().filter(maybe -> maybe.normal().compareTo(meant) == 0).map(Meant::slip).forEach(into::add);
    }

    private Optional<Remark> precision(String printedOld, String printedNew) {
        int places = Integer.compare(PrintedPlaces.of(printedNew, after), PrintedPlaces.of(printedOld, before));
        return places == 0 ? Optional.empty() : Optional.of(new Remark.Precision(printedOld, printedNew, places < 0));
    }
}
