package org.quaybook.proof;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.quaybook.diag.Message;

/** JSON (RFC 8259) as the program writes it, and read without any indulgence. */
public final class JsonText {

    private static final ObjectWriter WRITER = new ObjectMapper()
            .writer(new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private static final ObjectReader READER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build()
            .reader();

    private JsonText() {}

    /** Indented by two spaces, lines ended alike on every system, UTF-8. */
    public static byte[] of(JsonNode node) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            WRITER.writeValue(out, node);
        } catch (IOException e) {
            throw new IllegalStateException("a tree of plain values always has a text", e);
        }
        out.write('\n');
        return out.toByteArray();
    }

    /** @throws Refused if it is not UTF-8, not JSON, has something after its end, or a key stands twice in one object */
    static JsonNode read(byte[] content) throws Refused {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
            return READER.readTree(text);
        } catch (CharacterCodingException e) {
            throw new Refused(Message.of(ProofMessage.NOT_UTF8));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            // Of a text that is nested without end, Jackson tells no place.
            int line = at == null ? 1 : at.getLineNr();
            boolean twice = e.getOriginalMessage().startsWith("Duplicate field");
            throw new Refused(Message.of(twice ? ProofMessage.KEY_TWICE : ProofMessage.NOT_JSON, line));
        }
    }

    /** @throws Refused unless the node is an object with exactly these keys */
    static void holdsExactly(JsonNode node, Set<String> keys) throws Refused {
        Set<String> found = new TreeSet<>();
        node.fieldNames().forEachRemaining(found::add);
        if (!node.isObject() || !found.equals(keys)) {
            throw new Refused(
                    Message.of(ProofMessage.KEYS, String.join(", ", found), String.join(", ", new TreeSet<>(keys))));
        }
    }

    /** The text of a key if it has the form; nothing is converted. */
    static Optional<String> text(JsonNode node, String key, String form) {
        JsonNode value = node.path(key);
        return value.isTextual() && value.textValue().matches(form) ? Optional.of(value.textValue()) : Optional.empty();
    }
}
