package exergue.source.keys;

import exergue.model.Excuse;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.Texts;
import java.util.List;

/** What an entry excuses. */
final class ExcuseKeys {

    private static final ListOf<Excuse> EXCUSED = new ListOf<>(excuse());

    private ExcuseKeys() { }

    /** The key, which coins and types have alike. */
    static Key<List<Excuse>> in(Keys keys) {
        return keys.or("excused", EXCUSED, "",
                "What is found in this entry and right as it is, each with its reason; check --excused lists it.", "");
    }

    private static Block<Excuse> excuse() {
        Keys keys = new Keys("something excused");
        Key<Written<String>> finding = keys.must("finding", Texts.ID, "The code of the finding: the word in square brackets after it.",
                "photograph-without-credit");
        Key<Written<String>> because = keys.must("because", Texts.WORDS, "Why it is right as it is.", "taken by the author");
        return keys.block(f -> new Excuse(f.get(finding), f.get(because)));
    }
}
