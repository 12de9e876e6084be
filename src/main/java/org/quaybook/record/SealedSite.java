package org.quaybook.record;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Header;
import org.quaybook.job.SealKey;
import org.quaybook.render.Templates;
import org.quaybook.seal.Seal;

/**
 * A sealed record as static files for any web host: a page in each language of the job that says nothing of the installation
 * and opens, in the reader's browser, the sealed files beside it with the key behind the number sign of the link. Nothing
 * else is published of it: what no page offers does not leave the pack.
 */
public final class SealedSite {

    private static final String STYLE_BEGIN = "<style>";
    private static final String STYLE_END = "</style>";

    private final RecordSite site;
    private final Header header;
    private final Seal seal;
    private final Templates templates;

    private SealedSite(RecordSite site, Header header, Seal seal, Templates templates) {
        this.site = site;
        this.header = header;
        this.seal = seal;
        this.templates = templates;
    }

    /**
     * The files of one record.
     *
     * @param leaves one a language of the job, its first language first
     * @param plain what is sealed, by file name: the record in one file in each language, and every file to take along
     * @param history the earlier revisions, oldest first
     * @param key that of the job
     * @return content by path: {@code <CODE>/…} and {@link RecordSite#UNKNOWN_CODE}
     */
    public static Map<String, byte[]> files(
            List<RecordLeaf> leaves,
            Map<String, byte[]> plain,
            List<Issued> history,
            SealKey key,
            Branding branding,
            Templates templates) {
        Assessment it = leaves.get(0).edition().edition().assessment();
        Header header = it.job().job();
        RecordSite site = new RecordSite(it.installer(), header, branding, templates);
        Seal seal = new Seal(key.bytes(), header.record().symbols());
        return new SealedSite(site, header, seal, templates).files(leaves, plain, history, RecordLink.of(it));
    }

    private Map<String, byte[]> files(
            List<RecordLeaf> leaves, Map<String, byte[]> plain, List<Issued> history, RecordLink link) {
        Map<String, byte[]> published = new TreeMap<>();
        List<String> pages = new ArrayList<>();
        List<String> more = new ArrayList<>();
        for (RecordLeaf leaf : leaves) {
            published.put(leaf.page(), page(leaf, leaves, history, content(plain, leaf.whole())));
            pages.add(leaf.page());
            pages.add(leaf.whole() + Seal.ENDING);
            leaf.downloads().forEach(file -> more.add(file.file() + Seal.ENDING));
        }
        Stream.concat(
                        leaves.stream().map(RecordLeaf::whole),
                        leaves.stream()
                                .flatMap(leaf -> leaf.downloads().stream())
                                .map(RecordLeaf.Download::file))
                .distinct()
                .forEach(name ->
                        published.put(name + Seal.ENDING, seal.seal(name, header.revision(), content(plain, name))));
        published.put(
                OfflineScript.FILE,
                new OfflineScript(templates)
                        .of(header, pages, more.stream().distinct().toList(), published.values())
                        .getBytes(StandardCharsets.UTF_8));
        Map<String, byte[]> files = new TreeMap<>();
        published.forEach((name, content) -> files.put(link.folder() + "/" + name, content));
        files.put(RecordSite.UNKNOWN_CODE, site.unknownCode());
        return files;
    }

    private static byte[] content(Map<String, byte[]> plain, String name) {
        return Objects.requireNonNull(plain.get(name), name);
    }

    private byte[] page(RecordLeaf leaf, List<RecordLeaf> leaves, List<Issued> history, byte[] whole) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("installer", site.installerFacts());
        model.put("code", header.record().toString());
        model.put("symbols", header.record().symbols());
        model.put("revision", String.valueOf(header.revision()));
        model.put("date", leaf.words().date(header.date()));
        model.put("token", seal.token());
        model.put("whole", leaf.whole());
        model.put("ending", Seal.ENDING);
        model.put("languages", RecordSite.languages(leaf, leaves));
        model.put("downloads", leaf.downloads().stream().map(RecordSite::row).toList());
        model.put(
                "history",
                history.stream().map(issued -> RecordSite.row(issued, leaf)).toList());
        model.put("printMark", site.printMark(leaf.words()));
        model.put("connectSource", "'self'");
        // The opened record comes with its own style sheet; these two and no other apply.
        model.put("otherStyle", "'" + PageScript.hash(style(whole)) + "'");
        return site.fill(
                "record/sealed.ftlh",
                leaf.words(),
                model,
                PageScript.of(
                        templates, "record/symbols.js", "record/baseline.js", "record/page.js", "record/sealed.js"));
    }

    private static String style(byte[] page) {
        String text = new String(page, StandardCharsets.UTF_8);
        int begin = text.indexOf(STYLE_BEGIN) + STYLE_BEGIN.length();
        return text.substring(begin, text.indexOf(STYLE_END, begin));
    }
}
