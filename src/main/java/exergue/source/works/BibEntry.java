package exergue.source.works;

import exergue.finding.Place;
import exergue.model.Written;
import java.util.Map;

/**
 * One work of a BibTeX file as it stands there, still in LaTeX.
 *
 * @param kind   "book", "article", in small letters
 * @param fields by name in small letters, in the order of the file
 */
record BibEntry(String kind, Written<String> key, Map<String, Written<String>> fields, Place place) {

    String field(String name) {
        Written<String> field = fields.get(name);
        return field == null ? "" : field.value();
    }
}
