package org.quaybook.render;

import java.util.Optional;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.TextContentRenderer;

/**
 * Somebody's own text, written in CommonMark and printed as part of a document. Its first line is a heading of the first
 * level. HTML in it is printed as it is typed; pictures are left out, and links may lead to the web only.
 *
 * @param title the heading of the first level that it begins with
 * @param xhtml what follows, without that heading
 */
public record Prose(String title, String xhtml) {

    private static final int LOWEST = 3;

    /** Reads a text; empty if it does not begin with a heading of the first level that says something. */
    public static Optional<Prose> of(String commonMark) {
        Node document = Parser.builder().build().parse(commonMark);
        if (!(document.getFirstChild() instanceof Heading heading) || heading.getLevel() != 1) {
            return Optional.empty();
        }
        String title = TextContentRenderer.builder().build().render(heading).strip();
        heading.unlink();
        document.accept(new Tamed());
        String xhtml = HtmlRenderer.builder()
                .escapeHtml(true)
                .sanitizeUrls(true)
                .build()
                .render(document);
        return title.isEmpty() ? Optional.empty() : Optional.of(new Prose(title, xhtml));
    }

    /** Further headings rank below the title, and no deeper than documents go. */
    private static final class Tamed extends AbstractVisitor {
        @Override
        public void visit(Heading heading) {
            heading.setLevel(Math.min(Math.max(heading.getLevel(), 2), LOWEST));
            visitChildren(heading);
        }

        @Override
        public void visit(Image picture) {
            Text words = new Text(TextContentRenderer.builder().build().render(picture));
            picture.insertBefore(words);
            picture.unlink();
        }
    }
}
