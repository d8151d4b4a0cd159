package org.ellwand.report;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A text of a figure as it stands in the file. */
record SvgText(String text, double x, double y, String anchor) {
    static Document parsed(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    static List<SvgText> all(String svg) {
        NodeList nodes = parsed(svg).getElementsByTagName("text");
        List<SvgText> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            Element node = (Element) nodes.item(i);
            texts.add(new SvgText(
                    node.getTextContent(),
                    Double.parseDouble(node.getAttribute("x")),
                    Double.parseDouble(node.getAttribute("y")),
                    node.getAttribute("text-anchor")));
        }
        return texts;
    }

    /** Labels of the ordinate: numbers that end at the plot's left edge. */
    static List<SvgText> ordinate(String svg) {
        return all(svg).stream()
                .filter(text -> text.anchor().equals("end") && text.text().matches("\u2212?[\\d.]+"))
                .toList();
    }

    /** Labels of octaves. */
    static List<SvgText> octaves(String svg) {
        return all(svg).stream()
                .filter(text -> text.anchor().equals("middle") && text.text().matches("[\\d.]+k?"))
                .toList();
    }

    double number() {
        boolean thousands = text.endsWith("k");
        double number = Double.parseDouble(text.replace("k", "").replace('\u2212', '-'));
        return thousands ? 1000 * number : number;
    }
}
