package exergue.edition;

import exergue.edition.methods.Counted;
import exergue.edition.methods.MethodsLanguage;
import exergue.edition.methods.Tally;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.Coin;
import exergue.model.Prose;
import exergue.model.ReadingChoice;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How the coins were measured: written from the data, with the author's own sentences after it. Those come from
 * {@value Chapter#METHODS}, unless the plan prints that chapter by itself.
 */
final class MethodsChapter {

    private final MethodsLanguage language;
    private final Tally tally;
    private final Optional<AuthorsMethods> authors;

    private MethodsChapter(MethodsLanguage language, Tally tally, Optional<AuthorsMethods> authors) {
        this.language = language;
        this.tally = tally;
        this.authors = authors;
    }

    static MethodsChapter of(Catalogue catalogue, BookOrder order, Numbering numbers, MethodsLanguage language) {
        ReadingChoice choice = ReadingChoice.of(catalogue.style());
        List<Counted> coins = new ArrayList<>();
        for (BookOrder.TypeInBook inBook : order.types()) {
            for (Coin coin : inBook.coins()) {
                String number = numbers.of(coin.id().value()).map(String::valueOf).orElse(Numbering.NO_COIN);
                coins.add(Counted.of(coin, inBook.type(), number, choice, catalogue.style().printed()));
            }
        }
        Tally tally = Tally.of(coins, catalogue);
        Optional<Chapter> own = Optional.ofNullable(catalogue.chapters().get(Chapter.METHODS))
                .filter(chapter -> !isPartOfItsOwn(catalogue));
        return new MethodsChapter(language, tally, own.map(chapter -> new AuthorsMethods(tally, chapter, language)));
    }

    /** @param place where the plan asks for the statement */
    List<Prose> blocks(Place place) {
        List<Prose> blocks = new ArrayList<>(new MethodsLayout(place).blocks(language.topics(), tally));
        authors.ifPresent(sentences -> blocks.addAll(sentences.blocks()));
        return blocks;
    }

    /** Where the author's sentences and the data say different things. */
    Findings findings() {
        return authors.map(sentences -> Findings.of(sentences.findings())).orElse(Findings.none());
    }

    private static boolean isPartOfItsOwn(Catalogue catalogue) {
        return Stream.of(catalogue.plan().front(), catalogue.plan().body(), catalogue.plan().back())
                .flatMap(List::stream).map(Written::value).anyMatch(Chapter.METHODS::equals);
    }
}
