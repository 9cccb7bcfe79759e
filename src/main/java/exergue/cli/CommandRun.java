package exergue.cli;

import exergue.Exergue;
import exergue.cli.report.Ink;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;

/** One run of the command line, from the words typed to the exit code. Whatever happens, the reader gets a sentence. */
final class CommandRun {

    private static final int HELP_WIDTH = 100;
    private static final Set<String> READING = Set.of("typeset", "check");

    private final Terminal terminal;
    private final List<?> commands;
    private final Overview overview = new Overview();

    CommandRun(Terminal terminal) {
        this(terminal, List.of(new TypesetCommand(terminal), new CheckCommand(terminal), new TidyCommand(terminal),
                new ReadingCommand(terminal), new AgreementCommand(terminal), new GaugeCommand(terminal), new MetrologyCommand(terminal), new DiesCommand(terminal),
                new MatchCommand(terminal), new StartCommand(terminal), new EnterCommand(terminal), new NumbersCommand(terminal),
                new CollateCommand(terminal), new ProofCommand(terminal),
                new ExplainCommand(terminal)));
    }

    CommandRun(Terminal terminal, List<?> commands) {
        this.terminal = terminal;
        this.commands = commands;
    }

    /** Never throws; returns one of the codes of {@link ExitCode}. */
    int run(String... arguments) {
        try {
            getReady(arguments);
            return commandLine(called(arguments)).execute(arguments);
        } catch (OutOfMemoryError e) {
            return say(ExitCode.BROKEN, outOfMemory(Runtime.getRuntime().maxMemory()));
        } catch (StackOverflowError | LinkageError | AssertionError e) {
            return ownFault(e);
        } finally {
            terminal.flush();
        }
    }

    /** What these commands need beside their own entries is made while their words are looked through. */
    private static void getReady(String... arguments) {
        if (arguments.length > 0 && READING.contains(arguments[0])) {
            Exergue.headStart();
        }
    }

    /** The command of that name alone, since looking through all of them takes longer than some of them; all if there is none. */
    private List<?> called(String... arguments) {
        List<?> named = commands.stream().filter(command -> arguments.length > 0
                && command.getClass().getAnnotation(Command.class).name().equals(arguments[0])).toList();
        return named.isEmpty() ? commands : named;
    }

    private CommandLine commandLine(List<?> called) {
        CommandLine line = new CommandLine(overview);
        called.forEach(line::addSubcommand);
        line.getSubcommands().values().forEach(command -> command.setUnmatchedOptionsArePositionalParams(
                command.getCommand() instanceof ReadingCommand)); // "-30°" is an axis, not an option
        return line.setOut(terminal.out()).setErr(terminal.err())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setColorScheme(CommandLine.Help.defaultColorScheme(terminal.ink() == Ink.PLAIN ? Ansi.OFF : Ansi.ON))
                .setUsageHelpWidth(HELP_WIDTH)
                .setParameterExceptionHandler((problem, words) -> say(ExitCode.USAGE, Misunderstood.explain(problem)))
                .setExecutionExceptionHandler((failure, at, result) -> failed(failure));
    }

    private int failed(Exception failure) {
        if (failure instanceof UsageException) {
            return say(ExitCode.USAGE, failure.getMessage());
        }
        if (failure instanceof IOException trouble) {
            return say(ExitCode.BROKEN, DiskTrouble.explain(trouble));
        }
        if (failure instanceof UncheckedIOException trouble) {
            return say(ExitCode.BROKEN, DiskTrouble.explain(trouble.getCause()));
        }
        return ownFault(failure);
    }

    private int ownFault(Throwable fault) {
        if (overview.wantsTrace()) {
            fault.printStackTrace(terminal.err());
        }
        return say(ExitCode.BROKEN, "This is a fault in Exergue, not in your source (" + fault.getClass().getSimpleName()
                + "). Nothing was written, and the last book is as it was."
                + (overview.wantsTrace() ? "\nPlease send the lines above to its makers."
                        : "\nPlease run the command again with --trace and send what it prints to its makers."));
    }

    static String outOfMemory(long bytes) {
        return "Java’s memory (" + (bytes >> 20) + " MB) is not enough for this book. Nothing was written. Give it more, "
                + "for example: java -Xmx2g -jar exergue.jar typeset …";
    }

    private int say(int code, String message) {
        terminal.err().println("exergue: " + message);
        return code;
    }
}
