package exergue.photo.print;

import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.Type;
import exergue.model.Written;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The pictures of a catalogue's coins as they are printed.
 *
 * @param byCoin by the id of the coin
 */
public record PrintedCoins(Map<String, PrintedCoin> byCoin) {

    public PrintedCoins {
        byCoin = Collections.unmodifiableMap(new LinkedHashMap<>(byCoin));
    }

    public Optional<PrintedCoin> of(Coin coin) {
        return Optional.ofNullable(byCoin.get(coin.id().value()));
    }

    /** The files that the entries name, as they are; none of them is opened. */
    public static PrintedCoins unopened(Catalogue catalogue) {
        PrintedSize sizes = new PrintedSize(catalogue.style());
        Map<String, Type> types = new HashMap<>();
        catalogue.types().forEach(type -> types.put(type.id().value(), type));
        Map<String, PrintedCoin> byCoin = new LinkedHashMap<>();
        for (Coin coin : catalogue.coins()) {
            Type type = types.get(coin.type().value());
            if (type != null) {
                coin.photograph().filter(photo -> photo.obverse().isPresent() || photo.reverse().isPresent())
                        .ifPresent(photo -> byCoin.put(coin.id().value(), whole(photo, sizes.of(coin, type))));
            }
        }
        return new PrintedCoins(byCoin);
    }

    private static PrintedCoin whole(Coin.Photograph photo, PrintedSize.Size size) {
        BigDecimal width = size.ofWholePicture();
        return new PrintedCoin(photo.obverse().map(Written::value).map(path -> PrintedSide.unopened(path, width)),
                photo.reverse().map(Written::value).map(path -> PrintedSide.unopened(path, width)),
                size.isKnown(), size.scale());
    }
}
