package org.quaybook.render;

import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Shares the rows of a long table out among several bodies, which looks the same: for each row the layout engine goes
 * through all other rows of its body, so that twice as many would take four times as long.
 */
final class LongTables {

    /** So few that to go through them costs little, so many that no usual table is parted. */
    static final int MOST_ROWS = 100;

    private LongTables() {}

    /** Parts the bodies of more rows; one in which a cell spans rows is left whole, since no cell spans bodies. */
    static void part(Document document) {
        Xml.elements(document.getDocumentElement()).stream()
                .filter(element -> Xml.localName(element).equals("tbody"))
                .forEach(LongTables::part);
    }

    private static void part(Element body) {
        List<Element> rows = Xml.children(body);
        if (rows.size() <= MOST_ROWS || spans(rows)) {
            return;
        }
        Node next = body.getNextSibling();
        for (int from = MOST_ROWS; from < rows.size(); from += MOST_ROWS) {
            Element more = (Element) body.cloneNode(/* deep= */ false);
            // An id stands for the place where the table begins.
            more.removeAttribute("id");
            rows.subList(from, Math.min(from + MOST_ROWS, rows.size())).forEach(more::appendChild);
            body.getParentNode().insertBefore(more, next);
        }
    }

    private static boolean spans(List<Element> rows) {
        return rows.stream().flatMap(row -> Xml.children(row).stream()).anyMatch(cell -> cell.hasAttribute("rowspan"));
    }
}
