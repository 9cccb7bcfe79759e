package exergue.source.keys;

import exergue.model.PictureRights;
import exergue.model.Written;
import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.Keys;
import exergue.source.shape.PathTexts;
import exergue.source.shape.Texts;
import java.util.Optional;

/** Who took a picture and who allows it to be printed. */
final class PictureRightsKeys {

    static final Block<PictureRights> BLOCK = block();

    private PictureRightsKeys() { }

    private static Block<PictureRights> block() {
        Keys keys = new Keys("a picture of a chapter");
        Key<Written<String>> picture = keys.must("picture", PathTexts.PHOTOGRAPH,
                "Path of the picture, from the folder of the catalogue.", "photographs/harbour.jpg");
        Key<Optional<Written<String>>> credit = credit(keys);
        Key<Optional<Written<String>>> permission = permission(keys);
        return keys.block(f -> new PictureRights(f.get(picture), f.get(credit), f.get(permission)));
    }

    static Key<Optional<Written<String>>> credit(Keys keys) {
        return keys.may("credit", Texts.WORDS, "Whom to thank, as printed.", "\"Photograph: the museum\"");
    }

    static Key<Optional<Written<String>>> permission(Keys keys) {
        return keys.may("permission", Texts.WORDS,
                "Who allows it to be printed, as the list of credits says it; or: not needed.", "By permission of the Town Museum");
    }
}
