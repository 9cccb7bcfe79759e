package exergue.exchange.list;

import exergue.finding.NearMiss;
import exergue.model.Catalogue;
import exergue.model.Reference.Relation;
import exergue.model.Type;
import exergue.model.Written;
import exergue.source.list.ColumnContent;
import exergue.source.list.ListCodes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which type of the catalogue a row means: by the type’s id, or as the only one of its mint, ruler, denomination, metal or number. */
final class TypeFinder {

    private static final int OFFERED = 4;

    private final Catalogue catalogue;
    private final Names names;
    private final RowFindings findings;

    TypeFinder(Catalogue catalogue, Names names, RowFindings findings) {
        this.catalogue = catalogue;
        this.names = names;
        this.findings = findings;
    }

    /** What tells the type, with the id it tells; empty where none does, which has been said then. */
    Optional<Taken> find(SheetRow row, Map<ColumnContent, List<Taken>> taken) {
        List<Taken> own = taken.getOrDefault(ColumnContent.TYPE, List.of()).stream().filter(Taken::ofRow).toList();
        List<Taken> marks = taken.entrySet().stream().filter(entry -> entry.getKey().tellsType())
                .flatMap(entry -> entry.getValue().stream()).toList();
        if (!own.isEmpty() || marks.isEmpty() && taken.containsKey(ColumnContent.TYPE)) {
            Taken said = taken.get(ColumnContent.TYPE).get(0);
            Optional<String> id = known(ColumnContent.TYPE, said);
            id.ifPresent(type -> marks.forEach(mark -> agree(type, mark)));
            return id.map(type -> new Taken(type, said.spot(), said.said(), said.ofRow()));
        }
        if (marks.isEmpty()) {
            findings.add(ListCodes.TYPE_UNCLEAR, RowFindings.Spot.of(row), "nothing", "Nothing says which type this coin is of.",
                    "Fill the cell; or say what holds for all of them: every-row: {type: …}.");
            return Optional.empty();
        }
        return byMarks(marks);
    }

    private Optional<Taken> byMarks(List<Taken> marks) {
        List<Type> left = new ArrayList<>(catalogue.types());
        for (Taken mark : marks) {
            Optional<String> id = id(mark);
            if (id.isEmpty()) {
                return Optional.empty();
            }
            left.removeIf(type -> !has(type, mark, id.get()));
        }
        Taken first = marks.get(0);
        if (left.size() == 1) {
            return Optional.of(new Taken(left.get(0).id().value(), first.spot(), first.said(), marks.stream().anyMatch(Taken::ofRow)));
        }
        String said = "“" + String.join(", ", marks.stream().map(Taken::text).toList()) + "”";
        List<String> ids = left.stream().map(type -> type.id().value()).toList();
        findings.add(ListCodes.TYPE_UNCLEAR, first.spot(), said, left.isEmpty() ? said + " fits no type of the catalogue."
                        : said + " fits " + ids.size() + " types: " + String.join(", ", ids.subList(0, Math.min(OFFERED, ids.size())))
                                + (ids.size() > OFFERED ? " and others." : "."),
                left.isEmpty() ? "Describe the type in types/, or mend the row."
                        : "Give the list a column that says which, with the id of the type: columns: {…: type}.");
        return Optional.empty();
    }

    /** Where a row names its type, what it says besides of its mint and the like must be so. */
    private void agree(String id, Taken mark) {
        Type type = catalogue.types().stream().filter(one -> one.id().value().equals(id)).findFirst().orElseThrow();
        id(mark).filter(known -> !has(type, mark, known)).ifPresent(known -> findings.add(ListCodes.TYPE_UNCLEAR, mark.spot(), id + mark.text(),
                "The row says that the type is “" + id + "”, and that its " + mark.said().holds().word() + " is “" + mark.text()
                        + "”, which is not so in the catalogue.", "Mend the row, or the type, types/" + id + ".yaml."));
    }

    private Optional<String> id(Taken mark) {
        return mark.said().holds() == ColumnContent.TYPE_REFERENCE ? Optional.of(mark.text()) : known(mark.said().holds(), mark);
    }

    private static boolean has(Type type, Taken mark, String id) {
        return switch (mark.said().holds()) {
            case MINT -> type.mint().value().equals(id);
            case RULER -> type.ruler().map(Written::value).filter(id::equals).isPresent();
            case METAL -> type.metal().value().equals(id);
            case DENOMINATION -> Names.folded(type.denomination().value()).equals(id);
            default -> type.references().stream().anyMatch(reference -> reference.relation() == Relation.SAME_TYPE
                    && mark.said().cited().work().filter(work -> work.value().equals(reference.work().value())).isPresent()
                    && reference.number().value().equals(id));
        };
    }

    /** The id of a name, of whatever content; empty where it is not known, which has been said then. */
    Optional<String> known(ColumnContent content, Taken taken) {
        Optional<String> id = names.id(content, taken.text());
        if (id.isEmpty()) {
            Collection<String> offered = names.of(content);
            String word = content.word();
            findings.add(ListCodes.UNKNOWN_WORD, taken.spot(), taken.text(), "“" + taken.text() + "” is no " + word + " that the catalogue knows.",
                    NearMiss.of(taken.text(), offered).map(near -> "Did you mean “" + near + "”? ")
                            .orElseGet(() -> offered.isEmpty() ? "The catalogue has none yet. " : "It knows " + first(offered) + ". ")
                            + "Say what the list means by it, under the column: words: {" + EntryNode.plainOrQuoted(taken.text()) + ": …}; or add it to the catalogue.");
        }
        return id;
    }

    private static String first(Collection<String> offered) {
        return String.join(", ", offered.stream().limit(OFFERED * 2L).toList()) + (offered.size() > OFFERED * 2 ? " and others" : "");
    }
}
