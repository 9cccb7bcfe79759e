package exergue.cli;

import exergue.AllCodes;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the page of a finding. */
@Command(name = "explain", description = "Explains a finding: why it matters, an example, and the example mended.")
final class ExplainCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "CODE", arity = "0..1",
            description = "The word in square brackets after a finding. Without it, all of them are listed.")
    private String id;

    ExplainCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (id == null) {
            AllCodes.all().forEach(code -> terminal.out().println(
                    code.id() + " (" + code.severity().word() + "): " + code.title()));
        } else {
            terminal.out().print(CodePage.plain(CodePage.named(id)));
        }
        return ExitCode.CLEAN;
    }
}
