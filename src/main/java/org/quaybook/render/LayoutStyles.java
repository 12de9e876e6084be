package org.quaybook.render;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.Matcher;
import org.xhtmlrenderer.css.newmatch.PageInfo;
import org.xhtmlrenderer.css.sheet.FontFaceRule;
import org.xhtmlrenderer.css.sheet.Stylesheet;
import org.xhtmlrenderer.extend.NamespaceHandler;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.layout.SharedContext;

/**
 * Which rules of the style sheets hold for which element. The layout engine would try every rule on every element; most
 * elements are of the same kind as one before, and get the style of that one.
 *
 * <p>Two elements are of one kind when they have the same name and parents of one kind, and all that the rules asked of the
 * first one has the same answer for the other. Pages are printed: nothing is hovered over, and no style changes.
 */
final class LayoutStyles extends StyleReference {

    private final UserAgentCallback agent;
    private final IdentityHashMap<Element, Kind> kinds = new IdentityHashMap<>();
    private Kind root = new Kind();
    private @Nullable StyleQuestions rules;
    private @Nullable Matcher matcher;

    LayoutStyles(UserAgentCallback agent) {
        super(agent);
        this.agent = agent;
    }

    private record Name(@Nullable String namespace, String name) {}

    /** Elements that no rule tells apart. */
    private static final class Kind {

        private final Map<Name, Fork> children = new HashMap<>();
        private final Map<String, Optional<CascadedStyle>> generated = new HashMap<>();
        private CascadedStyle style = CascadedStyle.emptyCascadedStyle;
    }

    /** What the rules ask next of elements that were alike so far; or, when they ask no more, the kind of these. */
    private static final class Fork {

        private final Map<@Nullable Object, Fork> answers = new HashMap<>();
        private StyleQuestions.@Nullable Question question;
        private @Nullable Kind kind;
    }

    @Override
    public void setDocumentContext(
            SharedContext context, NamespaceHandler language, Document document, UserInterface nobody) {
        StylesheetFactoryImpl reader = new StylesheetFactoryImpl(agent);
        // None imports another: XhtmlRules refuses those that do.
        List<Stylesheet> sheets = Stream.concat(
                        language.getDefaultStylesheet().stream(), language.getStylesheets(document).stream())
                .filter(info -> info.appliesToMedia(context.getMedia()))
                .map(reader::getStylesheet)
                .filter(Objects::nonNull)
                .toList();
        rules = new StyleQuestions(language, agent, nobody);
        matcher = new Matcher(rules.tree(), rules.attributes(), reader, sheets, context.getMedia());
        kinds.clear();
        root = new Kind();
    }

    private Matcher matcher() {
        return Objects.requireNonNull(matcher, "no document yet");
    }

    private StyleQuestions rules() {
        return Objects.requireNonNull(rules, "no document yet");
    }

    private Kind kind(Element element) {
        Kind known = kinds.get(element);
        if (known != null) {
            return known;
        }
        Kind kind = find(element, element.getParentNode() instanceof Element parent ? kind(parent) : root);
        kinds.put(element, kind);
        return kind;
    }

    private Kind find(Element element, Kind parent) {
        if (isInsideDrawing(element)) {
            return new Kind();
        }
        Fork named = parent.children.computeIfAbsent(
                new Name(element.getNamespaceURI(), element.getNodeName()), name -> new Fork());
        Fork alike = named;
        while (alike != null && alike.question != null) {
            alike = alike.answers.get(rules().answer(alike.question, element));
        }
        return alike != null && alike.kind != null ? alike.kind : matched(element, named);
    }

    private Kind matched(Element element, Fork named) {
        Kind kind = new Kind();
        Fork fork = named;
        Map<StyleQuestions.Question, Object> asked =
                rules().asked(element, () -> kind.style = matcher().getCascadedStyle(element, true));
        for (Map.Entry<StyleQuestions.Question, Object> one : asked.entrySet()) {
            if (fork.question == null) {
                fork.question = one.getKey();
            } else if (!fork.question.equals(one.getKey())) {
                throw new IllegalStateException("the rules ask " + one.getKey() + " where they asked " + fork.question);
            }
            fork = fork.answers.computeIfAbsent(one.getValue(), answer -> new Fork());
        }
        fork.kind = kind;
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
