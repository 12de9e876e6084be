package org.quaybook.record;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** A page as a strict parser sees it: every element closed, every attribute quoted, every character legal. */
record HtmlPage(String source, Document document) {

    static HtmlPage of(byte[] content) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Strict());
            return new HtmlPage(
                    new String(content, StandardCharsets.UTF_8), builder.parse(new ByteArrayInputStream(content)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    private static final class Strict implements ErrorHandler {
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
    }

    List<Element> elements(String xpath) {
        try {
            NodeList nodes =
                    (NodeList) XPathFactory.newInstance().newXPath().evaluate(xpath, document, XPathConstants.NODESET);
            return IntStream.range(0, nodes.getLength())
                    .mapToObj(nodes::item)
                    .map(node -> (Element) node)
                    .toList();
        } catch (XPathExpressionException e) {
            throw new IllegalArgumentException(xpath, e);
        }
    }

    Element element(String xpath) {
        List<Element> found = elements(xpath);
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " elements of " + xpath);
        }
        return found.get(0);
    }

    /** Values of an attribute, in the order of the page. */
    List<String> values(String xpath, String attribute) {
        return elements(xpath).stream()
                .map(element -> element.getAttribute(attribute))
                .toList();
    }

    List<String> texts(String xpath) {
        return elements(xpath).stream().map(HtmlPage::text).toList();
    }

    /** What is read of an element, runs of space as one. */
    static String text(Element element) {
        return element.getTextContent().replaceAll("[ \\n\\r\\t]+", " ").strip();
    }

    /** Everything that is read on the page, without its style sheet. */
    String text() {
        return text(element("//body"));
    }
}
