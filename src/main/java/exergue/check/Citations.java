package exergue.check;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Reference;
import exergue.model.Type;
import exergue.model.Written;
import java.util.ArrayList;
import java.util.List;

/** Every place of a catalogue that names a work: references of types and coins, conventions, and prose. */
public final class Citations {

    private Citations() { }

    /** A work's id and the path of the key that names it. */
    public record Citation(Written<String> work, String path) { }

    public static List<Citation> in(Catalogue catalogue) {
        List<Citation> all = new ArrayList<>();
        for (Type type : catalogue.types()) {
            addAll(type.references(), all);
        }
        for (Coin coin : catalogue.coins()) {
            addAll(coin.references(), all);
        }
        catalogue.conventions().forEach((id, convention) -> convention.value().work().ifPresent(work ->
                all.add(new Citation(new Written<>(work, convention.place()), id + ".work"))));
        CrossReferences.in(catalogue).stream().filter(reference -> reference.kind().equals("work")).forEach(reference ->
                all.add(new Citation(new Written<>(reference.id(), reference.place()), "")));
        return all;
    }

    private static void addAll(List<Reference> references, List<Citation> all) {
        for (int i = 0; i < references.size(); i++) {
            all.add(new Citation(references.get(i).work(), "references[" + (i + 1) + "].work"));
        }
    }
}
