package bandwright.pipeline.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import bandwright.rules.orders.Site;
import bandwright.rules.orders.Sites;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which files a pattern of sites.csv takes. */
class FilePatternTest {
    @ParameterizedTest
    @CsvSource({
        "web-*.csv,      web-shop.csv,     true",
        "web-*.csv,      WEB-.CSV,         true",
        "web-*.csv,      web-shop.csv.bak, false",
        "*,              orders.xlsx,      true",
        "?????.csv,      march.csv,        true",
        "?????.csv,      may.csv,          false",
        "*sale*2026*,    a sale of 2026,   true",
        "*sale*2026*,    2026 sale,        false",
        "a*b*c,          abcbc,            true",
        "a*b*c,          abcb,             false",
        "a[b].c+,        a[b].c+,          true",
        "a.b,            axb,              false",
        "**a**,          ba,               true",
    })
    void starsAndQuestionMarks(String pattern, String file, boolean fits) {
        assertThat(sites(pattern).findByFile(file).isPresent()).isEqualTo(fits);
    }

    @Test
    void manyStarsTakeNoTime() {
        SiteList sites = sites("*a".repeat(40) + "*b");
        assertTimeoutPreemptively(Duration.ofSeconds(30), () -> assertThat(sites.findByFile("a".repeat(255)))
                .isEmpty());
    }

    private static SiteList sites(String pattern) {
        Site site = new Site(
                "web", pattern, OptionalInt.empty(), Optional.empty(), '.', false, List.of(), "", List.of(), false, "");
        return new SiteList(new Sites(List.of(site)));
    }
}
