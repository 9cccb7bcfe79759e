package exergue.cli;

import exergue.Stage;
import exergue.cli.collation.CollationFormat;
import exergue.cli.collation.Compared;
import exergue.cli.report.Format;
import exergue.cli.report.Ink;
import exergue.cli.report.Report;
import exergue.files.Delivery;
import exergue.finding.Findings;
import exergue.review.Collation;
import exergue.review.sheet.ProofSheet;
import exergue.typeset.SideBySide;
import exergue.typeset.SideBySideSetter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what is otherwise in one state of a catalogue than in another, by what the entries say. */
@Command(name = "collate", description = "Compares two states of a catalogue by what they say, not line by line: what changed "
        + "in each entry, and what follows for numbers, means, die links and concordances.")
final class CollateCommand implements Callable<Integer> {

    static final String PDF = "collation.pdf";

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "OLD", description = "The earlier state: a Git revision such as HEAD, a branch, a tag "
            + "or a commit; or a folder. REVISION:FOLDER where the catalogue lay in another folder then.")
    private String old;

    @Parameters(index = "1", paramLabel = "NEW", arity = "0..1",
            description = "The later state, named in the same way. Default: SOURCE as it is now.")
    private String now;

    @Option(names = "--source", paramLabel = "SOURCE", description = "Folder of the catalogue, in whose Git repository "
            + "revisions are looked up. Default: the folder you are in, if it holds catalogue.yaml, else catalogue-src.")
    private Path source;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text",
            description = "text, markdown (for a comment under a proposed change) or json (for programs). Default: text.")
    private CollationFormat format;

    @Option(names = "--to", paramLabel = "DIR", description = "Folder for a proof to be printed, collation.pdf: the changed entries "
            + "before and after, side by side, with signs on what was put in and taken out. Without it there is none.")
    private Path to;

    CollateCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        try (StageLines progress = new StageLines(terminal); NamedStates states = new NamedStates(source)) {
            progress.starts(Stage.READ);
            NamedStates.Named before = states.read(old);
            NamedStates.Named after = now == null ? states.readSource() : states.read(now);
            if (before.state().catalogue().isEmpty() || after.state().catalogue().isEmpty()) {
                return notComparable(before.state().catalogue().isEmpty() ? before : after);
            }
            Collation collation = Collation.of(before.state(), after.state());
            Compared compared = new Compared(before.name(), after.name(), collation);
            terminal.out().print(format.render(compared));
            if (to != null) {
                progress.starts(Stage.TYPESET);
                write(ProofSheet.of(collation, before.state().beside(after.state()), after.state().beside(before.state()),
                        List.of(before.name(), after.name()), compared.summary()));
            }
            return close(before, after);
        }
    }

    private void write(SideBySide proof) throws IOException {
        try (Delivery delivery = new Delivery(to)) {
            Findings findings;
            try (OutputStream pdf = delivery.write(PDF)) {
                findings = SideBySideSetter.write(proof, pdf);
            }
            findings.all().forEach(finding -> terminal.err().println(finding.what()));
            delivery.deliver();
            (format == CollationFormat.TEXT ? terminal.out() : terminal.err()).println("Proof: " + to.resolve(PDF));
        }
    }

    private int notComparable(NamedStates.Named state) {
        terminal.out().print(Format.FULL.render(
                new Report(state.state().findings(), state.state().tree(), state.name()), Ink.PLAIN));
        terminal.err().println("Nothing was compared: the catalogue.yaml of " + state.name() + " cannot be read.");
        return ExitCode.SOURCE_ERRORS;
    }

    /** Errors of the old state are past; those of the new one stand in the way of the book. */
    private int close(NamedStates.Named before, NamedStates.Named after) {
        warn(before);
        warn(after);
        return after.state().findings().hasErrors() ? ExitCode.SOURCE_ERRORS : ExitCode.CLEAN;
    }

    private void warn(NamedStates.Named state) {
        Findings findings = state.state().findings();
        if (findings.hasErrors()) {
            terminal.err().println(state.name() + " has entries that could not be read in full, and what they say is "
                    + "missing above: " + HowMany.of(findings) + ". The command check lists them.");
        }
    }
}
