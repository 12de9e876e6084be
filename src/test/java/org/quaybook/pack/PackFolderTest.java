package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A pack is in place complete or not at all, and nothing that is no pack is ever replaced. */
class PackFolderTest {

    private static final String MARK = "issue.json";

    @TempDir
    Path folder;

    private static Map<String, byte[]> files(String text) {
        byte[] content = text.getBytes(StandardCharsets.UTF_8);
        return new TreeMap<>(Map.of("issue.json", content, "record/X/index.html", content));
    }

    private static long inside(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.count();
        }
    }

    @Test
    void writesWithFoldersAndLeavesNothingBeside() throws Exception {
        Path target = folder.resolve("deep/er/26-1");
        PackFolder.write(target, MARK, files("one"));
        assertThat(target.resolve("record/X/index.html")).hasContent("one");
        assertThat(inside(folder.resolve("deep/er"))).isEqualTo(1);
    }

    @Test
    void replacesAnEarlierPackWholly() throws Exception {
        Path target = folder.resolve("26-1");
        Map<String, byte[]> first = files("one");
        first.put("labels-old.pdf", new byte[] {1});
        PackFolder.write(target, MARK, first);
        PackFolder.write(target, MARK, files("two"));
        assertThat(target.resolve("issue.json")).hasContent("two");
        assertThat(target.resolve("labels-old.pdf")).doesNotExist();
        assertThat(inside(folder)).isEqualTo(1);
    }

    @Test
    void leavesAFolderAloneThatIsNoPack() throws Exception {
        Path target = Files.createDirectory(folder.resolve("holiday"));
        Files.writeString(target.resolve("photo.jpg"), "sea");
        assertThatThrownBy(() -> PackFolder.write(target, MARK, files("one")))
                .isInstanceOfSatisfying(
                        PackFolder.NotWritten.class,
                        e -> assertThat(e.diagnostic().message().key()).isEqualTo(PackMessage.NOT_A_PACK));
        assertThat(target.resolve("photo.jpg")).hasContent("sea");
        assertThat(inside(folder)).isEqualTo(1);
    }

    @Test
    void aFileInTheWayIsToldAndKept() throws Exception {
        Path inTheWay = Files.writeString(folder.resolve("packs"), "a file");
        assertThatThrownBy(() -> PackFolder.write(inTheWay.resolve("26-1"), MARK, files("one")))
                .isInstanceOfSatisfying(
                        PackFolder.NotWritten.class,
                        e -> assertThat(e.diagnostic().message().key()).isEqualTo(PackMessage.CANNOT_WRITE));
        assertThat(inTheWay).hasContent("a file");
    }

    @Test
    void aFailureHalfWayKeepsTheEarlierPack() throws Exception {
        Path target = folder.resolve("26-1");
        PackFolder.write(target, MARK, files("one"));
        Map<String, byte[]> impossible = files("two");
        impossible.put("issue.json/inside-a-file", new byte[] {1});
        assertThatThrownBy(() -> PackFolder.write(target, MARK, impossible)).isInstanceOf(PackFolder.NotWritten.class);
        assertThat(target.resolve("issue.json")).hasContent("one");
        assertThat(inside(folder)).isEqualTo(1);
    }

    /** Two who add to one file at once: the second must not undo what the first has added. */
    @Test
    void aFileThatIsNoLongerAsItWasReadIsKept() throws Exception {
        Path log = folder.resolve("service.yaml");
        PackFolder.writeFile(log, "", "first".getBytes(StandardCharsets.UTF_8));
        PackFolder.writeFile(log, "first", "first, second".getBytes(StandardCharsets.UTF_8));

        assertThatThrownBy(() -> PackFolder.writeFile(log, "first", "first, third".getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(PackFolder.NotWritten.class);
        assertThat(log).hasContent("first, second");
    }
}
