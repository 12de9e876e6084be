package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.job.Installer;
import org.quaybook.job.SealKey;
import org.quaybook.text.Words;

/** What a web host gets of a sealed record. */
class SealedSiteTest {

    private static final int READABLE = 4;

    /** Letters; shorter words occur in any bytes. */
    private static final int BY_CHANCE = 6;

    @TempDir
    private static Path folder;

    @TempDir
    private static Path otherFolder;

    private static Demos demo;
    private static Map<String, byte[]> site;

    @BeforeAll
    static void make() throws Exception {
        demo = Demos.sealed("lantern-moth", folder);
        site = demo.sealedSite(List.of(new Issued(1, LocalDate.of(2026, 1, 2), "1".repeat(64))));
    }

    private static HtmlPage page(String name) {
        return HtmlPage.of(Objects.requireNonNull(site.get(demo.code() + "/" + name)));
    }

    @Test
    void holdsPagesAndSealedFilesAndNothingElse() {
        assertThat(site.keySet())
                .containsExactlyInAnyOrder(
                        "404.html",
                        demo.code() + "/index.html",
                        demo.code() + "/index-nl.html",
                        demo.code() + "/offline.js",
                        demo.code() + "/record.html.sealed",
                        demo.code() + "/record-nl.html.sealed",
                        demo.code() + "/guide.pdf.sealed",
                        demo.code() + "/labels.pdf.sealed",
                        demo.code() + "/figures.json.sealed");
        site.forEach((name, content) -> assertThat(name.endsWith(".sealed"))
                .isEqualTo(new String(content, StandardCharsets.ISO_8859_1).startsWith("QUAYSEAL")));
    }

    /**
     * Of the words of the record the host gets only those that the pages of any other records have, too, the installer's own
     * details, the job's code, revision and date.
     */
    @Test
    void noWordOfTheRecordIsReadable() throws Exception {
        Set<String> usual = new TreeSet<>();
        usual.addAll(words(text(other().sealedSite(List.of())), READABLE));
        for (String language : demo.job().job().languages()) {
            usual.addAll(words(Words.of(language).say("record.foot.registration"), READABLE));
        }
        Installer installer = demo.assessment().installer();
        usual.addAll(words(installer + " " + demo.job().job().date() + " 14 May 2026 14 mei 2026", READABLE));
        usual.addAll(words(demo.job().job().record() + " " + demo.code(), READABLE));
        Set<String> secret = new TreeSet<>();
        demo.plain().forEach((name, content) -> {
            if (name.endsWith(".html")) {
                secret.addAll(words(HtmlPage.of(content).text(), READABLE));
            }
        });
        secret.removeAll(usual);

        assertThat(secret).contains("lantern", "moth", "dehumidifier", "locker").hasSizeGreaterThan(1000);
        site.forEach((name, content) -> assertThat(words(
                        new String(content, StandardCharsets.UTF_8), name.endsWith(".sealed") ? BY_CHANCE : READABLE))
                .as(name)
                .doesNotContainAnyElementsOf(secret));
    }

    /** A record of something else in the same languages. */
    private static Demos other() throws IOException {
        return Demos.changed(
                "persimmon-tug",
                otherFolder,
                Map.of(
                        "languages: [en-GB]",
                        "languages: [en-GB, nl]",
                        "  revision: 1\n",
                        "  sealed: yes\n  seal-key: " + Demos.SEAL_KEY + "\n  revision: 1\n"));
    }

    /** What can be read of the files that are not sealed. */
    private static String text(Map<String, byte[]> site) {
        return site.entrySet().stream()
                .filter(file -> !file.getKey().endsWith(".sealed"))
                .map(file -> new String(file.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining(" "));
    }

    /** Words of so many letters or more. */
    private static Set<String> words(String text, int letters) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> word.length() >= letters)
                .collect(Collectors.toSet());
    }

    /** In no form that a program or a person could write it in. */
    @Test
    void theKeyIsNowhere() {
        SealKey key = SealKey.parse(Demos.SEAL_KEY);
        List<String> forms = Stream.of(
                        key.symbols(),
                        key.symbols().substring(0, 26),
                        key.toString(),
                        HexFormat.of().formatHex(key.bytes()),
                        Base64.getEncoder().withoutPadding().encodeToString(key.bytes()),
                        Base64.getUrlEncoder().withoutPadding().encodeToString(key.bytes()),
                        new String(key.bytes(), StandardCharsets.ISO_8859_1))
                .map(form -> form.toLowerCase(Locale.ROOT))
                .toList();

        site.forEach(
                (name, content) -> assertThat(new String(content, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT))
                        .as(name)
                        .doesNotContain(forms));
    }

    @Test
    void theLinkHoldsTheKeyBehindTheNumberSign() {
        assertThat(RecordLink.of(demo.assessment()).address())
                .isEqualTo(
                        "HTTPS://RECORDS.MUDLARK-THIMBLE.EXAMPLE.ORG/81EZD3SWFGV4RK1ZH0YDQ#3M8V41QDZT7C0W9XKE5H62RBFY4");
        assertThat(RecordLink.of(Demos.of("lantern-moth").assessment()).address())
                .endsWith("/81EZD3SWFGV4RK1ZH0YDQ");
    }

    /** CSP level 3: one script, two style sheets by their digests, requests to the own host only. */
    @Test
    void onlyTheOwnScriptRuns() {
        String policy = page("index.html")
                .values("//meta[@http-equiv='Content-Security-Policy']", "content")
                .get(0);

        assertThat(policy)
                .matches("default-src 'none'; img-src data:; style-src 'sha256-[^ ;]+' 'sha256-[^ ;]+';"
                        + " script-src 'sha256-[^ ;]+'; connect-src 'self'; worker-src 'self'; base-uri 'none';"
                        + " form-action 'none'")
                .doesNotContain("unsafe");
        assertThat(page("index.html").values("//meta[@name='referrer']", "content"))
                .containsExactly("no-referrer");
    }

    @Test
    void thePageSaysWhatItNeedsAndWhatToDoWithout() {
        assertThat(page("index.html").text())
                .contains(
                        "JavaScript, switched on",
                        "scan the label, or type the key",
                        "In danger? Do not search. Follow the label at the board",
                        "plain text. It needs neither signal nor key",
                        "01632 960118",
                        "81EZ-D3SW-FGV4-RK1Z-H0YD-Q");
        assertThat(page("index-nl.html").text()).contains("JavaScript, ingeschakeld", "In gevaar? Zoek niet.");
        assertThat(page("index-nl.html").values("//nav[@class='languages']//a", "href"))
                .containsExactly("index.html");
        assertThat(page("index-nl.html").values("//a[@data-earlier]", "href"))
                .containsExactly("revision-1/index-nl.html");
    }

    @Test
    void sameJobSameBytes() {
        Map<String, byte[]> again = demo.sealedSite(List.of(new Issued(1, LocalDate.of(2026, 1, 2), "1".repeat(64))));

        assertThat(again.keySet()).isEqualTo(site.keySet());
        again.forEach((name, content) -> assertThat(content).as(name).isEqualTo(site.get(name)));
    }
}
