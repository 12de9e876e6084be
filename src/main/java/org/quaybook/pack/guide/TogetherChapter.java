package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.AtShoreFigures;
import org.quaybook.figures.AtShoreFigures.Fit;
import org.quaybook.figures.TogetherFigures;
import org.quaybook.figures.TogetherFigures.Order;
import org.quaybook.record.Rows;

/** What can run together, appliance by appliance: on the inverter, and on shore power where that is short. */
final class TogetherChapter {

    /** Columns that stay wide enough for a mark on the smallest page. */
    private static final int MOST_COLUMNS = 12;

    /** Pairs that are also told in words; beyond that the table is read faster. */
    private static final int MOST_IN_WORDS = 8;

    private final Briefing brief;

    TogetherChapter(Briefing brief) {
        this.brief = brief;
    }

    boolean isNeeded() {
        return !pairs().isEmpty();
    }

    private List<TogetherFigures> pairs() {
        return brief.figures().pairs();
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("any", pairs().stream().allMatch(pair -> pair.order() == Order.ANY))
                .put("ordered", pairs().stream().anyMatch(pair -> isOrdered(pair.order())))
                .put("never", pairs().stream().anyMatch(pair -> pair.order() == Order.NEVER))
                .put("matrices", onInverter())
                .put("words", inWords())
                .put(
                        "shore",
                        brief.figures()
                                .atShore()
                                .filter(AtShoreFigures::isTight)
                                .<Object>map(this::atShore)
                                .orElse(""))
                .map();
    }

    private static boolean isOrdered(Order order) {
        return order == Order.FIRST || order == Order.SECOND;
    }

    private List<Map<String, Object>> onInverter() {
        List<ApplianceFigures> able = brief.figures().appliances().stream()
                .filter(ApplianceFigures::runs)
                .toList();
        Map<Set<String>, String> marks = new HashMap<>();
        able.forEach(it -> marks.put(Set.of(it.key()), "self"));
        pairs().forEach(pair ->
                marks.put(Set.of(pair.first().key(), pair.second().key()), mark(pair.order())));
        return matrices(
                able.stream()
                        .map(it -> new Line(it.key(), it.appliance().name(), brief.say(it.power())))
                        .toList(),
                marks);
    }

    private static String mark(Order order) {
        return order == Order.ANY ? "yes" : order == Order.NEVER ? "no" : "half";
    }

    /** An appliance with what it asks for. */
    private record Line(String key, String name, String asks) {

        String with(Line other, Map<Set<String>, String> marks) {
            Set<String> both = key.equals(other.key) ? Set.of(key) : Set.of(key, other.key);
            return marks.getOrDefault(both, "");
        }
    }

    /**
     * Tables of at most so many columns as find room, all rows in each.
     *
     * @param marks by the key of one appliance or the keys of two
     */
    private static List<Map<String, Object>> matrices(List<Line> lines, Map<Set<String>, String> marks) {
        int tables = (lines.size() + MOST_COLUMNS - 1) / MOST_COLUMNS;
        int columns = tables == 0 ? 1 : (lines.size() + tables - 1) / tables;
        List<Map<String, Object>> matrices = new ArrayList<>();
        for (int from = 0; from < lines.size(); from += columns) {
            matrices.add(matrix(lines, from, Math.min(lines.size(), from + columns), marks));
        }
        return List.copyOf(matrices);
    }

    private static Map<String, Object> matrix(List<Line> lines, int from, int to, Map<Set<String>, String> marks) {
        List<Line> heads = lines.subList(from, to);
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Line row : lines) {
            rows.add(new Rows()
                    .put("number", rows.size() + 1)
                    .put("name", row.name())
                    .put("asks", row.asks())
                    .put(
                            "marks",
                            heads.stream().map(head -> row.with(head, marks)).toList())
                    .map());
        }
        return new Rows()
                .put("heads", IntStream.rangeClosed(from + 1, to).boxed().toList())
                .put("rows", rows)
                .map();
    }

    /** Which one to start first, always; what cannot run together, unless there is too much of it to read. */
    private List<String> inWords() {
        Lines lines = brief.lines("together");
        boolean few =
                pairs().stream().filter(pair -> pair.order() == Order.NEVER).count() <= MOST_IN_WORDS;
        for (TogetherFigures pair : pairs()) {
            String first = pair.first().appliance().name();
            String second = pair.second().appliance().name();
            lines.sayIf(pair.order() == Order.FIRST, "first", first, second)
                    .sayIf(pair.order() == Order.SECOND, "first", second, first)
                    .sayIf(few && !pair.allowed(), "too-much", first, second, brief.say(pair.power()))
                    .sayIf(few && pair.allowed() && pair.order() == Order.NEVER, "start-too-much", first, second);
        }
        return lines.list();
    }

    private Map<String, Object> atShore(AtShoreFigures shore) {
        boolean waits = shore.appliances().stream().anyMatch(it -> it.fit() == Fit.WITHOUT_CHARGING)
                || shore.pairs().stream().anyMatch(it -> it.fit() == Fit.WITHOUT_CHARGING);
        boolean never = shore.appliances().stream().anyMatch(it -> it.fit() == Fit.NEVER)
                || shore.pairs().stream().anyMatch(it -> it.fit() == Fit.NEVER);
        Map<Set<String>, String> marks = new HashMap<>();
        shore.appliances().forEach(it -> marks.put(Set.of(it.appliance().key()), mark(it.fit())));
        shore.pairs()
                .forEach(pair -> marks.put(
                        Set.of(
                                pair.first().appliance().key(),
                                pair.second().appliance().key()),
                        mark(pair.fit())));
        return new Rows()
                .put("intro", brief.words().say("guide.together.shore.intro", brief.say(shore.available())))
                .put("waits", waits)
                .put("never", never)
                .put(
                        "matrices",
                        matrices(
                                shore.appliances().stream()
                                        .map(it -> new Line(
                                                it.appliance().key(),
                                                it.appliance().appliance().name(),
                                                brief.words()
                                                        .numbers()
                                                        .fixed(
                                                                it.current().value(),
                                                                "A",
                                                                1,
                                                                it.current().rounding())))
                                        .toList(),
                                marks))
                .map();
    }

    private static String mark(Fit fit) {
        return fit == Fit.ALWAYS ? "yes" : fit == Fit.NEVER ? "no" : "half";
    }
}
