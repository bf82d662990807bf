package bandwright.pipeline.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The weekend's orders as the Trust's own shop hands them over: one row an item, the buyer said again in each. */
final class WeekendOrders {
    static final List<String> HEADERS = List.of(
            "Order Number",
            "Order Date",
            "Ship By",
            "Buyer Name",
            "Ship To",
            "Street",
            "City",
            "Postcode",
            "Country",
            "Gift",
            "Gift Message",
            "Status",
            "SKU",
            "Design",
            "Qty",
            "Heat Source",
            "Personalisation");

    private static final String BUYERS = """
            Q1031 | 2026-02-19 | 2026-02-27 | Hesper Lanyon | Hesper Lanyon | 9 Bell Steps | Quillmoor | QM1 2HL | Skerry Isles | |
            Q1042 | 2026-02-27 | 2026-03-04 | Ada Fennimore | Ada Fennimore | 3 Gannet Steps | Quillmoor | QM1 4TL | Skerry Isles | |
            Q1043 | 2026-02-27 | 2026-03-04 | Jonah Pellow | Jonah Pellow | The Old Signal House, Wrack Lane | Nether Skerry | NS8 2QD | Skerry Isles | |
            Q1044 | 2026-02-27 | 2026-03-05 | Morwenna Tidewell | Perran Tidewell | 11 Ropewalk | Quillmoor | QM2 9AA | Skerry Isles | yes | To the best bass in the choir. Sing on!
            Q1045 | 2026-02-28 | 2026-03-05 | Ingrid Solberg-Hale | Ingrid Solberg-Hale | Fyrgata 14 | Bergvik | 5003 | Nordmark | |
            Q1046 | 2026-02-28 | 2026-03-05 | Tobias Wren | Tobias Wren | Flat 2, 40 Beacon Row | Quillmoor | QM1 1LH | Skerry Isles | |
            Q1047 | 2026-02-28 | 2026-03-06 | Quillmoor Rowing Club | The boathouse steward | Slipway 1 | Quillmoor | QM1 7RC | Skerry Isles | |
            Q1048 | 2026-02-28 | 2026-03-06 | Elspeth Carrow | Elspeth Carrow | 7 Lampmakers Court | Saltby | SB3 6EH | Skerry Isles | |
            Q1049 | 2026-02-28 | 2026-03-06 | Cosmo Varley | Cosmo Varley | 18 Cable Street | Saltby | SB1 4CV | Skerry Isles | |
            Q1050 | 2026-03-01 | 2026-03-06 | Wilhelmina Strake | Wilhelmina Strake | Limekiln Cottage | Wrackham | WR4 4WS | Skerry Isles | |
            Q1051 | 2026-03-01 | 2026-03-09 | The Foghorn Tea Room | Odile Marchbank | 1 Harbour Parade | Quillmoor | QM1 1FT | Skerry Isles | |
            Q1052 | 2026-03-01 | 2026-03-09 | Rufus Halliard | Rufus Halliard | Net Loft, 5 Capstan Row | Saltby | SB2 8RH | Skerry Isles | |
            Q1053 | 2026-03-01 | 2026-03-09 | Marigold Quayle | Marigold Quayle | 2 Fathom Street | Wrackham | WR4 1FS | Skerry Isles | |
            """;

    private static final String ITEMS = """
            Q1031 | Paid | MUG-15-W | skerries | 1 |
            Q1042 | Paid | MUG-11-W | tern | 2 | | Name: Ada; Name: Tobias
            Q1042 | Paid | COAST-S | keeper | 1 |
            Q1042 | Paid | COAST-S | foghorn | 1 |
            Q1042 | Paid | COAST-S | lamp | 1 |
            Q1042 | Paid | COAST-S | skerries | 1 |
            Q1043 | Paid | MUG-15-W | tern | 1 | | Captain Jonah Pellow
            Q1043 | Paid | MUG-06-W | shoal | 2 | oven
            Q1044 | Paid | STEIN-16-F | choir | 1 |
            Q1044 | Paid | MUG-11-BL | lamp | 1 |
            Q1045 | Paid | MUG-11-GL | lamp | 2 |
            Q1045 | Paid | MUG-11-CC | choir | 1 |
            Q1046 | Paid | MUG-11-WH | choir | 1 |
            Q1046 | Paid | TILE-4-W | keeper | 2 |
            Q1047 | Paid | TUM-20-W | skerries | 3 |
            Q1047 | Paid | MUG-15-W | rowing club | 4 | | Name: Hesper; Name: Zoë; Name: Łucja; Name: Ιωάννης
            Q1047 | Paid | MUG-11-W | rowing club | 1 |
            Q1048 | Paid | CAMP-12-E | shoal | 2 |
            Q1048 | Paid | STEIN-16-F | lamp | 1 | clamp
            Q1049 | Cancelled | MUG-11-W | tern | 1 |
            Q1050 | Paid | MUG-11-F | foghorn | 2 |
            Q1050 | Paid | STEIN-22-W | tide table | 1 |
            Q1051 | Paid | MUG-11-W | foghorn | 6 |
            Q1051 | Paid | MUG-20-W | tide table | 2 |
            Q1051 | Paid | COAST-R | foghorn | about a dozen |
            Q1052 | Paid | MUG-14-LIP | keeper | 1 |
            Q1052 | Paid | TUM-12-W | shoal | 1 |
            Q1053 | Paid | CONE-12-W | pennants | 2 | | Name: Marigold; Name: Ossian
            Q1053 | Paid | MUG-11-W | watch | 2 |
            """;

    private WeekendOrders() {}

    /** Whole numbers as such, days as days, all else as typed. */
    static List<List<Object>> rows() {
        List<List<Object>> rows = new ArrayList<>();
        for (String item : ITEMS.lines().toList()) {
            List<String> cells = cells(item);
            String buyer = BUYERS.lines()
                    .filter(line -> line.startsWith(cells.get(0)))
                    .findFirst()
                    .orElseThrow();
            List<Object> row = new ArrayList<>();
            cells(buyer).forEach(cell -> row.add(value(cell)));
            cells.subList(1, cells.size()).forEach(cell -> row.add(value(cell)));
            rows.add(row);
        }
        return rows;
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
    }

    private static Object value(String cell) {
        if (cell.matches("\\d{4}-\\d\\d-\\d\\d")) {
            return LocalDate.parse(cell);
        }
        return cell.matches("\\d{1,3}") ? (Object) Integer.valueOf(cell) : cell;
    }
}
