package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.quantity.ConductorSize.Series;
import org.quaybook.reference.Citation.Standing;

/** A table that cannot be trusted is refused, and the refusal says where. */
class TableTest {

    static final String HEADINGS = """
            # title: A table
            # source: A standard
            # edition: 2020
            # number: Table 7
            # units: A
            # standing: seen
            # publish: yes
            # caution: none
            # key: size
            """;

    static Table table(String rows) {
        return Table.parse("probe", HEADINGS + rows);
    }

    @Test
    void aGoodTableNamesItsSource() {
        Table table = table("size,a,standing\n1,10,from-memory\n2,20,seen\n");

        assertThat(table.row("1").citation()).isEqualTo(new Citation("A standard:2020, Table 7", Standing.FROM_MEMORY));
        assertThat(table.row("2").found(20).row()).isEqualTo("2");
        assertThat(table.ascending("a").rows()).hasSize(2);
    }

    @Test
    void aRowsOwnSourceGoesFirst() {
        assertThat(table("size,source\n1,Another\n").row("1").citation())
                .isEqualTo(new Citation("Another", Standing.SEEN));
    }

    @Test
    void aMissingRowIsNamed() {
        assertThatThrownBy(() -> table("size,a\n1,10\n").row("3")).isInstanceOfSatisfying(NotInTable.class, missing -> {
            assertThat(missing.table()).isEqualTo("probe");
            assertThat(missing.wanted()).isEqualTo("3");
            assertThat(missing.holds()).isEqualTo("1");
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "size,a\n",
                "size,a\n1,\n",
                "size,a\n1, 10\n",
                "size,a\n1\n",
                "size,a\n1,10,3\n",
                "size,a\n1,\"10\"\n",
                "size,a\n1,10\n\n2,20\n",
                "size,a\n1,10\n1,20\n",
                "size,size\n1,10\n",
                "other,a\n1,10\n",
                "size,standing\n1,rumour\n"
            })
    void gapsAndTwinsAreRefused(String rows) {
        assertThatThrownBy(() -> table(rows)).isInstanceOf(TableFault.class).hasMessageStartingWith("shared/probe.csv");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ten", "NaN", "Infinity", "1e3", "1d", "0x1p3", "1,5", "١", ".5", "5.", "-", "--1", "+1"})
    void whatIsNoNumberIsRefused(String cell) {
        String quotable = cell.replace(',', ';');
        TableRow row = table("size,a\n1," + quotable + "\n").rows().get(0);

        assertThatThrownBy(() -> row.number("a")).isInstanceOf(TableFault.class).hasMessageContaining("line 11");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,10\n2,10\n", "1,10\n2,9\n"})
    void disorderIsRefused(String rows) {
        assertThatThrownBy(() -> table("size,a\n" + rows).ascending("a"))
                .isInstanceOf(TableFault.class)
                .hasMessageContaining("line 12");
    }

    @Test
    void aTableWithoutItsHeadingsIsRefused() {
        String unsourced = HEADINGS.replace("# source: A standard\n", "");
        String twice = HEADINGS + "# title: Again\n";
        String empty = HEADINGS.replace("A standard", " ");

        for (String headings : List.of(unsourced, twice, empty)) {
            assertThatThrownBy(() -> Table.parse("probe", headings + "size,a\n1,10\n"))
                    .isInstanceOf(TableFault.class);
        }
    }

    @Test
    void aMissingTableIsRefused() {
        assertThatThrownBy(() -> Table.load("no-such-table")).isInstanceOf(TableFault.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "size,t60,t90\n1,10,20\n1.5,9,20\n",
                "size,t60,t90\n1,10,9\n",
                "size,t90,t60\n1,10,20\n",
                "size,t60,t90\n1.5,10,20\n1,12,22\n",
                "size,t60,t90\n1,0,20\n"
            })
    void anAmpacityTableThatFallsIsRefused(String rows) {
        Table spaces = table("size,insulation-c,factor\n1,60,0.5\n");
        Table bundles = table("size,from,to,from-v,factor\n1,1,-,0,1\n");

        assertThatThrownBy(() -> new AmpacityTable(Series.METRIC, table(rows), spaces, bundles))
                .isInstanceOf(TableFault.class);
    }

    @Test
    void aHoleBetweenBundlesIsRefused() {
        Table amperes = table("size,t60\n1,10\n");
        Table spaces = table("size,insulation-c,factor\n1,60,0.5\n");
        Table bundles = table("size,from,to,from-v,factor\n1,1,3,0,1\n2,5,-,0,0.7\n");

        assertThatThrownBy(() -> new AmpacityTable(Series.METRIC, amperes, spaces, bundles))
                .isInstanceOf(TableFault.class)
                .hasMessageContaining("4 conductors");
    }

    @Test
    void aRulebookThatLeavesSomethingOutIsRefused() {
        Table incomplete = table("size,rulebook,item,value,unit\n1,half,mains-voltage,230,V\n");

        assertThatThrownBy(() -> new Rulebooks(incomplete, TableShelf.standard()))
                .isInstanceOf(TableFault.class)
                .hasMessageContaining("half says nothing on");
    }

    static Stream<String> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("shared"))) {
            return files
                    .filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyFileLoads(String file) {
        assertThat(file).endsWith(".csv");
        assertThat(Table.load(file.replace(".csv", "")).rows()).isNotEmpty();
    }
}
