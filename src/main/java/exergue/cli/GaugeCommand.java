package exergue.cli;

import exergue.files.Cache;
import exergue.files.Delivery;
import exergue.files.FolderTree;
import exergue.files.Tree;
import exergue.files.WitnessedTree;
import exergue.finding.NearMiss;
import exergue.model.Catalogue;
import exergue.model.Coin;
import exergue.photo.Annotation;
import exergue.photo.GaugedFiles;
import exergue.source.SourceReader;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Measures coins on photographs, and holds them against their entry if there is one. */
@Command(name = "gauge", description = "Measures a coin on its photographs: diameters, area, scale, and from the edges of both "
        + "sides the die-axis. Where an entry of a catalogue names the photograph, its diameter and axis are compared.")
final class GaugeCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "PHOTO", arity = "1..2",
            description = "A photograph of one side or of both side by side; or two photographs, obverse and reverse.")
    private List<Path> photos = new ArrayList<>();

    @Option(names = "--source", paramLabel = "SOURCE",
            description = "Folder of the catalogue. Default: the folder with catalogue.yaml that the photograph lies in.")
    private Path source;

    @Option(names = "--entry", paramLabel = "ID",
            description = "The coin, by its id. Default: the one whose entry names the photograph.")
    private String entry;

    @Option(names = "--ppi", paramLabel = "PIXELS",
            description = "Pixels to the inch, for a scan without a scale bar.")
    private Double ppi;

    @Option(names = "--annotated", paramLabel = "FILE",
            description = "Also draws what was measured on the photographs, as a PNG file.")
    private Path annotated;

    @Mixin
    private CacheOption kept;

    GaugeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (annotated != null && !annotated.toString().endsWith(".png")) {
            throw new UsageException("“" + annotated + "” is to be a PNG file: let its name end in .png.");
        }
        if (ppi != null && !(ppi > 0)) {
            throw new UsageException("--ppi=" + ppi + " is no number of pixels to the inch. Give one above 0, such as --ppi=600.");
        }
        Optional<Path> folder = source != null ? Optional.of(source) : GaugedEntry.folderAbove(photos.get(0));
        Optional<Catalogue> catalogue = folder.isEmpty() ? Optional.empty() : SourceReader.read(SourceFolder.open(folder.get())).catalogue();
        List<String> names = photos.stream().map(photo -> GaugedEntry.inside(folder, photo)).toList();
        Optional<Coin> coin = entry == null ? catalogue.flatMap(all -> GaugedEntry.naming(all, names)) : Optional.of(asked(catalogue));
        List<GaugedPhoto> gauged = new ArrayList<>();
        for (int i = 0; i < photos.size(); i++) {
            gauged.add(gauged(photos.get(i), names.get(i), kept.ofSource(folder)));
        }
        GaugeText text = GaugeText.of(gauged, GaugedEntry.of(coin, catalogue, gauged), ppi == null ? OptionalDouble.empty() : OptionalDouble.of(ppi));
        terminal.out().print(text.lines());
        if (annotated != null && !text.drawings().isEmpty()) {
            write(text.drawings());
        }
        return text.measured() ? ExitCode.CLEAN : ExitCode.SOURCE_ERRORS;
    }

    private void write(List<GaugeText.Drawing> drawings) throws IOException {
        List<Annotation.Sheet> sheets = new ArrayList<>();
        for (GaugeText.Drawing drawing : drawings) {
            sheets.add(drawing.sheet());
        }
        Path file = annotated.toAbsolutePath();
        try (Delivery delivery = new Delivery(file.getParent())) {
            delivery.write(file.getFileName().toString(), Annotation.png(sheets));
            delivery.deliver();
        }
        terminal.out().println("Drawn on the photographs: " + annotated);
    }

    private Coin asked(Optional<Catalogue> catalogue) {
        if (catalogue.isEmpty()) {
            throw new UsageException("“--entry=" + entry + "” needs a catalogue. Name its folder with --source=FOLDER.");
        }
        List<String> ids = catalogue.get().coins().stream().map(coin -> coin.id().value()).toList();
        return catalogue.get().coins().stream().filter(coin -> coin.id().value().equals(entry)).findFirst()
                .orElseThrow(() -> new UsageException("The catalogue has no coin “" + entry + "”."
                        + NearMiss.of(entry, ids).map(near -> " Did you mean “" + near + "”?").orElse("")));
    }

    private static GaugedPhoto gauged(Path photo, String inside, Cache cache) throws IOException {
        Path file = photo.toAbsolutePath().normalize();
        if (FolderTree.isFolder(file)) {
            throw new UsageException("“" + photo + "” is a folder. Name a photograph.");
        }
        try {
            String name = file.getFileName().toString();
            Tree folder = new WitnessedTree(new FolderTree(file.getParent(), Instant.now()), cache);
            return new GaugedPhoto(photo.toString(), inside, folder, name, new GaugedFiles(folder, cache, CacheOption.workroom()).one(name));
        } catch (NoSuchFileException | NotDirectoryException e) {
            throw new UsageException("There is no file “" + photo + "”.");
        }
    }
}
