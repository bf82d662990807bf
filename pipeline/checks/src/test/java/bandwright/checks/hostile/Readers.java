package bandwright.checks.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.checks.InkProfile;
import bandwright.checks.WholeRun;
import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunId;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.write.pdf.Pictures;
import bandwright.pipeline.write.pdf.PreparedPictures;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.table.Fault;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The program's readers, each behind one call: a sound input is taken, any other is refused in plain words. */
final class Readers {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final String TAKEN = "taken";
    /** Printing takes a hundred times as long as deciding, and most mistakes of a table show there. */
    private static final int ONE_PRINTED_OF = 12;
    /** One row of each kind of blank, so that a rulebook is asked for all that it says. */
    private static final String ORDERS = """
            Order,SKU,Design,Qty,Text: name
            Q1,MUG-11-W,tern,2,Ada
            Q2,COAST-S,lamp,1,
            Q3,TUM-20-W,pennants,1,Zoë
            Q4,CONE-12-W,choir,1,
            """;

    private final Path scratch;
    private final Rulebook rules;
    private final Rulebook lenient;
    private int outboxes;

    Readers(Path scratch) throws IOException, RulebookFaults {
        this.scratch = scratch;
        this.rules = Rulebook.read(Optional.empty());
        Path folder = cleared("lenient");
        Files.writeString(folder.resolve("shop.csv"), "key,value\nppi_hold,0\ncrop_hold,100 %\nstretch_hold,9999 %\n");
        this.lenient = Rulebook.read(Optional.of(folder));
    }

    /** An order file: every row ends once, and what can't be read is said. */
    Target.Trial orders(String ending) {
        return input -> {
            Path file = Files.write(scratch.resolve("orders" + ending), input);
            return ends(decided(file, rules));
        };
    }

    /** An order file whose rows are printed as well: what strangers typed gets into every output. */
    Target.Trial wholeRun() {
        return input -> ends(published(Files.write(scratch.resolve("orders.csv"), input), rules));
    }

    /** The cell with the buyer's words, of a design with one field. */
    Target.Trial personalisation() {
        return input -> {
            String cell = new String(input, StandardCharsets.UTF_8).replace("\"", "\"\"");
            String text = "Order,SKU,Design,Qty,Personalisation\nQ1,MUG-11-W,tern,2,\"" + cell + "\"\n";
            Path file = Files.writeString(scratch.resolve("cell.csv"), text, StandardCharsets.UTF_8);
            return ends(decided(file, rules));
        };
    }

    /** A table of a shop's own; if it is taken, a run with it ends well, too. */
    Target.Trial table(String name) {
        return input -> {
            Path folder = cleared("rules");
            Files.write(folder.resolve(name), input);
            return withRules(folder, Arrays.hashCode(input) % ONE_PRINTED_OF == 0);
        };
    }

    /** A printer's profile, used for a sheet. */
    Target.Trial printerProfile() {
        return input -> {
            Path folder = cleared("rules");
            Files.writeString(
                    folder.resolve("printers.csv"),
                    "id,papers,mirror,colour,icc_profile,intent\ndesk,letter|a4,file,profile,inks.icc,perceptual\n");
            Files.write(folder.resolve("inks.icc"), input);
            return withRules(folder, Arrays.hashCode(input) % ONE_PRINTED_OF == 0);
        };
    }

    /** A font of a shop's own, asked for letters, accents and a text that it may not have. */
    Target.Trial font() {
        return input -> {
            Path folder = cleared("rules");
            Files.writeString(folder.resolve("fonts.csv"), "id,file\nown,own.ttf\n");
            Files.writeString(
                    folder.resolve("texts.csv"),
                    "design,field,anchor,x,y,width,height,font\ntern,name,band,20 %,70 %,60 %,20 %,own\n");
            Files.write(folder.resolve("own.ttf"), input);
            return withRules(folder, Arrays.hashCode(input) % ONE_PRINTED_OF == 0);
        };
    }

    private String withRules(Path folder, boolean isPrinted) throws Exception {
        try {
            Rulebook own = Rulebook.read(Optional.of(folder));
            Path orders = Files.writeString(scratch.resolve("few.csv"), ORDERS);
            return ends(isPrinted ? published(orders, own) : decided(orders, own));
        } catch (RulebookFaults faults) {
            assertThat(faults.faults()).isNotEmpty();
            for (Fault fault : faults.faults()) {
                Told.plainly(fault.message(), fault.cure());
                Told.line("fault", fault.line());
            }
            return "faults";
        }
    }

    /** A picture: what is taken can be seen, and stored in a PDF, as it is and in a printer's inks. */
    Target.Trial picture() throws Exception {
        Path folder = cleared("inks");
        Files.writeString(
                folder.resolve("printers.csv"),
                "id,papers,mirror,colour,icc_profile,intent\ndesk,letter,file,profile,inks.icc,\n");
        Files.write(folder.resolve("inks.icc"), InkProfile.bytes());
        Rulebook inks = Rulebook.read(Optional.of(folder));
        return input -> {
            Path shelf = cleared("artwork");
            Files.write(shelf.resolve("tern"), input);
            Found found = ArtworkShelf.open(shelf).find("tern");
            if (found instanceof Found.Refused refused) {
                Told.plainly(refused.flaw().message(), refused.flaw().cure());
                return refused.flaw().name();
            }
            assertThat(found).isInstanceOf(Found.Picture.class);
            Found.Picture picture = (Found.Picture) found;
            Sights sights = new Sights();
            if (sights.isDamaged(picture.artwork())) {
                return "damaged inside";
            }
            assertThat(sights.of(picture.artwork())).as("can be seen").isPresent();
            stored(picture, inks.printers().list().get(0).profile());
            stored(picture, Optional.empty());
            return TAKEN;
        };
    }

    private void stored(Found.Picture picture, Optional<bandwright.rules.paper.PrinterProfile> printer)
            throws IOException {
        try (PDDocument document = new PDDocument()) {
            PreparedPictures prepared = new PreparedPictures(cleared("prepared"));
            prepared.shapes(picture.artwork());
            new Pictures(document, prepared, printer).of(picture.artwork());
            document.save(new ByteArrayOutputStream());
        }
    }

    /** A picture that a whole run prints, on a straight wall and on a cone. */
    Target.Trial printed() {
        return input -> {
            Path shelf = cleared("artwork");
            Files.write(shelf.resolve("gull.any"), input);
            Path file = Files.writeString(
                    scratch.resolve("few.csv"),
                    "Order,SKU,Design,Qty\nQ1,MUG-11-W,gull.any,1\nQ2,CONE-12-W,gull.any,1\n");
            return ends(published(file, lenient, shelf));
        };
    }

    /** A ledger that somebody's disk, or somebody, has changed. */
    Target.Trial ledger() {
        return input -> {
            Path outbox = cleared("outbox");
            Files.write(outbox.resolve(Ledger.FILE), input);
            Path file = Files.writeString(scratch.resolve("few.csv"), ORDERS);
            try (Ledger ledger = Ledger.open(outbox)) {
                ledger.purge(MONDAY);
                ledger.highestRun(MONDAY);
                ledger.list("Q1");
                ledger.spoil(List.of("Q1-1-1"), MONDAY, "smudged");
                Flow.decide(new RunId(MONDAY, 1), asked(file, artwork()), rules, ledger, stage -> {});
                return TAKEN;
            } catch (OutboxFault fault) {
                Told.plainly(fault.getMessage(), fault.cure());
                return "refused";
            }
        };
    }

    private static Path artwork() {
        return WholeRun.SAMPLE.resolve("artwork");
    }

    private static Flow.Request asked(Path file, Path artwork) {
        return new Flow.Request(List.of(file), artwork, Optional.empty());
    }

    private Run decided(Path file, Rulebook by) throws IOException {
        try (Ledger none = Ledger.look(scratch.resolve("no-outbox"))) {
            return Flow.decide(new RunId(MONDAY, 1), asked(file, artwork()), by, none, stage -> {});
        }
    }

    private Run published(Path file, Rulebook by) throws IOException {
        return published(file, by, artwork());
    }

    private Run published(Path file, Rulebook by, Path artwork) throws IOException {
        Path folder = cleared("outbox");
        try (Outbox outbox = Outbox.open(folder, waiting -> {});
                Ledger ledger = Ledger.open(folder)) {
            RunId id = outbox.nextRun(MONDAY, ++outboxes);
            Run run = Flow.decide(id, asked(file, artwork), by, ledger, stage -> {});
            if (Flow.hasNews(run, by)) {
                Flow.publish(run, by, outbox, ledger, stage -> {});
            }
            return run;
        }
    }

    private static String ends(Run run) {
        int rows = 0;
        for (InboxFile file : run.orders().files()) {
            rows += file.rows();
            if (file.state() != InboxFile.State.READ) {
                Told.line("file", file.message());
            }
        }
        for (HeldRow held : run.held()) {
            Told.plainly(held.reason().message(), held.reason().cure());
        }
        Map<String, Integer> sizes = Map.of(
                "lines", run.orders().lines().size(),
                "held", run.orders().held().size(),
                "skipped", run.orders().skipped().size(),
                "empty", run.orders().empty().size());
        assertThat(sizes.values().stream().mapToInt(size -> size).sum())
                .as("rows of %s", sizes)
                .isEqualTo(rows);
        return rows == 0
                ? run.orders().files().get(0).state().word()
                : run.units().isEmpty() ? run.held().isEmpty() ? "nothing" : "held" : TAKEN;
    }

    private Path cleared(String name) throws IOException {
        Path folder = scratch.resolve(name);
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        return Files.createDirectories(folder);
    }
}
