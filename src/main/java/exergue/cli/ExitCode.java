package exergue.cli;

/** What the process says to whoever started it. A contract: scripts and continuous integration build on it. */
final class ExitCode {

    /** Done; warnings and notes at most. */
    static final int CLEAN = 0;
    /** The source has errors; nothing was written. */
    static final int SOURCE_ERRORS = 1;
    /** The command was not understood, or what it names is not there. */
    static final int USAGE = 2;
    /** The disk, the memory or the program itself failed. */
    static final int BROKEN = 3;

    private ExitCode() { }
}
