package exergue.edition;

import exergue.edition.EntryBlock.ReferenceText;
import exergue.edition.EntryBlock.SideText;
import exergue.model.Inline;
import java.util.List;

/**
 * What is printed of a coin in a book that gives every coin an entry of its own, piece by piece; how the pieces follow
 * each other is the templates' business. Texts are finished sentences, empty where there is nothing to say.
 *
 * @param found      find number first, then spot and context
 * @param kept       collection and number
 * @param provenance earlier owners and sales
 * @param likeFirst  "As no. 12." after the first coin of its type, which has the description; empty for that one
 * @param sides      of the type, with what this coin has otherwise
 * @param differs    only what the sides of this coin have otherwise
 * @param condition  damage, what its diameter means, the year on it, what else was measured
 * @param references of the type and of the coin
 * @param ownReferences of the coin only
 */
public record Alone(String found, String kept, String provenance, String likeFirst, List<SideText> sides,
                    List<Inline> differs, List<Inline> condition, List<ReferenceText> references,
                    List<ReferenceText> ownReferences) {

    public static final Alone NOTHING = new Alone("", "", "", "", List.of(), List.of(), List.of(), List.of(), List.of());

    public Alone {
        sides = List.copyOf(sides);
        differs = List.copyOf(differs);
        condition = List.copyOf(condition);
        references = List.copyOf(references);
        ownReferences = List.copyOf(ownReferences);
    }
}
