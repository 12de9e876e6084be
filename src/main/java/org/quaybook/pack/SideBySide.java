package org.quaybook.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Makes things that hang on no other at the same time, on as many cores as there are: whoever is free takes the next one,
 * and who asked for them is one of those. For one thread, but for the things themselves.
 */
final class SideBySide {

    private final List<Later<?>> things = new ArrayList<>();

    /** A thing that is there once {@link SideBySide#make} is done. */
    static final class Later<T> implements Supplier<T> {

        private final Supplier<T> maker;
        private @Nullable T thing;
        private @Nullable RuntimeException refused;
        private @Nullable Error broken;

        private Later(Supplier<T> maker) {
            this.maker = maker;
        }

        /** Whatever is thrown is for who asked, not for the thread that happened to take it. */
        private void make() {
            try {
                thing = maker.get();
            } catch (RuntimeException e) {
                refused = e;
            } catch (Error e) {
                broken = e;
            }
        }

        private void throwIfFailed() {
            if (refused != null) {
                throw refused;
            }
            if (broken != null) {
                throw broken;
            }
        }

        @Override
        public T get() {
            return Objects.requireNonNull(thing, "not made yet");
        }
    }

    /** Adds a thing to be made; those that take longest come first. */
    <T> Later<T> add(Supplier<T> maker) {
        Later<T> later = new Later<>(maker);
        things.add(later);
        return later;
    }

    /**
     * Makes all of them; throws what the first one that failed threw, first in the order in which they were added,
     * whichever failed first.
     */
    void make() {
        AtomicInteger next = new AtomicInteger();
        CountDownLatch left = new CountDownLatch(things.size());
        Runnable worker = () -> {
            for (int i = next.getAndIncrement(); i < things.size(); i = next.getAndIncrement()) {
                things.get(i).make();
                left.countDown();
            }
        };
        int helpers = Math.min(ForkJoinPool.getCommonPoolParallelism(), things.size() - 1);
        for (int i = 0; i < helpers; i++) {
            ForkJoinPool.commonPool().execute(worker);
        }
        worker.run();
        await(left);
        things.forEach(Later::throwIfFailed);
    }

    /** What others have begun is finished even if this one is to stop: they could not be stopped halfway. */
    private static void await(CountDownLatch left) {
        boolean interrupted = false;
        while (left.getCount() > 0) {
            try {
                left.await();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
