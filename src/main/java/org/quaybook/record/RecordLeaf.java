package org.quaybook.record;

import java.util.List;
import org.quaybook.render.InlineSvg;
import org.quaybook.text.Words;

/**
 * A record in one language, and what the caller puts beside its page.
 *
 * @param edition what is published
 * @param first whether this is the job's first language, whose files have no language in their names
 * @param diagrams how the parts are connected, in the order to show them
 * @param guide file of the owner's guide as a page, beside this one
 * @param book the guide, for the record in one file
 * @param downloads files beside the page, in the order to offer them
 * @param digest SHA-256 of the published figures, in hexadecimal digits
 * @param changes what this revision changes, a sentence each; empty for the first
 */
public record RecordLeaf(
        PublicEdition edition,
        boolean first,
        List<InlineSvg> diagrams,
        String guide,
        Book book,
        List<Download> downloads,
        String digest,
        List<String> changes) {

    public RecordLeaf {
        diagrams = List.copyOf(diagrams);
        downloads = List.copyOf(downloads);
        changes = List.copyOf(changes);
    }

    /**
     * The guide to stand inside another page.
     *
     * @param chapters well-formed XHTML
     * @param style a style sheet that reaches nothing outside the guide
     */
    public record Book(String chapters, String style) {}

    /**
     * A file to take along.
     *
     * @param file its name
     * @param kind what it is, the last part of a key {@code record.foot.file.…}
     * @param bytes its size
     */
    public record Download(String file, String kind, int bytes) {

        /** The size, rounded up, at least 1. */
        String kilobytes() {
            return String.valueOf(Math.max(1, (bytes + 999) / 1000));
        }
    }

    Words words() {
        return edition.edition().words();
    }

    /** File name of the page. */
    String page() {
        return named("index", ".html");
    }

    /** File name of the record in one file. */
    String whole() {
        return named("record", ".html");
    }

    /** A file's name in this language. */
    public String named(String name, String ending) {
        return name + (first ? "" : "-" + edition.language()) + ending;
    }
}
