package exergue.cli;

import exergue.files.Cache;
import exergue.files.FolderCache;
import exergue.files.FolderTree;
import exergue.files.MemoryCache;
import exergue.photo.Workroom;
import exergue.photo.print.Darkroom;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where what was made out of photographs is kept from one run to the next. */
final class CacheOption {

    private static final String USUAL = ".pictures";

    @Option(names = "--cache", paramLabel = "FOLDER",
            description = "Folder for what was measured on photographs and made out of them, so that it need not be made again. It can "
                    + "be deleted at any time. Default: the hidden folder “.pictures” in the folder of the book; check and gauge "
                    + "look for it in SOURCE/book, and keep nothing where that is not there.")
    private Path folder;

    /** Where all processors work. */
    static Darkroom darkroom(Cache cache) {
        return Darkroom.with(cache, Runtime.getRuntime().availableProcessors(), workroom());
    }

    /** Half of all memory: the other half is for the book and for what lies about to be collected. */
    static Workroom workroom() {
        return new Workroom(Runtime.getRuntime().maxMemory() / 2);
    }

    /** @param book folder of the book */
    Cache beside(Path book) {
        return new FolderCache(folder == null ? book.resolve(USUAL) : folder);
    }

    /** For commands that make no book, and no folder for one. */
    Cache ofSource(Path source) {
        Path book = source.resolve(TypesetCommand.BOOK);
        return folder == null && !FolderTree.isFolder(book) ? new MemoryCache() : beside(book);
    }

    /** For a command on a photograph that may be in no catalogue. */
    Cache ofSource(Optional<Path> source) {
        return source.isPresent() ? ofSource(source.get()) : folder == null ? new MemoryCache() : new FolderCache(folder);
    }
}
