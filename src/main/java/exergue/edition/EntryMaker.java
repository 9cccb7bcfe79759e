package exergue.edition;

import exergue.edition.BookOrder.TypeInBook;
import exergue.edition.EntryBlock.Entry;
import exergue.edition.methods.Passage;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Making;
import exergue.model.Metal;
import exergue.model.Mint;
import exergue.model.Ruler;
import exergue.model.Shape;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** One type as printed, with its specimens. */
final class EntryMaker {

    private final Catalogue catalogue;
    private final Numbering numbers;
    private final SpecimenMaker specimens;
    private final CrossReferences references;
    private final BookWords words;
    private final DateWords dates;
    private final SideTexts sides;

    EntryMaker(EditorsDesk desk, SpecimenMaker specimens) {
        this.catalogue = desk.catalogue();
        this.numbers = desk.numbers();
        this.specimens = specimens;
        this.references = desk.references();
        this.words = desk.words();
        this.dates = new DateWords(catalogue.style());
        this.sides = new SideTexts(words, references);
    }

    Entry of(TypeInBook inBook) {
        Type type = inBook.type();
        return new Entry(Anchors.type(type.id().value()), numbers.range(inBook.coins()), firstLine(type),
                sides.of(type), ReferenceTexts.of(type.references(), catalogue.works(), words),
                specimens.of(inBook),
                references.in(type.note()), runningHead(type), continued(type));
    }

    /** Denomination, metal, date, year of an era, weight standard; after the metal what is unusual in making or shape, not said twice. */
    private List<String> firstLine(Type type) {
        List<String> members = new ArrayList<>();
        members.add(Passage.capital(type.denomination().value()));
        Metal metal = catalogue.style().metals().get(type.metal().value());
        members.add(metal == null ? type.metal().value() : metal.sign());
        String making = words.of(type.making().value());
        if (type.making().value() != Making.STRUCK && !type.denomination().value().contains(making)) {
            members.add(making);
        }
        if (type.shape().value() != Shape.ROUND) {
            members.add(words.of(type.shape().value()));
        }
        type.date().map(dates::of).ifPresent(members::add);
        type.eraDate().map(dates::of).ifPresent(members::add);
        type.standard().map(Written::value).ifPresent(members::add);
        return List.copyOf(members);
    }

    private String continued(Type type) {
        return Passage.capital(type.denomination().value()) + " (" + words.of(BookWord.CONTINUED) + ")";
    }

    private String runningHead(Type type) {
        Mint mint = catalogue.mints().get(type.mint().value());
        String head = mint == null ? type.mint().value() : mint.name().value();
        return type.ruler().map(id -> {
            Ruler ruler = catalogue.rulers().get(id.value());
            String name = ruler == null ? id.value() : ruler.name().value();
            return name.contains(head) ? name : head + ", " + name;
        }).orElse(head);
    }
}
