package exergue.study.match;

import java.util.List;
import java.util.Optional;

/**
 * What a fresh coin is.
 *
 * @param coin       id of the coin it is in the best answer for all; empty for none
 * @param candidates the coins it may be, the most probable first
 */
public record Match(FreshCoin fresh, Optional<String> coin, Sureness sureness, List<Candidate> candidates) {

    public Match {
        candidates = List.copyOf(candidates);
    }

    /** True where its ticket names another coin than the answer. */
    public boolean againstItsTicket() {
        return fresh.ticket().filter(ticket -> coin.filter(is -> !is.equals(ticket.value())).isPresent()).isPresent();
    }
}
