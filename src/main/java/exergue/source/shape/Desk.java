package exergue.source.shape;

import exergue.measure.Convention;
import exergue.model.HouseRules;
import exergue.model.HouseStyle;
import exergue.model.Language;
import exergue.model.Written;
import exergue.source.text.Notebook;
import java.util.List;
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
 * @param wordings    words for which the house has one of its own
 */
public record Desk(Notebook notebook, Set<String> files, HouseStyle.Quotes quotes,
                   Map<String, Written<Convention>> conventions, Language language, List<HouseRules.Wording> wordings) {

    public Desk {
        wordings = List.copyOf(wordings);
    }

    public Desk with(Notebook other) {
        return new Desk(other, files, quotes, conventions, language, wordings);
    }

    /** From now on, texts are held to this style. */
    public Desk with(HouseStyle style) {
        return new Desk(notebook, files, style.quotes(), conventions, language, style.rules().wordings());
    }

    public Desk with(Map<String, Written<Convention>> declared) {
        return new Desk(notebook, files, quotes, declared, language, wordings);
    }

    /** The convention of that name; one that says nothing where it is not declared. */
    public Convention convention(String id) {
        Written<Convention> declared = conventions.get(id);
        return declared == null ? Convention.UNDECLARED : declared.value();
    }
}
