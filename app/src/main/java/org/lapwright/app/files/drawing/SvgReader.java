package org.lapwright.app.files.drawing;

import java.awt.geom.AffineTransform;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.Problem;

/**
 * Reads the shapes of an SVG 1.1 drawing with their transforms. Document types and entities are off: nothing is fetched and
 * nothing expands. Scripts, styles, pictures, texts and repeated shapes ({@code use}) are not looked at.
 */
final class SvgReader {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final int DEEPEST = 100;
    private static final int MOST_ELEMENTS = 200_000;
    private static final Set<String> GROUPS = Set.of("g", "a", "switch");
    private static final Set<String> SILENT = Set.of(
            "title",
            "desc",
            "metadata",
            "defs",
            "style",
            "namedview",
            "symbol",
            "clipPath",
            "mask",
            "marker",
            "pattern");

    private final Budget budget = new Budget();
    private final LeftOut leftOut = new LeftOut();
    private final List<Outline> outlines = new ArrayList<>();
    private final Deque<AffineTransform> placed = new ArrayDeque<>();
    private DrawnScale scale = new DrawnScale(1, false, "");
    private int elements;
    private int skipped;

    private SvgReader() {}

    static Drawing read(String text) {
        SvgReader reader = new SvgReader();
        try {
            reader.all(factory().createXMLStreamReader(new StringReader(text)));
        } catch (XMLStreamException broken) {
            throw new Trouble(new Problem(
                    Math.max(
                            0,
                            broken.getLocation() == null
                                    ? 0
                                    : broken.getLocation().getLineNumber()),
                    "",
                    "The drawing is not well-formed XML there, or uses entities, which are not read",
                    "Save it once more as plain SVG"));
        }
        return new Drawing("SVG", reader.outlines, reader.scale, reader.leftOut.sentences());
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing is fetched");
        });
        return factory;
    }

    private void all(XMLStreamReader xml) throws XMLStreamException {
        try {
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    start(xml);
                } else if (event == XMLStreamConstants.END_ELEMENT) {
                    end();
                }
            }
        } finally {
            xml.close();
        }
    }

    private void start(XMLStreamReader xml) {
        elements++;
        if (elements > MOST_ELEMENTS || placed.size() + skipped >= DEEPEST) {
            throw Trouble.ofWhole(
                    elements > MOST_ELEMENTS
                            ? "The drawing has more than 200,000 elements"
                            : "Line %d: the drawing's groups are nested more than %d deep"
                                    .formatted(xml.getLocation().getLineNumber(), DEEPEST),
                    "Save the centre line alone");
        }
        if (skipped > 0) {
            skipped++;
            return;
        }
        Attributes attributes = attributes(xml);
        if (placed.isEmpty()) {
            root(xml, attributes);
        } else if (isSvg(xml)) {
            element(attributes);
        } else {
            skipped = 1;
        }
    }

    private void end() {
        if (skipped > 0) {
            skipped--;
        } else {
            placed.pop();
        }
    }

    private void root(XMLStreamReader xml, Attributes svg) {
        if (!svg.element().equals("svg") || !isSvg(xml)) {
            throw Trouble.ofWhole(
                    "This is XML, but not an SVG drawing: it begins with '%s'"
                            .formatted(LeftOut.shortened(svg.element())),
                    "Save the drawing as SVG or as DXF (text)");
        }
        SvgFrame frame = SvgFrame.of(svg);
        scale = frame.scale();
        placed.push(frame.placed());
    }

    private void element(Attributes element) {
        String name = element.element();
        if (element.isHidden()) {
            leftOut.one("hidden " + name);
            skipped = 1;
        } else if (GROUPS.contains(name)) {
            placed.push(inside(element));
        } else if (SvgShapes.NAMES.contains(name)) {
            shape(element);
            // What may stand in a shape (a title, an animation) is not looked at.
            skipped = 1;
        } else {
            if (!SILENT.contains(name)) {
                leftOut.one(name.equals("use") ? "use (a shape repeated by reference; turn it into a path)" : name);
            }
            skipped = 1;
        }
    }

    private void shape(Attributes shape) {
        Pen pen = new Pen(budget);
        String trouble = new SvgShapes(pen).draw(shape);
        if (!trouble.isEmpty()) {
            leftOut.say("Line %d, %s: %s.".formatted(shape.line(), shape.element(), trouble));
        }
        if (!pen.isEmpty()) {
            outlines.add(new Outline(pen.path(), inside(shape)));
        }
    }

    private AffineTransform inside(Attributes element) {
        AffineTransform outer = placed.element();
        if (!element.has("transform")) {
            return outer;
        }
        AffineTransform own = SvgNumbers.transform(element.text("transform"), budget);
        if (own == null) {
            throw new Trouble(new Problem(
                    element.line(),
                    element.text("transform"),
                    "is not a transform that can be read",
                    "It may be made of matrix, translate, scale, rotate, skewX and skewY"));
        }
        AffineTransform both = new AffineTransform(outer);
        both.concatenate(own);
        return both;
    }

    /** Drawings made by hand may leave the namespace out. */
    private static boolean isSvg(XMLStreamReader xml) {
        @Nullable String namespace = xml.getNamespaceURI();
        return namespace == null || namespace.isEmpty() || namespace.equals(SVG);
    }

    private static Attributes attributes(XMLStreamReader xml) {
        Map<String, String> values = new HashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            @Nullable String namespace = xml.getAttributeNamespace(i);
            if (namespace == null || namespace.isEmpty()) {
                values.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
            }
        }
        return new Attributes(xml.getLocalName(), xml.getLocation().getLineNumber(), values);
    }
}
