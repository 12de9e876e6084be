package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.diag.Diagnostic;

class TemplatesTest {

    private static final TemplateFunction JOIN = arguments ->
            String.join("-", arguments.stream().map(String::valueOf).toList());

    private final Templates templates = Templates.builtIn();

    @Test
    void fillsDataAndFunctionsAndEscapesBoth() {
        Map<String, Object> model = Map.of(
                "greet",
                JOIN,
                "name",
                "Ann & Co <b>",
                "count",
                1234567,
                "ratio",
                0.25,
                "ready",
                true,
                "things",
                List.of(Map.of("size", 3), Map.of("size", 4)));
        assertThat(templates.fill("render-test/greeting.ftlx", model))
                .isEqualToIgnoringNewLines("<p>hello-Ann &amp; Co &lt;b&gt; 1234567 0.25 true 3 4</p>");
        assertThat(templates.fill("render-test/greeting.ftlh", Map.of("name", "\"<")))
                .isEqualToIgnoringNewLines("<p title=\"&quot;&lt;\">&quot;&lt;</p>");
    }

    @Test
    void namesTemplateLineAndExpressionOfAMissingValue() {
        Diagnostic fault = faultOf(templates, "render-test/missing-value.ftlx", Map.of("owner", Map.of()));
        assertThat(fault.rule()).isEqualTo("render.template-value-missing");
        assertThat(fault.place().toString()).isEqualTo("render-test/missing-value.ftlx:2:5");
        assertThat(fault.message().arguments()).containsExactly("owner.name");
    }

    @Test
    void namesTheLineOfASyntaxError() {
        Diagnostic fault = faultOf(templates, "render-test/broken.ftlx", Map.of());
        assertThat(fault.rule()).isEqualTo("render.template-syntax");
        assertThat(fault.place().toString()).startsWith("render-test/broken.ftlx:3:");
    }

    @Test
    void namesAnUnknownTemplate() {
        assertThat(faultOf(templates, "render-test/none.ftlx", Map.of()).rule()).isEqualTo("render.template-missing");
    }

    @Test
    void takesOnlyTemplatesThatEscape() {
        assertThatIllegalArgumentException().isThrownBy(() -> templates.fill("render-test/plain.css", Map.of()));
    }

    @Test
    void letsNoJavaObjectIn() {
        Diagnostic fault = faultOf(templates, "render-test/greeting.ftlh", Map.of("name", Path.of("x")));
        assertThat(fault.rule()).isEqualTo("render.template-failed");
    }

    /** FreeMarker's manual, "Security considerations" (from memory): ?new, ?api and class access reach the machine. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
                "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.io.File\", \"/\")}",
                "${data?api.class}",
                "${data?api.getClass()}",
                "${data.class.name}",
                "${data.getClass()}",
                "<#include \"/../../secret.txt\">",
                "<#include \"../../secret.txt\">",
                "<#include \"/etc/hostname\">",
                "<#include \"file:/etc/hostname\">",
                "<#include \"http://127.0.0.1/x\">",
                "<#import \"../secret.txt\" as s>"
            })
    void refusesToReachOutside(String attempt) {
        Map<String, Object> model = Map.of("what", attempt, "data", Map.of("key", "value"));
        assertThat(faultOf(templates, "render-test/reach.ftlx", model).rule())
                .isIn("render.template-failed", "render.template-value-missing");
    }

    @Test
    void aFileOfTheUsersGoesBeforeOursAndOnlyThatOne(@TempDir Path folder) throws IOException {
        write(folder, "render-test/greeting.ftlh", "<i>${name}</i>");
        write(folder, "render-test/plain.css", "p { color: red }");
        Templates theirs = Templates.overriddenBy(folder);
        assertThat(theirs.fill("render-test/greeting.ftlh", Map.of("name", "x")))
                .isEqualTo("<i>x</i>");
        assertThat(faultOf(theirs, "render-test/missing-value.ftlx", Map.of()).rule())
                .isEqualTo("render.template-value-missing");
        assertThat(theirs.file("render-test/plain.css")).hasValue("p { color: red }".getBytes(StandardCharsets.UTF_8));
        assertThat(theirs.file("render-test/greeting.ftlx")).isPresent();
    }

    @Test
    void noFileOutsideTheUsersFolderCanBeHad(@TempDir Path parent) throws IOException {
        Path folder = Files.createDirectory(parent.resolve("folder"));
        Path secret = Files.writeString(parent.resolve("secret.txt"), "secret");
        Files.createSymbolicLink(folder.resolve("link.txt"), secret);
        Files.createSymbolicLink(folder.resolve("link.ftlx"), secret);
        Templates theirs = Templates.overriddenBy(folder);
        for (String name : List.of("../secret.txt", secret.toString(), "link.txt", "a/../../secret.txt", "")) {
            assertThat(theirs.file(name)).as(name).isEmpty();
        }
        assertThat(faultOf(theirs, "link.ftlx", Map.of()).rule()).startsWith("render.template-");
    }

    private static void write(Path folder, String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        Files.writeString(file, text);
    }

    private static Diagnostic faultOf(Templates templates, String name, Map<String, Object> model) {
        RenderException thrown = catchThrowableOfType(RenderException.class, () -> templates.fill(name, model));
        assertThat(thrown).as(name).isNotNull();
        return thrown.diagnostics().get(0);
    }
}
