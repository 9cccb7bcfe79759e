package exergue.study.match;

import exergue.model.Measurement;
import exergue.model.Written;
import java.util.Optional;

/**
 * A coin that was measured afresh.
 *
 * @param label  what it lies under: a place in the tray
 * @param ticket id of the coin that its ticket names; empty where it has none
 */
public record FreshCoin(Written<String> label, Optional<Written<String>> ticket, Measurement measured) { }
