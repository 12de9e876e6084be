package org.quaybook.record;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.quaybook.job.Header;
import org.quaybook.job.Installer;

/**
 * What the record page says of itself in the words of schema.org, for programs: a technical article of a certain revision
 * by a firm, and where its figures are. Terms from memory: TechArticle, identifier, version, dateModified, encoding.
 */
final class RecordData {

    private final Installer installer;
    private final Header header;
    private final RecordLeaf leaf;

    RecordData(Installer installer, Header header, RecordLeaf leaf) {
        this.installer = installer;
        this.header = header;
        this.leaf = leaf;
    }

    /** JSON-LD that can stand in a page: no character of it could end a script. */
    String json() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("@context", "https://schema.org")
                .put("@type", "TechArticle")
                .put("identifier", header.record().toString())
                .put(
                        "headline",
                        leaf.words()
                                .say(
                                        "record.title",
                                        leaf.edition()
                                                .edition()
                                                .assessment()
                                                .job()
                                                .craft()
                                                .name()))
                .put("version", header.revision().toString())
                .put("dateModified", header.date().toString())
                .put("inLanguage", leaf.edition().language());
        ObjectNode firm =
                root.putObject("publisher").put("@type", "Organization").put("name", installer.firm());
        if (installer.phone() != null) {
            firm.put("telephone", installer.phone());
        }
        ArrayNode files = root.putArray("encoding");
        leaf.downloads()
                .forEach(download -> files.addObject()
                        .put("@type", "MediaObject")
                        .put("name", download.file())
                        .put("contentUrl", download.file()));
        return root.toString().replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026");
    }
}
