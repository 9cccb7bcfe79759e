package exergue.edition;

import exergue.edition.BookOrder.TypeInBook;
import exergue.edition.EntryBlock.Entry;
import exergue.edition.EntryBlock.SideText;
import exergue.model.BookWord;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Making;
import exergue.model.Metal;
import exergue.model.Mint;
import exergue.model.Ruler;
import exergue.model.Shape;
import exergue.model.Side;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One type as printed, with its specimens. */
final class EntryMaker {

    private final Catalogue catalogue;
    private final Numbering numbers;
    private final SpecimenMaker specimens;
    private final CrossReferences references;
    private final BookWords words;
    private final DateWords dates;

    EntryMaker(Catalogue catalogue, Numbering numbers, SpecimenMaker specimens, CrossReferences references,
               BookWords words) {
        this.catalogue = catalogue;
        this.numbers = numbers;
        this.specimens = specimens;
        this.references = references;
        this.words = words;
        this.dates = new DateWords(catalogue.style());
    }

    Entry of(TypeInBook inBook) {
        Type type = inBook.type();
        return new Entry(Anchors.type(type.id().value()), numbers.range(inBook.coins()), firstLine(type),
                sides(type), ReferenceTexts.of(type.references(), catalogue.works(), words),
                inBook.coins().stream().map(coin -> specimens.of(coin, type)).toList(),
                references.in(type.note()), runningHead(type));
    }

    /** Denomination, metal, date, year of an era, weight standard; after the metal what is unusual in making or shape, not said twice. */
    private List<String> firstLine(Type type) {
        List<String> members = new ArrayList<>();
        members.add(Sentence.capital(type.denomination().value()));
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

    private List<SideText> sides(Type type) {
        List<SideText> sides = new ArrayList<>();
        boolean uniface = type.uniface().value();
        side(words.of(BookWord.OBVERSE), type.obverse(), uniface, sides);
        side(words.of(BookWord.REVERSE), type.reverse(), uniface, sides);
        return List.copyOf(sides);
    }

    private void side(String label, Side side, boolean uniface, List<SideText> sides) {
        if (!side.isBlank()) {
            List<Inline> runs = new ArrayList<>();
            if (side.retrograde()) {
                runs.add(new Inline.Words(Sentence.capital(words.of(BookWord.RETROGRADE)) + ". "));
            }
            side.description().ifPresent(text -> runs.addAll(references.inRuns(text.runs())));
            sides.add(new SideText(label, side.legend().map(legend -> legend.value().printed()), List.copyOf(runs)));
        } else if (uniface) {
            sides.add(new SideText(label, Optional.empty(), List.of(new Inline.Words(words.of(BookWord.UNIFACE)))));
        }
    }

    private String runningHead(Type type) {
        Mint mint = catalogue.mints().get(type.mint().value());
        String head = mint == null ? type.mint().value() : mint.name().value();
        return type.ruler().map(id -> {
            Ruler ruler = catalogue.rulers().get(id.value());
            return head + ", " + (ruler == null ? id.value() : ruler.name().value());
        }).orElse(head);
    }
}
