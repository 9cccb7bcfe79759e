package exergue.model;

import exergue.dating.Dating;
import java.util.Optional;

/**
 * A place where coins were found.
 *
 * @param name   coarse name, safe to print: a district or a site open to the public
 * @param exact  exact place; never printed unless {@code mayPrint}
 * @param kind     how the coins came to light; empty where the file does not say
 * @param mayPrint true only where the file itself allows the exact place to be printed
 * @param closed   when the hoard was closed: nothing came to it later
 * @param compared what other finds its periods are compared with
 */
public record FindSpot(Written<String> id, Written<String> name, Optional<Written<String>> exact,
                       boolean mayPrint, Optional<Written<Kind>> kind, Optional<Written<Dating>> closed,
                       Optional<FindsElsewhere> compared) {

    public enum Kind {
        HOARD("hoard"), EXCAVATION("excavation"), SINGLE_FINDS("single finds"), SURVEY("survey");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
