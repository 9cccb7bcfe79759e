package exergue.edition;

import static exergue.edition.CatalogueBuilder.PLACE;
import static exergue.edition.CatalogueBuilder.maybe;
import static exergue.edition.CatalogueBuilder.words;

import exergue.dating.DatingParser;
import exergue.measure.Convention;
import exergue.measure.Kind;
import exergue.measure.Parsed;
import exergue.measure.Reading;
import exergue.measure.ReadingParser;
import exergue.model.Coin;
import exergue.model.Damage;
import exergue.model.Inline;
import exergue.model.Measurement;
import exergue.model.PrintScale;
import exergue.model.Prose;
import exergue.model.Provenance;
import exergue.model.Reference;
import exergue.model.Side;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A coin: nothing but its id and type, unless said otherwise. */
final class CoinBuilder {

    private final String id;
    private final String type;
    private final Function<String, Convention> conventions;
    private final List<Measurement> blocks = new ArrayList<>();
    private final List<Written<Damage>> damage = new ArrayList<>();
    private final List<Provenance> provenance = new ArrayList<>();
    private final List<Reference> references = new ArrayList<>();
    private final List<Prose> note = new ArrayList<>();
    private Optional<Integer> number = Optional.empty();
    private Optional<Coin.WeightCounts> counts = Optional.empty();
    private Optional<Coin.Dies> dies = Optional.empty();
    private Optional<Coin.Holding> holding = Optional.empty();
    private Optional<Coin.Find> find = Optional.empty();
    private Optional<Coin.Photograph> photograph = Optional.empty();
    private Side obverse = Side.BLANK;
    private String countermark = "";

    CoinBuilder(String id, String type, Function<String, Convention> conventions) {
        this.id = id;
        this.type = type;
        this.conventions = conventions;
    }

    /** The first call makes the coin's own block, later ones those of other hands; an empty text is left out. */
    CoinBuilder measured(String by, String weight, String diameter, String axis) {
        Convention convention = conventions.apply(by);
        Map<Kind, Written<Reading>> readings = new EnumMap<>(Kind.class);
        read(Kind.WEIGHT, weight, convention, readings);
        read(Kind.DIAMETER, diameter, convention, readings);
        read(Kind.AXIS, axis, convention, readings);
        blocks.add(new Measurement(words(by), convention, readings, PLACE));
        return this;
    }

    CoinBuilder pictured(String obverseFile, String reverseFile, String credit, String permission) {
        photograph = Optional.of(new Coin.Photograph(maybe(obverseFile), maybe(reverseFile), Optional.empty(),
                maybe(credit), maybe(permission), Optional.empty()));
        return this;
    }

    CoinBuilder pictured(String obverseFile, String reverseFile, String credit) {
        photograph = Optional.of(new Coin.Photograph(maybe(obverseFile), maybe(reverseFile), Optional.empty(), maybe(credit),
                Optional.empty(), Optional.empty()));
        return this;
    }

    /** How large it is printed: "2:1". */
    CoinBuilder scaled(String scale) {
        photograph = photograph.map(photo -> new Coin.Photograph(photo.obverse(), photo.reverse(), photo.width(), photo.credit(),
                photo.permission(), PrintScale.of(scale)));
        return this;
    }

    /** How wide its pictures are at life size. */
    CoinBuilder wide(String width) {
        Map<Kind, Written<Reading>> readings = new EnumMap<>(Kind.class);
        read(Kind.DIAMETER, width, Convention.UNDECLARED, readings);
        photograph = photograph.map(photo -> new Coin.Photograph(photo.obverse(), photo.reverse(),
                Optional.of(readings.get(Kind.DIAMETER)), photo.credit(), photo.permission(), photo.scale()));
        return this;
    }

    /** One reading more in the block that was given last. */
    CoinBuilder also(Kind kind, String text) {
        Measurement last = blocks.remove(blocks.size() - 1);
        Map<Kind, Written<Reading>> readings = new EnumMap<>(last.readings());
        read(kind, text, last.convention(), readings);
        blocks.add(new Measurement(last.by(), last.convention(), readings, PLACE));
        return this;
    }

    private static void read(Kind kind, String text, Convention by, Map<Kind, Written<Reading>> into) {
        if (!text.isEmpty()) {
            Parsed parsed = ReadingParser.parse(kind, text, by);
            if (!(parsed instanceof Parsed.Accepted accepted)) {
                throw new IllegalArgumentException(text + ": " + parsed);
            }
            into.put(kind, new Written<>(accepted.reading(), PLACE));
        }
    }

    CoinBuilder number(int pinned) {
        number = Optional.of(pinned);
        return this;
    }

    CoinBuilder damaged(Damage... what) {
        for (Damage one : what) {
            damage.add(new Written<>(one, PLACE));
        }
        return this;
    }

    CoinBuilder weightCounts(boolean yes, String why) {
        counts = Optional.of(new Coin.WeightCounts(new Written<>(yes, PLACE), words(why)));
        return this;
    }

    CoinBuilder dies(String obverseDie, String reverseDie) {
        dies = Optional.of(new Coin.Dies(maybe(obverseDie), maybe(reverseDie)));
        return this;
    }

    CoinBuilder in(String collection, String number) {
        holding = Optional.of(new Coin.Holding(words(collection), maybe(number)));
        return this;
    }

    CoinBuilder found(String spot, String context, String number) {
        find = Optional.of(new Coin.Find(words(spot), maybe(context), maybe(number)));
        return this;
    }

    CoinBuilder legend(String text) {
        obverse = new Side(CatalogueBuilder.legend(text), false, Optional.empty());
        return this;
    }

    CoinBuilder reference(String work, String number, Reference.Relation relation) {
        references.add(new Reference(words(work), words(number), relation));
        return this;
    }

    CoinBuilder from(String owner) {
        provenance.add(Provenance.of(words(owner)));
        return this;
    }

    CoinBuilder under(String owner, String edtf, String index) {
        provenance.add(new Provenance(words(owner), maybe(edtf).map(date -> new Written<>(
                ((exergue.dating.Parsed.Accepted) DatingParser.parse(date.value())).dating(), PLACE)), maybe(index)));
        return this;
    }

    CoinBuilder countermarked(String mark) {
        countermark = mark;
        return this;
    }

    CoinBuilder note(String kind, String referenceTo) {
        note.add(new Prose.Paragraph(List.of(new Inline.CrossReference(kind, referenceTo, PLACE)), PLACE));
        return this;
    }

    Coin build() {
        return new Coin(words(id), words(type), number.map(n -> new Written<>(n, PLACE)),
                blocks.stream().findFirst(), blocks.stream().skip(1).toList(), damage, counts, dies, Optional.empty(), obverse,
                Side.BLANK, holding, find, provenance, maybe(countermark), references, photograph, Optional.empty(), note, List.of(), PLACE);
    }
}
