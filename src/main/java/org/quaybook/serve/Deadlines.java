package org.quaybook.serve;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.util.component.AbstractLifeCycle;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Closes connections that take too long to ask or to take their answer, however busy they look: a byte now and then keeps
 * an idle time from ever running out.
 */
final class Deadlines extends AbstractLifeCycle implements Connection.Listener {

    private static final Duration PAUSE = Duration.ofMillis(200);

    private final Scheduler scheduler;
    private final long answering;
    private final Map<Connection, Deadline> deadlines = new ConcurrentHashMap<>();
    private volatile long asking;

    /**
     * When a connection is closed.
     *
     * @param answering whether an answer is under way on it
     * @param nanos by {@link System#nanoTime}
     */
    private record Deadline(boolean answering, long nanos) {}

    Deadlines(Scheduler scheduler, Limits limits) {
        this.scheduler = scheduler;
        this.asking = limits.asking().toNanos();
        this.answering = limits.answering().toNanos();
    }

    @Override
    protected void doStart() throws Exception {
        super.doStart();
        look();
    }

    @Override
    public void onOpened(Connection connection) {
        deadlines.put(connection, untilAsked());
    }

    @Override
    public void onClosed(Connection connection) {
        deadlines.remove(connection);
    }

    /** A whole request is there. */
    void answering(Connection connection) {
        deadlines.computeIfPresent(connection, (same, former) -> new Deadline(true, System.nanoTime() + answering));
    }

    /** The answer is sent; the next request may come. */
    void answered(Connection connection) {
        deadlines.computeIfPresent(connection, (same, former) -> untilAsked());
    }

    /** From now on only answers under way are waited for. */
    void finish() {
        asking = 0;
        deadlines.replaceAll((connection, former) -> former.answering() ? former : untilAsked());
    }

    private Deadline untilAsked() {
        return new Deadline(false, System.nanoTime() + asking);
    }

    private void look() {
        long now = System.nanoTime();
        deadlines.forEach((connection, deadline) -> {
            if (now - deadline.nanos() > 0) {
                connection.getEndPoint().close();
            }
        });
        if (isRunning()) {
            scheduler.schedule(this::look, PAUSE.toMillis(), TimeUnit.MILLISECONDS);
        }
    }
}
