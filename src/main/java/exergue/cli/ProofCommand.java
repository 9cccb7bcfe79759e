package exergue.cli;

import exergue.files.Cache;
import exergue.files.Tree;
import exergue.files.WitnessedTree;
import exergue.photo.print.Darkroom;
import exergue.proof.ProofDesk;
import exergue.proof.ProofServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.BindException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows the pages while the source is being written. */
@Command(name = "proof", description = "Shows the pages and the findings in a browser on this machine, and again whenever a file of the "
        + "source is saved. Writes no book. Stop it with Ctrl-C.")
final class ProofCommand implements Callable<Integer> {

    /** Ours by choice; nothing else is known to want it. */
    private static final int PORT = 4280;

    private final Terminal terminal;

    @Parameters(paramLabel = "SOURCE", arity = "0..1", defaultValue = ".",
            description = "Folder that holds catalogue.yaml. Default: the folder you are in.")
    private Path source;

    @Option(names = "--port", paramLabel = "NUMBER", defaultValue = "" + PORT,
            description = "Port of the address that the browser is given; 0 for any that is free. Default: ${DEFAULT-VALUE}.")
    private int port;

    @Mixin
    private CacheOption kept;

    ProofCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        SourceFolder.open(source); // says so if there is none
        Cache cache = kept.ofSource(source);
        Darkroom darkroom = CacheOption.darkroom(cache);
        try (ProofDesk desk = new ProofDesk(source, Instant::now, tree -> selected(tree, cache), darkroom);
                ProofServer server = open(desk)) {
            desk.open();
            terminal.out().println("The proof of " + source + " is at " + server.address() + "\nOpen it in a browser on this machine. "
                    + "Save a file, and its page is set again. Stop with Ctrl-C.");
            terminal.flush();
            new CountDownLatch(1).await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return ExitCode.CLEAN;
    }

    private static Tree selected(Tree tree, Cache cache) {
        try {
            return new WitnessedTree(SourceFolder.withoutBooks(tree), cache);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ProofServer open(ProofDesk desk) throws IOException {
        if (port < 0 || port > 65_535) {
            throw new UsageException("A port is a number from 0 to 65535, not " + port + ".");
        }
        try {
            return ProofServer.open(desk, port);
        } catch (BindException e) {
            throw new UsageException("Port " + port + " is taken, perhaps by another proof. Stop that one, or name another port: "
                    + "--port " + (port + 1) + ".");
        }
    }
}
