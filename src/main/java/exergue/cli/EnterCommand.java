package exergue.cli;

import exergue.Exergue;
import exergue.Progress;
import exergue.cli.report.Report;
import exergue.exchange.list.Entered;
import exergue.exchange.list.Entering;
import exergue.exchange.list.NamedBytes;
import exergue.exchange.list.Proposal;
import exergue.exchange.list.RowsTold;
import exergue.files.Delivery;
import exergue.files.FolderTree;
import exergue.files.MemoryTree;
import exergue.files.OverlaidTree;
import exergue.files.Tree;
import exergue.finding.Findings;
import exergue.finding.Severity;
import exergue.model.Catalogue;
import exergue.source.Loaded;
import exergue.source.SourceReader;
import exergue.source.text.Notebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes entries of the rows of somebody's list. */
@Command(name = "enter", description = "Enters the coins of a list, such as a museum’s spreadsheet saved as CSV: one new entry for each row "
        + "whose coin is not in the catalogue yet. A file beside the list says what its columns hold; where there is none, it is proposed and "
        + "nothing is entered. No entry that is there is overwritten, and if anything is wrong, nothing is written.")
final class EnterCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "LIST.csv", description = "The list: a text file with a row of headings and a row for each coin, its cells parted by "
            + "commas, semicolons or tabs.")
    private Path list;

    @Option(names = "--into", paramLabel = "SOURCE", required = true, description = "Folder that holds catalogue.yaml.")
    private Path source;

    @Option(names = "--columns", paramLabel = "FILE", description = "The file that says what the columns hold. Default: the one beside the list "
            + "that is called after it, LIST.yaml.")
    private Path columns;

    @Option(names = "--look", description = "Writes nothing; says what would be entered and shows the first entries.")
    private boolean look;

    @Option(names = "--add-figures", description = "Adds the list’s figures under also-measured to entries that are there and have none of "
            + "its convention; nothing else in them is touched.")
    private boolean addFigures;

    @Mixin
    private FormatOption format;

    EnterCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Path plan = columns != null ? columns : list.resolveSibling(stem(list) + ".yaml");
        if (FolderTree.isFolder(list)) {
            throw new UsageException("“" + list + "” is a folder. Name the list in it, saved as CSV from the spreadsheet.");
        }
        NamedBytes listed = named(list).orElseThrow(() -> new UsageException("There is no file “" + list
                + "”. Name the list, saved as CSV from the spreadsheet."));
        Optional<NamedBytes> planned = named(plan);
        if (planned.isEmpty() && columns != null) {
            throw new UsageException("There is no file “" + columns + "”. Leave --columns out, and a file is proposed.");
        }
        Tree tree = SourceFolder.open(source);
        Loaded loaded = SourceReader.read(tree);
        if (loaded.catalogue().isEmpty()) {
            format.print(new Report(loaded.findings(), tree, source.toString()), "Nothing was entered: " + HowMany.of(loaded.findings()) + ".", terminal);
            return ExitCode.SOURCE_ERRORS;
        }
        return planned.isEmpty() ? propose(listed, plan, loaded.catalogue().get(), tree)
                : enter(listed, planned.get(), loaded.catalogue().get(), tree);
    }

    private static String stem(Path file) {
        return file.getFileName().toString().replaceAll("\\.[^.]*$", "");
    }

    /** The file with its path as seen from the folder of the catalogue, so that findings in both have their places; empty if it is not there. */
    private Optional<NamedBytes> named(Path file) throws IOException {
        Path absolute = file.toAbsolutePath().normalize();
        if (absolute.getParent() == null || !FolderTree.isFolder(absolute.getParent())) {
            return Optional.empty();
        }
        Tree beside = new FolderTree(absolute.getParent());
        String name = absolute.getFileName().toString();
        return beside.has(name) ? Optional.of(new NamedBytes(seen(absolute), beside.start(name, NamedBytes.MOST + 1))) : Optional.empty();
    }

    private String seen(Path file) {
        Path folder = source.toAbsolutePath().normalize();
        return file.getRoot().equals(folder.getRoot()) ? folder.relativize(file).toString().replace('\\', '/') : file.toString().replace('\\', '/');
    }

    private int propose(NamedBytes listed, Path plan, Catalogue catalogue, Tree tree) throws IOException {
        Notebook notebook = new Notebook();
        Optional<Proposal.Proposed> proposed = Proposal.of(listed, catalogue, notebook);
        Report report = new Report(Exergue.judged(notebook.findings(), catalogue), tree, source.toString());
        if (proposed.isEmpty()) {
            format.print(report, "Nothing was entered: " + HowMany.of(report.findings()) + ".", terminal);
            return ExitCode.SOURCE_ERRORS;
        }
        if (!look) {
            writeNew(plan, proposed.get().text());
        }
        if (!format.isForMachines()) {
            terminal.out().println(proposed.get().text());
        }
        format.print(report, (look ? "Nothing was written. " : plan + " was written. ") + "It says what " + proposed.get().known() + " of "
                + HowMany.count(proposed.get().headings(), "column") + " hold. Look it over and complete it, then run the command again; "
                + "nothing has been entered yet.", terminal);
        return ExitCode.CLEAN;
    }

    private static void writeNew(Path plan, String text) throws IOException {
        Path target = plan.toAbsolutePath();
        try (Delivery delivery = new Delivery(target.getParent())) {
            delivery.writeNew(target.getFileName().toString(), text.getBytes(StandardCharsets.UTF_8));
            delivery.deliver();
        } catch (FileAlreadyExistsException e) {
            throw new UsageException("“" + plan + "” is there, but cannot be read. Name another file with --columns.");
        }
    }

    private int enter(NamedBytes listed, NamedBytes planned, Catalogue catalogue, Tree tree) throws IOException {
        Entered entered = Entering.of(listed, planned, catalogue, tree, addFigures);
        Map<String, byte[]> shown = new LinkedHashMap<>(entered.files());
        entered.shown().forEach((path, text) -> shown.put(path, text.getBytes(StandardCharsets.UTF_8)));
        Findings findings = Exergue.judged(entered.findings(), catalogue);
        boolean sound = !findings.hasErrors();
        if (sound) {
            Findings after = Exergue.check(new OverlaidTree(tree, new MemoryTree(entered.files())), Progress.SILENT).findings();
            sound = after.all().stream().noneMatch(one -> one.severity() == Severity.ERROR
                    && entered.files().containsKey(one.place().file()));
            findings = findings.and(RowsTold.in(after, entered.rows(), listed.name()));
        }
        boolean writes = sound && !look && !entered.files().isEmpty();
        if (writes) {
            write(entered);
        }
        Report report = new Report(findings, new OverlaidTree(tree, new MemoryTree(shown)), source.toString());
        String lines = EnterText.of(entered, listed.name(), source.toString(), look, sound);
        format.print(report, (look && sound && !format.isForMachines() ? EnterText.firstEntries(entered) : "") + lines
                + HowMany.of(findings), terminal);
        return findings.hasErrors() ? ExitCode.SOURCE_ERRORS : ExitCode.CLEAN;
    }

    /** A new entry is never written over anything, not even over what has come there since the catalogue was read. */
    private void write(Entered entered) throws IOException {
        try (Delivery delivery = new Delivery(source)) {
            for (Map.Entry<String, byte[]> file : entered.made().entrySet()) {
                delivery.writeNew(file.getKey(), file.getValue());
            }
            for (Map.Entry<String, byte[]> file : entered.changed().entrySet()) {
                delivery.write(file.getKey(), file.getValue());
            }
            delivery.deliver();
        } catch (FileAlreadyExistsException e) {
            throw new UsageException("“" + e.getFile() + "” has come there while the list was read. Nothing was written; run the command again.");
        }
    }
}
