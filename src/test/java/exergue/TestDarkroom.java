package exergue;

import exergue.Exergue.Checked;
import exergue.files.FolderCache;
import exergue.files.Tree;
import exergue.photo.Workroom;
import exergue.photo.print.Darkroom;
import java.io.IOException;
import java.nio.file.Path;

/** Sources whose photographs are ready for the page. Tests share a cache, so that each photograph is cut out once and not for every book. */
public final class TestDarkroom {

    private static final Path CACHE = Path.of("target", "test-pictures");

    private TestDarkroom() { }

    public static Checked checked(Tree source) throws IOException {
        return Exergue.pictures(Exergue.check(source, Progress.SILENT), Darkroom.with(new FolderCache(CACHE), 2, new Workroom(200 << 20)), Progress.SILENT);
    }
}
