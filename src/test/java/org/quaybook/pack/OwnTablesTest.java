package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.diag.Diagnostic;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Input;
import org.quaybook.quantity.Current;
import org.quaybook.reference.Citation;
import org.quaybook.reference.Citation.Standing;
import org.quaybook.text.Words;

/** An installer's own copies of tables. The numbers in them are invented: no text of a standard stands here. */
class OwnTablesTest {

    private static final Words WORDS = Words.of("en-GB");

    private static final String SPACES = """
            # title: An invented table
            # source: Invented Standard 4711
            # edition: 2031
            # number: Table X
            # units: insulation rating °C; factor 1
            # standing: own-copy
            # publish: no
            # caution: invented
            # key: insulation-c
            insulation-c,factor
            70,0.61
            85,0.71
            """;

    private static final String RULES = """
            # title: Invented rules
            # source: per row
            # edition: -
            # number: -
            # units: per row
            # standing: own-copy
            # publish: no
            # caution: invented
            # key: rulebook item
            rulebook,item,value,unit,source
            iso-13297,fuse-load,70,%,Invented Standard 4711 clause 3
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void aJobWithAFolderForTables() throws IOException {
        Path demo = Path.of("demo-jobs/persimmon-tug");
        Files.copy(demo.resolve("installer.yaml"), folder.resolve("installer.yaml"));
        Files.writeString(
                folder.resolve("job.yaml"),
                Files.readString(demo.resolve("job.yaml"))
                        .replace("  installer: installer.yaml\n", "  installer: installer.yaml\n  tables: tables\n")
                        .replace("route: outside-engine-space", "route: engine-space"));
        Files.createDirectory(folder.resolve("tables"));
    }

    private void table(String name, String content) throws IOException {
        Files.writeString(folder.resolve("tables").resolve(name + ".csv"), content);
    }

    private Figure<?> figure(String key) {
        Road.Judged judged = Road.judge(folder);
        assertThat(judged.problems()).isEmpty();
        Figures figures = Objects.requireNonNull(judged.assessment()).figures();
        return figures.all().stream()
                .filter(it -> it.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private List<Diagnostic> problems() {
        Road.Judged judged = Road.judge(folder);
        assertThat(judged.assessment()).isNull();
        return judged.problems();
    }

    /** A table with one source is replaced whole, and the figure names the copy. */
    @Test
    void aTableIsReplaced() throws IOException {
        double before = figure("cable.B1.allowed").value().canonical();
        table("ampacity-iso-spaces", SPACES);

        Figure<?> after = figure("cable.B1.allowed");

        assertThat(after.value()).isEqualTo(new Current(before / 0.82 * 0.71));
        assertThat(after.working().inputs())
                .anySatisfy(input -> assertThat(input.origin())
                        .isEqualTo(new Input.FromTable(
                                "ampacity-iso-spaces",
                                "85 °C",
                                new Citation("Invented Standard 4711:2031, Table X", Standing.OWN_COPY))));
    }

    /** A table with a source per row gives way row by row: the other rules stay. */
    @Test
    void aRuleIsReplaced() throws IOException {
        double load = figure("inverter.worst-current").value().canonical();
        table("rulebooks", RULES);

        assertThat(figure("fuse.F1.least").value().canonical()).isCloseTo(load / 0.70, within(1e-9));
        assertThat(figure("supply.allowed-drop").value().canonical()).isGreaterThan(0);
    }

    @Test
    void theInstallersFolderCountsWhereTheJobNamesNone() throws IOException {
        Path job = folder.resolve("job.yaml");
        Files.writeString(job, Files.readString(job).replace("  tables: tables\n", ""));
        Path profile = folder.resolve("installer.yaml");
        Files.writeString(profile, Files.readString(profile) + "tables: tables\n");
        double load = figure("inverter.worst-current").value().canonical();
        table("rulebooks", RULES);

        assertThat(figure("fuse.F1.least").value().canonical()).isCloseTo(load / 0.70, within(1e-9));
    }

    /** One clear message with file, line, column, what was found and what is allowed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "70,0.61 | 70,much | 11:4 | pack.table-number | much",
                "70,0.61 | 70, | 11:4 | pack.table-cell | may not be empty",
                "70,0.61 | 70,0.61,3 | 11:1 | pack.table-cells | Cells in the row: 3",
                "85,0.71 | 70,0.71 | 12:1 | pack.table-twice | 70",
                "85,0.71 | 60,0.71 | 12:1 | pack.table-order | 60",
                "standing: own-copy | standing: seen | 1:1 | pack.table-standing | own-copy",
                "standing: own-copy | standing: hearsay | 1:1 | pack.table-standing | hearsay",
                "key: insulation-c | key: factor | 1:1 | pack.table-headings | insulation-c",
                "insulation-c,factor | insulation-c,share | 10:1 | pack.table-columns | factor",
                "# caution: invented | # caution | 8:1 | pack.table-heading | # caution",
                "# publish: no | # color: no | 1:1 | pack.table-headings | publish"
            })
    void whatIsWrongIsToldWithItsPlace(String good, String bad, String position, String rule, String said)
            throws IOException {
        assertThat(SPACES).contains(good);
        table("ampacity-iso-spaces", SPACES.replace(good, bad));

        assertThat(problems()).singleElement().satisfies(problem -> {
            assertThat(problem.rule()).isEqualTo(rule);
            assertThat(problem.place().file()).endsWith("tables/ampacity-iso-spaces.csv");
            assertThat(problem.place().position()).hasToString(position);
            assertThat(WORDS.say(problem.message())).contains(said).doesNotContain("{");
        });
    }

    @Test
    void aTableWithoutRows() throws IOException {
        table("ampacity-iso-spaces", SPACES.substring(0, SPACES.indexOf("70,0.61")));
        assertThat(problems()).extracting(Diagnostic::rule).containsExactly("pack.table-no-rows");
    }

    @Test
    void aTableOfNoUse() throws IOException {
        table("appliances", SPACES);
        assertThat(problems()).extracting(Diagnostic::rule).containsExactly("pack.table-strange");
    }

    @Test
    void aRowOfNoUse() throws IOException {
        table("rulebooks", RULES.replace("fuse-load", "fuse-colour"));
        assertThat(problems()).extracting(Diagnostic::rule).containsExactly("pack.table-row");
    }

    /** Each table is told of, not only the first. */
    @Test
    void severalTablesAtOnce() throws IOException {
        table("ampacity-iso-spaces", SPACES.replace("0.61", "much"));
        table("rulebooks", RULES.replace("own-copy", "seen"));
        assertThat(problems()).extracting(Diagnostic::rule).containsExactly("pack.table-number", "pack.table-standing");
    }

    /** A value that no row of the kind may hold comes to light when the tables are put together. */
    @Test
    void tablesThatDoNotGoTogether() throws IOException {
        table("rulebooks", RULES.replace("70,%", "70,apples"));
        assertThat(problems()).extracting(Diagnostic::rule).containsExactly("pack.table-other");
    }

    @Test
    void aFolderThatIsNotThere() throws IOException {
        Files.delete(folder.resolve("tables"));
        assertThat(problems()).extracting(Diagnostic::rule).containsExactly("pack.tables-unreadable");
    }

    @Test
    void aTableInAnotherEncoding() throws IOException {
        Files.write(folder.resolve("tables/ampacity-iso-spaces.csv"), new byte[] {(byte) 0xb0, (byte) 0xff});
        assertThat(problems()).extracting(Diagnostic::rule).containsExactly("pack.table-unreadable");
    }

    /** Like the profile, the folder lies near the job: nothing else on the machine can be named. */
    @ParameterizedTest
    @CsvSource({"/etc", "../../tables", ".hidden", "a/../b"})
    void aFolderElsewhereIsRefused(String path) throws IOException {
        Path job = folder.resolve("job.yaml");
        Files.writeString(job, Files.readString(job).replace("tables: tables", "tables: " + path));
        assertThat(problems()).extracting(Diagnostic::rule).containsExactly("job.bad-form");
    }
}
