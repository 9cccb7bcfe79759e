package exergue.source.keys;

import exergue.model.Apparatus;
import exergue.model.Apparatus.FormerNumber;
import exergue.model.Apparatus.See;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.Texts;
import java.util.List;
import java.util.Optional;

/** index.yaml and former-numbers.yaml. */
final class ApparatusKeys {

    static final Block<List<See>> INDEX = index();
    static final Block<Apparatus> FORMER_NUMBERS = formerNumbers();

    private ApparatusKeys() { }

    private static Block<List<See>> index() {
        Keys keys = new Keys("the indexes");
        Key<List<See>> see = keys.or("see", new ListOf<>(see()), "",
                "See-references; each stands in every index that has the entry it leads to.", "");
        return keys.block(f -> f.get(see));
    }

    private static Block<See> see() {
        Keys keys = new Keys("a see-reference");
        Key<Written<String>> from = keys.must("from", Texts.WORDS, "What a reader may look up.", "crane");
        Key<Written<String>> to = keys.must("to", Texts.WORDS, "The entry where it is, as the index has it.", "heron");
        return keys.block(f -> new See(f.get(from), f.get(to)));
    }

    private static Block<Apparatus> formerNumbers() {
        Keys keys = new Keys("the former numbers");
        Key<Optional<Written<String>>> edition = keys.may("edition", Texts.WORDS, "What the earlier edition is called.",
                "First edition, 2019");
        Key<List<FormerNumber>> numbers = keys.or("numbers", new ListOf<>(number()), "",
                "The number each coin had there.", "");
        return keys.block(f -> new Apparatus(List.of(), f.get(edition), f.get(numbers), List.of()));
    }

    private static Block<FormerNumber> number() {
        Keys keys = new Keys("a former number");
        Key<Written<String>> coin = keys.must("coin", Texts.ID, "The coin’s id; it may be in the catalogue no longer.", "lk-0042");
        Key<Written<Integer>> number = keys.must("number", Texts.WHOLE_NUMBER, "The number it had.", "17");
        return keys.block(f -> new FormerNumber(f.get(coin), f.get(number)));
    }
}
