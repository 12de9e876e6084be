package org.quaybook.render;

/**
 * What a PDF says about itself as XMP (ISO 16684-1), with the claim to conform to PDF/A-3a (ISO 19005-3, 6.6) and
 * PDF/UA-1 (ISO 14289-1, clause 5). PDF/A asks that the key of PDF/UA is described where it is used.
 */
final class Xmp {

    private Xmp() {}

    static String packet(DocumentInfo info, String producer) {
        return """
                    <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
                    <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                    <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/"
                      xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
                      xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
                      xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
                      xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
                    <dc:format>application/pdf</dc:format>
                    <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
                    <dc:creator><rdf:Seq><rdf:li>%2$s</rdf:li></rdf:Seq></dc:creator>
                    <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%3$s</rdf:li></rdf:Alt></dc:description>
                    <dc:language><rdf:Bag><rdf:li>%4$s</rdf:li></rdf:Bag></dc:language>
                    <xmp:CreateDate>%5$sT00:00:00Z</xmp:CreateDate>
                    <xmp:ModifyDate>%5$sT00:00:00Z</xmp:ModifyDate>
                    <pdf:Producer>%6$s</pdf:Producer>
                    <pdfaid:part>3</pdfaid:part>
                    <pdfaid:conformance>A</pdfaid:conformance>
                    <pdfuaid:part>1</pdfuaid:part>
                    <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
                      <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
                      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
                        <pdfaProperty:name>part</pdfaProperty:name>
                        <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                        <pdfaProperty:category>internal</pdfaProperty:category>
                        <pdfaProperty:description>Part of ISO 14289 that the file conforms to</pdfaProperty:description>
                      </rdf:li></rdf:Seq></pdfaSchema:property>
                    </rdf:li></rdf:Bag></pdfaExtension:schemas>
                    </rdf:Description></rdf:RDF></x:xmpmeta>
                    <?xpacket end="r"?>
                    """.formatted(
                        escaped(info.title()),
                        escaped(info.author()),
                        escaped(info.subject()),
                        escaped(info.language()),
                        info.date(),
                        escaped(producer));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
