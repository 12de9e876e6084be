package org.quaybook.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.context.StandardAttributeResolver;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.extend.lib.DOMTreeResolver;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.Matcher;
import org.xhtmlrenderer.css.newmatch.PageInfo;
import org.xhtmlrenderer.css.sheet.FontFaceRule;
import org.xhtmlrenderer.css.sheet.Stylesheet;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.extend.NamespaceHandler;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.layout.SharedContext;

/**
 * Which rules of the style sheets hold for which element. The layout engine would try every rule on every element; most
 * elements are of the same kind as one before, and get the style of that one.
 *
 * <p>Two elements are of one kind when they have the same name and attributes and parents of one kind, unless a rule asked
 * the first one for its place among its neighbours. Of classes and identifiers only those count that a style sheet names.
 * Pages are printed: nothing is hovered over, and no style changes.
 *
 * <p>Documents with the same style sheets share what was found, if one thread lays them out one after another: what the engine keeps
 * of a style sheet is not made for several threads.
 */
final class LayoutStyles extends StyleReference {

    /** Guides, cards, sheets and worksheets, on one paper or two. */
    private static final int MOST_SHEETS = 8;

    /** A document has some hundred; jobs differ in inline styles and sizes of drawings, and would add some each. */
    private static final int MOST_KINDS = 5_000;

    private static final ThreadLocal<Recent<Sheets>> LATELY = ThreadLocal.withInitial(() -> new Recent<>(MOST_SHEETS));

    private final LayoutAgent agent;
    private final Neighbours neighbours = new Neighbours();
    private final IdentityHashMap<Element, Kind> kinds = new IdentityHashMap<>();
    private Sheets sheets = new Sheets("", List.of(), Selectors.of(List.of()));
    private @Nullable Matcher matcher;

    LayoutStyles(LayoutAgent agent) {
        super(agent);
        this.agent = agent;
    }

    /** What a rule can ask an element for, apart from its neighbours. */
    private record Seen(@Nullable String namespace, String name, List<String> attributes) {}

    /** Style sheets as they were read, and what was found by them. */
    private static final class Sheets {

        private final String texts;
        private final List<Stylesheet> read;
        private final Selectors selectors;
        private final Kind root = new Kind();
        private int kinds;

        Sheets(String texts, List<Stylesheet> read, Selectors selectors) {
            this.texts = texts;
            this.read = read;
            this.selectors = selectors;
        }
    }

    /** Elements that no rule tells apart. */
    private static final class Kind {

        private final Map<Seen, Optional<Kind>> children = new HashMap<>();
        private final Map<String, Optional<CascadedStyle>> generated = new HashMap<>();
        private CascadedStyle style = CascadedStyle.emptyCascadedStyle;
    }

    /**
     * What the style sheets select by.
     *
     * @param named classes and identifiers, and whatever else stands behind a point or a cross
     * @param unseen attributes that no rule asks for, and that say nothing by themselves of how something looks
     */
    private record Selectors(Set<String> named, Set<String> unseen) {

        private static final Pattern NAME = Pattern.compile("[.#]([^\\s.#:,;>+~*/\\[\\](){}\"']+)");
        private static final Pattern BRACKET = Pattern.compile("\\[([^\\]]*)");
        private static final Set<String> WITHOUT_LOOKS = Set.of("class", "id", "href", "title", "aria-label");

        static Selectors of(List<String> sheets) {
            Set<String> named = all(NAME, sheets);
            Set<String> bracketed = all(BRACKET, sheets);
            // A name may be spelled with escapes, in many ways.
            boolean escaped = Stream.concat(named.stream(), bracketed.stream()).anyMatch(name -> name.contains("\\"));
            return new Selectors(
                    named,
                    WITHOUT_LOOKS.stream()
                            .filter(name -> !escaped && bracketed.stream().noneMatch(asked -> asked.contains(name)))
                            .collect(Collectors.toSet()));
        }

        private static Set<String> all(Pattern pattern, List<String> sheets) {
            return sheets.stream()
                    .flatMap(css -> pattern.matcher(css).results())
                    .map(found -> found.group(1))
                    .collect(Collectors.toSet());
        }

        Seen seen(Element element) {
            List<String> attributes = new ArrayList<>();
            for (Node attribute : Xml.attributes(element)) {
                String name = attribute.getNodeName();
                String value = attribute.getNodeValue();
                Stream<String> values = !unseen.contains(name)
                        ? Stream.of(value)
                        : switch (name) {
                            case "class" -> Stream.of(value.split("\\s+")).filter(named::contains);
                            case "id" -> Stream.of(value).filter(named::contains);
                            // Where it leads says nothing, that it leads somewhere does.
                            case "href" -> Stream.of("");
                            default -> Stream.of();
                        };
                values.forEach(part -> {
                    attributes.add(name);
                    attributes.add(part);
                });
            }
            return new Seen(element.getNamespaceURI(), element.getNodeName(), attributes);
        }
    }

    /** Hears whether a rule asks for more than an element itself and what it stands in. */
    private static final class Neighbours extends DOMTreeResolver {

        private boolean asked;

        @Override
        public @Nullable Node getPreviousSiblingElement(Node node) {
            asked = true;
            return super.getPreviousSiblingElement(node);
        }

        @Override
        public boolean isFirstChildElement(Node element) {
            asked = true;
            return super.isFirstChildElement(element);
        }

        @Override
        public boolean isLastChildElement(Node element) {
            asked = true;
            return super.isLastChildElement(element);
        }

        @Override
        public int getPositionOfElement(Node element) {
            asked = true;
            return super.getPositionOfElement(element);
        }
    }

    /** Rule by rule the same element is asked for its classes. */
    private static final class Attributes extends StandardAttributeResolver {

        private final NamespaceHandler language;
        private @Nullable Node asked;
        private @Nullable String classes;

        Attributes(NamespaceHandler language, UserAgentCallback agent, UserInterface nobody) {
            super(language, agent, nobody);
            this.language = language;
        }

        @Override
        public @Nullable String getClass(Node node) {
            if (node != asked) {
                asked = node;
                classes = language.getClass((Element) node);
            }
            return classes;
        }
    }

    @Override
    public void setDocumentContext(
            SharedContext context, NamespaceHandler language, Document document, UserInterface nobody) {
        StylesheetFactoryImpl reader = new StylesheetFactoryImpl(agent);
        // None imports another: XhtmlRules refuses those that do.
        List<StylesheetInfo> used = Stream.concat(
                        language.getDefaultStylesheet().stream(), language.getStylesheets(document).stream())
                .filter(info -> info.appliesToMedia(context.getMedia()))
                .toList();
        List<String> texts = used.stream()
                .map(info -> info.getContent().orElseGet(() -> agent.css(info.getUri())))
                .toList();
        sheets = LATELY.get()
                .take(String.join("\0", texts))
                .orElseGet(() -> new Sheets(
                        String.join("\0", texts),
                        used.stream()
                                .map(reader::getStylesheet)
                                .filter(Objects::nonNull)
                                .toList(),
                        Selectors.of(texts)));
        matcher = new Matcher(
                neighbours, new Attributes(language, agent, nobody), reader, sheets.read, context.getMedia());
        kinds.clear();
    }

    /** What was found serves the next document, once this one is laid out without a fault: the next has to tell its own. */
    void keep() {
        if (sheets.kinds <= MOST_KINDS) {
            LATELY.get().keep(sheets.texts, sheets);
        }
    }

    private Matcher matcher() {
        return Objects.requireNonNull(matcher, "no document yet");
    }

    private Kind kind(Element element) {
        Kind known = kinds.get(element);
        if (known != null) {
            return known;
        }
        Kind kind = find(element, element.getParentNode() instanceof Element parent ? kind(parent) : sheets.root);
        kinds.put(element, kind);
        return kind;
    }

    private Kind find(Element element, Kind parent) {
        if (isInsideDrawing(element)) {
            return new Kind();
        }
        Seen seen = sheets.selectors.seen(element);
        Optional<Kind> same = parent.children.get(seen);
        if (same != null && same.isPresent()) {
            return same.get();
        }
        Kind kind = new Kind();
        neighbours.asked = false;
        kind.style = matcher().getCascadedStyle(element, false);
        sheets.kinds++;
        parent.children.put(seen, neighbours.asked ? Optional.empty() : Optional.of(kind));
        return kind;
    }

    /** {@link LayoutElements} puts a drawing there whose own rules are not these. */
    private static boolean isInsideDrawing(Element element) {
        return element.getParentNode() instanceof Element parent && SvgRules.NAMESPACE.equals(parent.getNamespaceURI());
    }

    @Override
    public CascadedStyle getCascadedStyle(@Nullable Element element, boolean anew) {
        return element == null ? CascadedStyle.emptyCascadedStyle : kind(element).style;
    }

    @Override
    public @Nullable CascadedStyle getPseudoElementStyle(Node node, String place) {
        Element element = (Element) (node instanceof Element ? node : node.getParentNode());
        if (isInsideDrawing(element)) {
            return null;
        }
        return kind(element)
                .generated
                .computeIfAbsent(place, asked -> Optional.ofNullable(matcher().getPECascadedStyle(element, asked)))
                .orElse(null);
    }

    @Override
    public PageInfo getPageStyle(@Nullable String name, String side) {
        return matcher().getPageCascadedStyle(name, side);
    }

    @Override
    public List<FontFaceRule> getFontFaceRules() {
        return matcher().getFontFaceRules();
    }

    @Override
    public boolean isHoverStyled(Element element) {
        return false;
    }
}
