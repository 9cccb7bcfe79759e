package exergue.review.consequence;

import exergue.edition.BookOrder;
import exergue.edition.Numbering;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.NaturalOrder;
import exergue.review.change.Changes;
import exergue.review.change.EntryChange;
import exergue.review.change.Subject;
import exergue.review.content.Section;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Both catalogues, with what each coin of the old one is called in the new. */
record TwoStates(Catalogue before, Catalogue after, Changes changes, Numbering oldNumbers, Numbering newNumbers,
                 Map<String, String> oldIds) {

    static TwoStates of(Catalogue before, Catalogue after, Changes changes) {
        Map<String, String> oldIds = new HashMap<>();
        for (EntryChange change : changes.entries()) {
            if (change instanceof EntryChange.Altered altered && altered.renamed() && altered.subject().section().equals(Section.COINS)) {
                oldIds.put(altered.subject().id(), altered.before().id());
            }
        }
        return new TwoStates(before, after, changes, Numbering.of(BookOrder.of(before)), Numbering.of(BookOrder.of(after)), oldIds);
    }

    /** What a coin of the new catalogue was called in the old, if it was there. */
    String oldId(String newId) {
        return oldIds.getOrDefault(newId, newId);
    }

    Map<String, Coin> oldCoins() {
        return byId(before);
    }

    static Map<String, Coin> byId(Catalogue catalogue) {
        Map<String, Coin> coins = new HashMap<>();
        catalogue.coins().forEach(coin -> coins.putIfAbsent(coin.id().value(), coin));
        return coins;
    }

    Subject oldCoin(String id) {
        return new Subject(Section.COINS, id, oldNumbers.of(id));
    }

    Subject newCoin(String id) {
        return new Subject(Section.COINS, id, newNumbers.of(id));
    }

    /** In the order of the book. */
    List<Subject> oldCoins(Collection<String> ids) {
        return ids.stream().map(this::oldCoin).sorted().toList();
    }

    List<Subject> newCoins(Collection<String> ids) {
        return ids.stream().map(this::newCoin).sorted().toList();
    }

    /** True where the coins are the same ones, whatever they are called. */
    boolean sameCoins(Collection<String> oldOnes, Collection<String> newOnes) {
        TreeSet<String> asBefore = new TreeSet<>(NaturalOrder.INSTANCE);
        newOnes.forEach(id -> asBefore.add(oldId(id)));
        return asBefore.size() == oldOnes.size() && asBefore.containsAll(oldOnes);
    }

    /** The change of this coin, if it has changed; by its new id. */
    Map<String, EntryChange.Altered> alteredCoins() {
        Map<String, EntryChange.Altered> altered = new HashMap<>();
        for (EntryChange change : changes.entries()) {
            if (change instanceof EntryChange.Altered one && one.subject().section().equals(Section.COINS)) {
                altered.put(one.subject().id(), one);
            }
        }
        return altered;
    }

    Optional<Integer> oldNumberOf(String newId) {
        return oldNumbers.of(oldId(newId));
    }
}
