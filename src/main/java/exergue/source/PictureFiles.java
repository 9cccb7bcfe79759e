package exergue.source;

import exergue.files.Tree;
import exergue.finding.Finding;
import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.Coin;
import exergue.model.Written;
import exergue.source.text.Notebook;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Looks at the first bytes of every picture that is named and there: whether it is what the pages can print. */
final class PictureFiles {

    private static final int HEAD = 8;
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    /** TIFF in either order of bytes. */
    private static final byte[] TIFF_SMALL = {'I', 'I', 42, 0};
    private static final byte[] TIFF_GREAT = {'M', 'M', 0, 42};
    /** Photographs of coins are made into pictures for the page; those of chapters are printed as they are. */
    private static final List<byte[]> OF_COINS = List.of(JPEG, PNG, TIFF_SMALL, TIFF_GREAT);

    private final Tree tree;
    private final Notebook notebook;
    private final Set<String> seen = new HashSet<>();

    PictureFiles(Tree tree, Notebook notebook) {
        this.tree = tree;
        this.notebook = notebook;
    }

    /** @throws IOException if the disk fails */
    void look(Catalogue catalogue) throws IOException {
        for (Coin coin : catalogue.coins()) {
            if (coin.photograph().isPresent()) {
                Coin.Photograph photograph = coin.photograph().get();
                look(photograph.obverse().stream().toList(), "photograph.obverse", OF_COINS);
                look(photograph.reverse().stream().toList(), "photograph.reverse", OF_COINS);
            }
        }
        for (Chapter chapter : catalogue.chapters().values()) {
            look(chapter.pictures().map(picture -> new Written<>(picture.path(), picture.place())).toList(), "", List.of(JPEG, PNG));
        }
    }

    private void look(List<Written<String>> paths, String dataPath, List<byte[]> signs) throws IOException {
        for (Written<String> path : paths) {
            if (seen.add(path.value()) && tree.has(path.value())) {
                byte[] head = tree.start(path.value(), HEAD);
                if (signs.stream().noneMatch(sign -> startsWith(head, sign))) {
                    String kinds = signs.size() > 2 ? "JPEG, PNG or TIFF" : "JPEG or PNG";
                    notebook.add(Finding.of(FileCodes.NOT_A_PICTURE, path.place(), dataPath,
                            "The file “" + path.value() + "” is not a " + kinds + " picture, whatever its name says"
                                    + (head.length == 0 ? ": it is empty." : "."),
                            "Open it in a picture program and save it again as " + kinds + "; if it cannot be opened, copy it anew from where it came."));
                }
            }
        }
    }

    private static boolean startsWith(byte[] head, byte[] sign) {
        for (int i = 0; i < sign.length; i++) {
            if (i >= head.length || head[i] != sign[i]) {
                return false;
            }
        }
        return true;
    }
}
