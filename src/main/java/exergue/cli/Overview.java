package exergue.cli;

import exergue.Exergue;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command itself, without a further word: says what there is. */
@Command(name = "exergue", mixinStandardHelpOptions = true, scope = ScopeType.INHERIT,
        versionProvider = Overview.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = "Turns a folder of coin entries into a printed catalogue.",
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%nOptions:%n",
        parameterListHeading = "%n")
final class Overview implements Runnable {

    @Option(names = "--trace", scope = ScopeType.INHERIT,
            description = "If Exergue itself fails: show the details its makers need.")
    private boolean trace;

    @Spec
    private CommandSpec spec;

    boolean wantsTrace() {
        return trace;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Name a command: "
                + String.join(", ", spec.subcommands().keySet()) + ".");
    }

    /** For {@code --version}. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"exergue " + Exergue.VERSION};
        }
    }
}
