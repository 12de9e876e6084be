package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.quaybook.figures.RoomFigures.Left;
import org.quaybook.figures.TogetherFigures.Order;

/** Many appliances: what each leaves must say the same as going through every two of them. */
class RoomFiguresTest {

    private static final String LITHIUM = "lantern-moth";
    private static final String GLASS_MAT = "second-biscuit";

    /** A full bank far away cannot hold this cut-out under the inverter's rating. */
    private static final String[] WEAK = {
        "alarm: 11.5 V",
        "alarm: 11.95 V",
        "cut-out: 10.5 V",
        "cut-out: 11.9 V",
        "resistance: 11 mΩ",
        "resistance: 12 mΩ"
    };

    /** Appliances of all sizes, some of which start hard and some of which start again by themselves. */
    private static String drawn(int from, int to, double most) {
        return IntStream.range(from, to)
                .mapToObj(i -> {
                    SplittableRandom random = new SplittableRandom(i);
                    return String.format(
                            Locale.ROOT,
                            "  - { name: Drawn %d, power: %d W (plate), start: %.1f, start-time: 500 ms%s }%n",
                            i,
                            Math.round(20 + most * Math.pow(random.nextDouble(), 2)),
                            1 + 4 * Math.pow(random.nextDouble(), 2),
                            random.nextInt(4) == 0 ? ", duty: 40 %" : "");
                })
                .collect(Collectors.joining());
    }

    private static Figures figures(String demo, String appliances, String... changes) {
        String[] all = new String[changes.length + 2];
        System.arraycopy(changes, 0, all, 2, changes.length);
        all[0] = "appliances:\n";
        all[1] = "appliances:\n" + appliances;
        return ChangedDemo.of(demo, all).figures();
    }

    private static Map<Set<String>, String> ofPairs(Figures figures) {
        Map<Set<String>, String> orders = new HashMap<>();
        for (TogetherFigures pair : figures.pairs()) {
            String first = pair.first().appliance().name();
            String second = pair.second().appliance().name();
            orders.put(Set.of(first, second), said(pair.order(), first, second));
        }
        return orders;
    }

    private static String said(Order order, String first, String second) {
        return switch (order) {
            case FIRST -> first;
            case SECOND -> second;
            case ANY, NEVER -> order.name();
        };
    }

    /** As the guide tells its reader to go by the table. */
    private static Order order(Left a, Left b) {
        if (a.admits(b) && b.admits(a)) {
            return Order.ANY;
        }
        if (b.admits(a)) {
            return TogetherFigures.startsAgain(a.appliance()) ? Order.NEVER : Order.FIRST;
        }
        if (a.admits(b)) {
            return TogetherFigures.startsAgain(b.appliance()) ? Order.NEVER : Order.SECOND;
        }
        return Order.NEVER;
    }

    private static Set<Order> compare(String demo, double most, String... changes) {
        RoomFigures room = figures(demo, drawn(0, 60, most), changes).room().orElseThrow();
        Map<Set<String>, String> pairs = new HashMap<>(ofPairs(figures(demo, drawn(0, 30, most), changes)));
        pairs.putAll(ofPairs(figures(demo, drawn(15, 45, most), changes)));
        pairs.putAll(ofPairs(figures(demo, drawn(30, 60, most), changes)));
        Set<Order> seen = EnumSet.noneOf(Order.class);
        int compared = 0;
        for (int i = 0; i < room.appliances().size(); i++) {
            for (int j = i + 1; j < room.appliances().size(); j++) {
                String first = room.appliances().get(i).appliance().appliance().name();
                String second = room.appliances().get(j).appliance().appliance().name();
                String expected = pairs.get(Set.of(first, second));
                if (expected != null) {
                    Order order =
                            order(room.appliances().get(i), room.appliances().get(j));
                    assertThat(said(order, first, second))
                            .as(first + " and " + second)
                            .isEqualTo(expected);
                    seen.add(order);
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(500);
        return seen;
    }

    @Test
    void saysTheSameAsThePairsWhereTheInverterDecides() {
        assertThat(compare(LITHIUM, 3000)).containsExactlyInAnyOrder(Order.values());
    }

    @Test
    void saysTheSameAsThePairsWhereTheBankDecides() {
        Figures figures = figures(GLASS_MAT, drawn(0, 60, 300), WEAK);
        assertThat(figures.room().orElseThrow().most().value())
                .isLessThan(figures.inverter().output().value());
        assertThat(compare(GLASS_MAT, 300, WEAK)).contains(Order.ANY, Order.NEVER);
    }

    /** 3.2 kW - 1.8 kW and 6 kW - 1.8 kW leave 1.4 kW; 6 kW - 4 x 1.2 kW leave 1.2 kW of 3.2 kW - 1.2 kW: by hand. */
    @Test
    void leavesWhatTheInverterHasLeft() {
        RoomFigures room = figures(
                        LITHIUM,
                        "  - { name: Hard starter, power: 1.2 kW (plate), start: 4, start-time: 500 ms }\n"
                                + drawn(0, 40, 100))
                .room()
                .orElseThrow();
        assertThat(room.most().value().watts()).isEqualTo(3200);
        assertThat(left(room, "Induction ring")).isCloseTo(1400, within(1e-6));
        assertThat(left(room, "Hard starter")).isCloseTo(1200, within(1e-6));
    }

    private static double left(RoomFigures room, String name) {
        return room.appliances().stream()
                .filter(it -> it.appliance().appliance().name().equals(name))
                .findFirst()
                .orElseThrow()
                .left()
                .value()
                .watts();
    }

    /** Forty small ones beside the washing machine and the ring: these two do not go together. */
    @Test
    void tellsWhetherAnyTwoGoTogether() {
        assertThat(figures(LITHIUM, drawn(0, 40, 100)).room().orElseThrow().isEnoughForAnyTwo())
                .isFalse();
        assertThat(figures(LITHIUM, drawn(0, 40, 100), "power: 1.8 kW (plate)", "power: 800 W (plate)")
                        .room()
                        .orElseThrow()
                        .isEnoughForAnyTwo())
                .isTrue();
    }

    /**
     * Of 3.2 kW, by hand: any two of 2.0, 1.8, 1.7 and 1.6 kW take more; 1.5 kW goes with 1.6 kW and is left out,
     * though it does not go with 1.8 kW.
     */
    @Test
    void namesThoseOfWhichNoTwoRunAtOnce() {
        String large = Stream.of(1500, 1600, 1700)
                .map(watts -> "  - { name: Heater " + watts + ", power: " + watts + " W (plate) }\n")
                .collect(Collectors.joining());
        assertThat(figures(LITHIUM, large + drawn(0, 40, 100))
                        .room()
                        .orElseThrow()
                        .apart())
                .extracting(it -> it.appliance().appliance().name())
                .containsExactly("Washing machine", "Induction ring", "Heater 1700", "Heater 1600");
        assertThat(figures(LITHIUM, drawn(0, 40, 100), "power: 1.8 kW (plate)", "power: 800 W (plate)")
                        .room()
                        .orElseThrow()
                        .apart())
                .isEmpty();
    }

    /** 36 appliances are gone through in pairs, 37 are not. */
    @Test
    void takesThePlaceOfThePairs() {
        Figures few = figures(LITHIUM, drawn(0, 31, 100));
        assertThat(few.pairs()).hasSize(36 * 35 / 2);
        assertThat(few.room()).isEmpty();
        Figures many = figures(LITHIUM, drawn(0, 32, 100));
        assertThat(many.pairs()).isEmpty();
        assertThat(many.room().orElseThrow().appliances()).hasSize(37);
    }
}
