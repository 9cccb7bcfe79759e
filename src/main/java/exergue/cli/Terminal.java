package exergue.cli;

import exergue.cli.report.Ink;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Where a command writes: results to {@code out}, everything about the run itself to {@code err}.
 *
 * @param attended true where a person watches, so that progress shows at once
 */
record Terminal(PrintWriter out, PrintWriter err, Ink ink, boolean attended) {

    /** The process's own streams. Colours only on a real terminal, and never against NO_COLOR. */
    static Terminal ofProcess() {
        boolean attended = System.console() != null;
        boolean colours = attended && System.getenv("NO_COLOR") == null && !"dumb".equals(System.getenv("TERM"));
        Charset charset = attended ? charsetOfConsole() : StandardCharsets.UTF_8;
        return new Terminal(writer(FileDescriptor.out, charset), writer(FileDescriptor.err, charset),
                colours ? Ink.COLOURED : Ink.PLAIN, attended);
    }

    private static PrintWriter writer(FileDescriptor stream, Charset charset) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), charset), false);
    }

    /** UTF-8, unless the console is known to use something else that is more than ASCII. */
    private static Charset charsetOfConsole() {
        String named = System.getProperty("sun.stdout.encoding");
        if (named == null || !Charset.isSupported(named)) {
            return StandardCharsets.UTF_8;
        }
        Charset charset = Charset.forName(named);
        return charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset;
    }

    void flush() {
        out.flush();
        err.flush();
    }
}
