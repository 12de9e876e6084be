package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.diag.Diagnostic;
import org.quaybook.text.Words;

class OwnWordsTest {

    private static final Words WORDS = Words.of("de");

    @TempDir
    Path templates;

    private void own(String text) throws IOException {
        Files.writeString(Files.createDirectories(templates.resolve("words/de")).resolve("guide.properties"), text);
    }

    private List<String> refused() {
        List<String> said = new java.util.ArrayList<>();
        assertThatExceptionOfType(NotPrinted.class)
                .isThrownBy(() -> OwnWords.of(WORDS, templates))
                .satisfies(e -> e.diagnostics().forEach(it -> said.add(said(it))));
        return said;
    }

    private static String said(Diagnostic it) {
        return it.place().position().line() + 1 + " " + Words.of("en-GB").say(it.message())
                + it.hints().stream()
                        .map(hint -> " " + Words.of("en-GB").say(hint))
                        .reduce("", String::concat);
    }

    @Test
    void hisSentenceTakesThePlaceOfOurs() throws Exception {
        own("# unser Ton\n\nguide.title = Handbuch für an Bord\n");
        Words words = OwnWords.of(WORDS, templates);
        assertThat(words.say("guide.title")).isEqualTo("Handbuch für an Bord");
        assertThat(words.say("guide.page")).isEqualTo(WORDS.say("guide.page"));
        assertThat(words.language()).isEqualTo("de");
    }

    @Test
    void withoutAFolderOrInAnotherLanguageOursStand() throws Exception {
        assertThat(OwnWords.of(WORDS, null)).isSameAs(WORDS);
        own("guide.title = Handbuch\n");
        Words french = Words.of("fr");
        assertThat(OwnWords.of(french, templates)).isSameAs(french);
    }

    @Test
    void everyWrongLineIsNamedAtOnce() throws IOException {
        own("guide.titel = Handbuch\nguide.document-title = ohne Platz\nkein Schlüssel\n");
        assertThat(refused())
                .satisfiesExactly(
                        first -> assertThat(first)
                                .startsWith("1 ")
                                .contains("guide.titel")
                                .contains("guide.title"),
                        second -> assertThat(second).startsWith("2 ").contains("{0}"),
                        third -> assertThat(third).startsWith("3 ").contains("kein Schlüssel"));
    }

    @Test
    void aFileInAnotherEncodingIsRefused() throws IOException {
        Files.write(
                Files.createDirectories(templates.resolve("words/de")).resolve("guide.properties"),
                "guide.title = für".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(refused()).singleElement().asString().contains("UTF-8");
    }
}
