package exergue.edition;

import exergue.finding.Place;
import exergue.measure.Convention;
import exergue.measure.Reading;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.HouseStyle;
import exergue.model.Measurement;
import exergue.model.Phrase;
import exergue.model.Prose;
import exergue.model.Reference;
import exergue.model.Side;
import exergue.model.TitleMatter;
import exergue.model.Type;
import exergue.model.Work;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every text of the source that is printed, with the place where it was written, so that a letter the book's face does
 * not have can be traced. Places are as fine as the source keeps them: a value's own, or that of a block of prose.
 * Marks and signs of the house style have no place but their file.
 */
public final class PrintedTexts {

    private static final Place HOUSE_STYLE = Place.ofFile("house-style.yaml");

    private final List<Written<String>> texts = new ArrayList<>();

    private final boolean recordsArePrinted;

    private PrintedTexts(boolean recordsArePrinted) {
        this.recordsArePrinted = recordsArePrinted;
    }

    /** In a fixed order: title, house style, mints, rulers, works and other lists, types, coins, chapters. */
    public static List<Written<String>> of(Catalogue catalogue) {
        PrintedTexts all = new PrintedTexts(catalogue.style().otherHands() == HouseStyle.OtherHands.PRINTED);
        all.title(catalogue.title());
        all.house(catalogue);
        catalogue.mints().values().forEach(mint -> {
            all.add(mint.name());
            all.phrase(mint.note());
        });
        catalogue.rulers().values().forEach(ruler -> {
            all.add(ruler.name());
            all.phrase(ruler.note());
        });
        catalogue.works().values().forEach(all::work);
        catalogue.findSpots().values().forEach(spot -> {
            all.add(spot.name());
            all.add(spot.exact().filter(exact -> spot.mayPrint()));
        });
        catalogue.collections().values().forEach(collection -> {
            all.add(collection.sign());
            all.add(collection.name());
        });
        catalogue.apparatus().edition().ifPresent(all::add);
        catalogue.apparatus().see().forEach(see -> {
            all.add(see.from());
            all.add(see.to());
        });
        catalogue.conventions().values().forEach(all::convention);
        catalogue.types().forEach(all::type);
        catalogue.coins().forEach(all::coin);
        catalogue.chapters().values().forEach(chapter -> {
            all.prose(List.of(new Prose.Heading(1, chapter.title(), Place.ofFile(chapter.path()))));
            all.prose(chapter.blocks());
        });
        return List.copyOf(all.texts);
    }

    private void title(TitleMatter title) {
        add(title.title());
        add(title.subtitle());
        title.authors().forEach(this::add);
        add(title.place());
        add(title.publisher());
        add(title.year());
        add(title.series());
        phrase(title.notice());
        title.imprint().forEach(line -> phrase(Optional.of(line)));
    }

    private void house(Catalogue catalogue) {
        HouseStyle style = catalogue.style();
        List<String> marks = new ArrayList<>(List.of(style.separator(), style.missing(), style.notApplicable(),
                style.illegible(), style.signs().otherHand(), style.signs().damaged(), style.form().hourSign(),
                style.quotes().open(), style.quotes().close(), style.quotes().innerOpen(),
                style.quotes().innerClose(), style.dates().circa(), style.dates().uncertain()));
        style.eras().values().forEach(era -> marks.add(era.sign()));
        style.metals().values().forEach(metal -> marks.add(metal.sign()));
        marks.add(style.form().circa());
        marks.addAll(style.words().values());
        marks.forEach(mark -> add(new Written<>(mark, HOUSE_STYLE)));
    }

    private void convention(Written<Convention> written) {
        Convention convention = written.value();
        List<Optional<String>> words = List.of(Optional.of(convention.title()), convention.by(), convention.when(),
                convention.weighing().instrument(), convention.sizing().instrument(), convention.cleaning(),
                convention.shortTitle());
        words.forEach(text -> add(text.map(value -> new Written<>(value, written.place()))));
    }

    private void work(Work work) {
        add(work.sign());
        if (work.description() instanceof Work.AsPrinted printed) {
            add(printed.authors());
            add(printed.year());
            add(printed.title());
            add(printed.in());
            add(printed.rest());
        } else if (work.description() instanceof Work.Item described) {
            described.item().texts().values().forEach(this::add);
            described.item().people().values().forEach(people -> people.forEach(person ->
                    add(new Written<>(person.given() + " " + person.shortName() + " " + person.suffix(), work.id().place()))));
        }
    }

    private void type(Type type) {
        add(type.issue());
        add(type.denomination());
        add(type.standard());
        add(type.diameterMeans());
        side(type.obverse());
        side(type.reverse());
        type.references().forEach(this::reference);
        type.keywords().forEach(this::add);
        prose(type.note());
    }

    private void coin(Coin coin) {
        coin.measured().ifPresent(this::reasons);
        coin.alsoMeasured().forEach(this::reasons);
        coin.dies().ifPresent(dies -> {
            add(dies.obverse());
            add(dies.reverse());
            dies.obverseState().flatMap(Coin.DieState::flaw).ifPresent(this::add);
            dies.reverseState().flatMap(Coin.DieState::flaw).ifPresent(this::add);
        });
        side(coin.obverse());
        side(coin.reverse());
        coin.holding().ifPresent(holding -> add(holding.number()));
        coin.find().ifPresent(find -> {
            add(find.context());
            add(find.number());
        });
        coin.provenance().forEach(step -> {
            add(step.words());
            add(step.under());
        });
        add(coin.countermark());
        coin.references().forEach(this::reference);
        coin.photograph().ifPresent(photograph -> {
            add(photograph.credit());
            add(photograph.permission());
        });
        coin.weightCounts().ifPresent(word -> add(word.why()));
        add(coin.diameterMeans());
        prose(coin.note());
    }

    /** Why there is no figure, which the methods statement repeats; what other hands recorded, if the house prints that. */
    private void reasons(Measurement block) {
        block.readings().values().stream().filter(reading -> recordsArePrinted || !(reading.value() instanceof Reading.Read))
                .forEach(reading -> add(new Written<>(reading.value().recorded(), reading.place())));
    }

    private void reference(Reference reference) {
        add(reference.number());
    }

    private void side(Side side) {
        add(side.legend().map(legend -> new Written<>(legend.value().text(), legend.place())));
        phrase(side.description());
    }

    private void prose(List<Prose> blocks) {
        ProseTexts.of(blocks).forEach(line -> add(new Written<>(line.text(), line.place())));
    }

    private void phrase(Optional<Phrase> phrase) {
        phrase.ifPresent(words -> add(new Written<>(words.plain(), words.place())));
    }

    private void add(Optional<Written<String>> text) {
        text.ifPresent(this::add);
    }

    private void add(Written<String> text) {
        if (!text.value().isEmpty()) {
            texts.add(text);
        }
    }
}
