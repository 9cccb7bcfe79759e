package exergue.typeset;

import exergue.edition.PageMap;
import exergue.files.Tree;
import exergue.finding.Place;
import exergue.model.Catalogue;
import exergue.model.HouseStyle.Rows;
import exergue.model.TemplateChoice;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Everything the typesetter needs to know besides the book.
 *
 * @param source    where photographs and the catalogue's own templates are read
 * @param templates which templates lay the book out
 * @param rows      specimens in aligned rows or in running lines
 * @param written   where a coin or type is written, by its id, for findings
 * @param stamp     identifies this state of the source; asked for once the pages are set
 * @param known     told where everything stands as soon as the pages are laid out, before they are printed; a book that is set
 *                  more than once tells it each time
 * @param placed    whether somebody wants to know where on its page everything stands
 * @param progress  told how far the work has come
 */
public record Setting(Tree source, TemplateChoice templates, Rows rows, Map<String, Place> written, Supplier<Stamp> stamp,
                      Consumer<PageMap> known, boolean placed, Progress progress) {

    public Setting(Tree source, TemplateChoice templates, Rows rows, Map<String, Place> written, Supplier<Stamp> stamp,
                   Consumer<PageMap> known, Progress progress) {
        this(source, templates, rows, written, stamp, known, false, progress);
    }

    public static Setting of(Catalogue catalogue, Tree source, Supplier<Stamp> stamp, Progress progress) {
        Map<String, Place> written = new LinkedHashMap<>();
        catalogue.coins().forEach(coin -> written.put(coin.id().value(), coin.place()));
        catalogue.types().forEach(type -> written.putIfAbsent(type.id().value(), type.place()));
        return new Setting(source, catalogue.templates(), catalogue.style().rows(), written, stamp, pages -> { }, progress);
    }

    public Setting telling(Consumer<PageMap> listener) {
        return new Setting(source, templates, rows, written, stamp, listener, placed, progress);
    }

    public Setting placing(boolean asked) {
        return new Setting(source, templates, rows, written, stamp, known, asked, progress);
    }
}
