package exergue.check;

import exergue.model.Catalogue;
import exergue.model.Chapter;
import exergue.model.Coin;
import exergue.model.PictureRights;
import exergue.model.Prose;
import exergue.model.Written;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Pictures that chapters show; those of a coin's own photograph are answered for in its entry. */
public final class ChapterPictures {

    private ChapterPictures() { }

    /** Each once, where it is shown first, of which something is not said. */
    public static List<Prose.Picture> without(Catalogue catalogue, Function<PictureRights, Optional<Written<String>>> said) {
        Set<String> answered = catalogue.coins().stream().flatMap(coin -> coin.photograph().stream())
                .flatMap(ChapterPictures::paths).collect(Collectors.toCollection(HashSet::new));
        catalogue.apparatus().pictures().stream().filter(rights -> said.apply(rights).isPresent())
                .forEach(rights -> answered.add(rights.picture().value()));
        return in(catalogue).filter(picture -> answered.add(picture.path())).toList();
    }

    public static Stream<Prose.Picture> in(Catalogue catalogue) {
        return catalogue.chapters().values().stream().flatMap(Chapter::pictures);
    }

    private static Stream<String> paths(Coin.Photograph photograph) {
        return Stream.of(photograph.obverse(), photograph.reverse()).flatMap(Optional::stream).map(Written::value);
    }
}
