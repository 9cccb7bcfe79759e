package exergue.source.keys;

import exergue.model.Reference;
import exergue.model.Reference.Relation;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.Texts;
import java.util.List;

/** Each member of {@code references}. */
final class ReferenceKeys {

    private static final Keys KEYS = new Keys("a reference");

    private static final Key<Written<String>> WORK = KEYS.must("work", Texts.ID,
            "The work that is cited, from works.yaml.", "hallam-1931");
    private static final Key<Written<String>> NUMBER = KEYS.must("number", Texts.WORDS,
            "Number, page or plate in that work, as printed there.", "pl. IV, 12");
    private static final Key<Written<Relation>> RELATION = KEYS.or("relation",
            Texts.oneOf(List.of(Relation.values()), Relation::words, ""), "same type",
            "How what is cited relates to what is catalogued.", "this coin");

    static final Block<Reference> BLOCK = KEYS.block(f -> new Reference(f.get(WORK), f.get(NUMBER), f.get(RELATION).value()));

    private ReferenceKeys() { }
}
