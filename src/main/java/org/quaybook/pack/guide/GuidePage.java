package org.quaybook.pack.guide;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.quaybook.record.Branding;
import org.quaybook.record.Discretion;
import org.quaybook.record.Edition;
import org.quaybook.render.Templates;

/**
 * The owner's guide as a web page that stands beside the record: the chapters, figures and pictures of the printed book,
 * with a structure that a screen reader can follow. Like the record it holds nobody's name and runs no script.
 */
public final class GuidePage {

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
    public static byte[] html(Edition edition, Branding branding, Templates templates) {
        Discretion discretion =
                Discretion.ofAll(edition.assessment(), edition.words().say("record.blanked"));
        Map<String, Object> book = new GuideModel(edition.assessment(), edition.words(), branding).all();
        Map<String, Object> model = new LinkedHashMap<>(discretion.blank(book));
        Map<String, Object> facts = discretion.blank(facts(book, "facts"));
        facts.put("installer", withoutPerson(facts(facts, "installer")));
        model.put("facts", facts);
        model.put("web", true);
        model.put("logo", "");
        model.put("style", templates.text("guide/web.css"));
        return templates.fill("guide/web.ftlh", model).getBytes(StandardCharsets.UTF_8);
    }

    /** The firm is published; whom to ask for there is not. */
    private static Map<String, Object> withoutPerson(Map<String, Object> installer) {
        Map<String, Object> firm = new LinkedHashMap<>(installer);
        firm.put("contact", "");
        return firm;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> facts(Map<String, Object> all, String subject) {
        return (Map<String, Object>) Objects.requireNonNull(all.get(subject));
    }
}
