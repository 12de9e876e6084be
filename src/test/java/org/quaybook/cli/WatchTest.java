package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchTest {

    @TempDir
    Path folder;

    private CountDownLatch waiting(Path... watched) {
        Watch watch = new Watch(List.of(watched));
        CountDownLatch changed = new CountDownLatch(1);
        Thread thread = new Thread(() -> {
            try {
                watch.awaitChange();
                changed.countDown();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        });
        thread.setDaemon(true);
        thread.start();
        return changed;
    }

    @Test
    void aSavedFileEndsTheWait() throws Exception {
        Path job = Files.writeString(folder.resolve("job.yaml"), "a: 1\n");
        CountDownLatch changed = waiting(job);
        assertThat(changed.await(700, TimeUnit.MILLISECONDS)).isFalse();
        Files.writeString(job, "a: 12\n");
        assertThat(changed.await(10, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void aFileThatAppearsInAWatchedFolderEndsTheWait() throws Exception {
        Path templates = Files.createDirectories(folder.resolve("templates/guide"));
        CountDownLatch changed = waiting(folder.resolve("templates"));
        Files.writeString(templates.resolve("guide.css"), "p {}");
        assertThat(changed.await(10, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void anEditorThatReplacesTheFileIsNoDifferent() throws Exception {
        Path job = Files.writeString(folder.resolve("job.yaml"), "a: 1\n");
        CountDownLatch changed = waiting(job);
        Path fresh = Files.writeString(folder.resolve("job.yaml~"), "a: 123\n");
        Files.move(fresh, job, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThat(changed.await(10, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void otherFilesAreNoBusinessOfIts() throws IOException, InterruptedException {
        Path job = Files.writeString(folder.resolve("job.yaml"), "a: 1\n");
        CountDownLatch changed = waiting(job);
        Files.writeString(folder.resolve("other.txt"), "x");
        assertThat(changed.await(1, TimeUnit.SECONDS)).isFalse();
    }
}
