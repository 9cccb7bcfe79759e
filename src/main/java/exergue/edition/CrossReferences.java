package exergue.edition;

import exergue.model.Caption;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Turns references to entries by id into what a reader can follow: a link inside the book whose words are the coin's
 * number, the type's numbers, the number of a table or figure, the name of the mint or ruler, or the sign of the work. One that leads nowhere keeps its
 * id as its words; saying so is a check's business.
 */
final class CrossReferences {

    private final Map<String, Inline.Link> targets = new HashMap<>();
    private final ProseMapper mapper = new ProseMapper(this::resolved);

    private CrossReferences() { }

    /** @param folio what is added to a number: the page it stands on, or nothing */
    static CrossReferences of(Catalogue catalogue, BookOrder order, Numbering numbers, UnaryOperator<String> folio) {
        CrossReferences all = new CrossReferences();
        for (BookOrder.TypeInBook inBook : order.types()) {
            String id = inBook.type().id().value();
            String range = numbers.range(inBook.coins());
            all.add("type", id, Anchors.type(id),
                    (inBook.coins().isEmpty() ? id : range) + folio.apply(Anchors.type(id)));
            for (Coin coin : inBook.coins()) {
                String number = numbers.of(coin.id().value()).map(String::valueOf).orElse(coin.id().value());
                all.add("coin", coin.id().value(), Anchors.coin(coin.id().value()),
                        number + folio.apply(Anchors.coin(coin.id().value())));
            }
            String mint = inBook.type().mint().value();
            inBook.type().ruler().filter(ruler -> catalogue.rulers().containsKey(ruler.value())).ifPresent(
                    ruler -> all.add("ruler", ruler.value(), Anchors.ruler(mint, ruler.value()),
                            catalogue.rulers().get(ruler.value()).name().value()));
        }
        catalogue.mints().forEach((id, mint) -> all.add("mint", id, Anchors.mint(id), mint.name().value()));
        catalogue.works().forEach((id, work) -> all.add("work", id, Anchors.work(id), work.sign().value()));
        return all;
    }

    /** The same, and to these tables and figures. @param folio as in {@link #of} */
    CrossReferences andTo(List<Caption> captions, UnaryOperator<String> folio) {
        for (Caption caption : captions) {
            caption.label().ifPresent(label -> caption.id().ifPresent(id -> add(caption.kind().word(), id.value(), label.anchor(),
                    label.number() + folio.apply(label.anchor()))));
        }
        return this;
    }

    List<Prose> in(List<Prose> blocks) {
        return mapper.blocks(blocks);
    }

    List<Inline> inRuns(List<Inline> runs) {
        return mapper.runs(runs);
    }

    /** The first heading of a ruler is the one to go to. */
    private void add(String kind, String id, String anchor, String words) {
        targets.putIfAbsent(kind + ":" + id, new Inline.Link("#" + anchor, List.of(new Inline.Words(words))));
    }

    /** What is cited within a work stays on the line of its sign. */
    private static Inline located(Inline.Link link, String locator) {
        if (locator.isEmpty()) {
            return link;
        }
        return new Inline.Link(link.address(), List.of(new Inline.Words(Inline.plain(link.runs()) + "\u00A0" + locator)));
    }

    private Inline resolved(Inline run) {
        if (run instanceof Inline.CrossReference reference) {
            return Optional.ofNullable(targets.get(reference.kind() + ":" + reference.id()))
                    .map(link -> located(link, reference.locator()))
                    .orElse(new Inline.Words(reference.id()));
        }
        return run;
    }
}
