package exergue.check;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.model.Written;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * Words the finding for an id that leads nowhere.
 *
 * @param code  the rule's code
 * @param thing what the id stands for: "mint"
 * @param home  the file in which such things are declared, or the folder with one file for each: "mints.yaml", "types/"
 * @param known every id that is declared
 */
public record UnknownId(Code code, String thing, String home, Collection<String> known) {

    private static final int SHOWN = 8;

    /** No finding if the id is declared, or if there is no id at all: that has been reported before. */
    public List<Finding> unlessDeclared(Written<String> id, String path) {
        if (id.value().isBlank() || known.contains(id.value())) {
            return List.of();
        }
        String what = "There is no " + thing + " “" + id.value() + "” in " + home + ".";
        String small = id.value().toLowerCase(Locale.ROOT);
        return List.of(known.contains(small)
                ? Finding.of(code, id.place(), path, what, "Write “" + small + "”.").withEditAt(id.place(), id.value(), small)
                : Finding.of(code, id.place(), path, what, remedy(id.value())));
    }

    private String remedy(String id) {
        String declare = home.endsWith("/") ? "add the file " + home + id + ".yaml."
                : "declare “" + id + "” in " + home + ".";
        if (known.isEmpty()) {
            return "Nothing is declared there yet: " + declare;
        }
        return NearMiss.of(id, known)
                .map(near -> "Did you mean “" + near + "”? Otherwise " + declare)
                .orElse("Use one of " + someOf() + ", or " + declare);
    }

    private String someOf() {
        List<String> shown = known.stream().sorted().limit(SHOWN).map(id -> "“" + id + "”").toList();
        return String.join(", ", shown) + (known.size() > SHOWN ? " …" : "");
    }
}
