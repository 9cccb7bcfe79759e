package exergue.typeset;

import exergue.edition.Book;
import java.io.BufferedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a sample book to a file, for looking at it: types, coins, file. */
final class Trial {

    private Trial() { }

    public static void main(String[] args) throws Exception {
        long start = System.nanoTime();
        Book book = SampleBook.of(Integer.parseInt(args[0]), Integer.parseInt(args[1]));
        Setting silent = SampleBook.setting();
        Setting setting = new Setting(silent.source(), silent.templates(),
                args.length > 4 ? exergue.model.HouseStyle.Rows.RUNNING : silent.rows(), silent.written(),
                silent.stamp(), (step, done, of) -> System.out.printf("%6d ms %4d MB %s %d%n", (System.nanoTime() - start) / 1_000_000,
                        (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20, step, of));
        int runs = args.length > 3 ? Integer.parseInt(args[3]) : 1;
        for (int i = 0; i < runs; i++) {
            try (var out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[2])))) {
                TypesetBook set = Typesetter.typeset(book, setting, out);
                set.findings().all().forEach(f -> System.out.println(f.place() + " " + f.code().id() + " " + f.what()));
                System.out.println(set.pages().pages() + " pages, " + set.pages().folios().size() + " anchors");
            }
            System.out.println((System.nanoTime() - start) / 1_000_000 + " ms");
        }
    }
}
