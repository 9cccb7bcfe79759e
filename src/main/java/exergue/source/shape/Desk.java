package exergue.source.shape;

import exergue.measure.Convention;
import exergue.model.HouseStyle;
import exergue.model.Language;
import exergue.model.Written;
import exergue.source.text.Notebook;
import java.util.Map;
import java.util.Set;

/**
 * What one run of the reader has on its desk while it binds a file.
 *
 * @param notebook    where findings go
 * @param files       every path of the tree
 * @param quotes      the house's quotation marks, for prose
 * @param conventions those declared, by id
 * @param language    of the book
 */
public record Desk(Notebook notebook, Set<String> files, HouseStyle.Quotes quotes,
                   Map<String, Written<Convention>> conventions, Language language) {

    public Desk with(Notebook other) {
        return new Desk(other, files, quotes, conventions, language);
    }

    public Desk with(HouseStyle.Quotes others) {
        return new Desk(notebook, files, others, conventions, language);
    }

    public Desk with(Map<String, Written<Convention>> declared) {
        return new Desk(notebook, files, quotes, declared, language);
    }

    /** The convention of that name; one that says nothing where it is not declared. */
    public Convention convention(String id) {
        Written<Convention> declared = conventions.get(id);
        return declared == null ? Convention.UNDECLARED : declared.value();
    }
}
