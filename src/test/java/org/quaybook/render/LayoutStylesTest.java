package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.pdf.ITextRenderer;

/** Each element has the style that the layout engine by itself (Flying Saucer) finds for it, rule by rule. */
class LayoutStylesTest {

    /** One rule of each kind that CSS 2.1, chapter 5, and the engine have. */
    static final List<String> RULES = List.of(
            "p { color: #010101 }",
            ".a { color: #010102 }",
            "p.a.b { color: #010103 }",
            "#one { color: #010104 }",
            ".\\61 { color: #010204 }",
            ".größe b { color: #010205 }",
            "[id^=on] b { color: #010206 }",
            "tr:first-child td { color: #010105 }",
            "li:last-child b { color: #010106 }",
            "tr:nth-child(3n+1) { color: #010107 }",
            "tr:nth-child(even) > td { color: #010108 }",
            "p + p { color: #010109 }",
            "h2.a + p + ul li { color: #01010a }",
            "p:first-child + p.a { color: #01010b }",
            "[title] { color: #01010c }",
            "[ title = '' ] b { color: #010207 }",
            "p[title=x] { color: #01010d }",
            "[class~=b] > b { color: #01010e }",
            "td[class|=a] { color: #01010f }",
            "[title^=x] b { color: #010110 }",
            "p:lang(fr) { color: #010111 }",
            "div > p > b { color: #010112 }",
            "* + div { color: #010113 }",
            "p:before { content: 'x' } p.b + p:after { content: 'y' } li:first-child:before { content: 'z' }");

    private static final String BODY = """
            <div><p>1</p><p class="a">2</p><p class="a b" title="x">3<b>4</b></p><p lang="fr">5<b>6</b></p></div>
            <div id="one"><h2 class="a">7</h2><p>8</p><ul><li>9<b>10</b></li><li>11</li><li title="xy">12<b>13</b></li></ul></div>
            <div><h2>7</h2><p>8</p><ul><li>9<b>10</b></li><li style="color: #020202">11<b>14</b></li></ul></div>
            <ul><li>19<b>20</b></li><li>21<b>22</b></li></ul>
            <table>%s</table><table>%s</table><p class="b">15<b>16</b></p><p>17</p><div class="b"><b>18</b></div>
            <p class="größe">19<b>20</b></p><p class="groß">21<b>22</b></p><p id="two">23<b>24</b></p>
            <p title="">25<b>26</b></p>
            """.formatted(
            "<tr><td>a</td><td class=\"a-b\">b</td></tr>".repeat(7),
            "<tr class=\"a\"><td>a</td><td width=\"20\">b</td></tr><tr><td colspan=\"2\"><b>c</b></td></tr>".repeat(3));

    @ParameterizedTest
    @FieldSource("RULES")
    void oneRuleAtATime(String rule) {
        assertThat(styles(rule)).as("elements that it holds for").isNotEqualTo(styles(""));
    }

    @Test
    void allRulesTogether() {
        assertThat(styles(String.join("\n", RULES))).hasSizeGreaterThan(25);
    }

    /** What looks the same in one document does not in another whose elements stand or say otherwise. */
    @Test
    void documentsThatFollowEachOther() {
        String css = String.join("\n", RULES);
        List<String> bodies = List.of(
                "<p><a>1</a><a href=\"#b\" id=\"b\">2</a></p>",
                "<p>1</p><p class=\"a\">2</p>",
                BODY,
                "<p class=\"a\">2</p><p style=\"color: #020203\">3</p>",
                "<p><a href=\"#b\" id=\"b\">2</a><a>1</a></p>");
        for (String body : bodies) {
            styles(css, body);
        }
        assertThat(styles(css)).hasSizeGreaterThan(25);
    }

    /** The different styles, each of which was found for the elements that have it. */
    private static Set<String> styles(String css) {
        return styles(css, BODY);
    }

    private static Set<String> styles(String css, String body) {
        Document document = Xml.parse(
                "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title><style>" + css.replace(">", "&gt;")
                        + "</style></head><body>" + body + "</body></html>",
                "test");
        LayoutStyles ours = (LayoutStyles) read(document, true);
        StyleReference engines = read(document, false);
        Set<String> styles = new HashSet<>();
        for (Element element : elements(document)) {
            for (String place : List.of("", "before", "after")) {
                String found = said(
                        place.isEmpty()
                                ? ours.getCascadedStyle(element, false)
                                : ours.getPseudoElementStyle(element, place));
                assertThat(found)
                        .as("<%s> %s %s", element.getNodeName(), element.getTextContent(), place)
                        .isEqualTo(said(
                                place.isEmpty()
                                        ? engines.getCascadedStyle(element, false)
                                        : engines.getPseudoElementStyle(element, place)));
                styles.add(found);
            }
        }
        ours.keep();
        return styles;
    }

    private static StyleReference read(Document document, boolean ours) {
        LayoutAgent agent = new LayoutAgent(new LayoutPaper(1), 1, Resources.none(), new Faults("test"));
        StyleReference styles = ours ? new LayoutStyles(agent) : new StyleReference(agent);
        styles.setDocumentContext(new ITextRenderer().getSharedContext(), new LayoutLanguage(), document, new Nobody());
        return styles;
    }

    private static String said(@Nullable CascadedStyle style) {
        return style == null ? "none" : style.getFingerprint();
    }

    private static List<Element> elements(Document document) {
        NodeList all = document.getElementsByTagName("*");
        List<Element> elements = new ArrayList<>();
        Stream.iterate(0, i -> i < all.getLength(), i -> i + 1).forEach(i -> elements.add((Element) all.item(i)));
        return elements;
    }

    /** Whoever reads paper points at nothing. */
    private static final class Nobody implements UserInterface {

        @Override
        public boolean isHover(Element element) {
            return false;
        }

        @Override
        public boolean isActive(Element element) {
            return false;
        }

        @Override
        public boolean isFocus(Element element) {
            return false;
        }
    }
}
