package exergue.edition.apparatus;

import exergue.edition.BookOrder;
import exergue.edition.BookWords;
import exergue.finding.Place;
import exergue.model.BookWord;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Prose;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Who took or lent which photographs, and who allows them to be printed; in the order in which the book first has them. */
public final class PictureCredits {

    private PictureCredits() { }

    private record Credit(String credit, String permission) { }

    /** One table; nothing in a book without photographs. */
    public static List<Prose> blocks(BookOrder order, Locators locators, BookWords words, Place place) {
        Map<Credit, List<Coin>> credits = new LinkedHashMap<>();
        order.types().forEach(inBook -> inBook.coins().forEach(coin -> coin.photograph().ifPresent(photograph ->
                credits.computeIfAbsent(credit(photograph), credit -> new ArrayList<>()).add(coin))));
        if (credits.isEmpty()) {
            return List.of();
        }
        boolean permissions = credits.keySet().stream().anyMatch(credit -> !credit.permission().isEmpty());
        List<List<List<Inline>>> rows = new ArrayList<>();
        credits.forEach((credit, coins) -> rows.add(row(permissions, cell(credit.credit()), cell(credit.permission()),
                locators.numbers(coins))));
        List<List<Inline>> heads = row(permissions, cell(words.of(BookWord.PHOTOGRAPHS)),
                cell(words.of(BookWord.PERMISSION)), cell(words.of(BookWord.NUMBER_HEAD)));
        return List.of(new Prose.Table(heads.stream().map(head -> "left").toList(), heads, rows, place));
    }

    /** There is no column for permissions where nobody had to be asked. */
    private static List<List<Inline>> row(boolean permissions, List<Inline> credit, List<Inline> permission, List<Inline> numbers) {
        return permissions ? List.of(credit, permission, numbers) : List.of(credit, numbers);
    }

    private static Credit credit(Coin.Photograph photograph) {
        String permission = photograph.permission().map(Written::value)
                .filter(words -> !words.equals(Coin.Photograph.NOT_NEEDED)).orElse("");
        return new Credit(photograph.credit().map(Written::value).orElse(""), permission);
    }

    private static List<Inline> cell(String text) {
        return List.of(new Inline.Words(text));
    }
}
