package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** CommonMark 0.31.2 (spec.commonmark.org, from memory) as far as a chapter uses it. */
class ProseTest {

    private static Prose prose(String text) {
        return Prose.of(text).orElseThrow();
    }

    @Test
    void theFirstHeadingIsTheTitle() {
        Prose prose = prose("# Our *advice*\n\nFirst.\n\n- one\n- two\n");
        assertThat(prose.title()).isEqualTo("Our advice");
        assertThat(prose.xhtml()).isEqualTo("<p>First.</p>\n<ul>\n<li>one</li>\n<li>two</li>\n</ul>\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "No heading", "## Second level", "text\n\n# Late", "#\n\ntext"})
    void withoutATitleItIsNoChapter(String text) {
        assertThat(Prose.of(text)).isEmpty();
    }

    @Test
    void furtherHeadingsRankBelowTheTitle() {
        assertThat(prose("# T\n\n# Again\n\n#### Deep").xhtml()).isEqualTo("<h2>Again</h2>\n<h3>Deep</h3>\n");
    }

    @Test
    void htmlIsPrintedAsTyped() {
        assertThat(prose("# T\n\n<script>x</script>\n\na <b>c</b> & d").xhtml())
                .contains("&lt;script&gt;")
                .contains("&lt;b&gt;")
                .contains("&amp; d")
                .doesNotContain("<script")
                .doesNotContain("<b>");
    }

    @Test
    void linksLeadToTheWebOnlyAndPicturesAreTheirWords() {
        String xhtml = prose("# T\n\n[a](javascript:x) [b](https://example.org) ![a lamp](file:///lamp.png)")
                .xhtml();
        assertThat(xhtml)
                .doesNotContain("javascript")
                .contains("href=\"https://example.org\"")
                .doesNotContain("<img")
                .contains("a lamp");
    }
}
