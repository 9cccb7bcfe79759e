package exergue;

import exergue.edition.DataRow;
import exergue.edition.PageMap;
import exergue.typeset.Attachment;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;

/** The data of a book, made beside the printing of its pages, as soon as it is known where everything stands. */
final class DataBeside {

    /** @param files the rows as the book carries them inside it */
    record Data(List<DataRow> rows, List<Attachment> files) {
        Data {
            rows = List.copyOf(rows);
            files = List.copyOf(files);
        }
    }

    private record Begun(PageMap pages, ForkJoinTask<Data> data) { }

    private final Function<PageMap, List<DataRow>> rows;
    private final Function<List<DataRow>, List<Attachment>> files;
    private Begun begun;

    /** Both are functions of what they are given and keep nothing. */
    DataBeside(Function<PageMap, List<DataRow>> rows, Function<List<DataRow>, List<Attachment>> files) {
        this.rows = rows;
        this.files = files;
    }

    /** Begins to make the data, and returns at once. */
    void know(PageMap pages) {
        begun = new Begun(pages, ForkJoinPool.commonPool().submit(() -> make(pages)));
    }

    /** The data with these pages in them; made here and now if others were told last. */
    Data of(PageMap pages) {
        return begun != null && begun.pages().equals(pages) ? begun.data().join() : make(pages);
    }

    private Data make(PageMap pages) {
        List<DataRow> made = rows.apply(pages);
        return new Data(made, files.apply(made));
    }
}
