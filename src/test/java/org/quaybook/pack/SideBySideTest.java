package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SideBySideTest {

    private final SideBySide work = new SideBySide();

    @Test
    void makesEachThingOnce() {
        Set<Integer> made = ConcurrentHashMap.newKeySet();
        List<SideBySide.Later<Boolean>> things = IntStream.range(0, 100)
                .mapToObj(i -> work.add(() -> made.add(i)))
                .toList();
        work.make();
        assertThat(things).extracting(Supplier::get).containsOnly(true).hasSize(100);
    }

    @Test
    void throwsWhatTheFirstThingThrewWhicheverFailedFirst() {
        CountDownLatch second = new CountDownLatch(1);
        if (ForkJoinPool.getCommonPoolParallelism() < 1) {
            second.countDown();
        }
        work.add(() -> {
            awaitQuietly(second);
            throw new IllegalStateException("first");
        });
        work.add(() -> {
            second.countDown();
            throw new IllegalStateException("second");
        });
        assertThatThrownBy(work::make).hasMessage("first");
    }

    @Test
    void throwsErrorsToWhoAsked() {
        work.add(() -> 1);
        work.add(() -> {
            throw new StackOverflowError("deep");
        });
        assertThatThrownBy(work::make).isInstanceOf(StackOverflowError.class);
    }

    @Test
    void goesOnWhenNobodyElseIsFree() {
        CountDownLatch busy = new CountDownLatch(1);
        List<ForkJoinTask<?>> others = IntStream.range(0, ForkJoinPool.getCommonPoolParallelism())
                .<ForkJoinTask<?>>mapToObj(i -> ForkJoinPool.commonPool().submit(() -> awaitQuietly(busy)))
                .toList();
        SideBySide.Later<String> thing = work.add(() -> "made");
        work.add(() -> "another");
        work.make();
        assertThat(thing.get()).isEqualTo("made");
        busy.countDown();
        others.forEach(ForkJoinTask::join);
    }

    private static void awaitQuietly(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
