package exergue.cli;

import exergue.Exergue;
import exergue.edition.methods.english.AgreementSentence;
import exergue.files.Delivery;
import exergue.finding.Findings;
import exergue.measure.PrintForm;
import exergue.study.Agreement;
import exergue.study.AgreementPlot;
import exergue.study.Differences;
import exergue.study.TwoHands;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how far the hands of a catalogue agree, where they measured the same coins. */
@Command(name = "agreement", description = "Compares hands that measured the same coins: a table, one sentence for each "
        + "two hands that can stand in the methods statement, and plots if wanted.")
final class AgreementCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "SOURCE", arity = "0..1", defaultValue = ".",
            description = "Folder that holds catalogue.yaml. Default: the folder you are in.")
    private Path source;

    @Option(names = "--to", paramLabel = "DIR",
            description = "Folder for the plots, one SVG file for each two hands and kind of figure. Without it there are none.")
    private Path to;

    AgreementCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        try (StageLines progress = new StageLines(terminal)) {
            Exergue.Checked checked = Exergue.check(SourceFolder.open(source), progress);
            Agreement agreement = checked.catalogue().map(Agreement::of).orElse(new Agreement(List.of()));
            if (agreement.pairs().isEmpty()) {
                terminal.out().println("No coin was measured under two conventions, so there is nothing to compare.");
            } else {
                terminal.out().print(AgreementTable.of(agreement.rows()));
                agreement.pairs().forEach(pair -> terminal.out().println("\n" + AgreementSentence.of(pair, PrintForm.DEFAULT)));
                draw(agreement);
            }
            return close(checked.findings());
        }
    }

    private void draw(Agreement agreement) throws IOException {
        if (to == null) {
            return;
        }
        try (Delivery delivery = new Delivery(to)) {
            for (TwoHands pair : agreement.pairs()) {
                draw(delivery, pair, pair.weight(), "weight", "g");
                draw(delivery, pair, pair.diameter(), "diameter", "mm");
            }
            List<Path> drawn = delivery.deliver();
            terminal.out().println();
            drawn.forEach(file -> terminal.out().println("Plot: " + file));
        }
    }

    private static void draw(Delivery delivery, TwoHands pair, Optional<Differences> differences, String kind, String unit)
            throws IOException {
        if (differences.isPresent()) {
            String name = pair.first().id() + "-" + pair.second().id() + "-" + kind + ".svg";
            delivery.write(name, AgreementPlot.svg(pair, differences.get(), unit).getBytes(StandardCharsets.UTF_8));
        }
    }

    private int close(Findings findings) {
        if (!findings.hasErrors()) {
            return ExitCode.CLEAN;
        }
        terminal.err().println("The source has errors, and what they touch was left out: " + HowMany.of(findings)
                + ". “exergue check " + source + "” lists them.");
        return ExitCode.SOURCE_ERRORS;
    }
}
