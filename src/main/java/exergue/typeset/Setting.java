package exergue.typeset;

import exergue.files.Tree;
import exergue.model.Catalogue;
import exergue.model.HouseStyle.Rows;
import java.util.Optional;

/**
 * Everything the typesetter needs to know besides the book.
 *
 * @param source    where photographs and the catalogue's own templates are read
 * @param templates folder in the source with the catalogue's own templates, if it has any
 * @param rows      specimens in aligned rows or in running lines
 * @param stamp     identifies this state of the source
 * @param progress  told how far the work has come
 */
public record Setting(Tree source, Optional<String> templates, Rows rows, Stamp stamp, Progress progress) {

    public static Setting of(Catalogue catalogue, Tree source, Stamp stamp, Progress progress) {
        return new Setting(source, catalogue.templates(), catalogue.style().rows(), stamp, progress);
    }
}
