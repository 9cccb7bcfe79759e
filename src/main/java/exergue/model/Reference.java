package exergue.model;

import java.util.Optional;

/** What another work says of it. @param number number, page or plate in that work, as printed there */
public record Reference(Written<String> work, Written<String> number, Relation relation) {

    /** How what is cited relates to what is catalogued. */
    public enum Relation {
        SAME_TYPE("same type"), THIS_COIN("this coin"), SAME_DIES("same dies"), VARIANT("variant"),
        NOT_IN("not in");

        private final String words;

        Relation(String words) {
            this.words = words;
        }

        /** The words an entry uses. */
        public String words() {
            return words;
        }

        public static Optional<Relation> of(String words) {
            for (Relation relation : values()) {
                if (relation.words.equals(words)) {
                    return Optional.of(relation);
                }
            }
            return Optional.empty();
        }
    }
}
