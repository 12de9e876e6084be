package org.quaybook.record;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Header;
import org.quaybook.job.Installer;
import org.quaybook.render.Colour;
import org.quaybook.render.Contrast;
import org.quaybook.render.TemplateFunction;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/**
 * The install record as static files for any web host: below the record's code a page in each language of the job, what
 * keeps them readable without a signal, and beside it the page for codes that nobody knows. A page is a single file with
 * everything in it: nothing comes from elsewhere, and without scripts nothing that it says is missing.
 */
public final class RecordSite {

    /** The page for what is not there: most web hosts show a file of this name. */
    public static final String UNKNOWN_CODE = "404.html";

    /** Bytes; a larger one stays off the page, which has to open where there is hardly any signal. */
    private static final int LARGEST_LOGO = 30_000;

    private final Installer installer;
    private final Header header;
    private final Branding branding;
    private final Templates templates;

    RecordSite(Installer installer, Header header, Branding branding, Templates templates) {
        this.installer = installer;
        this.header = header;
        this.branding = branding;
        this.templates = templates;
    }

    /**
     * The files of one record.
     *
     * @param leaves one a language of the job, its first language first
     * @param history the earlier revisions, oldest first
     * @return content by path: {@code <CODE>/…} and {@link #UNKNOWN_CODE}
     */
    public static Map<String, byte[]> files(
            List<RecordLeaf> leaves, List<Issued> history, Branding branding, Templates templates) {
        RecordLeaf first = leaves.get(0);
        Installer installer = first.edition().edition().assessment().installer();
        Header header = first.edition().edition().assessment().job().job();
        RecordSite site = new RecordSite(installer, header, branding, templates);
        Map<String, byte[]> files = new TreeMap<>();
        String folder = RecordLink.of(first.edition().edition().assessment()).folder() + "/";
        for (RecordLeaf leaf : leaves) {
            files.put(folder + leaf.page(), site.page(leaf, leaves, history));
            files.put(folder + leaf.whole(), site.whole(leaf));
        }
        List<String> kept = leaves.stream()
                .flatMap(leaf -> Stream.of(leaf.page(), leaf.guide()))
                .toList();
        files.put(
                folder + OfflineScript.FILE,
                new OfflineScript(templates)
                        .of(header, kept, List.of(), files.values())
                        .getBytes(StandardCharsets.UTF_8));
        files.put(UNKNOWN_CODE, site.unknownCode());
        return files;
    }

    /** The record in one file, in each language, by file name. */
    public static Map<String, byte[]> wholes(List<RecordLeaf> leaves, Branding branding, Templates templates) {
        Assessment it = leaves.get(0).edition().edition().assessment();
        RecordSite site = new RecordSite(it.installer(), it.job().job(), branding, templates);
        Map<String, byte[]> files = new TreeMap<>();
        leaves.forEach(leaf -> files.put(leaf.whole(), site.whole(leaf)));
        return files;
    }

    private byte[] page(RecordLeaf leaf, List<RecordLeaf> leaves, List<Issued> history) {
        Map<String, Object> model = model(leaf);
        model.put("languages", languages(leaf, leaves));
        model.put("history", history.stream().map(issued -> row(issued, leaf)).toList());
        model.put("diagrams", leaf.diagrams());
        model.put("book", "");
        return fill(
                "record/page.ftlh",
                leaf.words(),
                model,
                PageScript.of(templates, "record/baseline.js", "record/page.js"));
    }

    /** For keeping: no other file is needed, and none is linked. */
    private byte[] whole(RecordLeaf leaf) {
        Map<String, Object> model = model(leaf);
        model.put("languages", List.of());
        model.put("history", List.of());
        model.put("diagrams", List.of());
        model.put("book", leaf.book().chapters());
        model.put("bookStyle", leaf.book().style());
        model.put("downloads", List.of());
        return fill("record/page.ftlh", leaf.words(), model, PageScript.of(templates, "record/baseline.js"));
    }

    private Map<String, Object> model(RecordLeaf leaf) {
        Words words = leaf.words();
        Map<String, Object> model =
                new LinkedHashMap<>(Published.of(leaf.edition()).facts());
        model.put("guide", leaf.guide());
        model.put("whole", leaf.whole());
        model.put("downloads", leaf.downloads().stream().map(RecordSite::row).toList());
        model.put("digest", leaf.digest());
        model.put("changes", leaf.changes());
        model.put("sealed", header.seal().isPresent());
        model.put("printMark", printMark(words));
        model.put("data", new RecordData(installer, header, leaf).json());
        return model;
    }

    static List<Map<String, Object>> languages(RecordLeaf shown, List<RecordLeaf> leaves) {
        return leaves.size() == 1
                ? List.of()
                : leaves.stream()
                        .map(leaf -> new Rows()
                                .put("file", leaf.page())
                                .put("tag", leaf.edition().language())
                                .put("name", leaf.words().say("language.name"))
                                .put("shown", leaf.equals(shown))
                                .map())
                        .toList();
    }

    static Map<String, Object> row(RecordLeaf.Download download) {
        return new Rows()
                .put("file", download.file())
                .put("kind", download.kind())
                .put("size", download.kilobytes())
                .map();
    }

    static Map<String, Object> row(Issued issued, RecordLeaf leaf) {
        return new Rows()
                .put("revision", String.valueOf(issued.revision()))
                .put("date", leaf.words().date(issued.date()))
                .put("isoDate", issued.date().toString())
                .put("digest", issued.sha256())
                .put("page", issued.folder() + "/" + leaf.page())
                .map();
    }

    /** Anybody can meet this page, so it knows the installer and nothing of any record, and speaks every language. */
    byte[] unknownCode() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("base", installer.records());
        return everyLanguage(
                "record/unknown-code.ftlh",
                model,
                PageScript.of(templates, "record/symbols.js", "record/unknown-code.js"));
    }

    /**
     * The page in the place of a record that was taken off.
     *
     * @param on when
     */
    public static byte[] withdrawn(
            Installer installer, Header header, LocalDate on, Branding branding, Templates templates) {
        RecordSite site = new RecordSite(installer.withoutPeople(), header, branding, templates);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("code", header.record().toString());
        model.put("on", (TemplateFunction)
                arguments -> Words.of((String) arguments.get(0)).date(on));
        return site.everyLanguage("record/withdrawn.ftlh", model, PageScript.NONE);
    }

    private byte[] everyLanguage(String template, Map<String, Object> model, PageScript script) {
        List<Words> spoken = Words.languages().stream()
                .filter(language -> !language.equals("en-US"))
                .map(Words::of)
                .toList();
        model.put("installer", installerFacts());
        model.put("printMark", "");
        model.put(
                "tongues",
                spoken.stream()
                        .map(words -> new Rows()
                                .put("tag", words.language())
                                .put("name", words.say("language.name"))
                                .put("say", say(words))
                                .map())
                        .toList());
        return fill(template, spoken.get(0), model, script);
    }

    Map<String, Object> installerFacts() {
        return new Rows()
                .put("firm", installer.firm())
                .put("phone", installer.phone())
                .put("email", installer.email())
                .put("address", installer.address())
                .put("website", installer.website())
                .put("registration", installer.registration())
                .map();
    }

    byte[] fill(String template, Words words, Map<String, Object> model, PageScript script) {
        model.put("say", say(words));
        model.put("tel", (TemplateFunction) arguments -> dialled((String) arguments.get(0)));
        model.put("language", words.language());
        model.put("logo", logo());
        model.put("colours", colours());
        String style = templates.fill("record/style.ftlh", model)
                + Objects.requireNonNullElse((String) model.get("bookStyle"), "");
        model.put("style", style);
        // The pictures of the book carry styles of their own.
        model.put(
                "styleSource", model.containsKey("bookStyle") ? "'unsafe-inline'" : "'" + PageScript.hash(style) + "'");
        model.put("script", script.text());
        model.put("scriptSource", script.source());
        return templates.fill(template, model).getBytes(StandardCharsets.UTF_8);
    }

    private static TemplateFunction say(Words words) {
        return arguments -> words.say(
                (String) arguments.get(0),
                arguments.subList(1, arguments.size()).toArray());
    }

    String printMark(Words words) {
        return cssText(words.say("record.print-mark", header.record(), header.revision()));
    }

    /** A text inside the quotes of a style sheet: whatever is no plain letter, digit or space is written as its number. */
    private static String cssText(String text) {
        return text.codePoints()
                .mapToObj(point -> point < 0x80 && (point == ' ' || Character.isLetterOrDigit(point))
                        ? Character.toString(point)
                        : String.format(Locale.ROOT, "\\%06x ", point))
                .collect(Collectors.joining());
    }

    /** The digits of a telephone number, and a plus before them. */
    private static String dialled(String phone) {
        return phone.replaceAll("(?!^\\+)[^0-9]", "");
    }

    private Map<String, Object> colours() {
        Colour main = Colour.of(branding.main());
        return new Rows()
                .put("main", branding.main())
                .put("onMain", Contrast.inkOn(main))
                .put("heading", Contrast.ratio(main, Colour.WHITE) >= Contrast.TEXT ? branding.main() : "#000000")
                .map();
    }

    /** A data address: a drawing shown as an image cannot run a script nor load anything. */
    private String logo() {
        return branding.logoName()
                .filter(name -> branding.logo().length <= LARGEST_LOGO)
                .map(name -> (name.toLowerCase(Locale.ROOT).endsWith(".svg") ? "data:image/svg+xml" : "data:image/png")
                        + ";base64," + Base64.getEncoder().encodeToString(branding.logo()))
                .orElse("");
    }
}
