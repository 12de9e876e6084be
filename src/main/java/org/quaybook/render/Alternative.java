package org.quaybook.render;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/** What stands for a picture where nobody sees it. */
final class Alternative {

    private Alternative() {}

    /** The text for a picture of a document; empty when the picture is decoration. */
    static Optional<String> of(Element picture) {
        if (isDecoration(picture)) {
            return Optional.empty();
        }
        String said = picture.getAttribute("alt") + picture.getAttribute("aria-label");
        return (said.isBlank() ? told(picture) : Stream.of(said))
                .map(text -> text.strip().replaceAll("\\s+", " "))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.collectingAndThen(Collectors.toList(), Alternative::joined));
    }

    /** SVG 2, 5.9: title and desc that stand directly in the drawing are about the whole of it. */
    private static Stream<String> told(Element picture) {
        return Stream.of("title", "desc")
                .flatMap(name -> Xml.children(picture).stream()
                        .filter(child -> Xml.localName(child).equals(name)))
                .map(Element::getTextContent);
    }

    private static Optional<String> joined(List<String> texts) {
        return texts.isEmpty()
                ? Optional.empty()
                : Optional.of(texts.stream()
                        .map(text -> text.matches(".*[.!?]") ? text : text + ".")
                        .collect(Collectors.joining(" ")));
    }

    private static boolean isDecoration(Element picture) {
        String role = picture.getAttribute("role");
        return picture.getAttribute("aria-hidden").equals("true") || role.equals("presentation") || role.equals("none");
    }

    /**
     * Whether a picture says something that it has no other words for: an {@code img} without {@code alt}, or a drawing
     * with words in it.
     */
    static boolean isMissing(Element picture) {
        if (isDecoration(picture) || of(picture).isPresent()) {
            return false;
        }
        boolean drawing = Xml.localName(picture).equals("svg");
        return drawing
                ? Xml.elements(picture).stream()
                        .anyMatch(part -> Xml.localName(part).equals("text"))
                : !picture.hasAttribute("alt");
    }
}
