package org.quaybook.pack.guide;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.record.Branding;
import org.quaybook.record.PublicEdition;
import org.quaybook.record.RecordLeaf;
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

    private GuidePage() {}

    /** The page's file name: {@code guide.html} in the first language of a job, {@code guide-de.html} in another. */
    public static String name(String language, boolean first) {
        return first ? "guide.html" : "guide-" + language + ".html";
    }

    /**
     * Makes the page of a job in one of its languages.
     *
     * @param templates where {@code guide/web.ftlh}, {@code guide/web.css} and the chapters are found
     * @throws org.quaybook.render.RenderException if a template is faulty
     */
    public static byte[] html(PublicEdition edition, Branding branding, Templates templates) {
        return movable(templates.fill("guide/web.ftlh", model(edition, branding, templates)), edition)
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The same chapters to stand inside another page.
     *
     * @throws org.quaybook.render.RenderException if a template is faulty
     */
    public static RecordLeaf.Book book(PublicEdition edition, Branding branding, Templates templates) {
        Map<String, Object> model = model(edition, branding, templates);
        Map<String, Object> palette = new Palette(branding).facts();
        String style = ".book { --main: " + palette.get("main") + "; --accent: " + palette.get("accent") + "; --tint: "
                + palette.get("tint") + ";\n" + deeper(templates.text("guide/web.css"), CSS_HEADING) + "}\n";
        return new RecordLeaf.Book(
                movable(deeper(templates.fill("guide/web-book.ftlx", model), HEADING), edition), style);
    }

    /** A table wider than the window moves sideways in a box of its own, by finger or key (WCAG 2.2, 1.4.10). */
    private static String movable(String page, PublicEdition edition) {
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

    private static Map<String, Object> model(PublicEdition edition, Branding branding, Templates templates) {
        Map<String, Object> model = new LinkedHashMap<>(
                new GuideModel(edition.edition().assessment(), edition.edition().words(), branding).all());
        model.put("web", true);
        model.put("logo", "");
        model.put("style", templates.text("guide/web.css"));
        return model;
    }
}
