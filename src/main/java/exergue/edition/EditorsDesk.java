package exergue.edition;

import exergue.model.Catalogue;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What lies on the editor's desk while entries are written.
 *
 * @param plates number of the plate a coin is on, by the coin's id; empty in a book without plates
 */
record EditorsDesk(Catalogue catalogue, Numbering numbers, CrossReferences references, BookWords words,
                   Map<String, String> plates) {
    EditorsDesk {
        plates = Collections.unmodifiableMap(new LinkedHashMap<>(plates));
    }
}
