package exergue.source.shape;

import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Place;
import exergue.model.Written;
import exergue.source.markdown.Manuscript;
import exergue.source.text.Notebook;
import exergue.source.yaml.Scalar;
import java.util.Optional;

/**
 * Where the reader is in a file: in which entry, under which key. Reports with that path.
 *
 * @param desk  what the whole run knows
 * @param root  what the whole file should be
 * @param entry the id of the entry: the file's name, or the id a block stands under
 * @param path  in the data: {@code measured.weight}
 * @param key   the last key of the path
 * @param head  where that key is written; empty in the file itself and in a member of a list
 */
public record Site(Desk desk, Wanted<?> root, Written<String> entry, String path, String key, Optional<Place> head) {

    public static Site ofFile(Desk desk, Wanted<?> root, Written<String> entry) {
        return new Site(desk, root, entry, "", "", Optional.empty());
    }

    public Site at(String name) {
        return new Site(desk, root, entry, path.isEmpty() ? name : path + "." + name, name, Optional.empty());
    }

    /** @param written where the key is written, perhaps not quite so spelt */
    Site at(String name, Place written) {
        Site inside = at(name);
        return new Site(desk, root, entry, inside.path, name, Optional.of(written));
    }

    Site member(int number) {
        return new Site(desk, root, entry, path + "[" + number + "]", key, Optional.empty());
    }

    Site entry(Scalar id) {
        Site inside = at(id.text());
        return new Site(desk, root, new Written<>(id.text(), id.place()), inside.path, id.text(), Optional.of(id.place()));
    }

    /** The same place with nobody listening. */
    Site muted() {
        return new Site(desk.with(new Notebook()), root, entry, path, key, head);
    }

    /** One value of prose as the Markdown reader wants it. */
    Manuscript manuscript(Scalar scalar) {
        return Manuscript.of(scalar, new Manuscript.House(desk.notebook(), desk.files(), desk.quotes(), desk.wordings()), path);
    }

    public void report(Finding finding) {
        desk.notebook().add(finding);
    }

    public void report(Code code, Place place, String what, String remedy) {
        report(Finding.of(code, place, path, what, remedy));
    }
}
