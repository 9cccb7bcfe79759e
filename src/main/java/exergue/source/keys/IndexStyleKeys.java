package exergue.source.keys;

import exergue.model.IndexStyle;
import exergue.model.IndexStyle.By;
import exergue.model.IndexStyle.CrossReferences;
import exergue.model.IndexStyle.Greek;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.Texts;
import java.util.List;

/** {@code indexes} of the house style. */
final class IndexStyleKeys {

    static final Block<IndexStyle> BLOCK = block();

    private IndexStyleKeys() { }

    private static Block<IndexStyle> block() {
        Keys keys = new Keys("indexes and cross-references");
        Key<Written<By>> by = keys.or("by", Texts.oneOf(List.of(By.values()), By::word, ""), "numbers",
                "What the entries of an index give: catalogue numbers, or pages.", "pages");
        Key<Written<Greek>> greek = keys.or("greek", Texts.oneOf(List.of(Greek.values()), Greek::words, ""), "after Latin",
                "Greek letters after the Latin ones, or each with the Latin letter it is transliterated by.", "merged");
        Key<Written<CrossReferences>> references = keys.or("cross-references",
                Texts.oneOf(List.of(CrossReferences.values()), CrossReferences::words, ""), "numbers",
                "What [coin:id] and [type:id] are printed as: the number, or the number and the page.", "numbers and pages");
        return keys.block(f -> new IndexStyle(f.get(by).value(), f.get(greek).value(), f.get(references).value()));
    }
}
