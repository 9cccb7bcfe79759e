package exergue.cli;

import exergue.cli.report.Ink;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** One command as a person would have seen it. */
record Ran(int code, String out, String err) {

    static Ran command(String... words) {
        return run(CommandRun::new, words);
    }

    /** A command that goes on until it is stopped; that is done when it has said something and the reader of it is through. */
    static Ran stopped(Consumer<String> reader, String... words) throws InterruptedException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), Ink.PLAIN, false);
        int[] code = {-1};
        Thread command = new Thread(() -> code[0] = new CommandRun(terminal).run(words));
        command.start();
        while (command.isAlive() && out.toString().isEmpty()) {
            Thread.sleep(20);
        }
        reader.accept(out.toString());
        command.interrupt();
        command.join();
        return new Ran(code[0], out.toString(), err.toString());
    }

    /** With one command of the test's own instead of the real ones. */
    static Ran with(Object command, String... words) {
        return run(terminal -> new CommandRun(terminal, List.of(command)), words);
    }

    private static Ran run(Function<Terminal, CommandRun> made, String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), Ink.PLAIN, false);
        int code = made.apply(terminal).run(words);
        return new Ran(code, out.toString(), err.toString());
    }

    /** Everything that was seen. */
    String all() {
        return out + err;
    }
}
