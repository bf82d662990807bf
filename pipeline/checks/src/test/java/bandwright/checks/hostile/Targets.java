package bandwright.checks.hostile;

import bandwright.checks.WholeRun;
import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.Outbox;
import bandwright.rules.Rulebook;
import bandwright.rules.table.TableKind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every reader that strangers' bytes, or a shop's own mistakes, get to. */
final class Targets {
    private static final List<String> ZIPPED = List.of(
            "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/hostname\">]>",
            "&b;",
            "&#0;",
            "&#x1F;",
            "<c r=\"ZZZ99999999\">",
            "r=\"A1048577\"",
            "t=\"s\"",
            "<v>99999999</v>",
            "<v>1e308</v>",
            "<v>NaN</v>",
            "../",
            "/",
            "s=\"70000\"",
            "<mergeCell ref=\"A1:XFD1048576\"/>",
            "count=\"2147483647\"",
            "state=\"veryHidden\"",
            "date1904=\"1\"",
            "table:number-rows-repeated=\"99999999\"",
            "table:number-columns-repeated=\"99999999\"",
            "office:date-value=\"9999-99-99\"",
            "<text:s text:c=\"99999999\"/>",
            "<![CDATA[",
            "-->",
            "<!--",
            "</row>");

    private static final List<String> SVG = List.of(
            "<!DOCTYPE svg [<!ENTITY e \"e\">]>",
            "&e;",
            "<use href=\"#a\"/>",
            "id=\"a\"",
            "href=\"file:///etc/hostname\"",
            "url(#a)",
            "transform=\"scale(1e30)\"",
            "transform=\"matrix(0 0 0 0 0 0)\"",
            "width=\"1e9\"",
            "viewBox=\"0 0 0 0\"",
            "viewBox=\"-1e30 0 1 1\"",
            "NaN",
            "1e999",
            "-1",
            "%",
            "<style>*{fill:url(#a)}</style>",
            "<g filter=\"url(#a)\">",
            "<pattern id=\"a\" width=\".001\" height=\".001\">",
            "<mask id=\"a\">",
            "<marker id=\"a\">",
            "<text>\u202Efi</text>",
            "stroke-dasharray=\".0001\"",
            "stroke-width=\"1e9\"",
            "<image href=\"data:image/png;base64,AAAA\"/>",
            "d=\"M0 0A1e9 1 0 0 0 1 1z\"",
            "<tspan x=\"1 2 3\">",
            "<foreignObject/>",
            "<a href=\"x\">",
            "</g>",
            "<svg>",
            "<feTurbulence baseFrequency=\"9\" numOctaves=\"99\"/>",
            "<textPath href=\"#a\">",
            "<switch>",
            "<symbol id=\"a\">");

    private static final List<String> PDF = List.of(
            "3 0 R",
            "5 0 R",
            "99999 0 R",
            "<<",
            ">>",
            "[",
            "]",
            "(",
            ")",
            "endobj",
            "stream\n",
            "endstream",
            "xref",
            "trailer",
            "/Length 99999999",
            "/Filter /FlateDecode",
            "/Filter [/LZWDecode /DCTDecode]",
            "/Filter /JBIG2Decode",
            "/Filter /JPXDecode",
            "/Encrypt 3 0 R",
            "/Kids [2 0 R]",
            "/MediaBox [0 0 0 0]",
            "/MediaBox [0 0 1e30 -5]",
            "/Rotate 45",
            "/UserUnit 1e9",
            "q ",
            "Q ",
            "/F0 Do ",
            "BT ",
            "ET ",
            "sh ",
            "W n ",
            "1e30 0 0 1e30 0 0 cm ",
            "/Pattern cs /P scn ",
            "/SMask",
            "/BM /Multiply",
            "/XStep 0",
            "/FunctionType 4",
            "/ColorSpace /DeviceN",
            "BI /W 9999 /H 9999 ID ",
            " EI",
            "/N 5",
            "/ShadingType 7",
            "/FontFile2",
            "%%EOF");

    private static final List<String> CELLS = List.of(
            ",",
            ";",
            "\t",
            "|",
            "\"",
            "\"\"",
            "\r",
            "\n",
            "\r\n",
            "\u0000",
            "\u001B[2J",
            "\u202E",
            "\u2028",
            "\uFEFF",
            "=HYPERLINK(\"x\")",
            "+1",
            "-1",
            "@SUM",
            "1E+12",
            "1e999",
            "NaN",
            "99999999999999999999",
            "0",
            "2.5",
            "1/0",
            "9 7/8 in",
            "-5 mm",
            "190 C",
            "3 min",
            "%",
            "../../etc/passwd",
            "C:\\con",
            "con",
            "a/b",
            "..",
            ".",
            "#FFF",
            "<b>&amp;&#0;&#x110000;",
            "javascript:x",
            "\uD83D\uDE00",
            "e\u0301\u0301\u0301",
            "ﷺ",
            "yes",
            "no",
            "*",
            "?",
            "Name:",
            "Text: name",
            "Order",
            "SKU",
            "Qty",
            "Site",
            "30.2.2026",
            "9999-12-31",
            "12:60",
            "'",
            "_x000A_",
            "${x}",
            "{0}",
            "{",
            "cone",
            "flat",
            "oven",
            "sku-1",
            "material:glass",
            "&",
            "=",
            ":",
            "1 in|2 in",
            "5 m",
            "300 in");

    private final Readers readers;
    private final Path scratch;

    Targets(Path scratch) throws Exception {
        this.readers = new Readers(scratch);
        this.scratch = scratch;
    }

    List<Target> all() throws Exception {
        List<Target> all = new ArrayList<>();
        all.add(new Target("csv", OrderSeeds.text(','), Mending.NONE, CELLS, readers.orders(".csv")));
        all.add(new Target("tsv", OrderSeeds.text('\t'), Mending.NONE, CELLS, readers.orders(".tsv")));
        all.add(new Target("xlsx", OrderSeeds.xlsx(), Mending.ZIP, ZIPPED, readers.orders(".xlsx")));
        all.add(new Target("xls", OrderSeeds.xls(), Mending.NONE, List.of(), readers.orders(".xls")));
        all.add(new Target("ods", OrderSeeds.ods(), Mending.ZIP, ZIPPED, readers.orders(".ods")));
        all.add(new Target("run", OrderSeeds.text(','), Mending.NONE, CELLS, readers.wholeRun()));
        all.add(new Target("personalisation", cells(), Mending.NONE, CELLS, readers.personalisation()));
        for (TableKind kind : TableKind.values()) {
            Path table = Path.of("..", "..", "rules", "tables", kind.file());
            all.add(new Target(
                    "table-" + kind.file().replace(".csv", ""),
                    List.of(Files.readAllBytes(table)),
                    Mending.NONE,
                    CELLS,
                    readers.table(kind.file())));
        }
        Target.Trial picture = readers.picture();
        all.add(new Target("jpeg", PictureSeeds.jpeg(), Mending.NONE, List.of(), picture));
        all.add(new Target("png", PictureSeeds.png(), Mending.PNG, List.of(), picture));
        all.add(new Target("tiff", PictureSeeds.tiff(), Mending.NONE, List.of(), picture));
        all.add(new Target(
                "webp", PictureSeeds.webp(), Mending.NONE, List.of("VP8X", "ALPH", "ANMF", "VP8L"), picture));
        all.add(new Target("gif", PictureSeeds.gif(), Mending.NONE, List.of(), picture));
        all.add(new Target("svg", DrawingSeeds.svg(), Mending.NONE, SVG, picture));
        all.add(new Target("pdf", DrawingSeeds.pdf(), Mending.NONE, PDF, picture));
        all.add(new Target("printed", pictures(), Mending.NONE, List.of(), readers.printed()));
        all.add(new Target("font", DrawingSeeds.font(), Mending.NONE, List.of("glyf", "GSUB", "CFF "), readers.font()));
        all.add(new Target("profile", DrawingSeeds.profile(), Mending.NONE, List.of(), readers.printerProfile()));
        all.add(new Target("ledger", List.of(ledger()), Mending.NONE, List.of("units", "making"), readers.ledger()));
        return all;
    }

    private static List<byte[]> cells() {
        return List.of("Name: Ada, Date: 3 May", "Ada", "Ada\nBen", "Name: Ada<br/>Name: Ben", "Text: name: Zo&euml;")
                .stream()
                .map(text -> text.getBytes(StandardCharsets.UTF_8))
                .toList();
    }

    /** One of each kind: a whole run takes its time. */
    private static List<byte[]> pictures() throws IOException {
        return List.of(
                PictureSeeds.png().get(0),
                PictureSeeds.jpeg().get(0),
                PictureSeeds.jpeg().get(4),
                PictureSeeds.gif().get(0),
                PictureSeeds.tiff().get(0),
                PictureSeeds.webp().get(0),
                DrawingSeeds.svg().get(0),
                DrawingSeeds.pdf().get(0));
    }

    /** The ledger of a run of a few pieces. */
    private byte[] ledger() throws Exception {
        Path folder = Files.createDirectories(scratch.resolve("ledger-seed"));
        Path file = Files.writeString(
                folder.resolve("few.csv"), "Order,SKU,Design,Qty\nQ1,MUG-11-W,tern,2\nQ2,COAST-S,nothing,1\n");
        Rulebook rules = Rulebook.read(Optional.empty());
        Path outbox = folder.resolve("outbox");
        try (Outbox place = Outbox.open(outbox, waiting -> {});
                Ledger ledger = Ledger.open(outbox)) {
            Flow.Request asked = new Flow.Request(List.of(file), WholeRun.SAMPLE.resolve("artwork"), Optional.empty());
            Run run = Flow.decide(place.nextRun(LocalDate.of(2026, 3, 2), 0), asked, rules, ledger, stage -> {});
            Flow.publish(run, rules, place, ledger, stage -> {});
        }
        return Files.readAllBytes(outbox.resolve(Ledger.FILE));
    }
}
