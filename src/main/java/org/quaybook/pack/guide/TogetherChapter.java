package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.AtShoreFigures;
import org.quaybook.figures.AtShoreFigures.Alone;
import org.quaybook.figures.AtShoreFigures.Fit;
import org.quaybook.figures.AtShoreFigures.Pair;
import org.quaybook.figures.Figure;
import org.quaybook.figures.RoomFigures;
import org.quaybook.figures.TogetherFigures;
import org.quaybook.figures.TogetherFigures.Order;
import org.quaybook.quantity.Current;
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
        return !pairs().isEmpty() || brief.figures().room().isPresent();
    }

    private List<TogetherFigures> pairs() {
        return brief.figures().pairs();
    }

    Map<String, Object> facts() {
        return new Rows()
                .put(
                        "any",
                        brief.figures()
                                .room()
                                .map(RoomFigures::isEnoughForAnyTwo)
                                .orElse(pairs().stream().allMatch(pair -> pair.order() == Order.ANY)))
                .put("ordered", pairs().stream().anyMatch(pair -> isOrdered(pair.order())))
                .put("never", pairs().stream().anyMatch(pair -> pair.order() == Order.NEVER))
                .put("matrices", brief.figures().room().isPresent() ? List.of() : onInverter())
                .put("room", brief.figures().room().map(this::room).orElse(List.of()))
                .put("staying", staying())
                .put("words", inWords())
                .put(
                        "shore",
                        brief.figures()
                                .atShore()
                                .filter(AtShoreFigures::tight)
                                .<Object>map(this::atShore)
                                .orElse(""))
                .map();
    }

    private List<Map<String, Object>> room(RoomFigures room) {
        return room.appliances().stream()
                .map(it -> new Rows()
                        .put("name", it.appliance().appliance().name())
                        .put("again", TogetherFigures.startsAgain(it.appliance()))
                        .put("asks", brief.say(it.appliance().power()))
                        .put("leaves", brief.say(it.left()))
                        .map())
                .toList();
    }

    /** What stays on is easily forgotten when two are counted. */
    private String staying() {
        List<String> leftOn = brief.figures().absence().leftOn();
        return leftOn.isEmpty() ? "" : brief.words().say("guide.together.staying", leftOn);
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
        Rows facts = new Rows().put("intro", intro(shore));
        if (shore.isSummedUp()) {
            return facts.put("sum", sum(shore))
                    .put(
                            "asking",
                            shore.appliances().stream()
                                    .map(it -> new Rows()
                                            .put(
                                                    "name",
                                                    it.appliance().appliance().name())
                                            .put("asks", amperes(it.current()))
                                            .map())
                                    .toList())
                    .map();
        }
        List<Fit> fits = Stream.concat(
                        shore.appliances().stream().map(Alone::fit),
                        shore.pairs().stream().map(Pair::fit))
                .toList();
        return facts.put("waits", fits.contains(Fit.WITHOUT_CHARGING))
                .put("never", fits.contains(Fit.NEVER))
                .put(
                        "matrices",
                        matrices(
                                shore.appliances().stream()
                                        .map(it -> new Line(
                                                it.appliance().key(),
                                                it.appliance().appliance().name(),
                                                amperes(it.current())))
                                        .toList(),
                                marks(shore)))
                .map();
    }

    /** What hangs past the inverter has the whole supply, where the inverter passes on less of it. */
    private String intro(AtShoreFigures shore) {
        boolean past = !brief.figures().pastInverter().isEmpty()
                && shore.available().value().compareTo(shore.whole().value()) < 0;
        return past
                ? brief.words()
                        .say("guide.together.shore.intro.past", brief.say(shore.whole()), brief.say(shore.available()))
                : brief.words().say("guide.together.shore.intro", brief.say(shore.available()));
    }

    private static Map<Set<String>, String> marks(AtShoreFigures shore) {
        Map<Set<String>, String> marks = new HashMap<>();
        shore.appliances().forEach(it -> marks.put(Set.of(it.appliance().key()), mark(it.fit())));
        shore.pairs()
                .forEach(pair -> marks.put(
                        Set.of(
                                pair.first().appliance().key(),
                                pair.second().appliance().key()),
                        mark(pair.fit())));
        return marks;
    }

    /** Up to how many amperes fit. */
    private String sum(AtShoreFigures shore) {
        String most = brief.say(shore.available());
        if (shore.besideCharging().isEmpty()) {
            return brief.words().say("guide.together.shore.sum", most);
        }
        Figure<Current> left = shore.besideCharging().get();
        return left.value().amperes() <= 0
                ? brief.words().say("guide.together.shore.sum.waits", most)
                : brief.words().say("guide.together.shore.sum.charging", amperes(left), most);
    }

    private String amperes(Figure<Current> current) {
        return brief.words().numbers().fixed(current.value(), "A", 1, current.rounding());
    }

    private static String mark(Fit fit) {
        return fit == Fit.ALWAYS ? "yes" : fit == Fit.NEVER ? "no" : "half";
    }
}
