package fairflame.document;

import java.io.StringWriter;
import java.util.Map;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes indented XML with the JDK's own writer, so that no library on the class path changes the bytes. */
final class XmlText {
    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter writer;
    private int depth;

    /**
     * Begins the document.
     *
     * @param prefixes namespace by prefix; the empty prefix is the root's own
     */
    XmlText(String root, Map<String, String> prefixes) {
        try {
            writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            writer.writeStartDocument("UTF-8", "1.0");
            writer.writeCharacters("\n");
            writer.writeStartElement(root);
            for (var prefix : new java.util.TreeMap<>(prefixes).entrySet()) {
                if (prefix.getKey().isEmpty()) {
                    writer.writeDefaultNamespace(prefix.getValue());
                } else {
                    writer.writeNamespace(prefix.getKey(), prefix.getValue());
                }
            }
            depth = 1;
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    private static IllegalStateException broken(XMLStreamException e) {
        return new IllegalStateException("a text in memory could not be written", e);
    }

    /** An element with text; attributes as name, value, name, value. Nothing for blank text. */
    XmlText leaf(String name, String content, String... attributes) {
        if (content.isBlank()) {
            return this;
        }
        try {
            indent();
            writer.writeStartElement(name);
            for (int i = 0; i < attributes.length; i += 2) {
                writer.writeAttribute(attributes[i], attributes[i + 1]);
            }
            writer.writeCharacters(lawful(content));
            writer.writeEndElement();
            return this;
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    /** An element that holds what is written inside. */
    XmlText holding(String name, Runnable inside) {
        try {
            indent();
            writer.writeStartElement(name);
            depth++;
            inside.run();
            depth--;
            indent();
            writer.writeEndElement();
            return this;
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    private void indent() throws XMLStreamException {
        writer.writeCharacters("\n" + "  ".repeat(depth));
    }

    /** XML 1.0 has no place for most control characters (section 2.2), not even escaped. */
    private static String lawful(String content) {
        return content.codePoints()
                .filter(XmlText::isLawful)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isLawful(int c) {
        var surrogate = c >= 0xD800 && c <= 0xDFFF;
        return c == '\n' || c == '\t' || (c >= 0x20 && c != 0xFFFE && c != 0xFFFF && !surrogate);
    }

    /** Ends the document. */
    String done() {
        try {
            writer.writeCharacters("\n");
            writer.writeEndElement();
            writer.writeCharacters("\n");
            writer.writeEndDocument();
            writer.close();
            return text.toString();
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }
}
