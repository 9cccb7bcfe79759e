package exergue.source;

import exergue.finding.Findings;
import exergue.model.Catalogue;
import java.util.Optional;

/**
 * What came of reading a tree.
 *
 * @param catalogue as complete as the files allow, so that checks can run on it too; empty only where catalogue.yaml
 *                  itself cannot be used. A text that must be there and is not (which is a finding) is empty in it
 * @param findings  everything that is wrong or worth a word
 */
public record Loaded(Optional<Catalogue> catalogue, Findings findings) { }
