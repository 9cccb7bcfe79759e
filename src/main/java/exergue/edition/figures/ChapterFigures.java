package exergue.edition.figures;

import exergue.edition.EditionCodes;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.NearMiss;
import exergue.finding.Place;
import exergue.model.Caption;
import exergue.model.Catalogue;
import exergue.model.FigureKey;
import exergue.model.Inline;
import exergue.model.Language;
import exergue.model.Prose;
import exergue.model.Written;
import exergue.study.chart.ChartDrawing;
import exergue.study.figure.Exhibit;
import exergue.study.figure.FigureTable;
import exergue.study.figure.Plot;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Subjects;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Gathering;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts tables, charts and figures in the place of what the author asked for. Grows its findings while chapters go through it. */
public final class ChapterFigures {

    private final Catalogue catalogue;
    private final Wording wording;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Optional<List<Coins>>> gathered = new LinkedHashMap<>();
    private Gathering gathering;

    public ChapterFigures(Catalogue catalogue, Language language) {
        this.catalogue = catalogue;
        this.wording = new Wording(language, catalogue.style().form());
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** What stands in the book in the place of a block of figures; nothing where something is wrong with it. */
    public List<Prose> blocks(Prose.Figures asked) {
        Optional<Subject> subject = subject(asked);
        Optional<List<Coins>> groups = groups(asked);
        Optional<String> form = subject.flatMap(one -> form(asked, one));
        if (subject.isEmpty() || groups.isEmpty() || form.isEmpty()) {
            return List.of();
        }
        int most = subject.get().most(form.get());
        if (groups.get().size() > most) {
            report(EditionCodes.TOO_MANY_GROUPS, asked.place(), "Of “" + said(asked, FigureKey.OF) + "” there are " + groups.get().size()
                    + " groups, and " + most + " at most have room as " + form.get() + ".",
                    "Name fewer groups, or make two blocks of them.");
            return List.of();
        }
        Optional<Exhibit> exhibit = subject.get().show(form.get(), new Request(groups.get(), StepsWritten.in(asked, findings), wording));
        if (exhibit.isEmpty()) {
            report(EditionCodes.NOTHING_TO_SHOW, asked.place(), "Of “" + said(asked, FigureKey.OF) + "” there are no "
                    + subject.get().word() + " to show.", "Name another group, or leave the block out until its coins are measured.");
        }
        return exhibit.map(one -> shown(one, asked)).orElse(List.of());
    }

    private List<Prose> shown(Exhibit exhibit, Prose.Figures asked) {
        List<Prose> blocks = new ArrayList<>();
        asked.caption().ifPresent(caption -> compare(caption, exhibit, asked.place()));
        if (exhibit instanceof Plot plot) {
            blocks.add(new Prose.Drawing(ChartDrawing.svg(plot.chart()), plot.alternative(), asked.caption(), asked.place()));
        } else {
            blocks.add(table((FigureTable) exhibit, asked));
        }
        if (!exhibit.notes().isEmpty()) {
            blocks.add(new Prose.Note(List.of(new Inline.Words(String.join(" ", exhibit.notes()))), asked.place()));
        }
        return blocks;
    }

    private static Prose table(FigureTable table, Prose.Figures asked) {
        return new Prose.Table(table.align(), table.head().stream().map(cell -> runs(cell, asked.place())).toList(),
                table.rows().stream().map(row -> row.stream().map(cell -> runs(cell, asked.place())).toList()).toList(), asked.caption(), asked.place());
    }

    private void compare(Caption caption, Exhibit exhibit, Place place) {
        Caption.Kind kind = exhibit instanceof Plot ? Caption.Kind.FIGURE : Caption.Kind.TABLE;
        if (caption.kind() != kind) {
            report(EditionCodes.CAPTION_OF_OTHER_KIND, place, "The caption before this block calls it a " + caption.kind().word()
                    + ", but a " + kind.word() + " is made.", "Begin the caption with “" + (kind == Caption.Kind.FIGURE ? "Figure" : "Table")
                    + "”, and refer to it by [" + kind.word() + ":…].");
        }
    }

    private static List<Inline> runs(FigureTable.Cell cell, Place place) {
        List<Inline> runs = new ArrayList<>();
        if (!cell.text().isEmpty()) {
            runs.add(new Inline.Words(cell.text()));
        }
        for (String coin : cell.coins()) {
            if (!runs.isEmpty()) {
                runs.add(new Inline.Words(", "));
            }
            runs.add(new Inline.CrossReference("coin", coin, place));
        }
        return runs;
    }

    /** The words of one figure in running text; its name in braces where something is wrong with it. */
    public Inline inline(Inline run) {
        if (!(run instanceof Inline.Figure figure)) {
            return run;
        }
        Optional<Subject> subject = Subjects.withFigure(figure.name());
        if (subject.isEmpty()) {
            report(EditionCodes.UNKNOWN_FIGURE, figure.place(), "“" + figure.name() + "” is not a figure that can be reckoned.",
                    didYouMean(figure.name(), Subjects.figures(), "The figures are"));
        }
        Optional<List<Coins>> groups = group(figure.group(), figure.place());
        if (groups.filter(ChapterFigures::isDivided).isPresent()) {
            report(EditionCodes.DIVIDED_GROUP, figure.place(), "“" + figure.group() + "” is divided, so it has no single "
                    + figure.name() + ".", "Name a group that has no “by” in catalogue.yaml.");
            return new Inline.Words("");
        }
        return new Inline.Words(subject.isEmpty() || groups.isEmpty() || groups.get().isEmpty() ? "{" + figure.name() + "}"
                : subject.get().figure(figure.name(), groups.get().get(0), wording));
    }

    private static boolean isDivided(List<Coins> groups) {
        return groups.size() > 1 || groups.stream().flatMap(coins -> coins.declared().stream()).anyMatch(group -> !group.by().isEmpty());
    }

    private Optional<Subject> subject(Prose.Figures asked) {
        Optional<Written<String>> said = Optional.ofNullable(asked.said().get(FigureKey.SHOW));
        if (said.isEmpty()) {
            report(EditionCodes.UNKNOWN_SUBJECT, asked.place(), "This block does not say what is to be shown.",
                    "Add a line such as “show: weights”. There are: " + String.join(", ", Subjects.words()) + ".");
            return Optional.empty();
        }
        Optional<Subject> subject = Subjects.named(said.get().value());
        if (subject.isEmpty()) {
            report(EditionCodes.UNKNOWN_SUBJECT, said.get().place(), "“" + said.get().value() + "” is not something that can be shown.",
                    didYouMean(said.get().value(), Subjects.words(), "There are"));
        }
        return subject;
    }

    private Optional<String> form(Prose.Figures asked, Subject subject) {
        Optional<Written<String>> said = Optional.ofNullable(asked.said().get(FigureKey.AS));
        if (said.isEmpty() || subject.forms().contains(said.get().value())) {
            return Optional.of(said.map(Written::value).orElse(subject.forms().get(0)));
        }
        report(EditionCodes.UNKNOWN_FORM, said.get().place(), "“" + said.get().value() + "” is not a form in which "
                + subject.word() + " can be shown.", didYouMean(said.get().value(), subject.forms(), "The forms are"));
        return Optional.empty();
    }

    private Optional<List<Coins>> groups(Prose.Figures asked) {
        Optional<Written<String>> said = Optional.ofNullable(asked.said().get(FigureKey.OF));
        if (said.isEmpty()) {
            report(EditionCodes.UNKNOWN_GROUP, asked.place(), "This block does not say of which coins.",
                    "Add a line such as “of: " + catalogue.groups().keySet().stream().findFirst().orElse("drachms")
                            + "”, which names a group of catalogue.yaml; “of: all” is every coin.");
            return Optional.empty();
        }
        List<Coins> all = new ArrayList<>();
        boolean complete = true;
        int offset = 0;
        for (String one : said.get().value().split(",", -1)) {
            String id = one.strip();
            int at = offset + one.indexOf(id);
            Optional<List<Coins>> groups = group(id, said.get().place().within(at, id.length()));
            groups.ifPresent(all::addAll);
            complete &= groups.isPresent();
            offset += one.length() + 1;
        }
        return complete ? Optional.of(all) : Optional.empty();
    }

    /** The same group is gathered once, however often it is named. */
    private Optional<List<Coins>> group(String id, Place place) {
        if (gathering == null) {
            gathering = Gathering.of(catalogue);
        }
        Optional<List<Coins>> found = gathered.computeIfAbsent(id, wanted -> gathering.declared(wanted)
                .or(() -> wanted.equals(Gathering.ALL) ? Optional.of(List.of(gathering.all(catalogue.title().title().value()))) : Optional.empty()));
        if (found.isEmpty()) {
            report(EditionCodes.UNKNOWN_GROUP, place, "There is no group “" + id + "”.", catalogue.groups().isEmpty()
                    ? "Declare it in catalogue.yaml under “groups”; “all” is every coin."
                    : didYouMean(id, catalogue.groups().keySet(), "Those of catalogue.yaml are") + " “all” is every coin.");
        }
        return found;
    }

    private static String didYouMean(String word, Collection<String> known, String there) {
        return NearMiss.of(word, known).map(near -> "Did you mean “" + near + "”?")
                .orElse(there + ": " + String.join(", ", known) + ".");
    }

    private static String said(Prose.Figures asked, FigureKey key) {
        return asked.said().get(key).value();
    }

    private void report(Code code, Place place, String what, String remedy) {
        findings.add(Finding.of(code, place, "", what, remedy));
    }
}
