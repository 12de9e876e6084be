package org.quaybook.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A manifest is read as it was written, or refused; invented data. */
class ManifestTest {

    private static final String DIGEST = Digest.of("");

    private static final Manifest MANIFEST = new Manifest(
            "quaybook test",
            "26-118",
            "81EZ-D3SW-FGV4-RK1Z-H0YD-Q",
            2,
            LocalDate.of(2026, 5, 14),
            Optional.of(new Manifest.Previous(1, DIGEST)),
            new TreeMap<>(java.util.Map.of(
                    "guide.pdf", DIGEST,
                    "record/404.html", DIGEST,
                    "record/81EZD3SWFGV4RK1ZH0YDQ/index.html", DIGEST)));

    private static String text() {
        return new String(MANIFEST.json(), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void isReadAsItWasWritten() throws Refused {
        assertThat(Manifest.read(MANIFEST.json())).isEqualTo(MANIFEST);
        assertThat(text()).contains("\"previous\" : {\n    \"revision\" : 1,");
        Manifest first = new Manifest(
                "quaybook test",
                "1",
                MANIFEST.record(),
                1,
                MANIFEST.date(),
                Optional.empty(),
                new TreeMap<>(MANIFEST.sha256()));
        assertThat(Manifest.read(first.json())).isEqualTo(first);
        assertThat(new String(first.json(), StandardCharsets.UTF_8)).contains("\"previous\" : null");
    }

    @Test
    void knowsWhatIsPublished() {
        assertThat(MANIFEST.folder()).isEqualTo("81EZD3SWFGV4RK1ZH0YDQ");
        assertThat(MANIFEST.published()).containsOnlyKeys("index.html");
    }

    @Test
    void theLinkOfTheChainIsOverTheBytes() throws Refused {
        assertThat(Manifest.Previous.to(MANIFEST.json()))
                .isEqualTo(new Manifest.Previous(2, Digest.of(MANIFEST.json())));
        assertThat(Manifest.Previous.to(bytes(text() + " ")).sha256()).isNotEqualTo(Digest.of(MANIFEST.json()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"guide.pdf\"                 | \"../guide.pdf\"          | PATH",
                "\"guide.pdf\"                 | \"a/../../guide.pdf\"     | PATH",
                "\"guide.pdf\"                 | \"/guide.pdf\"            | PATH",
                "\"guide.pdf\"                 | \"a//guide.pdf\"          | PATH",
                "\"guide.pdf\"                 | \"a\\\\guide.pdf\"        | PATH",
                "\"guide.pdf\"                 | \"C:guide.pdf\"           | PATH",
                "\"guide.pdf\"                 | \"./guide.pdf\"           | PATH",
                "\"guide.pdf\"                 | \".guide.pdf\"            | PATH",
                "\"guide.pdf\"                 | \"guide.pdf/\"            | PATH",
                "\"guide.pdf\"                 | \"\"                      | PATH",
                "\"guide.pdf\"                 | \"guide\\u0000.pdf\"      | PATH",
                "\"guide.pdf\"                 | \"guide%2e.pdf\"          | PATH",
                "\"guide.pdf\"                 | \"guide.pdf.\"            | PATH",
                "\"guide.pdf\"                 | \"guide.pdf \"            | PATH",
                "\"guide.pdf\"                 | \"a./guide.pdf\"          | PATH",
                "\"guide.pdf\"                 | \"con\"                   | PATH",
                "\"guide.pdf\"                 | \"a/NUL.pdf\"             | PATH",
                "\"guide.pdf\"                 | \"Com1/guide.pdf\"        | PATH",
                "\"guide.pdf\"                 | \"issue.json\"            | PATH",
                "\"guide.pdf\"                 | \"issue.sig\"             | PATH",
                "\"guide.pdf\"                 | \"revision-1/guide.pdf\"  | PATH",
                "YDQ/index.html                | YDQ/issue.json            | PATH",
                "YDQ/index.html                | YDQ/revision-1/index.html | PATH",
                "YDQ/index.html                | YDR/index.html            | PATH",
                "\"guide.pdf\"                 | \"record/404.html\"       | KEY_TWICE",
                "\"number\"                    | \"date\"                  | KEY_TWICE",
                "\"number\"                    | \"job\"                   | KEYS",
                "\"program\" : \"quaybook test\", | ``                     | KEYS",
                "\"revision\" : 2              | \"revision\" : \"2\"      | VALUE",
                "\"revision\" : 2              | \"revision\" : 2.0        | VALUE",
                "\"revision\" : 2              | \"revision\" : 0          | VALUE",
                "\"revision\" : 2              | \"revision\" : 1000       | VALUE",
                "\"revision\" : 2              | \"revision\" : null       | VALUE",
                "\"revision\" : 1              | \"number\" : 1            | KEYS",
                "2026-05-14                    | 2026-02-30                | VALUE",
                "2026-05-14                    | 14.5.2026                 | VALUE",
                "26-118                        | 26/118                    | VALUE",
                "\"26-118\"                    | 26                        | VALUE",
                "81EZ-D3SW-FGV4-RK1Z-H0YD-Q    | 81EZ-D3SW                 | VALUE",
                "855\"                         | 85\"                      | VALUE",
                "e3b0                          | E3B0                      | VALUE",
                "\"sha256\" : {                | \"sha256\" : [ ], \"x\" : { | KEYS",
            })
    void refusesWhatItDoesNotMean(String good, String bad, ProofMessage why) {
        assertThat(text()).contains(good);
        assertRefused(bytes(text().replace(good, bad)), why);
    }

    @Test
    void refusesWhatIsNoPlainJson() {
        assertRefused(bytes(""), ProofMessage.KEYS);
        assertRefused(bytes("null"), ProofMessage.KEYS);
        assertRefused(bytes("[]"), ProofMessage.KEYS);
        assertRefused(bytes(text().substring(0, text().lastIndexOf('}'))), ProofMessage.NOT_JSON);
        assertRefused(bytes(text() + "{}"), ProofMessage.NOT_JSON);
        assertRefused(bytes(text().replace("{", "{ // note\n")), ProofMessage.NOT_JSON);
        assertRefused(bytes("\uFEFF" + text()), ProofMessage.NOT_JSON);
        assertRefused(text().getBytes(StandardCharsets.UTF_16), ProofMessage.NOT_UTF8);
        assertRefused(new byte[] {'{', '"', (byte) 0xC3, '"', '}'}, ProofMessage.NOT_UTF8);
        assertRefused(bytes("[".repeat(100_000)), ProofMessage.NOT_JSON);
    }

    @Test
    void refusesADigestOfTheWrongForm() {
        assertRefused(bytes(text().replace("\"guide.pdf\" : \"e", "\"guide.pdf\" : \"g")), ProofMessage.NO_DIGEST);
        assertRefused(
                bytes(text().replaceAll("\"guide.pdf\" : \"[0-9a-f]*\"", "\"guide.pdf\" : {}")),
                ProofMessage.NO_DIGEST);
    }

    private static void assertRefused(byte[] content, ProofMessage why) {
        assertThatExceptionOfType(Refused.class)
                .isThrownBy(() -> Manifest.read(content))
                .satisfies(e -> assertThat(e.reason().key()).isEqualTo(why));
    }
}
