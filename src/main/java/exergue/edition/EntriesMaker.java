package exergue.edition;

import exergue.edition.BookOrder.TypeInBook;
import exergue.edition.EntryBlock.IssueHeading;
import exergue.edition.EntryBlock.MintHeading;
import exergue.edition.EntryBlock.RulerHeading;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Mint;
import exergue.model.Phrase;
import exergue.model.Ruler;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The catalogue part: entries, and a heading wherever mint, ruler or issue change. */
final class EntriesMaker {

    private final Catalogue catalogue;
    private final EntryMaker entries;
    private final CrossReferences references;

    EntriesMaker(Catalogue catalogue, EntryMaker entries, CrossReferences references) {
        this.catalogue = catalogue;
        this.entries = entries;
        this.references = references;
    }

    List<EntryBlock> of(BookOrder order) {
        List<EntryBlock> blocks = new ArrayList<>();
        Optional<Type> before = Optional.empty();
        int issues = 0;
        for (TypeInBook inBook : order.types()) {
            Type type = inBook.type();
            boolean newMint = before.map(b -> !b.mint().value().equals(type.mint().value())).orElse(true);
            boolean newRuler = newMint || !words(before.flatMap(Type::ruler)).equals(words(type.ruler()));
            boolean newIssue = newRuler || !words(before.flatMap(Type::issue)).equals(words(type.issue()));
            if (newMint) {
                blocks.add(mint(type.mint().value()));
            }
            if (newRuler && type.ruler().isPresent()) {
                blocks.add(ruler(type.mint().value(), type.ruler().get().value()));
            }
            if (newIssue && type.issue().isPresent()) {
                blocks.add(new IssueHeading(Anchors.issue(++issues), type.issue().get().value()));
            }
            blocks.add(entries.of(inBook));
            before = Optional.of(type);
        }
        return List.copyOf(blocks);
    }

    private static String words(Optional<Written<String>> text) {
        return text.map(Written::value).orElse("");
    }

    private MintHeading mint(String id) {
        Optional<Mint> mint = Optional.ofNullable(catalogue.mints().get(id));
        return new MintHeading(Anchors.mint(id), mint.map(m -> m.name().value()).orElse(id),
                mint.flatMap(Mint::dates).map(new DateWords(catalogue.style())::of), note(mint.flatMap(Mint::note)));
    }

    private RulerHeading ruler(String mint, String id) {
        Optional<Ruler> ruler = Optional.ofNullable(catalogue.rulers().get(id));
        return new RulerHeading(Anchors.ruler(mint, id), ruler.map(r -> r.name().value()).orElse(id),
                ruler.flatMap(Ruler::dates).map(new DateWords(catalogue.style())::of), note(ruler.flatMap(Ruler::note)));
    }

    private List<Inline> note(Optional<Phrase> note) {
        return note.map(phrase -> references.inRuns(phrase.runs())).orElse(List.of());
    }
}
