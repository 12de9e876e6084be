package org.quaybook.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Kind;
import org.quaybook.quantity.Kinds;
import org.quaybook.quantity.Quantity;

/**
 * Makes the JSON Schema of a record of the format. Our own rather than a general generator: nearly every type here is
 * written as a text with a form of its own, so that a general one would be all exceptions.
 */
final class SchemaWriter {

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    /** Spaces and minus signs that a keyboard does not have are let in, as by the reader. */
    private static final String NUMBER = "[+\\-\u2212]?\\d{1,9}(?:\\.\\d{1,9})?";

    private static final String SPACES = "[ \u00a0\u202f]*";
    private static final String SIZE = "(?:\\d{1,4}(?:\\.\\d{1,3})? ?(?:mm2|mm²|sqmm)|(?:\\d{1,2}|[1-4]/0) ?AWG)";
    private static final String NOTE = "(?: *\\((?:" + String.join("|", GivenReader.KNOWN) + ")(?:,[^()]*)?\\))?";

    private final Map<String, ObjectNode> definitions = new TreeMap<>();

    private SchemaWriter() {}

    static String write(Class<?> record, String title) {
        SchemaWriter writer = new SchemaWriter();
        ObjectNode root = JSON.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", title);
        root.setAll(writer.record(record));
        ObjectNode definitions = root.putObject("$defs");
        writer.definitions.forEach(definitions::set);
        try {
            return JSON.writeValueAsString(root).replace("\r\n", "\n") + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private ObjectNode record(Class<?> record) {
        ObjectNode schema = JSON.createObjectNode();
        schema.put("description", record.getAnnotation(Means.class).value());
        schema.put("type", "object");
        schema.put("additionalProperties", false);
        ArrayNode required = JSON.createArrayNode();
        ObjectNode properties = JSON.createObjectNode();
        for (Field field : Field.written(record)) {
            properties.set(field.key(), field(field));
            if (field.required()) {
                required.add(field.key());
            }
        }
        schema.set("required", required);
        schema.set("properties", properties);
        return schema;
    }

    private ObjectNode field(Field field) {
        ObjectNode schema = switch (field.form()) {
            case LIST -> list(field);
            case GIVEN -> reference("given-" + name(field.type()), given(field.type()));
            case PLAIN, PLACE, BESIDE -> single(field);
        };
        schema.put("description", description(field));
        field.annotation(Within.class)
                .filter(within -> Number.class.isAssignableFrom(field.type()))
                .ifPresent(within -> {
                    schema.put("minimum", Double.valueOf(within.least()));
                    schema.put("maximum", Double.valueOf(within.most()));
                });
        field.sample().ifPresent(example -> schema.putArray("examples").add(example(field, example)));
        return schema;
    }

    private static JsonNode example(Field field, String text) {
        if (field.form() != Field.Form.LIST) {
            return TextNode.valueOf(text);
        }
        ArrayNode items = JSON.createArrayNode();
        Pattern.compile(", ")
                .splitAsStream(text.substring(1, text.length() - 1))
                .forEach(items::add);
        return items;
    }

    private ObjectNode list(Field field) {
        ObjectNode schema = JSON.createObjectNode().put("type", "array");
        schema.set("items", single(field));
        return schema;
    }

    private ObjectNode single(Field field) {
        if (field.isNested()) {
            return reference(name(field.type()), record(field.type()));
        }
        Optional<Matches> form = field.annotation(Matches.class);
        if (form.isPresent()) {
            // A job number of digits only is a number to YAML.
            return text("^(?:" + form.get().value() + ")$", "string", "number");
        }
        Optional<Longest> longest = field.annotation(Longest.class);
        if (longest.isPresent()) {
            ObjectNode text = value(field.type(), "");
            text.put("maxLength", longest.get().value());
            return text;
        }
        return reference(name(field.type()), value(field.type(), ""));
    }

    /** A value with how it is known: short, long, or not seen. */
    private ObjectNode given(Class<?> type) {
        ObjectNode schema = JSON.createObjectNode();
        ArrayNode forms = schema.putArray("anyOf");
        forms.add(value(type, NOTE));
        forms.addObject().put("const", GivenReader.NOT_SEEN);
        ObjectNode full = forms.addObject().put("type", "object").put("additionalProperties", false);
        ObjectNode properties = full.putObject("properties");
        properties.set("value", value(type, ""));
        ArrayNode known = properties.putObject("known").putArray("enum");
        GivenReader.KNOWN.forEach(known::add);
        known.add(GivenReader.NOT_SEEN);
        properties.set("by", reference("text", value(String.class, "")));
        properties.set("on", reference("date", value(LocalDate.class, "")));
        // Either there is a value, or the word that nobody has seen it.
        ArrayNode either = full.putArray("oneOf");
        either.addObject().putArray("required").add("value");
        ObjectNode notSeen = either.addObject();
        notSeen.putArray("required").add("known");
        notSeen.putObject("properties").putObject("known").put("const", GivenReader.NOT_SEEN);
        return schema;
    }

    /** @param suffix what may follow the value, as a regular expression */
    private ObjectNode value(Class<?> type, String suffix) {
        if (type.isEnum()) {
            return words(Names.all(type), suffix);
        }
        if (type == String.class) {
            return text(".*\\S.*", "string", "number");
        }
        if (type == Boolean.class) {
            return text("^(?:yes|no|true|false)" + suffix + "$", "string", "boolean");
        }
        if (type == Integer.class) {
            return text("^[+-]?\\d{1,9}" + suffix + "$", "string", "integer");
        }
        if (type == Double.class) {
            return text("^" + NUMBER + suffix + "$", "string", "number");
        }
        return text("^" + form(type) + suffix + "$", "string");
    }

    private static String form(Class<?> type) {
        if (type == LocalDate.class) {
            return "\\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\\d|3[01])";
        }
        if (type == LocalTime.class) {
            return "(?:[01]\\d|2[0-3]):[0-5]\\d";
        }
        if (type == YearMonth.class) {
            return "\\d{4}-(?:0[1-9]|1[0-2])";
        }
        if (type == RecordCode.class) {
            return "(?:[ -]*[0-9A-Za-z]){" + RecordCode.LENGTH + "}[ -]*";
        }
        if (type == SealKey.class) {
            return "(?:[ -]*[0-9A-Za-z]){" + SealKey.LENGTH + "}[ -]*";
        }
        if (type == Conductor.class) {
            return "(?:[1-9] ?[x×] ?)?" + SIZE;
        }
        if (type == ConductorSize.class) {
            return SIZE;
        }
        Stream<Kind<?>> kinds = type == Quantity.class ? Kinds.all() : Stream.of(Kinds.of(type));
        return NUMBER + SPACES + "(?:" + units(kinds) + ")";
    }

    private static String units(Stream<Kind<?>> kinds) {
        return kinds.flatMap(kind -> kind.units().stream())
                .flatMap(unit -> Stream.concat(Stream.of(unit.symbol()), unit.spellings().stream()))
                .sorted()
                .collect(Collectors.joining("|"));
    }

    private static ObjectNode words(List<String> words, String suffix) {
        if (!suffix.isEmpty()) {
            return text("^(?:" + String.join("|", words) + ")" + suffix + "$", "string");
        }
        ObjectNode schema = JSON.createObjectNode();
        words.forEach(schema.putArray("enum")::add);
        return schema;
    }

    private static ObjectNode text(String pattern, String... types) {
        ObjectNode schema = JSON.createObjectNode();
        if (types.length == 1) {
            schema.put("type", types[0]);
        } else {
            Arrays.stream(types).forEach(schema.putArray("type")::add);
        }
        return schema.put("pattern", pattern);
    }

    private ObjectNode reference(String name, ObjectNode definition) {
        definitions.put(name, definition);
        return JSON.createObjectNode().put("$ref", "#/$defs/" + name);
    }

    private static String name(Class<?> type) {
        if (type == String.class) {
            return "text";
        }
        return type == LocalDate.class
                ? "date"
                : Names.key(type.getSimpleName()).substring(1);
    }

    private static String description(Field field) {
        String allowed = FormatWords.allowed(field, "; ");
        String meaning = FormatWords.sentence(field.meaning());
        return allowed.isEmpty() ? meaning : meaning + " " + FormatWords.sentence(allowed);
    }
}
