package exergue.proof;

import exergue.finding.Findings;
import exergue.typeset.Area;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What there is to see at one moment.
 *
 * @param number  counts up; a new one for each moment
 * @param change  number of the proof that first showed the last change
 * @param title   of the book; empty before it is known
 * @param leaves  pages of the book, of which some may be from before a change
 * @param entries in the order of the book
 * @param changed anchor of the one entry or chapter that was saved last; empty if it was something else or several
 * @param doing   what is being done, where that takes long; mostly empty
 * @param trouble a sentence on why there can be no new pages although the source has no errors
 */
record Proof(int number, int change, State state, String title, List<Leaf> leaves, List<Known> entries, Findings findings,
             Optional<String> changed, String doing, Optional<String> trouble) {

    /** How the pages stand to the files. */
    enum State {
        /** The pages are being set; those that are there are from before, or of the changed entry alone. */
        SETTING("setting"),
        /** The pages are what the files say. */
        AS_SAVED("as-saved"),
        /** The files have errors, or something else is in the way; the pages are the last that could be set. */
        OF_BEFORE("of-before");

        private final String word;

        State(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    static final Proof NOTHING_YET = new Proof(0, 0, State.SETTING, "", List.of(), List.of(), Findings.none(), Optional.empty(), "", Optional.empty());

    Proof {
        leaves = List.copyOf(leaves);
        entries = List.copyOf(entries);
    }

    /** The next, after the source has been read: its pages are still those of before. @param sound whether there will be others */
    Proof read(boolean sound, String itsTitle, List<Known> itsEntries, Findings found, Optional<String> saved) {
        return new Proof(number + 1, number + 1, sound ? State.SETTING : State.OF_BEFORE, itsTitle, leaves, itsEntries, found, saved, "",
                Optional.empty());
    }

    /** The next, with some pages set anew before the others. */
    Proof with(List<Leaf> some) {
        return new Proof(number + 1, change, State.SETTING, title, some, entries, findings, changed, "", Optional.empty());
    }

    /** The next, after the whole book has been set. */
    Proof whole(List<Leaf> pages, List<Known> itsEntries, Findings found) {
        return new Proof(number + 1, change, State.AS_SAVED, title, pages, itsEntries, found, changed, "", Optional.empty());
    }

    /** The next, after the whole book could not be set. */
    Proof stopped(Findings found) {
        return new Proof(number + 1, change, State.OF_BEFORE, title, leaves, entries, found, changed, "", Optional.empty());
    }

    /** The next, after something else went wrong. */
    Proof inTrouble(String sentence) {
        return new Proof(number + 1, change, State.OF_BEFORE, title, leaves, entries, findings, Optional.empty(), "", Optional.of(sentence));
    }

    /** The next, which says what is being done. */
    Proof at(String work) {
        return new Proof(number + 1, change, state, title, leaves, entries, findings, changed, work, trouble);
    }

    /** The first leaf on which each thing stands, by its anchor, from 0. */
    Map<String, Integer> firstLeaves() {
        Map<String, Integer> first = new LinkedHashMap<>();
        for (int i = 0; i < leaves.size(); i++) {
            for (Area area : leaves.get(i).areas()) {
                first.putIfAbsent(area.anchor(), i);
            }
        }
        return first;
    }
}
