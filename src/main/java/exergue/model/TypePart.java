package exergue.model;

import java.util.function.Predicate;

/** Something that the description of a type can have, named as the entry names it. */
public enum TypePart {
    RULER("ruler", type -> type.ruler().isPresent()), DATE("date", type -> type.date().isPresent()),
    ISSUE("issue", type -> type.issue().isPresent()), STANDARD("standard", type -> type.standard().isPresent()),
    REFERENCES("references", type -> !type.references().isEmpty()), KEYWORDS("keywords", type -> !type.keywords().isEmpty()),
    LIMITS("limits", type -> type.limits().isPresent());

    private final String word;
    private final Predicate<Type> test;

    TypePart(String word, Predicate<Type> test) {
        this.word = word;
        this.test = test;
    }

    public String word() {
        return word;
    }

    public boolean isIn(Type type) {
        return test.test(type);
    }
}
