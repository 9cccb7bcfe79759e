package exergue.edition;

import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Prose;
import java.util.List;

/** How the coins were measured: written from the data, with the author's own sentences after it. */
final class MethodsChapter {

    private final Catalogue catalogue;

    private MethodsChapter(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    static MethodsChapter of(Catalogue catalogue, BookOrder order, Numbering numbers) {
        return new MethodsChapter(catalogue);
    }

    List<Prose> blocks(Place place) {
        return List.of(new Prose.Paragraph(List.of(new Inline.Words("The figures of " + catalogue.coins().size()
                + " coins stand in the order weight, diameter, die-axis.")), place));
    }

    Findings findings() {
        return Findings.none();
    }
}
