package exergue.cli;

/** The command {@code exergue}. */
public final class Main {

    private Main() { }

    /** Leaves the process with one of the codes of {@link ExitCode}; returns where it is 0, so that a host goes on. */
    public static void main(String[] arguments) {
        int code = new CommandRun(Terminal.ofProcess()).run(arguments);
        if (code != ExitCode.CLEAN) {
            System.exit(code);
        }
    }
}
