package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InlineSvgTest {

    private static final String SQUARE =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\"><rect width=\"1\" height=\"1\"/></svg>";

    @Test
    void standsInAPageAsItIs(@TempDir Path folder) throws IOException {
        for (String ending : new String[] {".ftlx", ".ftlh"}) {
            Files.writeString(folder.resolve("page" + ending), "<p>${text}</p><@square/>");
            assertThat(Templates.overriddenBy(folder)
                            .fill("page" + ending, Map.of("text", "<", "square", InlineSvg.of(SQUARE, "square"))))
                    .isEqualTo("<p>&lt;</p>" + SQUARE);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>1</script></svg>",
                "<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"x()\"/>",
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><use href=\"http://example.org/a.svg\"/></svg>",
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><text>\u0e01</text></svg>",
                "<svg xmlns=\"http://www.w3.org/2000/svg\">",
                "<svg/>",
                "<p xmlns=\"http://www.w3.org/1999/xhtml\">no</p>"
            })
    void refusesWhatIsNoHarmlessDrawing(String svg) {
        assertThatThrownBy(() -> InlineSvg.of(svg, "test")).isInstanceOf(RenderException.class);
    }
}
