package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.pack.guide.GuidePage;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The owner's guide as a web page, in a real browser at phone size. */
class GuideInBrowserTest {

    static final List<String> DEMOS = Demos.NAMES;

    /** Narrowest window that WCAG 2.2, 1.4.10 asks for. */
    private static final int NARROW = 320;

    private static Phone phone;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() {
        phone = new Phone();
    }

    @AfterAll
    static void stop() {
        if (phone != null) {
            phone.close();
        }
    }

    static Stream<Arguments> demosAndLanguages() {
        return DEMOS.stream()
                .flatMap(demo -> Stream.of("en-GB", "de", "fr").map(language -> Arguments.of(demo, language)));
    }

    private static String html(String demo, String language) {
        Demos it = Demos.of(demo);
        PublicEdition edition = PublicEdition.of(new Edition(it.assessment(), Words.of(language)));
        return new String(new GuidePage(edition, it.branding(), Templates.builtIn()).html(), StandardCharsets.UTF_8);
    }

    /** WCAG 2.2 at level AA by axe-core, nothing wider than the window, nothing asked of the network. */
    @ParameterizedTest
    @MethodSource("demosAndLanguages")
    void fitsAndIsReadByEverybody(String demo, String language) throws IOException {
        Path page = Files.writeString(folder.resolve("guide.html"), html(demo, language));
        String address = page.toUri().toString();

        phone.open(address, NARROW);

        assertThat(phone.wider()).as("reaches out of the window").isEmpty();
        assertThat(phone.requests()).as("asked for").containsExactly(address);
        assertThat(phone.barriers()).as("against WCAG 2.2 AA, by axe-core").isEmpty();
        assertThat(phone.complaints()).as("of the browser").isEmpty();
    }

    /** Like the record: whoever scans the label may read this page. */
    @ParameterizedTest
    @FieldSource("DEMOS")
    void namesNobody(String demo) {
        Demos it = Demos.of(demo);
        String html = html(demo, "en-GB");
        var job = it.assessment().job();
        assertThat(html).doesNotContain("<script");
        Stream.of(
                        job.owner() == null ? null : job.owner().name(),
                        job.owner() == null ? null : job.owner().phone(),
                        job.owner() == null ? null : job.owner().email(),
                        job.craft().berth(),
                        job.job().fitter())
                .filter(Objects::nonNull)
                .forEach(name -> assertThat(html).doesNotContain(name));
    }
}
