package exergue.photo.print;

import exergue.files.Cache;
import exergue.files.MemoryCache;
import exergue.files.OverlaidTree;
import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import exergue.photo.Limits;
import exergue.photo.PictureReader;
import exergue.photo.ReadPicture;
import exergue.photo.Workroom;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * Where the photographs of a catalogue are made ready for the page, several at a time. What has been made stays in the
 * cache by the content of the photograph and the size it is printed at, so that of a book set again only new photographs are
 * unpacked. How many work at a time, and what is in the cache, changes nothing in what comes out.
 */
public final class Darkroom {

    /** How far the work has come is told after so many coins. */
    private static final int TELL = 20;

    private final Cache cache;
    private final int threads;
    private final Opener opener;

    /**
     * @param room   for all photographs that are open at one time
     * @param reader what unpacks the bytes of a file; called only for those of which something is not in the cache
     */
    public Darkroom(Cache cache, int threads, Workroom room, Function<byte[], ReadPicture> reader) {
        this.cache = cache;
        this.threads = threads;
        this.opener = new Opener(reader, room);
    }

    public static Darkroom with(Cache cache, int threads, Workroom room) {
        return new Darkroom(cache, threads, room, bytes -> PictureReader.read(bytes, Limits.USUAL));
    }

    /** Keeps everything in memory, and opens one photograph at a time: for small books. */
    public static Darkroom inMemory() {
        return with(new MemoryCache(), 1, new Workroom(0));
    }

    /** Is told how many of the coins are done. */
    @FunctionalInterface
    public interface Reached {
        void reached(int done, int of);
    }

    /** @throws IOException if a photograph cannot be read from the disk */
    public PreparedPictures prepare(Catalogue catalogue, Tree source, Reached reached) throws IOException {
        List<Coin> coins = pictured(catalogue);
        List<CoinPrint> prints = prints(catalogue, coins, source, reached);
        PictureNames names = new PictureNames(source);
        Map<String, PrintedCoin> byCoin = new LinkedHashMap<>();
        ChapterPictures.Looked inChapters = new ChapterPictures(source, cache, opener).look(catalogue);
        List<Finding> findings = new ArrayList<>(inChapters.findings());
        for (int i = 0; i < coins.size(); i++) {
            byCoin.put(coins.get(i).id().value(), names.named(prints.get(i)));
            findings.addAll(prints.get(i).findings());
        }
        Map<String, Cut> made = new HashMap<>(inChapters.copies());
        made.putAll(names.made());
        return new PreparedPictures(new PrintedCoins(byCoin), new OverlaidTree(source, new PictureTree(source, made, cache, opener)),
                Findings.of(findings));
    }

    private static List<Coin> pictured(Catalogue catalogue) {
        PrintedCoins unopened = PrintedCoins.unopened(catalogue);
        return catalogue.coins().stream().filter(coin -> unopened.of(coin).isPresent()).toList();
    }

    private List<CoinPrint> prints(Catalogue catalogue, List<Coin> coins, Tree source, Reached reached) throws IOException {
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.put(type.id().value(), type));
        PrintedSize sizes = new PrintedSize(catalogue.style());
        CoinDesk desk = new CoinDesk(source, cache, opener, catalogue.style().pictures());
        ExecutorService workers = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, coins.size())));
        try {
            List<Future<CoinPrint>> asked = new ArrayList<>();
            for (Coin coin : coins) {
                PrintedSize.Size size = sizes.of(coin, types.get(coin.type().value()));
                asked.add(workers.submit(() -> desk.print(coin, size)));
            }
            List<CoinPrint> prints = new ArrayList<>();
            for (Future<CoinPrint> print : asked) {
                prints.add(print.get());
                if (prints.size() % TELL == 0) {
                    reached.reached(prints.size(), coins.size());
                }
            }
            return prints;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while photographs were made ready", e);
        } catch (ExecutionException e) {
            throw rethrown(e.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    private static IOException rethrown(Throwable cause) {
        if (cause instanceof UncheckedIOException disk) {
            return disk.getCause();
        }
        if (cause instanceof Error error) {
            throw error;
        }
        throw (RuntimeException) cause;
    }
}
