package org.quaybook.render;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.context.StandardAttributeResolver;
import org.xhtmlrenderer.css.extend.AttributeResolver;
import org.xhtmlrenderer.css.extend.TreeResolver;
import org.xhtmlrenderer.css.extend.lib.DOMTreeResolver;
import org.xhtmlrenderer.extend.NamespaceHandler;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.extend.UserInterface;

/**
 * What style rules ask of an element: answers them, remembers their questions, and answers these for other elements. Rules
 * that get the same answers in the same order hold for both.
 */
final class StyleQuestions {

    private enum About {
        NAME,
        CLASS,
        ID,
        LANGUAGE,
        LINK,
        ATTRIBUTE,
        OWN_STYLE,
        HINTS,
        ONE_BEFORE,
        FIRST,
        LAST,
        PLACE
    }

    /**
     * A question.
     *
     * @param back of which element: 0 for the one in question, 1 for the one before it, and so on
     * @param namespace of the name or attribute that is asked for
     * @param name that is asked for
     */
    record Question(
            About about,
            int back,
            @Nullable String namespace,
            @Nullable String name) {}

    private final AttributeResolver attributes;
    private final TreeResolver tree = new DOMTreeResolver();
    private final Map<Question, @Nullable Object> asked = new LinkedHashMap<>();
    private @Nullable Node subject;

    StyleQuestions(NamespaceHandler language, UserAgentCallback agent, UserInterface nobody) {
        this.attributes = new StandardAttributeResolver(language, agent, nobody);
    }

    /** For the rules to ask. */
    AttributeResolver attributes() {
        return new Attributes();
    }

    /** For the rules to ask. */
    TreeResolver tree() {
        return new Tree();
    }

    /**
     * What is asked of an element and of those before it while something runs, with the answers, in the order of the questions.
     * Its name is not among them.
     */
    Map<Question, @Nullable Object> asked(Element of, Runnable matching) {
        asked.clear();
        subject = of;
        try {
            matching.run();
        } finally {
            subject = null;
        }
        return asked;
    }

    /**
     * The answer for another element, of which the questions asked before this one were answered alike: so there are as many
     * elements before it.
     */
    @Nullable Object answer(Question question, Element of) {
        Node node = of;
        for (int i = 0; i < question.back; i++) {
            node = Objects.requireNonNull(tree.getPreviousSiblingElement(node));
        }
        return switch (question.about) {
            case NAME -> tree.matchesElement(node, question.namespace, question.name);
            case CLASS -> attributes.getClass(node);
            case ID -> attributes.getID(node);
            case LANGUAGE -> attributes.getLang(node);
            case LINK -> attributes.isLink(node);
            case ATTRIBUTE -> attributes.getAttributeValue(node, question.namespace, question.name);
            case OWN_STYLE -> attributes.getElementStyling(node);
            case HINTS -> attributes.getNonCssStyling(node);
            case ONE_BEFORE -> tree.getPreviousSiblingElement(node) != null;
            case FIRST -> tree.isFirstChildElement(node);
            case LAST -> tree.isLastChildElement(node);
            case PLACE -> tree.getPositionOfElement(node);
        };
    }

    private <A extends @Nullable Object> A note(About about, Node node, A answer) {
        return note(about, node, null, null, answer);
    }

    private <A extends @Nullable Object> A note(
            About about, Node node, @Nullable String namespace, @Nullable String name, A answer) {
        int back = back(node);
        if (back >= 0) {
            asked.put(new Question(about, back, namespace, name), answer);
        }
        return answer;
    }

    /** How many elements before the one in question; negative for one that stands elsewhere. */
    private int back(Node node) {
        Node at = subject;
        if (at == null || at.getParentNode() != node.getParentNode()) {
            return -1;
        }
        int back = 0;
        while (at != node) {
            at = tree.getPreviousSiblingElement(at);
            if (at == null) {
                return -1;
            }
            back++;
        }
        return back;
    }

    private final class Attributes implements AttributeResolver {

        @Override
        public @Nullable String getAttributeValue(Node node, String name) {
            return getAttributeValue(node, TreeResolver.NO_NAMESPACE, name);
        }

        @Override
        public @Nullable String getAttributeValue(Node node, @Nullable String namespace, String name) {
            return note(About.ATTRIBUTE, node, namespace, name, attributes.getAttributeValue(node, namespace, name));
        }

        @Override
        public @Nullable String getClass(Node node) {
            return note(About.CLASS, node, attributes.getClass(node));
        }

        @Override
        public @Nullable String getID(Node node) {
            return note(About.ID, node, attributes.getID(node));
        }

        @Override
        public @Nullable String getNonCssStyling(Node node) {
            return note(About.HINTS, node, attributes.getNonCssStyling(node));
        }

        @Override
        public @Nullable String getElementStyling(Node node) {
            return note(About.OWN_STYLE, node, attributes.getElementStyling(node));
        }

        @Override
        public String getLang(Node node) {
            return note(About.LANGUAGE, node, attributes.getLang(node));
        }

        @Override
        public boolean isLink(Node node) {
            return note(About.LINK, node, attributes.isLink(node));
        }

        @Override
        public boolean isVisited(Node node) {
            return false;
        }

        @Override
        public boolean isHover(Node node) {
            return false;
        }

        @Override
        public boolean isActive(Node node) {
            return false;
        }

        @Override
        public boolean isFocus(Node node) {
            return false;
        }
    }

    private final class Tree implements TreeResolver {

        @Override
        public @Nullable Node getParentElement(Node node) {
            return tree.getParentElement(node);
        }

        @Override
        public String getElementName(Node node) {
            return tree.getElementName(node);
        }

        @Override
        public @Nullable Node getPreviousSiblingElement(Node node) {
            Node before = tree.getPreviousSiblingElement(node);
            note(About.ONE_BEFORE, node, before != null);
            return before;
        }

        @Override
        public boolean isFirstChildElement(Node node) {
            return note(About.FIRST, node, tree.isFirstChildElement(node));
        }

        @Override
        public boolean isLastChildElement(Node node) {
            return note(About.LAST, node, tree.isLastChildElement(node));
        }

        @Override
        public int getPositionOfElement(Node node) {
            return note(About.PLACE, node, tree.getPositionOfElement(node));
        }

        @Override
        public boolean matchesElement(Node node, @Nullable String namespace, String name) {
            boolean matches = tree.matchesElement(node, namespace, name);
            return node == subject ? matches : note(About.NAME, node, namespace, name, matches);
        }
    }
}
