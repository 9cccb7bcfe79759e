package exergue.edition;

import static exergue.edition.CatalogueBuilder.PLACE;
import static exergue.edition.CatalogueBuilder.maybe;
import static exergue.edition.CatalogueBuilder.words;

import exergue.measure.Alloy;
import exergue.model.Inline;
import exergue.model.Making;
import exergue.model.Phrase;
import exergue.model.Reference;
import exergue.model.Reference.Relation;
import exergue.model.Shape;
import exergue.model.Side;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A type: a struck round silver drachm of Lykaia with two sides, unless said otherwise. */
final class TypeBuilder {

    private final String id;
    private final List<Reference> references = new ArrayList<>();
    private final List<Written<String>> keywords = new ArrayList<>();
    private String mint = "lykaia";
    private String ruler = "";
    private String issue = "";
    private String means = "";
    private Optional<Integer> order = Optional.empty();
    private Shape shape = Shape.ROUND;
    private Making making = Making.STRUCK;
    private boolean uniface;
    private Optional<Alloy> alloy = Optional.empty();

    TypeBuilder(String id) {
        this.id = id;
    }

    TypeBuilder at(String mint, String ruler) {
        this.mint = mint;
        this.ruler = ruler;
        return this;
    }

    TypeBuilder issue(String issue) {
        this.issue = issue;
        return this;
    }

    TypeBuilder order(int order) {
        this.order = Optional.of(order);
        return this;
    }

    TypeBuilder shape(Shape shape, String diameterMeans) {
        this.shape = shape;
        this.means = diameterMeans;
        return this;
    }

    TypeBuilder made(Making making) {
        this.making = making;
        return this;
    }

    TypeBuilder alloy(Alloy alloy) {
        this.alloy = Optional.of(alloy);
        return this;
    }

    TypeBuilder uniface() {
        uniface = true;
        return this;
    }

    TypeBuilder reference(String work, String number, Relation relation) {
        references.add(new Reference(words(work), words(number), relation));
        return this;
    }

    TypeBuilder keywords(String... words) {
        for (String word : words) {
            keywords.add(words(word));
        }
        return this;
    }

    Type build() {
        Side reverse = uniface ? Side.BLANK
                : new Side(Optional.empty(), false, Optional.of(phrase("Ear of barley.")));
        return new Type(words(id), words(mint), maybe(ruler), order.map(n -> new Written<>(n, PLACE)), maybe(issue),
                words("drachm"), words("silver"), alloy.map(a -> new Written<>(a, PLACE)), CatalogueBuilder.date("c. 300 BC"),
                Optional.empty(), Optional.empty(), new Written<>(shape, PLACE),
                new Written<>(making, PLACE), new Written<>(uniface, PLACE), maybe(means),
                new Side(CatalogueBuilder.legend("ΛΥΚΑΙΩΝ"), false,
                Optional.of(phrase("Head of a wolf r."))), reverse, references, keywords,
                Optional.empty(), List.of(), List.of(), PLACE);
    }

    static Phrase phrase(String text) {
        return new Phrase(List.of(new Inline.Words(text)), PLACE);
    }
}
