package exergue.edition;

import exergue.model.BookWord;
import exergue.model.Coin;
import exergue.model.Reference;
import exergue.model.Type;
import java.util.ArrayList;
import java.util.List;

/** What is printed of a coin that has an entry of its own. */
final class AloneMaker {

    private final EditorsDesk desk;
    private final Whereabouts whereabouts;
    private final SideTexts sides;

    AloneMaker(EditorsDesk desk) {
        this.desk = desk;
        this.whereabouts = new Whereabouts(desk.catalogue());
        this.sides = new SideTexts(desk.words(), desk.references());
    }

    /**
     * @param first  number of the first coin of the type; empty if this is the first
     * @param besides the year on it and what else was measured
     */
    Alone of(Coin coin, Type type, String first, List<String> besides) {
        List<Reference> all = new ArrayList<>(type.references());
        all.addAll(coin.references());
        return new Alone(Sentence.of(whereabouts.numberAndFind(coin)), Sentence.of(whereabouts.keeping(coin)),
                Sentence.of(Remarks.provenance(coin)),
                first.isEmpty() ? "" : Sentence.of(desk.words().of(BookWord.AS_NUMBER) + "\u00A0" + first),
                sides.of(coin, type), desk.references().inRuns(Remarks.differences(coin, desk.words())),
                desk.references().inRuns(Remarks.condition(coin, besides, desk.words())), texts(all),
                texts(coin.references()));
    }

    private List<EntryBlock.ReferenceText> texts(List<Reference> references) {
        return ReferenceTexts.of(references, desk.catalogue().works(), desk.words());
    }
}
