package exergue.cli;

import exergue.finding.Place;
import exergue.files.FolderTree;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.model.Written;
import exergue.photo.CoinPictures;
import exergue.photo.Comparison;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The photographs of one command as the two sides of one coin, with the coin’s entry if there is one.
 *
 * @param comparison empty without an entry whose type is known
 */
record GaugedEntry(Optional<Coin> coin, CoinPictures pictures, Optional<Comparison> comparison) {

    /** The sides are those that the entry says; without its word the first photograph is the obverse. */
    static GaugedEntry of(Optional<Coin> coin, Optional<Catalogue> catalogue, List<GaugedPhoto> photos) {
        Coin.Photograph sides = coin.flatMap(Coin::photograph).filter(said -> photos.stream().allMatch(photo -> names(said, photo.inside())))
                .orElseGet(() -> inOrder(photos));
        CoinPictures pictures = CoinPictures.of(sides, path -> photos.stream().filter(photo -> photo.inside().equals(path))
                .map(GaugedPhoto::gauged).findFirst());
        Optional<Type> type = coin.flatMap(one -> catalogue.orElseThrow().types().stream()
                .filter(each -> each.id().value().equals(one.type().value())).findFirst());
        return new GaugedEntry(coin, pictures, type.map(each -> new Comparison(coin.orElseThrow(), each,
                ReadingChoice.of(catalogue.orElseThrow().style()), pictures)));
    }

    private static Coin.Photograph inOrder(List<GaugedPhoto> photos) {
        List<Written<String>> paths = photos.stream().map(photo -> new Written<>(photo.inside(), Place.ofFile(photo.inside()))).toList();
        return new Coin.Photograph(Optional.of(paths.get(0)), paths.stream().skip(1).findFirst(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty());
    }

    private static boolean names(Coin.Photograph photograph, String path) {
        return Stream.concat(photograph.obverse().stream(), photograph.reverse().stream()).anyMatch(named -> named.value().equals(path));
    }

    /** The coin whose entry names all of these photographs. */
    static Optional<Coin> naming(Catalogue catalogue, List<String> paths) {
        return catalogue.coins().stream().filter(coin -> coin.photograph()
                .filter(photograph -> paths.stream().allMatch(path -> names(photograph, path))).isPresent()).findFirst();
    }

    /** The nearest folder above that holds catalogue.yaml. */
    static Optional<Path> folderAbove(Path photo) throws IOException {
        for (Path at = photo.toAbsolutePath().normalize().getParent(); at != null; at = at.getParent()) {
            if (FolderTree.isFolder(at) && new FolderTree(at).has("catalogue.yaml")) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    /** The path as an entry of the catalogue in this folder would write it; outside of the folder, as it was typed. */
    static String inside(Optional<Path> folder, Path photo) {
        Path file = photo.toAbsolutePath().normalize();
        return folder.map(root -> root.toAbsolutePath().normalize()).filter(file::startsWith)
                .map(root -> root.relativize(file).toString().replace('\\', '/')).orElse(photo.toString());
    }
}
