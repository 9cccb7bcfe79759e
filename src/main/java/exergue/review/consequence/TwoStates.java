package exergue.review.consequence;

import exergue.edition.Numbering;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.review.change.Changes;
import exergue.review.change.EntryChange;
import exergue.review.change.Subject;
import exergue.review.content.Section;
import exergue.review.differ.Differ;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Both catalogues, with what each coin of the old one is called in the new. */
record TwoStates(Catalogue before, Catalogue after, Changes changes, Numbering oldNumbers, Numbering newNumbers,
                 Map<String, String> oldIds) {

    static TwoStates of(Differ.Side before, Differ.Side after, Changes changes) {
        Map<String, String> oldIds = new HashMap<>();
        for (EntryChange change : changes.entries()) {
            if (change instanceof EntryChange.Altered altered && altered.renamed()
                    && altered.subject().section().equals(Section.COINS)) {
                oldIds.put(altered.subject().id(), altered.before().id());
            }
        }
        return new TwoStates(before.catalogue(), after.catalogue(), changes, before.numbers(), after.numbers(), oldIds);
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
    boolean sameCoins(Set<String> oldOnes, Set<String> newOnes) {
        return oldOnes.size() == newOnes.size() && newOnes.stream().allMatch(id -> oldOnes.contains(oldId(id)));
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
