package org.quaybook.pack.labels;

import java.nio.file.Path;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The tug's demo job with many more of something. */
final class Grown {

    static final String TUG = "persimmon-tug";

    private Grown() {}

    private static String lines(int count, IntFunction<String> line) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> "  - { " + line.apply(i) + " }\n")
                .collect(Collectors.joining());
    }

    /** Eight circuits on each residual current device. */
    static DemoJob circuits(int count, Path folder) {
        return DemoJob.changed(
                TUG,
                folder,
                "\nac-circuits:\n",
                lines((count + 7) / 8, i -> "id: RX" + i + ", rating: 30 mA, type: A, source: inverter")
                        + "\nac-circuits:\n",
                "\nearths:\n",
                lines(
                                count,
                                i -> "id: AX" + i + ", name: Circuit " + i
                                        + ", breaker: 10 A, curve: B, cable: 2.5 mm2, source: inverter, rcd: RX"
                                        + (i + 7) / 8)
                        + "\nearths:\n");
    }

    /** Circuits that the battery switch cuts off, with or without those that the job has anyway. */
    static DemoJob cutOff(int count, boolean all, Path folder) {
        String own = all
                ? DemoJob.demo(TUG).assessment().job().acCircuits().stream()
                        .map(circuit -> ", " + circuit.id())
                        .collect(Collectors.joining())
                : "";
        return DemoJob.changed(
                TUG,
                folder,
                "isolates: [B1] }",
                IntStream.rangeClosed(1, count)
                        .mapToObj(i -> ", AX" + i)
                        .collect(Collectors.joining("", "isolates: [B1", own + "] }")),
                "\nearths:\n",
                lines(count, i -> "id: AX" + i + ", name: Circuit " + i + ", breaker: 10 A, source: inverter")
                        + "\nearths:\n");
    }

    /** Dates that something expires on. */
    static DemoJob expiries(int count, Path folder) {
        return DemoJob.changed(
                TUG, folder, "\nscope:\n", lines(count, i -> "what: Thing " + i + ", on: 2027-07-02") + "\nscope:\n");
    }

    /** Battery switches, each at a place of its own. */
    static DemoJob switches(int count, Path folder) {
        return DemoJob.changed(
                TUG,
                folder,
                "\nshore:\n",
                lines(
                                count,
                                i -> "id: SX" + i + ", name: Switch " + i + ", where: place " + i
                                        + ", side: outside, tool-free: yes, isolates: [B1]")
                        + "\nshore:\n");
    }

    /** Fuses of DC circuits, and their list. */
    static DemoJob branches(int count, Path folder) {
        return DemoJob.changed(
                TUG,
                folder,
                "\nisolators:\n",
                lines(
                                count,
                                i -> "id: FX" + i + ", role: branch, feeds: Consumer " + i
                                        + ", family: class-t, rating: 15 A, load: 8 A, conductor: 6 mm2, where: fuse board")
                        + "\nisolators:\n");
    }

    /** Sockets, all at one place. */
    static DemoJob sockets(int count, Path folder) {
        return DemoJob.changed(
                TUG,
                folder,
                "\ncharging:\n",
                lines(count, i -> "name: Socket " + i + ", where: deckhouse, shore-on: shore, shore-off: inverter")
                        + "\ncharging:\n");
    }

    /** Heaters of which no two run together, and ovens that never run from the battery and stay on. */
    static DemoJob appliances(int count, Path folder) {
        return DemoJob.changed(
                TUG,
                folder,
                "\ntogether:\n",
                lines(count, i -> "name: Heater " + i + ", power: 1.3 kW (plate), kind: heating, per-use: 5 min")
                        + lines(count, i -> "name: Oven " + i + ", power: 9 kW (plate), kind: heating, per-use: 5 min")
                        + "\ntogether:\n");
    }
}
