package exergue.source.works;

import exergue.model.WorkItem;
import exergue.model.Written;
import java.util.Optional;

/**
 * A work from a reference manager's file, before works.yaml has had its say.
 *
 * @param sign abbreviation, if the file has one
 */
record ForeignWork(Written<String> id, Optional<Written<String>> sign, WorkItem item) { }
