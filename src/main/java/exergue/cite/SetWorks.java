package exergue.cite;

import exergue.finding.Findings;
import exergue.model.Inline;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Works as a citation style has set them.
 *
 * @param full     by the id of the work; works whose author composed them are not among them
 * @param findings what is wrong with the style
 */
public record SetWorks(Map<String, List<Inline>> full, Findings findings) {

    public SetWorks {
        full = Collections.unmodifiableMap(new LinkedHashMap<>(full));
    }
}
