package exergue.check.rules;

import exergue.check.CrossReferences;
import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.model.Inline;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** A cross-reference in prose leads nowhere. */
public final class BrokenCrossReference implements Rule {

    static final Code CODE = new Code("broken-cross-reference", Severity.ERROR,
            "A cross-reference leads nowhere",
            "A cross-reference is printed as the number of the entry it names. Where there is no such entry there is "
                    + "nothing to print.",
            """
                    The dies are those of [coin:lk-0420].
                    """,
            """
                    The dies are those of [coin:lk-0042].
                    """);

    @Override
    public Code code() {
        return CODE;
    }

    @Override
    public List<Finding> faults(Catalogue catalogue) {
        Map<String, UnknownId> kinds = kinds(catalogue);
        List<Finding> faults = new ArrayList<>();
        for (Inline.CrossReference reference : CrossReferences.in(catalogue)) {
            UnknownId kind = kinds.get(reference.kind());
            faults.addAll(kind == null
                    ? List.of(unknownKind(reference, kinds.keySet()))
                    : kind.unlessDeclared(new Written<>(reference.id(), reference.place()), ""));
        }
        return faults;
    }

    private static Map<String, UnknownId> kinds(Catalogue catalogue) {
        Map<String, UnknownId> kinds = new LinkedHashMap<>();
        add(kinds, "coin", "the folder coins", catalogue.coins().stream().map(c -> c.id().value()).toList());
        add(kinds, "type", "the folder types", catalogue.types().stream().map(t -> t.id().value()).toList());
        add(kinds, "mint", "mints.yaml", catalogue.mints().keySet());
        add(kinds, "ruler", "rulers.yaml", catalogue.rulers().keySet());
        add(kinds, "work", "works.yaml", catalogue.works().keySet());
        return kinds;
    }

    private static void add(Map<String, UnknownId> kinds, String kind, String home, Collection<String> ids) {
        kinds.put(kind, new UnknownId(CODE, kind, home, new TreeSet<>(ids)));
    }

    private static Finding unknownKind(Inline.CrossReference reference, Collection<String> kinds) {
        return Finding.of(CODE, reference.place(), "",
                "A cross-reference to “" + reference.kind() + ":" + reference.id() + "” cannot be followed: there is "
                        + "no “" + reference.kind() + "” to refer to.",
                NearMiss.of(reference.kind(), kinds).map(near -> "Did you mean “" + near + ":" + reference.id() + "”?")
                        .orElse("Refer to one of: " + String.join(", ", kinds) + "."));
    }
}
