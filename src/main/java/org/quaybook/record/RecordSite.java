package org.quaybook.record;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Header;
import org.quaybook.render.Colour;
import org.quaybook.render.Contrast;
import org.quaybook.render.TemplateFunction;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/**
 * The install record as static files for any web host: one page below the record's code, and a page for codes that
 * nobody knows. A page is a single file with everything in it: no script, no font, no picture from elsewhere.
 */
public final class RecordSite {

    /** The file names that may stand beside the page and be offered there. */
    public static final Set<String> DOWNLOADS = Set.of("guide.pdf", "labels.pdf", "figures.json");

    /** Bytes; a larger one stays off the page, which has to open where there is hardly any signal. */
    private static final int LARGEST_LOGO = 30_000;

    private final Words words;
    private final Branding branding;
    private final Templates templates;

    private RecordSite(Words words, Branding branding, Templates templates) {
        this.words = words;
        this.branding = branding;
        this.templates = templates;
    }

    /**
     * The files of one record.
     *
     * @param guides the owner's guide as pages that the caller puts beside this one: file name to its language's own name
     * @param downloads files that the caller puts beside the page, of {@link #DOWNLOADS}, in the order to offer them
     * @return content by path: {@code <CODE>/index.html} and {@code 404.html}
     * @throws IllegalArgumentException for a download of another name
     */
    public static Map<String, byte[]> page(
            Assessment assessment,
            Words words,
            Branding branding,
            Templates templates,
            Map<String, String> guides,
            List<String> downloads) {
        if (!DOWNLOADS.containsAll(downloads)) {
            throw new IllegalArgumentException("can offer " + DOWNLOADS + ", not " + downloads);
        }
        RecordSite site = new RecordSite(words, branding, templates);
        Published published = Published.of(assessment, words);
        String folder = new RecordLink(
                        assessment.installer().records(), assessment.job().job().record())
                .folder();
        Map<String, byte[]> files = new TreeMap<>();
        files.put(
                folder + "/index.html", site.record(published, assessment.job().job(), guides, downloads));
        files.put("404.html", site.unknownCode(published));
        return files;
    }

    private byte[] record(Published published, Header header, Map<String, String> guides, List<String> downloads) {
        Map<String, Object> model = new LinkedHashMap<>(published.facts());
        model.put(
                "guides",
                guides.entrySet().stream()
                        .map(guide -> Map.of("file", guide.getKey(), "language", guide.getValue()))
                        .toList());
        model.put("downloads", downloads);
        model.put("printMark", cssText(words.say("record.print-mark", header.record(), header.revision())));
        return fill("record/page.ftlh", model);
    }

    /** Anybody can meet this page, so it knows the installer and nothing of any record. */
    private byte[] unknownCode(Published published) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("installer", Objects.requireNonNull(published.facts().get("installer")));
        model.put("printMark", "");
        return fill("record/unknown-code.ftlh", model);
    }

    private byte[] fill(String template, Map<String, Object> model) {
        model.put("say", (TemplateFunction) this::say);
        model.put("tel", (TemplateFunction) arguments -> dialled((String) arguments.get(0)));
        model.put("language", words.language());
        model.put("logo", logo());
        model.put("colours", colours());
        String style = templates.fill("record/style.ftlh", model);
        model.put("style", style);
        model.put("styleHash", sha256(style));
        return templates.fill(template, model).getBytes(StandardCharsets.UTF_8);
    }

    private String say(List<Object> arguments) {
        return words.say(
                (String) arguments.get(0),
                arguments.subList(1, arguments.size()).toArray());
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

    /** How a content security policy names a style block. */
    private static String sha256(String style) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
