package exergue.model;

import java.util.Optional;

/**
 * Which page templates lay the book out.
 *
 * @param set what is used for every file that the catalogue does not bring itself
 * @param own folder of the source with the catalogue's own files, if it has any
 */
public record TemplateChoice(TemplateSet set, Optional<String> own) {

    public static final TemplateChoice USUAL = new TemplateChoice(TemplateSet.CORPUS, Optional.empty());
}
