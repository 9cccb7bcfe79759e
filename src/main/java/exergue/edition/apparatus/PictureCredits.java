package exergue.edition.apparatus;

import exergue.edition.BookOrder;
import exergue.edition.BookWords;
import exergue.finding.Place;
import exergue.model.BookWord;
import exergue.model.Caption;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.PictureRights;
import exergue.model.Prose;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Who took or lent which pictures, and who allows them to be printed; in the order in which the book first has them. */
public final class PictureCredits {

    /** A line of the list: the coins and the figures that have the same credit. */
    private static final class Line {
        private final List<Coin> coins = new ArrayList<>();
        private final List<Caption.Label> figures = new ArrayList<>();
    }

    private record Credit(String credit, String permission) { }

    private final Map<Credit, Line> lines = new LinkedHashMap<>();

    private PictureCredits() { }

    /**
     * One table; nothing in a book without pictures.
     *
     * @param rights  of the pictures of chapters
     * @param figures what chapters show, numbered
     */
    public static PictureCredits of(BookOrder order, List<PictureRights> rights, List<Prose.Picture> figures) {
        PictureCredits credits = new PictureCredits();
        order.types().forEach(inBook -> inBook.coins().forEach(coin -> coin.photograph().ifPresent(photograph ->
                credits.line(photograph.credit(), photograph.permission()).coins.add(coin))));
        Map<String, PictureRights> byPath = rights.stream()
                .collect(Collectors.toMap(its -> its.picture().value(), its -> its, (first, second) -> first));
        figures.stream().filter(figure -> byPath.containsKey(figure.path())).forEach(figure -> {
            PictureRights its = byPath.get(figure.path());
            figure.caption().flatMap(Caption::label).ifPresent(credits.line(its.credit(), its.permission()).figures::add);
        });
        return credits;
    }

    public List<Prose> blocks(Locators locators, BookWords words, Place place) {
        if (lines.isEmpty()) {
            return List.of();
        }
        boolean permissions = lines.keySet().stream().anyMatch(credit -> !credit.permission().isEmpty());
        List<List<List<Inline>>> rows = new ArrayList<>();
        lines.forEach((credit, line) -> rows.add(row(permissions, cell(credit.credit()), cell(credit.permission()),
                where(line, locators))));
        List<List<Inline>> heads = row(permissions, cell(words.of(BookWord.PHOTOGRAPHS)),
                cell(words.of(BookWord.PERMISSION)), cell(words.of(BookWord.NUMBER_HEAD)));
        return List.of(new Prose.Table(heads.stream().map(head -> "left").toList(), heads, rows, place));
    }

    private Line line(Optional<Written<String>> credit, Optional<Written<String>> permission) {
        String allowed = permission.map(Written::value).filter(words -> !words.equals(Coin.Photograph.NOT_NEEDED)).orElse("");
        return lines.computeIfAbsent(new Credit(credit.map(Written::value).orElse(""), allowed),
                its -> new Line());
    }

    /** Numbers of coins, then figures; a picture without a caption has none. */
    private static List<Inline> where(Line line, Locators locators) {
        List<Inline> runs = new ArrayList<>(locators.numbers(line.coins));
        line.figures.forEach(figure -> {
            if (!runs.isEmpty()) {
                runs.add(new Inline.Words("; "));
            }
            runs.add(new Inline.Link("#" + figure.anchor(), cell(figure.words())));
        });
        return runs.isEmpty() ? List.of(Locators.NONE) : runs;
    }

    /** There is no column for permissions where nobody had to be asked. */
    private static List<List<Inline>> row(boolean permissions, List<Inline> credit, List<Inline> permission, List<Inline> numbers) {
        return permissions ? List.of(credit, permission, numbers) : List.of(credit, numbers);
    }

    private static List<Inline> cell(String text) {
        return List.of(new Inline.Words(text));
    }
}
