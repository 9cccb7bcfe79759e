package exergue.cite;

import de.undercouch.citeproc.CSL;
import de.undercouch.citeproc.ListItemDataProvider;
import de.undercouch.citeproc.csl.CSLItemData;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Work;
import exergue.model.WorkItem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sets the works from reference managers in the catalogue's citation style, or in the one that comes with the program. The
 * library is only woken where there are such works.
 */
public final class WorksSetter {

    private WorksSetter() { }

    /** @throws IOException if the disk fails, never because of what a style says */
    public static SetWorks set(Catalogue catalogue, Tree tree) throws IOException {
        Map<String, WorkItem> items = new LinkedHashMap<>();
        catalogue.works().forEach((id, work) -> {
            if (work.description() instanceof Work.Item described) {
                items.put(id, described.item());
            }
        });
        if (items.isEmpty() && catalogue.citationStyle().isEmpty()) {
            return new SetWorks(Map.of(), Findings.none());
        }
        StyleFile.Read style = StyleFile.read(catalogue.citationStyle(), tree);
        if (style.text().isEmpty()) {
            return new SetWorks(Map.of(), style.findings());
        }
        return items.isEmpty() ? new SetWorks(Map.of(), style.findings()) : set(catalogue, style, items);
    }

    private static SetWorks set(Catalogue catalogue, StyleFile.Read style, Map<String, WorkItem> items) throws IOException {
        Locales locales = new Locales(catalogue.title().language().value(), catalogue.style().quotes());
        List<CSLItemData> data = new ArrayList<>();
        items.forEach((id, item) -> data.add(Items.of(id, item, locales.language())));
        RunsFormat format = new RunsFormat();
        try {
            CSL csl = new CSL(new ListItemDataProvider(data), locales, null, style.text().get(), locales.name());
            csl.setOutputFormat(format);
            csl.setConvertLinks(false);
            csl.registerCitationItems(items.keySet(), true);
            csl.makeBibliography();
        } catch (RuntimeException | StackOverflowError fault) {
            // a style may be wrong in ways that only the library finds out, and it says so by failing
            return new SetWorks(Map.of(), Findings.of(List.of(refused(style, fault))));
        }
        Map<String, List<Inline>> full = new LinkedHashMap<>();
        items.keySet().forEach(id -> full.put(id, Optional.ofNullable(format.set().get(id)).orElse(List.of())));
        return new SetWorks(full, style.findings());
    }

    private static Finding refused(StyleFile.Read style, Throwable fault) {
        String said = fault instanceof StackOverflowError || fault.getMessage() == null ? "" : ": " + fault.getMessage();
        return Finding.of(CiteCodes.NOT_A_STYLE, Place.ofFile(style.path()), "",
                "The works cannot be set in the style “" + style.path() + "”" + said + ".",
                "Validate the style against CSL 1.0.2, or take the key citation-style away to set the works in the style that comes "
                        + "with Exergue.");
    }
}
