package exergue.source.keys;

import exergue.model.Reference;
import exergue.model.Reference.Relation;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Fields;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ShapeCodes;
import exergue.source.shape.Texts;
import java.util.List;

/** Each member of {@code references}. */
final class ReferenceKeys {

    private static final Keys KEYS = new Keys("a reference");

    private static final Key<Written<String>> WORK = KEYS.must("work", Texts.WORK,
            "The work that is cited, from works.yaml, works.json or works.bib.", "hallam-1931");
    private static final Key<Written<String>> NUMBER = KEYS.or("number", Texts.WORDS_OR_NONE, "",
            "Number, page or plate in that work, as printed there. It must be there, unless the relation is “not in”.", "pl. IV, 12");
    private static final Key<Written<Relation>> RELATION = KEYS.or("relation",
            Texts.oneOf(List.of(Relation.values()), Relation::words, ""), "same type",
            "How what is cited relates to what is catalogued.", "this coin");

    static final Block<Reference> BLOCK = KEYS.block(ReferenceKeys::bind);

    private ReferenceKeys() { }

    private static Reference bind(Fields f) {
        Reference reference = new Reference(f.get(WORK), f.get(NUMBER), f.get(RELATION).value());
        if (reference.number().value().isEmpty() && reference.relation() != Relation.NOT_IN) {
            f.site().report(ShapeCodes.MISSING_KEY, f.place(), "The key “number” is missing here.",
                    "Write it: number: " + NUMBER.example() + ". Only with “relation: not in” is there none.");
        }
        return reference;
    }
}
