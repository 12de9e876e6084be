package org.quaybook.pack.site;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.quaybook.proof.Manifest;
import org.quaybook.render.TemplateFunction;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The installer's own list of records: what nobody else may see, for it leads to all of them. */
public final class RecordIndex {

    /** The page of the list. */
    public static final String PAGE = "index.html";

    private RecordIndex() {}

    /**
     * The list of packs, by job number.
     *
     * @param packs folders of packs
     * @return content by file name
     * @throws NotPublished if one of them is no pack
     */
    public static Map<String, byte[]> of(List<Path> packs, Words words) throws NotPublished {
        NavigableMap<String, Map<String, Object>> rows = new TreeMap<>();
        for (Path pack : packs) {
            IssuedPack issued = IssuedPack.read(pack);
            rows.put(issued.manifest().number() + " " + issued.manifest().record(), row(issued));
        }
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("records", List.copyOf(rows.values()));
        model.put("language", words.language());
        model.put("say", (TemplateFunction) arguments -> words.say(
                (String) arguments.get(0),
                arguments.subList(1, arguments.size()).toArray()));
        return Map.of(
                PAGE, Templates.builtIn().fill("record/own-list.ftlh", model).getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, Object> row(IssuedPack pack) {
        Manifest manifest = pack.manifest();
        JsonNode job = pack.job();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("number", manifest.number());
        row.put("craft", job.path("craft").asText());
        row.put("code", manifest.record());
        row.put("link", job.path("link").asText());
        row.put("revision", String.valueOf(manifest.revision()));
        row.put("date", manifest.date().toString());
        return row;
    }
}
