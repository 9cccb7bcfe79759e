package exergue.review.consequence;

import exergue.edition.BookOrder;
import exergue.edition.Numbering;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.model.NaturalOrder;
import exergue.model.Type;
import exergue.review.change.Changes;
import exergue.review.change.EntryChange;
import exergue.review.change.EntryChange.Altered;
import exergue.review.change.FieldChange;
import exergue.review.change.Remark;
import exergue.review.content.Section;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Coins and types that stand elsewhere, each tried alone on the old catalogue to see how many numbers it would change. */
final class Moves {

    /** Fields that decide where a type stands. */
    private static final Set<String> PLACING = Set.of("mint", "ruler", "issue", "order");

    /** With more moves than this nobody asks what each of them alone would do. */
    private static final int MOST = 12;

    private Moves() { }

    static Changes remarked(TwoStates states) {
        Changes changes = states.changes();
        long moved = changes.entries().stream().filter(Moves::isMove).count();
        return moved == 0 || moved > MOST ? changes : new Changes(changes.entries().stream()
                .map(change -> isMove(change) ? remarked((Altered) change, states, moved == 1) : change).toList(), changes.kinships());
    }

    private static boolean isMove(EntryChange change) {
        return change instanceof Altered altered && altered.fields().stream().anyMatch(field -> places(altered, field));
    }

    private static boolean places(Altered change, FieldChange field) {
        return change.subject().section().equals(Section.COINS) && field.field().path().equals("type")
                || change.subject().section().equals(Section.TYPES) && PLACING.contains(field.field().path());
    }

    /** The remark stands with the first field that moves the entry. */
    private static Altered remarked(Altered move, TwoStates states, boolean only) {
        Remark.Renumbers remark = new Remark.Renumbers(tried(move, states), only);
        List<FieldChange> fields = new ArrayList<>(move.fields());
        for (int i = 0; i < fields.size(); i++) {
            if (places(move, fields.get(i))) {
                fields.set(i, fields.get(i).with(remark));
                break;
            }
        }
        return new Altered(move.before(), move.subject(), fields);
    }

    private static int tried(Altered move, TwoStates states) {
        Catalogue before = states.before();
        boolean coin = move.subject().section().equals(Section.COINS);
        Catalogue moved = coin ? before.with(before.types(), coins(move, states))
                : before.with(types(move, states), before.coins());
        Numbering then = Numbering.of(BookOrder.of(moved));
        String newId = move.subject().id();
        long changed = before.coins().stream().map(one -> one.id().value()).filter(id -> !states.oldNumbers().of(id)
                .equals(then.of(coin && id.equals(move.before().id()) ? newId : id))).count();
        return (int) changed;
    }

    private static List<Coin> coins(Altered move, TwoStates states) {
        Map<String, Coin> now = TwoStates.byId(states.after());
        List<Coin> coins = new ArrayList<>();
        states.before().coins().forEach(coin -> coins.add(coin.id().value().equals(move.before().id())
                ? now.get(move.subject().id()) : coin));
        coins.sort(Comparator.comparing(coin -> coin.id().value(), NaturalOrder.INSTANCE));
        return coins;
    }

    private static List<Type> types(Altered move, TwoStates states) {
        Type now = states.after().types().stream().filter(type -> type.id().value().equals(move.subject().id()))
                .findFirst().orElseThrow();
        return states.before().types().stream().map(type -> type.id().value().equals(move.before().id()) ? now : type).toList();
    }
}
