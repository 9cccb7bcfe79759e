package exergue.review.consequence;

import exergue.measure.Kind;
import exergue.measure.PrintForm;
import exergue.measure.Printer;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.ReadingChoice;
import exergue.model.Type;
import exergue.review.change.Consequence.Print;
import exergue.review.change.Consequence.Printed;
import exergue.review.change.EntryChange.Altered;
import exergue.review.differ.PrintedPlaces;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Figures that are printed otherwise because the house, a convention or the choice of hand has changed. */
final class Prints {

    /** One catalogue with what decides how its figures are printed. */
    private record House(Catalogue catalogue, ReadingChoice choice, Map<String, Type> types) {

        static House of(Catalogue catalogue) {
            Map<String, Type> types = new HashMap<>();
            catalogue.types().forEach(type -> types.put(type.id().value(), type));
            return new House(catalogue, ReadingChoice.of(catalogue.style()), types);
        }

        Optional<String> print(Coin coin, Kind kind) {
            Type type = types.get(coin.type().value());
            return type == null || !catalogue.style().printed().contains(kind) ? Optional.empty()
                    : choice.choose(coin, type, kind).figure().map(read -> Printer.print(read, form()).text());
        }

        PrintForm form() {
            return catalogue.style().form();
        }
    }

    private Prints() { }

    static List<Printed> of(TwoStates states) {
        House before = House.of(states.before());
        House after = House.of(states.after());
        if (before.form().equals(after.form()) && states.before().style().prefer().equals(states.after().style().prefer())
                && states.before().style().printed().equals(states.after().style().printed())) {
            return List.of();
        }
        Map<String, Coin> old = states.oldCoins();
        Map<String, Altered> altered = states.alteredCoins();
        Map<Kind, List<Print>> byKind = new LinkedHashMap<>();
        for (Kind kind : Kind.values()) {
            for (Coin coin : states.after().coins()) {
                Optional<Coin> was = Optional.ofNullable(old.get(states.oldId(coin.id().value())));
                if (was.isPresent() && !saidOtherwise(altered.get(coin.id().value()), kind)) {
                    Optional<String> printed = before.print(was.get(), kind);
                    Optional<String> now = after.print(coin, kind);
                    if (!printed.equals(now)) {
                        byKind.computeIfAbsent(kind, any -> new ArrayList<>()).add(new Print(states.newCoin(coin.id().value()),
                                printed.orElse(""), now.orElse(""), lost(printed.orElse(""), now.orElse(""), before, after)));
                    }
                }
            }
        }
        List<Printed> all = new ArrayList<>();
        byKind.forEach((kind, coins) -> all.add(new Printed(kind, coins.stream().sorted(
                (one, other) -> one.coin().compareTo(other.coin())).toList())));
        return all;
    }

    private static boolean saidOtherwise(Altered change, Kind kind) {
        return change != null && change.fields().stream().anyMatch(field -> field.field().path().endsWith("." + kind.word()));
    }

    private static boolean lost(String printed, String now, House before, House after) {
        return !printed.isEmpty() && !now.isEmpty()
                && PrintedPlaces.of(now, after.form()) < PrintedPlaces.of(printed, before.form());
    }
}
