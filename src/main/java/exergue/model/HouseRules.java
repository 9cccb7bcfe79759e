package exergue.model;

import java.util.List;

/**
 * What the editor wants of the entries beyond what every catalogue needs.
 *
 * @param treatments of kinds of findings, in the order of the file
 */
public record HouseRules(List<Treated> treatments) {

    /** Those of a house that has decided nothing. */
    public static final HouseRules NONE = new HouseRules(List.of());

    public HouseRules {
        treatments = List.copyOf(treatments);
    }

    /** @param finding the code, as written */
    public record Treated(Written<String> finding, Treatment treatment) { }
}
