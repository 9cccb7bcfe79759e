package exergue.cli;

import exergue.study.figure.Subject;
import exergue.study.figure.Subjects;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Sums up weights, die-axes and diameters of groups of coins. */
@Command(name = "metrology", description = "Sums up weights, die-axes and diameters of groups of coins: tables here, or all tables as CSV "
        + "or all charts as SVG in a folder.")
final class MetrologyCommand implements Callable<Integer> {

    private static final List<String> MEASURED = Subjects.metrology().stream().map(Subject::word).toList();

    private final Terminal terminal;

    @Mixin
    private FigureOptions options;

    @Option(names = "--show", paramLabel = "SUBJECT", description = "What to show, with a form if not as its first table: "
            + "weights, weights:comparison. May be repeated. Without it: weights, axes, diameters.")
    private List<String> subjects = new ArrayList<>();

    MetrologyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        return options.show(wanted(), false, terminal);
    }

    /** Subjects with their forms; in files all forms of a subject that names none. */
    private List<FigureOutput.Wanted> wanted() {
        List<FigureOutput.Wanted> wanted = new ArrayList<>();
        for (String text : subjects.isEmpty() ? MEASURED : subjects) {
            String[] parts = text.split(":", 2);
            Subject subject = Subjects.named(parts[0]).orElseThrow(() -> FigureOptions.unknown("subject", parts[0], Subjects.words()));
            if (parts.length == 2 && !subject.forms().contains(parts[1])) {
                throw FigureOptions.unknown("form of " + subject.word(), parts[1], subject.forms());
            }
            List<String> forms = parts.length == 2 ? List.of(parts[1]) : options.asText() ? subject.forms().subList(0, 1) : subject.forms();
            forms.forEach(form -> wanted.add(new FigureOutput.Wanted(subject, form)));
        }
        return wanted;
    }
}
