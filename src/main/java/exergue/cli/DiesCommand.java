package exergue.cli;

import exergue.study.die.show.DieSubject;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The die study of a catalogue or of groups of its coins. */
@Command(name = "dies", description = "The die study: dies counted, how many there may have been, pairs, chains, states; here as tables, or "
        + "all tables as CSV or the link diagram as SVG in a folder. Groups are counted apart, and taken together for links.")
final class DiesCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private FigureOptions options;

    @Option(names = "--show", paramLabel = "FORM", description = "One form only: table, frequencies, estimates, links, pairs, chains, states, "
            + "diagram. May be repeated. Without it: all of them.")
    private List<String> forms = List.of();

    DiesCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        DieSubject dies = new DieSubject();
        for (String form : forms) {
            if (!dies.forms().contains(form)) {
                throw FigureOptions.unknown("form of dies", form, dies.forms());
            }
        }
        List<String> wanted = !forms.isEmpty() ? forms : dies.forms().stream().filter(form -> !options.asText() || !form.equals("diagram")).toList();
        return options.show(wanted.stream().map(form -> new FigureOutput.Wanted(dies, form)).toList(), true, terminal);
    }
}
