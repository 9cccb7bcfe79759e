package exergue.edition;

import exergue.edition.Specimen.Face;
import exergue.edition.Specimen.Picture;
import exergue.model.BookWord;
import exergue.model.Coin;
import exergue.model.Phrase;
import exergue.model.PrintScale;
import exergue.model.Side;
import exergue.model.Type;
import exergue.model.Written;
import exergue.photo.print.PrintedCoin;
import exergue.photo.print.PrintedCoins;
import exergue.photo.print.PrintedSide;
import java.util.Optional;

/** Photographs of a coin as the book has them: with words for who cannot see them, and their scale where it is not the usual. */
final class PictureMaker {

    private final Numbering numbers;
    private final BookWords words;
    private final PrintedCoins pictures;
    private final PrintScale usual;

    /** @param usual scale of the book's coins */
    PictureMaker(Numbering numbers, BookWords words, PrintedCoins pictures, PrintScale usual) {
        this.numbers = numbers;
        this.words = words;
        this.pictures = pictures;
        this.usual = usual;
    }

    Optional<Picture> of(Coin coin, Type type) {
        return pictures.of(coin).map(picture -> picture(picture, coin, type));
    }

    private Picture picture(PrintedCoin picture, Coin coin, Type type) {
        String number = numbers.of(coin.id().value()).map(String::valueOf).orElse(Numbering.NO_COIN);
        boolean other = picture.toScale() && !picture.scale().equals(usual);
        return new Picture(picture.obverse().map(side -> face(side, BookWord.OBVERSE_OF, number, type.obverse())),
                picture.reverse().map(side -> face(side, BookWord.REVERSE_OF, number, type.reverse())),
                coin.photograph().flatMap(Coin.Photograph::credit).map(Written::value), picture.toScale(),
                other ? picture.scale().text() : "");
    }

    private Face face(PrintedSide picture, BookWord sideOf, String number, Side side) {
        String alternative = words.of(sideOf) + " " + number + side.description().map(Phrase::plain)
                .map(text -> words.language().colon() + text).orElse("");
        return new Face(picture.path(), picture.file(), alternative, picture.width(), picture.height(), picture.shape());
    }
}
