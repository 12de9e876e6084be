package org.quaybook.pack.changes;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a revision says otherwise than the one issued before.
 *
 * @param from revision that was issued before
 * @param date of that revision
 * @param figures as documents print them
 * @param labels to be put on, replaced or taken off
 * @param findings of the checks that have come or gone
 * @param settings that have another value
 * @param visits that were made since
 */
public record Changes(
        int from,
        LocalDate date,
        List<Value> figures,
        List<Label> labels,
        List<Found> findings,
        List<Value> settings,
        List<Visit> visits) {

    private static final Pattern HEADING = Pattern.compile("<h1[^>]*>(.*?)</h1>", Pattern.DOTALL);
    private static final Pattern CHAPTER = Pattern.compile("<section class=\"chapter chapter-([a-z]+)\">");

    public Changes {
        figures = List.copyOf(figures);
        labels = List.copyOf(labels);
        findings = List.copyOf(findings);
        settings = List.copyOf(settings);
        visits = List.copyOf(visits);
    }

    /** A visit after handing over. */
    public record Visit(LocalDate date, String firm, String did) {}

    /**
     * A value that is another now.
     *
     * @param name of the figure or setting
     * @param before empty if it is new
     * @param now empty if it is gone
     */
    public record Value(String name, Optional<String> before, Optional<String> now) {}

    /** What to do with a label. */
    public enum Task {
        PUT_ON,
        REPLACE,
        TAKE_OFF
    }

    /** A label with what to do. */
    public record Label(Task task, String id, String title, String place) {}

    /**
     * A finding.
     *
     * @param gone whether it is no longer found
     * @param message what it said
     */
    public record Found(boolean gone, String check, String message) {}

    /**
     * Compares a revision with the one before, for the installer.
     *
     * @param figures the pack's new figures.json
     */
    public static Changes since(IssuedBefore before, JsonNode figures) {
        return between(before, before.figures(), figures);
    }

    /**
     * Compares what is published with what was: nothing that was kept back then comes out now.
     *
     * @param figures the published record's new figures.json
     */
    public static Changes published(IssuedBefore before, JsonNode figures) {
        return between(before, before.publishedFigures(), figures);
    }

    private static Changes between(IssuedBefore before, JsonNode old, JsonNode now) {
        return new Changes(
                before.manifest().revision(),
                before.manifest().date(),
                values(old.path("figures"), now.path("figures"), "printed", node -> text(node, "name")),
                labels(old.path("labels"), now.path("labels")),
                findings(old.path("findings"), now.path("findings")),
                values(
                        old.path("settings"),
                        now.path("settings"),
                        "value",
                        node -> text(node, "device") + ": " + text(node, "name")),
                visits(old.path("service"), now.path("service")));
    }

    private static List<Visit> visits(JsonNode before, JsonNode now) {
        Function<JsonNode, String> name = JsonNode::toString;
        return only(byName(now, name), byName(before, name))
                .map(node -> new Visit(LocalDate.parse(text(node, "date")), text(node, "firm"), text(node, "did")))
                .toList();
    }

    private static String text(JsonNode node, String key) {
        return node.path(key).asText();
    }

    private static Map<String, JsonNode> byName(JsonNode list, Function<JsonNode, String> name) {
        Map<String, JsonNode> named = new LinkedHashMap<>();
        list.forEach(node -> named.put(name.apply(node), node));
        return named;
    }

    private static List<Value> values(JsonNode before, JsonNode now, String key, Function<JsonNode, String> name) {
        Map<String, JsonNode> old = byName(before, name);
        Map<String, JsonNode> fresh = byName(now, name);
        Set<String> names = new LinkedHashSet<>(fresh.keySet());
        names.addAll(old.keySet());
        return names.stream()
                .map(each -> new Value(each, value(old, each, key), value(fresh, each, key)))
                .filter(value -> !value.before().equals(value.now()))
                .toList();
    }

    private static Optional<String> value(Map<String, JsonNode> nodes, String name, String key) {
        return Optional.ofNullable(nodes.get(name)).map(node -> text(node, key));
    }

    private static List<Label> labels(JsonNode before, JsonNode now) {
        Map<String, JsonNode> old = byName(before, node -> text(node, "label"));
        Map<String, JsonNode> fresh = byName(now, node -> text(node, "label"));
        List<Label> labels = new ArrayList<>();
        fresh.forEach((id, node) -> {
            JsonNode was = old.get(id);
            if (was == null) {
                labels.add(label(Task.PUT_ON, id, node));
            } else if (!text(was, "sha256").equals(text(node, "sha256"))) {
                labels.add(label(Task.REPLACE, id, node));
            }
        });
        old.forEach((id, node) -> {
            if (!fresh.containsKey(id)) {
                labels.add(label(Task.TAKE_OFF, id, node));
            }
        });
        return labels;
    }

    private static Label label(Task task, String id, JsonNode node) {
        return new Label(task, id, text(node, "title"), text(node, "place"));
    }

    private static List<Found> findings(JsonNode before, JsonNode now) {
        Function<JsonNode, String> name = node -> text(node, "check") + " " + text(node, "key");
        Map<String, JsonNode> old = byName(before, name);
        Map<String, JsonNode> fresh = byName(now, name);
        return Stream.concat(
                        only(fresh, old).map(node -> new Found(false, text(node, "check"), text(node, "message"))),
                        only(old, fresh).map(node -> new Found(true, text(node, "check"), text(node, "message"))))
                .toList();
    }

    private static Stream<JsonNode> only(Map<String, JsonNode> here, Map<String, JsonNode> there) {
        return here.keySet().stream()
                .filter(name -> !there.containsKey(name))
                .map(name -> Objects.requireNonNull(here.get(name)));
    }

    /**
     * Headings of the chapters of the owner's guide that read otherwise than in the revision before, in the page's order;
     * all of them if that revision had no such page.
     *
     * @param name of the guide's page
     * @param page its content now
     */
    public static List<String> chapters(IssuedBefore before, String name, String page) {
        Map<String, String> old = before.page(name).map(Changes::byChapter).orElse(Map.of());
        return byChapter(page).entrySet().stream()
                .filter(chapter -> !chapter.getValue().equals(old.get(chapter.getKey())))
                .map(chapter -> heading(chapter.getValue()))
                .toList();
    }

    private static String heading(String chapter) {
        Matcher heading = HEADING.matcher(chapter);
        if (!heading.find()) {
            throw new IllegalArgumentException("a chapter of the guide has a heading");
        }
        return heading.group(1)
                .replaceAll("<[^>]*>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .strip()
                .replaceAll("\\s+", " ");
    }

    private static Map<String, String> byChapter(String page) {
        Map<String, String> chapters = new LinkedHashMap<>();
        Matcher start = CHAPTER.matcher(page);
        String id = "";
        int from = 0;
        while (start.find()) {
            if (!id.isEmpty()) {
                chapters.put(id, page.substring(from, start.start()));
            }
            id = start.group(1);
            from = start.end();
        }
        if (!id.isEmpty()) {
            chapters.put(id, page.substring(from));
        }
        return chapters;
    }
}
