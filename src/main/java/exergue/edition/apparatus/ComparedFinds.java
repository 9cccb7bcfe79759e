package exergue.edition.apparatus;

import exergue.edition.BookWords;
import exergue.finding.Place;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.FindsElsewhere;
import exergue.model.Inline;
import exergue.model.Prose;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The coins of a site against those of other finds, period by period: what of a thousand coins fell into each, the difference, and
 * the running sum of the differences (R. Reece, Site-finds in Roman Britain, Britannia 26, 1995; from memory).
 */
final class ComparedFinds {

    private static final String MINUS = "\u2212";

    private final Catalogue catalogue;
    private final BookWords words;
    private final Place place;

    ComparedFinds(Catalogue catalogue, BookWords words, Place place) {
        this.catalogue = catalogue;
        this.words = words;
        this.place = place;
    }

    /** What stands before the table. */
    Prose said(FindsElsewhere elsewhere) {
        return new Prose.Paragraph(List.of(new Inline.Words(words.of(BookWord.COMPARED_WITH) + " " + elsewhere.title().value() + ". "
                + words.of(BookWord.COMPARED_NOTE))), place);
    }

    /** @param here coins by the id of their ruler, empty for those without one; neither list is without coins */
    Prose.Table of(Map<String, Integer> here, FindsElsewhere elsewhere) {
        int allHere = here.values().stream().mapToInt(Integer::intValue).sum();
        List<List<List<Inline>>> rows = new ArrayList<>();
        BigDecimal running = BigDecimal.ZERO;
        int restHere = allHere;
        int restElsewhere = elsewhere.all();
        for (String ruler : catalogue.rulers().keySet()) {
            int mine = here.getOrDefault(ruler, 0);
            int theirs = elsewhere.of(ruler);
            if (mine + theirs > 0) {
                running = row(name(ruler), LossRate.exact(mine, allHere), LossRate.exact(theirs, elsewhere.all()), running, rows);
                restHere -= mine;
                restElsewhere -= theirs;
            }
        }
        if (restHere + restElsewhere > 0) {
            row(words.of(BookWord.OTHER_PERIODS), LossRate.exact(restHere, allHere),
                    LossRate.exact(restElsewhere, elsewhere.all()), running, rows);
        }
        return new Prose.Table(List.of("left", "right", "right", "right", "right"), cells(List.of(words.of(BookWord.PERIOD),
                words.of(BookWord.PER_THOUSAND), words.of(BookWord.ELSEWHERE), words.of(BookWord.DIFFERENCE), words.of(BookWord.RUNNING_SUM))),
                rows, place);
    }

    /** @return the running sum with this row */
    private BigDecimal row(String period, BigDecimal mine, BigDecimal theirs, BigDecimal running, List<List<List<Inline>>> rows) {
        BigDecimal difference = mine.subtract(theirs);
        BigDecimal sum = running.add(difference);
        rows.add(cells(List.of(period, rounded(mine), rounded(theirs), signed(difference), signed(sum))));
        return sum;
    }

    private String name(String ruler) {
        return Optional.ofNullable(catalogue.rulers().get(ruler)).map(one -> one.name().value()).orElse(ruler);
    }

    /** Rounded only here, so that the running sum ends at nought. */
    private String signed(BigDecimal figure) {
        BigDecimal rounded = LossRate.rounded(figure);
        return (rounded.signum() > 0 ? "+" : rounded.signum() < 0 ? MINUS : "") + rounded(rounded.abs());
    }

    private String rounded(BigDecimal figure) {
        return LossRate.rounded(figure).toPlainString().replace(".", catalogue.style().form().decimalMark());
    }

    private static List<List<Inline>> cells(List<String> texts) {
        List<List<Inline>> cells = new ArrayList<>();
        texts.forEach(text -> cells.add(List.of(new Inline.Words(text))));
        return cells;
    }
}
