package exergue.check.rules;

import exergue.check.Captions;
import exergue.check.CrossReferences;
import exergue.check.Rule;
import exergue.check.UnknownId;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Severity;
import exergue.model.Caption;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Inline;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A cross-reference in prose leads nowhere; works are {@link UnknownWork}'s business. */
public final class BrokenCrossReference implements Rule {

    static final Code CODE = new Code("broken-cross-reference", Severity.ERROR,
            "A cross-reference leads nowhere",
            "A cross-reference is printed as the number of the entry, table or figure it names. Where there is no such "
                    + "thing there is nothing to print.",
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
        UnknownId coin = new UnknownId(CODE, "coin", "coins/", ids(catalogue.coins(), Coin::id));
        UnknownId type = new UnknownId(CODE, "type", "types/", ids(catalogue.types(), Type::id));
        List<Finding> faults = new ArrayList<>();
        for (Inline.CrossReference reference : CrossReferences.in(catalogue)) {
            switch (reference.kind()) {
                case "coin" -> faults.addAll(coin.unlessDeclared(new Written<>(reference.id(), reference.place()), ""));
                case "type" -> faults.addAll(type.unlessDeclared(new Written<>(reference.id(), reference.place()), ""));
                case "table" -> faults.addAll(captioned(reference, Captions.ids(Caption.Kind.TABLE, catalogue)));
                case "figure" -> faults.addAll(captioned(reference, Captions.ids(Caption.Kind.FIGURE, catalogue)));
                default -> { }
            }
        }
        return faults;
    }

    private static List<Finding> captioned(Inline.CrossReference reference, List<Written<String>> known) {
        List<String> ids = known.stream().map(Written::value).toList();
        if (ids.contains(reference.id())) {
            return List.of();
        }
        String word = reference.kind();
        String caption = word.equals("table") ? "Table" : "Figure";
        return List.of(Finding.of(CODE, reference.place(), "", "There is no " + word + " “" + reference.id()
                + "” in the chapters of the book.",
                NearMiss.of(reference.id(), ids).map(near -> "Did you mean “" + near + "”? Otherwise begin").orElse("Begin")
                        + " the caption of the " + word + " with “" + caption + " [" + reference.id() + "]:”."));
    }

    private static <T> Set<String> ids(List<T> entries, Function<T, Written<String>> id) {
        return entries.stream().map(entry -> id.apply(entry).value()).collect(Collectors.toCollection(TreeSet::new));
    }
}
