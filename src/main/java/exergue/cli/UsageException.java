package exergue.cli;

/** The command names something that is not there or cannot be done; its message is for the person who typed it. */
final class UsageException extends RuntimeException {

    private static final long serialVersionUID = 1;

    UsageException(String message) {
        super(message);
    }
}
