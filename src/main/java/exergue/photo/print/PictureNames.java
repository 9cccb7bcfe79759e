package exergue.photo.print;

import exergue.files.Tree;
import java.util.LinkedHashMap;
import java.util.Map;

/** Gives the pictures that were made names in the tree: that of the photograph, in a folder of their own. */
final class PictureNames {

    private static final String FOLDER = "cut-outs/";
    private static final String ENDING = ".jpg";

    private final Tree source;
    private final Map<String, Cut> made = new LinkedHashMap<>();
    private final Map<Cut, String> names = new LinkedHashMap<>();

    PictureNames(Tree source) {
        this.source = source;
    }

    Map<String, Cut> made() {
        return made;
    }

    PrintedCoin named(CoinPrint print) {
        return new PrintedCoin(print.obverse().map(this::named), print.reverse().map(this::named), print.toScale(), print.scale());
    }

    private PrintedSide named(CoinPrint.Side side) {
        return new PrintedSide(side.cut().map(this::name).orElse(side.file()), side.file(), side.width(), side.height(), side.shape(),
                side.tone());
    }

    /** The same picture of the same photograph is one file, however often it is printed. */
    private String name(Cut cut) {
        return names.computeIfAbsent(cut, key -> {
            String file = cut.source().substring(cut.source().lastIndexOf('/') + 1);
            String stem = FOLDER + (file.lastIndexOf('.') > 0 ? file.substring(0, file.lastIndexOf('.')) : file);
            String free = stem + ENDING;
            for (int nth = 2; made.containsKey(free) || source.has(free); nth++) {
                free = stem + "-" + nth + ENDING;
            }
            made.put(free, cut);
            return free;
        });
    }
}
