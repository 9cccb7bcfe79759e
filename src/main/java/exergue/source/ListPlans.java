package exergue.source;

import exergue.files.Tree;
import exergue.model.Catalogue;
import exergue.model.Language;
import exergue.source.keys.FileKind;
import exergue.source.list.ListPlan;
import exergue.source.shape.Desk;
import exergue.source.text.Notebook;
import exergue.source.text.TextReader;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** The file that says how a list is read, wherever it lies. */
public final class ListPlans {

    private ListPlans() { }

    /**
     * @param catalogue that the list is entered into
     * @param notebook  takes everything that is wrong with the file
     * @return what it says as far as it can be understood; empty where nothing of it can
     */
    public static Optional<ListPlan> read(Tree tree, String file, Catalogue catalogue, Notebook notebook) throws IOException {
        Desk desk = new Desk(notebook, new LinkedHashSet<>(tree.files()), catalogue.style().quotes(), catalogue.conventions(),
                Language.of(catalogue.title().language().value()).orElse(Language.ENGLISH), List.of());
        return new EntryReader(new TextReader(tree, notebook), notebook).read(FileKind.list(), file, desk);
    }
}
