package org.quaybook.cli;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiConsumer;
import org.quaybook.pack.Road;

/** Judges several jobs on all cores and hands them on one by one in their order, a few ahead and no more. */
final class JudgedAhead {

    private JudgedAhead() {}

    /**
     * Judges jobs.
     *
     * @param taker is given each job in turn, in the thread that calls
     * @throws IllegalStateException if the thread is interrupted meanwhile
     */
    static void each(List<Path> jobs, BiConsumer<Path, Road.Judged> taker) {
        if (jobs.size() == 1) {
            taker.accept(jobs.get(0), Road.judge(jobs.get(0)));
            return;
        }
        int cores = Runtime.getRuntime().availableProcessors();
        ExecutorService pool = Executors.newFixedThreadPool(cores, JudgedAhead::thread);
        try {
            Deque<Future<Road.Judged>> ahead = new ArrayDeque<>();
            Iterator<Path> next = jobs.iterator();
            for (Path job : jobs) {
                while (ahead.size() <= cores && next.hasNext()) {
                    Path later = next.next();
                    ahead.add(pool.submit(() -> Road.judge(later)));
                }
                taker.accept(job, judged(ahead.remove()));
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static Road.Judged judged(Future<Road.Judged> later) {
        try {
            return later.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "judged");
        thread.setDaemon(true);
        return thread;
    }
}
