package org.quaybook.render;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.constants.CSSName;
import org.xhtmlrenderer.css.constants.IdentValue;
import org.xhtmlrenderer.newtable.TableBox;
import org.xhtmlrenderer.newtable.TableRowBox;
import org.xhtmlrenderer.newtable.TableSectionBox;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.PageBox;

/**
 * Where pages must begin so that a table over several of them leaves no row alone: at least two stand at each side of a
 * break, the first ones with what heads the table. A table that avoids a break before itself begins on the page of what
 * heads it, however long it is. Two is common practice for lines of a paragraph, no source for rows.
 */
final class TableBreaks {

    private static final int LEAST_ROWS = 2;

    private final List<PageBox> pages;
    private final Set<Element> found = new LinkedHashSet<>();

    /** What is found later moves with an earlier find, unless a page begins between them in any case. */
    private boolean moved;

    private TableBreaks(List<PageBox> pages) {
        this.pages = pages;
    }

    /**
     * The elements before which a page must begin; empty once no row stands alone.
     *
     * @param root of a document that is laid out
     */
    static Set<Element> wanted(Box root, List<PageBox> pages) {
        TableBreaks breaks = new TableBreaks(pages);
        breaks.search(root);
        return breaks.found;
    }

    /** The page that a place down the document is on, counted from 0. */
    static int pageAt(int y, List<PageBox> pages) {
        int least = 0;
        int most = pages.size() - 1;
        while (least < most) {
            int middle = (least + most) / 2;
            if (y >= pages.get(middle).getBottom()) {
                least = middle + 1;
            } else {
                most = middle;
            }
        }
        return least;
    }

    private void search(Box box) {
        if (beginsPage(box)) {
            moved = false;
        }
        if (box instanceof TableBox table && !moved) {
            Element before = pageBefore(table);
            if (before != null) {
                moved = found.add(before);
            }
        }
        box.getChildren().forEach(this::search);
    }

    private @Nullable Element pageBefore(TableBox table) {
        List<TableRowBox> rows = bodyRows(table);
        if (rows.isEmpty()) {
            return null;
        }
        int first = page(rows.get(0));
        int last = page(rows.get(rows.size() - 1));
        if (avoids(table, CSSName.PAGE_BREAK_BEFORE) && page(beginning(table)) < first) {
            return begin(table);
        }
        if (first == last) {
            return null;
        }
        long atFoot = rows.stream().filter(row -> page(row) == first).count();
        long atHead = rows.stream().filter(row -> page(row) == last).count();
        if (atFoot < LEAST_ROWS || (atHead < LEAST_ROWS && rows.size() < 2 * LEAST_ROWS)) {
            return begin(table);
        }
        TableRowBox lastButOne = rows.get(rows.size() - LEAST_ROWS);
        return atHead < LEAST_ROWS && !beginsPage(lastButOne) ? lastButOne.getElement() : null;
    }

    private static boolean beginsPage(Box box) {
        return box.getStyle() != null && box.getStyle().isForcePageBreakBefore();
    }

    private static List<TableRowBox> bodyRows(TableBox table) {
        List<TableRowBox> rows = new ArrayList<>();
        for (Box child : table.getChildren()) {
            if (child instanceof TableSectionBox section && !section.isHeader() && !section.isFooter()) {
                for (Box row : section.getChildren()) {
                    rows.add((TableRowBox) row);
                }
            }
        }
        return rows;
    }

    private int page(Box box) {
        return pageAt(box.getAbsY(), pages);
    }

    /** The first of those that must stay with the table; nothing if a page begins there already. */
    private @Nullable Element begin(Box table) {
        Box begin = beginning(table);
        boolean onNewPage = begin.getParent() == null || beginsPage(begin);
        return onNewPage ? null : begin.getElement();
    }

    private static Box beginning(Box table) {
        Box begin = table;
        while (begin.getParent() != null) {
            Box parent = begin.getParent();
            int place = parent.getChildren().indexOf(begin);
            if (place > 0 && staysWith(parent.getChild(place - 1), begin)) {
                begin = parent.getChild(place - 1);
            } else if (place == 0 && !beginsPage(begin)) {
                begin = parent;
            } else {
                break;
            }
        }
        return begin;
    }

    private static boolean staysWith(Box before, Box after) {
        return avoids(before, CSSName.PAGE_BREAK_AFTER) || avoids(after, CSSName.PAGE_BREAK_BEFORE);
    }

    private static boolean avoids(Box box, CSSName where) {
        return box.getStyle() != null && box.getStyle().isIdent(where, IdentValue.AVOID);
    }
}
