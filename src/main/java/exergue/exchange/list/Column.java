package exergue.exchange.list;

import exergue.model.Written;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListColumn;
import exergue.source.list.ListPlan;
import java.util.Optional;

/** A column of the sheet of which the file beside it speaks. @param index in the sheet, from 0; @param heading as in the file */
record Column(int index, String heading, ListColumn said) {

    ColumnContent holds() {
        return said.holds();
    }

    /** What a sign means in this column, if the file says so. */
    Optional<String> answer(String sign, ListPlan plan) {
        return Optional.ofNullable(said.signs().get(sign)).or(() -> Optional.ofNullable(plan.signs().get(sign))).map(Written::value);
    }

    /** The word of the catalogue for one of the list. */
    String translated(String text) {
        Written<String> exactly = said.text().words().get(text);
        return exactly != null ? exactly.value() : said.text().words().entrySet().stream()
                .filter(entry -> entry.getKey().equalsIgnoreCase(text)).map(entry -> entry.getValue().value()).findFirst().orElse(text);
    }
}
