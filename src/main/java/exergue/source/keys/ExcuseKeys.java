package exergue.source.keys;

import exergue.model.Excuse;
import exergue.model.ExcusedIn;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.ListOf;
import exergue.source.shape.PathTexts;
import exergue.source.shape.Texts;
import java.util.List;
import java.util.Optional;

/** What entries excuse, and the house in files whose entries cannot say it themselves. */
final class ExcuseKeys {

    private static final ListOf<Excuse> EXCUSED = new ListOf<>(excuse());

    private ExcuseKeys() { }

    /** The key, which coins and types have alike. */
    static Key<List<Excuse>> in(Keys keys) {
        return keys.or("excused", EXCUSED, "",
                "What is found in this entry and right as it is, each with its reason; check --excused lists it.", "");
    }

    static Key<List<ExcusedIn>> inOtherFiles(Keys keys) {
        return keys.or("excused", new ListOf<>(inAnotherFile()), "",
                "What is found in chapters, works, mints and other files of lists, and right as it is, each with its reason. Coins and "
                        + "types say it in their own files.", "");
    }

    private static Block<ExcusedIn> inAnotherFile() {
        Keys keys = new Keys("something excused in a file");
        Key<Written<String>> file = keys.must("in", PathTexts.FILE, "The file, by its path from the folder of the catalogue.",
                "mints.yaml");
        Key<Optional<Written<String>>> entry = keys.may("entry", Texts.WORK,
                "The id of the work, mint or other entry of that file; without it, the excuse holds for the whole file.", "lampron");
        Key<Written<String>> finding = finding(keys);
        Key<Written<String>> because = because(keys);
        return keys.block(f -> new ExcusedIn(f.get(file), f.get(entry), new Excuse(f.get(finding), f.get(because))));
    }

    private static Block<Excuse> excuse() {
        Keys keys = new Keys("something excused");
        Key<Written<String>> finding = finding(keys);
        Key<Written<String>> because = because(keys);
        return keys.block(f -> new Excuse(f.get(finding), f.get(because)));
    }

    private static Key<Written<String>> finding(Keys keys) {
        return keys.must("finding", Texts.ID, "The code of the finding: the word in square brackets after it.",
                "photograph-without-credit");
    }

    private static Key<Written<String>> because(Keys keys) {
        return keys.must("because", Texts.WORDS, "Why it is right as it is.", "taken by the author");
    }
}
