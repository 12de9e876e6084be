package org.quaybook.render;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Reads and writes XML that can reach nothing outside itself: document types, and with them entities, are refused; so is
 * nesting so deep that going through it would use up the stack.
 */
final class Xml {

    /** The deepest page of ours has some twenty. */
    private static final int MOST_DEPTH = 200;

    private static final ErrorHandler STRICT = new ErrorHandler() {
        @Override
        public void warning(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    };

    private Xml() {}

    /**
     * @param file what a reader knows the text by
     * @throws RenderException if the text is not well-formed, with the place
     */
    static Document parse(String text, String file) {
        try {
            return builder().parse(new InputSource(new StringReader(text)));
        } catch (SAXParseException e) {
            throw new RenderException(List.of(fault(text, file, e)), e);
        } catch (SAXException e) {
            throw RenderException.of(
                    new Place(file, "", Position.START), e, RenderMessage.XML_SYNTAX, String.valueOf(e.getMessage()));
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
    }

    private static DocumentBuilder builder() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            factory.setAttribute("http://www.oracle.com/xml/jaxp/properties/maxElementDepth", MOST_DEPTH);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(STRICT);
            return builder;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the platform's own XML parser knows these features", e);
        }
    }

    private static Diagnostic fault(String text, String file, SAXParseException e) {
        int line = Math.max(0, e.getLineNumber() - 1);
        Place place = new Place(file, "", new Position(line, Math.max(0, e.getColumnNumber() - 1)));
        String excerpt = text.lines().skip(line).findFirst().orElse("");
        return new Diagnostic(
                Severity.ERROR,
                RenderMessage.XML_SYNTAX.key(),
                place,
                excerpt,
                Message.of(RenderMessage.XML_SYNTAX, String.valueOf(e.getMessage())),
                List.of());
    }

    static String write(Element element) {
        StringWriter out = new StringWriter();
        try {
            Transformer copy = TransformerFactory.newDefaultInstance().newTransformer();
            copy.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            copy.transform(new DOMSource(element), new StreamResult(out));
        } catch (TransformerException e) {
            throw new IllegalStateException("a parsed element can be written", e);
        }
        // It ends lines as the machine does; a carriage return of the text itself is written as a reference.
        return out.toString().replace(System.lineSeparator(), "\n");
    }

    /** An element and all that is in it, in the order of the text. */
    static List<Element> elements(Element top) {
        List<Element> elements = new ArrayList<>();
        collect(top, elements);
        return elements;
    }

    private static void collect(Element top, List<Element> elements) {
        elements.add(top);
        for (Node node = top.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                collect(element, elements);
            }
        }
    }

    /** An element that stands in no document but its own. */
    static Element alone(Element element) {
        Element own = (Element) builder().newDocument().importNode(element, true);
        own.getOwnerDocument().appendChild(own);
        return own;
    }

    /** The elements directly in a node. */
    static List<Element> children(Node parent) {
        List<Element> children = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                children.add(element);
            }
        }
        return children;
    }

    /** The attributes of an element as nodes. */
    static List<Node> attributes(Element element) {
        List<Node> attributes = new ArrayList<>();
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            attributes.add(element.getAttributes().item(i));
        }
        return attributes;
    }

    /** The name without its prefix. */
    static String localName(Node node) {
        String local = node.getLocalName();
        return local == null ? node.getNodeName() : local;
    }
}
