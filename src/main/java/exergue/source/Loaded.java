package exergue.source;

import exergue.finding.Findings;
import exergue.model.Catalogue;
import java.util.Optional;
import java.util.Set;

/**
 * What came of reading a tree.
 *
 * @param catalogue as complete as the files allow, so that checks can run on it too; empty only where catalogue.yaml
 *                  itself cannot be used. A text that must be there and is not (which is a finding) is empty in it
 * @param findings  everything that is wrong or worth a word
 * @param unread    files of which nothing is known, since they cannot be read; what is missing in the catalogue may stand there
 */
public record Loaded(Optional<Catalogue> catalogue, Findings findings, Set<String> unread) {

    public Loaded {
        unread = Set.copyOf(unread);
    }
}
