package org.quaybook.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.ConnectException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many at a time. How long it takes is printed and judged by nobody. */
class ManyClientsTest {

    private static final int CLIENTS = 64;
    private static final int REQUESTS = 10_000;

    @TempDir
    Path folder;

    @Test
    void everyRequestOfManyIsAnswered() throws Exception {
        try (Harbour harbour = new Harbour(folder)) {
            String[] names = {"", "guide.pdf", "figures.json", "offline.js", "revision-1/"};
            ExecutorService pool = Executors.newFixedThreadPool(CLIENTS);
            List<Future<long[]>> clients = new ArrayList<>();
            long begun = System.nanoTime();
            for (int client = 0; client < CLIENTS; client++) {
                int share = REQUESTS / CLIENTS + (client < REQUESTS % CLIENTS ? 1 : 0);
                clients.add(pool.submit(() -> {
                    long[] times = new long[share];
                    try (Wire wire = harbour.wire()) {
                        for (int i = 0; i < share; i++) {
                            String name = names[i % names.length];
                            long since = System.nanoTime();
                            Wire.Reply reply = wire.ask("GET", "/" + Harbour.CODE + "/" + name);
                            times[i] = System.nanoTime() - since;
                            Path file = harbour.site
                                    .resolve(Harbour.CODE)
                                    .resolve(name.isEmpty() || name.endsWith("/") ? name + "index.html" : name);
                            assertThat(reply.status()).isEqualTo(200);
                            assertThat((long) reply.bytes().length).isEqualTo(Files.size(file));
                        }
                    }
                    return times;
                }));
            }
            List<Long> times = new ArrayList<>();
            for (Future<long[]> client : clients) {
                Arrays.stream(client.get()).forEach(times::add);
            }
            double seconds = (System.nanoTime() - begun) / 1e9;
            pool.shutdown();
            times.sort(null);
            assertThat(times).hasSize(REQUESTS);
            assertThat(harbour.faults).isEmpty();
            System.out.printf(
                    "%d requests by %d clients: %.1f s; half below %.2f ms, 99 of 100 below %.2f ms, longest %.2f ms%n",
                    REQUESTS,
                    CLIENTS,
                    seconds,
                    times.get(REQUESTS / 2) / 1e6,
                    times.get(REQUESTS * 99 / 100) / 1e6,
                    times.get(REQUESTS - 1) / 1e6);
        }
    }

    /** Whoever reads while a revision is put in place has the old one or the new one, with the tag that goes with it. */
    @Test
    void aFileReplacedWhileItIsReadIsOldOrNew() throws Exception {
        try (Harbour harbour = new Harbour(folder)) {
            Path file = harbour.site.resolve(Harbour.CODE + "/page.txt");
            Files.writeString(file, revision(0));
            AtomicBoolean published = new AtomicBoolean();
            ExecutorService pool = Executors.newFixedThreadPool(8);
            List<Future<Integer>> readers = new ArrayList<>();
            for (int reader = 0; reader < 8; reader++) {
                readers.add(pool.submit(() -> {
                    int last = 0;
                    int answers = 0;
                    try (Wire wire = harbour.wire()) {
                        while (!published.get() || answers == 0) {
                            Wire.Reply reply = wire.ask("GET", "/" + Harbour.CODE + "/page.txt");
                            assertThat(reply.status()).isEqualTo(200);
                            int number = Integer.parseInt(reply.text().substring(0, 6));
                            assertThat(reply.text()).isEqualTo(revision(number));
                            assertThat(reply.field("etag"))
                                    .isEqualTo(new Content(reply.bytes(), Harbour.WRITTEN).tag());
                            // Never back to what was there before.
                            assertThat(number).isGreaterThanOrEqualTo(last);
                            last = number;
                            answers++;
                        }
                    }
                    return answers;
                }));
            }
            Path fresh = folder.resolve("fresh");
            int revisions = 400;
            for (int number = 1; number <= revisions; number++) {
                Files.writeString(fresh, revision(number));
                Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
                Thread.sleep(5);
            }
            assertThat(harbour.get("/" + Harbour.CODE + "/page.txt").text()).isEqualTo(revision(revisions));
            published.set(true);
            for (Future<Integer> reader : readers) {
                assertThat(reader.get()).isPositive();
            }
            pool.shutdown();
            assertThat(harbour.faults).isEmpty();
        }
    }

    /** All revisions are of one size, so that the size tells nothing. */
    private static String revision(int number) {
        return "%06d ".formatted(number).repeat(20_000);
    }

    /** Stopping lets an answer under way finish: a reader that takes its time has all of it. */
    @Test
    void stoppingFinishesWhatIsUnderWay() throws Exception {
        try (Harbour harbour = new Harbour(folder)) {
            int port = harbour.server.port();
            int size = 24 * 1024 * 1024;
            Files.write(harbour.site.resolve(Harbour.CODE + "/large.pdf"), new byte[size]);
            try (Wire wire = harbour.wire();
                    Wire idle = harbour.wire()) {
                assertThat(idle.ask("GET", "/").status()).isEqualTo(404);
                wire.write("GET /" + Harbour.CODE + "/large.pdf HTTP/1.1\r\nHost: a\r\n\r\n");
                Thread.sleep(1000);
                AtomicBoolean finished = new AtomicBoolean();
                Thread stopper = new Thread(() -> finished.set(harbour.server.stop()));
                stopper.start();
                Thread.sleep(300);
                assertThat(wire.read(false).bytes()).hasSize(size);
                stopper.join();
                assertThat(finished).isTrue();
            }
            assertThatThrownBy(() -> new Wire(port)).isInstanceOf(ConnectException.class);
        }
    }
}
