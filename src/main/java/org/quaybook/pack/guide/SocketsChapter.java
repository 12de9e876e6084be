package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.figures.OnGenerator;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Changeover;
import org.quaybook.job.Given;
import org.quaybook.job.Socket;
import org.quaybook.job.Source;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.record.Rows;

/** The socket map: what feeds each outlet and each circuit in each state of the installation. */
final class SocketsChapter {

    /** A break that information technology rides through: ITI (CBEMA) curve, no voltage for 20 ms (from memory). */
    private static final TimeSpan RIDDEN_THROUGH = new TimeSpan(0.020);

    private final Briefing brief;
    private final Equipment has;

    SocketsChapter(Briefing brief) {
        this.brief = brief;
        this.has = brief.has();
    }

    boolean isNeeded() {
        return !brief.job().sockets().isEmpty() || !brief.job().acCircuits().isEmpty();
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("live", live())
                .put("heads", heads())
                .put("sockets", brief.job().sockets().stream().map(this::socket).toList())
                .put(
                        "circuits",
                        brief.job().acCircuits().stream().map(this::circuit).toList())
                .put("change", change())
                .put("off", off())
                .map();
    }

    /** That the sockets stay live when the source that people see is gone. */
    private String live() {
        return brief.words()
                .say("guide.shore.sockets.live" + (has.shore() ? "" : onGenerator() ? ".generator" : ".inverter"));
    }

    private List<String> heads() {
        return brief.lines("sockets.head")
                .sayIf(has.shore(), "shore")
                .say(has.shore() ? "no-shore" : "inverter")
                .sayIf(onGenerator(), "generator")
                .say("off")
                .list();
    }

    private List<String> off() {
        return brief.lines("sockets.off")
                .say(has.shore() ? "lead" : "inverter")
                .sayIf(onGenerator(), "generator")
                .list();
    }

    private boolean onGenerator() {
        return brief.job().acCircuits().stream()
                        .anyMatch(circuit -> source(circuit.source()).equals(Optional.of(Source.GENERATOR)))
                || brief.job().sockets().stream().anyMatch(socket -> socket.generatorOn() != null);
    }

    private Map<String, Object> socket(Socket socket) {
        List<Map<String, Object>> feeds = new ArrayList<>();
        if (has.shore()) {
            feeds.add(feed(source(socket.shoreOn())));
        }
        feeds.add(feed(source(socket.shoreOff())));
        if (onGenerator()) {
            feeds.add(feed(source(socket.generatorOn())));
        }
        feeds.add(feed(Optional.of(Source.NOTHING)));
        return new Rows()
                .put("name", socket.name())
                .put("where", socket.where())
                .put("feeds", feeds)
                .put("change", has.shore() ? change(socket) : "")
                .map();
    }

    /** A circuit on the inverter is one behind its changeover, where there is one. */
    private Map<String, Object> circuit(AcCircuit circuit) {
        Optional<Source> source = source(circuit.source());
        List<Map<String, Object>> feeds = new ArrayList<>();
        if (has.shore()) {
            feeds.add(feed(source.map(it -> it == Source.INVERTER && has.changeover()
                    ? Source.SHORE
                    : it == Source.GENERATOR ? Source.NOTHING : it)));
        }
        feeds.add(feed(source.map(it -> it == Source.INVERTER ? it : Source.NOTHING)));
        if (onGenerator()) {
            feeds.add(feed(new OnGenerator(brief.job()).feeds(circuit)));
        }
        feeds.add(feed(Optional.of(Source.NOTHING)));
        return new Rows()
                .put("id", circuit.id())
                .put("name", circuit.name())
                .put("feeds", feeds)
                .map();
    }

    private static Optional<Source> source(@Nullable Given<Source> given) {
        return Given.maybe(given);
    }

    private Map<String, Object> feed(Optional<Source> source) {
        return new Rows()
                .put(
                        "mark",
                        source.map(it -> it.name().toLowerCase(java.util.Locale.ROOT))
                                .orElse("unknown"))
                .put(
                        "word",
                        source.map(brief.words()::term)
                                .orElseGet(() -> brief.words().say("guide.sockets.unknown")))
                .map();
    }

    /** What an outlet does in the moment when shore power fails. */
    private String change(Socket socket) {
        Optional<Source> on = source(socket.shoreOn());
        Optional<Source> off = source(socket.shoreOff());
        if (on.isEmpty() || off.isEmpty()) {
            return say("unknown");
        }
        if (on.get() == Source.NOTHING || off.get() == Source.NOTHING) {
            return say(on.equals(off) ? "stays-dark" : "goes-dark");
        }
        if (on.equals(off) && !has.changeover()) {
            return say("goes-on");
        }
        if (has.takesOver() && off.get() == Source.INVERTER) {
            return changeTime().map(time -> say("blinks", time)).orElseGet(() -> say("blinks.any"));
        }
        return say(has.staysOff() || has.changeoverByHand() ? "waits" : "unknown");
    }

    private String say(String key, Object... arguments) {
        return brief.words().say("guide.sockets." + key, arguments);
    }

    private Optional<TimeSpan> changeTime() {
        Changeover changeover = brief.job().inverter().changeover();
        return changeover == null ? Optional.empty() : Given.maybe(changeover.time());
    }

    private List<String> change() {
        if (!has.shore() || !has.changeover()) {
            return List.of();
        }
        boolean rides =
                changeTime().filter(time -> time.compareTo(RIDDEN_THROUGH) <= 0).isPresent();
        return brief.lines("sockets.change")
                .sayIf(has.takesOver() && rides, "rides")
                .sayIf(has.takesOver() && !rides, "restarts")
                .sayIf(has.staysOff() && !has.changeoverByHand(), "switch-on")
                .sayIf(has.changeoverByHand(), "by-hand")
                .say("back")
                .list();
    }
}
