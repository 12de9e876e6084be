package org.quaybook.figures;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.JobReading;
import org.quaybook.job.Vocabulary;
import org.quaybook.reference.Rulebook;
import org.quaybook.text.Words;

/**
 * A job file as a tree, so that a value can be changed wherever it stands and the job read again. Never changed itself:
 * each change gives another tree.
 *
 * <p>A path names keys and places in lists, {@code cables.0.length}; {@code *} stands for every place of a list.
 */
public final class JobTree {

    private static final ObjectMapper YAML = new YAMLMapper();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Vocabulary WORDS = new Vocabulary(Rulebook.names(), Words.languages());

    /** A number, its unit and whatever follows in brackets. */
    private static final Pattern WRITTEN = Pattern.compile("([+-]?\\d+(?:\\.\\d+)?)( ?[^\\s(]+)?( \\(.*\\))?");

    private final String name;
    private final ObjectNode root;

    private JobTree(String name, ObjectNode root) {
        this.name = name;
        this.root = root;
    }

    static JobTree of(String name, Path file) {
        try {
            ObjectNode root = (ObjectNode) YAML.readTree(file.toFile());
            // Words in another language change no figure, and take half of the time to read.
            root.remove("translations");
            return new JobTree(name, root);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The tree of a demo job. */
    public static JobTree demo(String demo) {
        return of(demo, Path.of("demo-jobs", demo, "job.yaml"));
    }

    /** The same job under another name, for reports. */
    public JobTree named(String other) {
        return new JobTree(other, root);
    }

    @Override
    public String toString() {
        return name;
    }

    /** The job as text that the reader takes: every JSON text is YAML. */
    public String text() {
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public JobReading reading() {
        return JobReader.parse(text(), name, WORDS);
    }

    public Job job() {
        JobReading reading = reading();
        if (reading.job() == null) {
            throw new IllegalStateException(name + ": " + reading.problems());
        }
        return reading.job();
    }

    public boolean has(String path) {
        return !places(path).isEmpty();
    }

    /** How long the list at a path is; 0 if there is none. */
    public int size(String path) {
        return places(path).stream().mapToInt(place -> place.value().size()).sum();
    }

    /** The text at the first place of a path. */
    public String at(String path) {
        return places(path).get(0).value().asText();
    }

    /** With a value there, whether something was there or not; its parent must be. */
    public JobTree with(String path, String value) {
        return with(path, JsonNodeFactory.instance.textNode(value));
    }

    private JobTree with(String path, JsonNode value) {
        JobTree copy = copy();
        int last = path.lastIndexOf('.');
        String key = path.substring(last + 1);
        List<JsonNode> parents = last < 0
                ? List.of(copy.root)
                : copy.places(path.substring(0, last)).stream()
                        .map(Place::value)
                        .toList();
        for (JsonNode parent : parents) {
            if (parent instanceof ObjectNode fields) {
                fields.set(key, value);
            } else if (parent instanceof ArrayNode list) {
                list.set(Integer.parseInt(key), value);
            }
        }
        return copy;
    }

    /** With another element at the end of a list, which is made if there is none. */
    public JobTree withMore(String list, String yaml) {
        try {
            JsonNode element = YAML.readTree(yaml);
            JobTree copy = has(list) ? copy() : with(list, JsonNodeFactory.instance.arrayNode());
            ((ArrayNode) copy.places(list).get(0).value()).add(element);
            return copy;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** With a copy of an element of a list behind it, one of its fields another. */
    JobTree withTwin(String list, int of, String key, String value) {
        JobTree copy = copy();
        ArrayNode elements = (ArrayNode) copy.places(list).get(0).value();
        ObjectNode twin = elements.get(of).deepCopy();
        twin.put(key, value);
        elements.add(twin);
        return copy;
    }

    /** Without what stands at a path. */
    public JobTree without(String path) {
        JobTree copy = copy();
        List<Place> places = new ArrayList<>(copy.places(path));
        Collections.reverse(places);
        places.forEach(Place::remove);
        return copy;
    }

    /** With the list at a path the other way round. */
    public JobTree reversed(String list) {
        JobTree copy = copy();
        for (Place place : copy.places(list)) {
            if (place.value() instanceof ArrayNode elements) {
                List<JsonNode> turned = new ArrayList<>();
                elements.forEach(turned::add);
                Collections.reverse(turned);
                elements.removeAll();
                elements.addAll(turned);
            }
        }
        return copy;
    }

    /** With every number at a path so many times as large; unit and origin stay. */
    public JobTree times(String path, double factor) {
        return changed(path, number -> number * factor);
    }

    /** With so much more in every number at a path. */
    public JobTree plus(String path, double more) {
        return changed(path, number -> number + more);
    }

    private interface Change {
        double of(double number);
    }

    private JobTree changed(String path, Change change) {
        return rewritten(path, text -> {
            Matcher written = WRITTEN.matcher(text);
            if (!written.matches()) {
                return text;
            }
            String unit = written.group(2) == null ? "" : written.group(2);
            String origin = written.group(3) == null ? "" : written.group(3);
            return plain(change.of(Double.parseDouble(written.group(1)))) + unit + origin;
        });
    }

    /** A number in plain digits, as many as a job may have. */
    static String plain(double number) {
        return new java.math.BigDecimal(number, new java.math.MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** With the text of every value at a path, or of what is inside it, another. */
    public JobTree rewritten(String path, UnaryOperator<String> change) {
        JobTree copy = copy();
        copy.places(path).forEach(place -> rewrite(place, change));
        return copy;
    }

    private static void rewrite(Place place, UnaryOperator<String> change) {
        JsonNode value = place.value();
        if (value.has("value")) {
            rewrite(new Place(value, "value", 0), change);
        } else if (value.isValueNode()) {
            place.set(JsonNodeFactory.instance.textNode(change.apply(value.asText())));
        }
    }

    /** The paths of all single values, in the order of the file. */
    public List<String> leaves() {
        List<String> leaves = new ArrayList<>();
        collect(root, "", leaves);
        return leaves;
    }

    private static void collect(JsonNode node, String path, List<String> into) {
        if (node.isObject()) {
            node.properties().forEach(field -> collect(field.getValue(), join(path, field.getKey()), into));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                collect(node.get(i), join(path, Integer.toString(i)), into);
            }
        } else {
            into.add(path);
        }
    }

    private static String join(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private JobTree copy() {
        return new JobTree(name, root.deepCopy());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JobTree tree && tree.root.equals(root);
    }

    @Override
    public int hashCode() {
        return root.hashCode();
    }

    /** A value with where it hangs. */
    private record Place(JsonNode parent, String key, int index) {

        JsonNode value() {
            return parent.isArray() ? parent.get(index) : parent.get(key);
        }

        void set(JsonNode value) {
            if (parent instanceof ArrayNode list) {
                list.set(index, value);
            } else {
                ((ObjectNode) parent).set(key, value);
            }
        }

        void remove() {
            if (parent instanceof ArrayNode list) {
                list.remove(index);
            } else {
                ((ObjectNode) parent).remove(key);
            }
        }
    }

    private List<Place> places(String path) {
        List<JsonNode> nodes = List.of(root);
        List<Place> places = List.of();
        for (String key : path.split("\\.", -1)) {
            List<Place> next = new ArrayList<>();
            for (JsonNode node : nodes) {
                if (node.isArray()) {
                    for (int i = 0; i < node.size(); i++) {
                        if (key.equals("*") || key.equals(Integer.toString(i))) {
                            next.add(new Place(node, key, i));
                        }
                    }
                } else if (node.has(key)) {
                    next.add(new Place(node, key, 0));
                }
            }
            places = next;
            nodes = places.stream().map(Place::value).toList();
        }
        return places;
    }
}
