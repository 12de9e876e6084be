package org.quaybook.pack.guide;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.record.Branding;
import org.quaybook.record.PublicEdition;
import org.quaybook.record.RecordLeaf;
import org.quaybook.render.InlineSvg;
import org.quaybook.render.Templates;

/**
 * The owner's guide as a web page that stands beside the record: the chapters, figures and pictures of the printed book,
 * with a structure that a screen reader can follow. Like the record it holds nobody's name and runs no script.
 */
public final class GuidePage {

    private static final Pattern HEADING = Pattern.compile("(</?h)([1-5])(?=[ >])");
    private static final Pattern WIDE_TABLE =
            Pattern.compile("<table class=\"(?:grid|working)[ \"].*?</table>", Pattern.DOTALL);

    private static final Pattern CSS_HEADING = Pattern.compile("(\\bh)([1-5])(?=[ ,])");

    private final PublicEdition edition;
    private final Branding branding;
    private final Templates templates;
    private final Guide printed;
    private final Map<String, Object> model;

    /**
     * The page of a job in one of its languages.
     *
     * @param templates where {@code guide/web.ftlh}, {@code guide/web.css} and the chapters are found
     * @throws org.quaybook.render.RenderException if a picture has a character that no font can print, or a template is
     *     missing
     */
    public GuidePage(PublicEdition edition, Branding branding, Templates templates) {
        this.edition = edition;
        this.branding = branding;
        this.templates = templates;
        this.printed = new Guide(edition.edition(), branding, templates);
        this.model = new LinkedHashMap<>(printed.model().all());
        model.put("web", true);
        model.put("logo", "");
        model.put("style", templates.text("guide/web.css"));
    }

    /** The page's file name: {@code guide.html} in the first language of a job, {@code guide-de.html} in another. */
    public static String name(String language, boolean first) {
        return first ? "guide.html" : "guide-" + language + ".html";
    }

    /** The same guide to be printed. */
    public Guide printed() {
        return printed;
    }

    /** The pictures of the guide by their names. */
    public Map<String, InlineSvg> pictures() {
        return printed.model().pictures();
    }

    /**
     * Makes the page.
     *
     * @throws org.quaybook.render.RenderException if a template is faulty
     */
    public byte[] html() {
        return movable(templates.fill("guide/web.ftlh", model)).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The same chapters to stand inside another page.
     *
     * @throws org.quaybook.render.RenderException if a template is faulty
     */
    public RecordLeaf.Book book() {
        Map<String, Object> palette = new Palette(branding).facts();
        String style = ".book { --main: " + palette.get("main") + "; --accent: " + palette.get("accent") + "; --tint: "
                + palette.get("tint") + ";\n" + deeper(templates.text("guide/web.css"), CSS_HEADING) + "}\n";
        return new RecordLeaf.Book(movable(deeper(templates.fill("guide/web-book.ftlx", model), HEADING)), style);
    }

    /** A table wider than the window moves sideways in a box of its own, by finger or key (WCAG 2.2, 1.4.10). */
    private String movable(String page) {
        String name = edition.edition().words().say("guide.web.table");
        return WIDE_TABLE
                .matcher(page)
                .replaceAll(table -> "<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"" + name + "\">"
                        + Matcher.quoteReplacement(table.group()) + "</div>");
    }

    /** Headings one level down: the page around has its own first one. */
    private static String deeper(String text, Pattern heading) {
        return heading.matcher(text).replaceAll(found -> found.group(1) + (Integer.parseInt(found.group(2)) + 1));
    }
}
