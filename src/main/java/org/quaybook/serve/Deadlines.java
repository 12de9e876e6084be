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
    private final long asking;
    private final long answering;
    private final Map<Connection, Long> until = new ConcurrentHashMap<>();

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
        until.put(connection, System.nanoTime() + asking);
    }

    @Override
    public void onClosed(Connection connection) {
        until.remove(connection);
    }

    /** A whole request is there. */
    void answering(Connection connection) {
        until.computeIfPresent(connection, (same, former) -> System.nanoTime() + answering);
    }

    /** The answer is sent; the next request may come. */
    void answered(Connection connection) {
        until.computeIfPresent(connection, (same, former) -> System.nanoTime() + asking);
    }

    private void look() {
        long now = System.nanoTime();
        until.forEach((connection, time) -> {
            if (now - time > 0) {
                connection.getEndPoint().close();
            }
        });
        if (isRunning()) {
            scheduler.schedule(this::look, PAUSE.toMillis(), TimeUnit.MILLISECONDS);
        }
    }
}
