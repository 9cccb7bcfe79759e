package exergue.review.consequence;

import exergue.model.Catalogue;
import exergue.review.change.Consequence.MeanWeight;
import exergue.review.change.Subject;
import exergue.review.content.Section;
import exergue.study.Summary;
import exergue.study.WeightTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Mean weights of the types that both catalogues have. */
final class Means {

    private static final int DECIMALS = 2;

    private Means() { }

    static List<MeanWeight> of(TwoStates states) {
        Map<String, Optional<String>> old = new HashMap<>();
        WeightTable.of(states.before()).rows().forEach(row -> old.put(row.type(), row.summary().map(Means::words)));
        List<MeanWeight> shifts = new ArrayList<>();
        for (WeightTable.Row row : WeightTable.of(states.after()).rows()) {
            Optional<String> now = row.summary().map(Means::words);
            if (old.containsKey(row.type()) && !old.get(row.type()).equals(now)) {
                shifts.add(new MeanWeight(new Subject(Section.TYPES, row.type(), Optional.empty()), old.get(row.type()), now));
            }
        }
        return shifts;
    }

    private static String words(Summary summary) {
        return BigDecimal.valueOf(summary.mean()).setScale(DECIMALS, RoundingMode.HALF_EVEN).toPlainString() + " g of "
                + summary.n() + (summary.n() == 1 ? " coin" : " coins");
    }
}
