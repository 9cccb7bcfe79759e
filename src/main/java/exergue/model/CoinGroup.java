package exergue.model;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Coins that are studied together, as the catalogue declares them.
 *
 * @param id       by which chapters and the command line name them
 * @param name     what tables and charts call them; empty where the id must do
 * @param coins    what a coin must be to belong: for each field the values, one of which it must have; empty for every coin
 * @param by       fields by which they are then divided, side by side; empty for one group
 * @param steps    of the frequency table, in grams; empty where the tool is to choose
 * @param standard weight that the coins were meant to have
 * @param wear     what they are taken to have lost in use; empty where the author gives no rate
 */
public record CoinGroup(Written<String> id, Optional<Written<String>> name, Map<CoinField, List<Written<String>>> coins,
                        List<Written<CoinField>> by, Optional<Written<BigDecimal>> steps, Optional<WeightStandard> standard,
                        Optional<Wear> wear) {

    public CoinGroup {
        coins = coins.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(coins));
        by = List.copyOf(by);
    }

    /** Its name, or its id. */
    public String title() {
        return name.map(Written::value).orElse(id.value());
    }

    /** Whether a coin belongs to it. */
    public boolean has(Coin coin, Type type) {
        for (Map.Entry<CoinField, List<Written<String>>> wanted : coins.entrySet()) {
            String value = wanted.getKey().of(coin, type).orElse("");
            if (wanted.getValue().stream().noneMatch(one -> one.value().equals(value))) {
                return false;
            }
        }
        return true;
    }

    /**
     * A theoretical weight: of one coin, or of a larger weight from which so many coins were struck.
     *
     * @param name   as printed: "drachm of the tariff stone"; empty for none
     * @param weight of the larger weight or of the one coin, in grams
     * @param pieces struck from it; 1 for the weight of one coin
     */
    public record WeightStandard(Optional<Written<String>> name, Written<BigDecimal> weight, Written<Integer> pieces) { }

    /**
     * Loss by wear, by the author's word.
     *
     * @param rate  lost by one coin in a year, in grams
     * @param years in use
     * @param why   where the rate comes from
     */
    public record Wear(Written<BigDecimal> rate, Written<Integer> years, Optional<Written<String>> why) {

        /** In grams. */
        public BigDecimal loss() {
            return rate.value().multiply(BigDecimal.valueOf(years.value()));
        }
    }
}
