package fairflame.document.page;

import com.lowagie.text.Image;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Draws on a page of a tagged PDF. */
final class PdfPen implements Pen {
    private static final PdfName ARTIFACT = new PdfName("Artifact");
    private static final PdfName SPAN = new PdfName("Span");
    private static final PdfName ACTUAL_TEXT = new PdfName("ActualText");

    private final PdfContentByte page;
    private final double pageHeight;
    private final PdfEntries entries;
    private final Deque<PdfStructureElement> parents = new ArrayDeque<>();
    // Marked content does not nest: inside a picture or a decoration nothing is tagged again.
    private boolean marked;

    PdfPen(PdfContentByte page, double pageHeight, PdfStructureElement document, PdfEntries entries) {
        this.page = page;
        this.pageHeight = pageHeight;
        this.entries = entries;
        parents.push(document);
    }

    private float up(double y) {
        return (float) (pageHeight - y);
    }

    @Override
    public void words(String words, Style style, double x, double baseline) {
        page.setColorFill(style.ink().color());
        page.beginText();
        page.setFontAndSize(style.face().font(), (float) style.size());
        page.setTextMatrix((float) x, up(baseline));
        page.showText(words);
        page.endText();
    }

    private void stroke(Stroke stroke) {
        page.setColorStroke(stroke.ink().color());
        page.setLineWidth((float) stroke.width());
        page.setLineCap(PdfContentByte.LINE_CAP_BUTT);
        page.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
        float unit = (float) Math.max(stroke.width(), 0.6);
        switch (stroke.dash()) {
            case SOLID -> page.setLineDash(0);
            case DASHED -> page.setLineDash(3 * unit, 2 * unit, 0);
            case DOTTED -> page.setLineDash(unit, 1.5f * unit, 0);
        }
    }

    @Override
    public void line(Point from, Point to, Stroke stroke) {
        path(List.of(from, to), stroke);
    }

    @Override
    public void path(List<Point> points, Stroke stroke) {
        stroke(stroke);
        trace(points);
        page.stroke();
    }

    private void trace(List<Point> points) {
        page.moveTo((float) points.get(0).x(), up(points.get(0).y()));
        for (var point : points.subList(1, points.size())) {
            page.lineTo((float) point.x(), up(point.y()));
        }
    }

    @Override
    public void area(List<Point> points, Ink ink) {
        page.setColorFill(ink.color());
        trace(points);
        page.closePath();
        page.fill();
    }

    @Override
    public void rectangle(Point corner, double width, double height, Ink ink) {
        page.setColorFill(ink.color());
        page.rectangle((float) corner.x(), up(corner.y() + height), (float) width, (float) height);
        page.fill();
    }

    @Override
    public void frame(Point corner, double width, double height, Stroke stroke) {
        stroke(stroke);
        page.rectangle((float) corner.x(), up(corner.y() + height), (float) width, (float) height);
        page.stroke();
    }

    @Override
    public void disc(Point centre, double radius, Ink ink) {
        page.setColorFill(ink.color());
        page.circle((float) centre.x(), up(centre.y()), (float) radius);
        page.fill();
    }

    @Override
    public void tagged(Role role, Runnable content) {
        if (marked) {
            content.run();
        } else {
            mark(new PdfStructureElement(parents.getFirst(), role.tag()), content);
        }
    }

    @Override
    public void picture(String told, Runnable content) {
        if (marked) {
            content.run();
            return;
        }
        var figure = new PdfStructureElement(parents.getFirst(), Role.FIGURE.tag());
        figure.put(PdfName.ALT, new PdfString(told, PdfString.TEXT_UNICODE));
        mark(figure, content);
    }

    private void mark(PdfStructureElement element, Runnable content) {
        page.beginMarkedContentSequence(element);
        marked = true;
        content.run();
        marked = false;
        page.endMarkedContentSequence();
    }

    @Override
    public void group(Role role, Runnable content) {
        if (marked) {
            content.run();
            return;
        }
        parents.push(new PdfStructureElement(parents.getFirst(), role.tag()));
        content.run();
        parents.pop();
    }

    @Override
    public void decor(Runnable content) {
        if (marked) {
            content.run();
            return;
        }
        page.beginMarkedContentSequence(ARTIFACT);
        marked = true;
        content.run();
        marked = false;
        page.endMarkedContentSequence();
    }

    @Override
    public void photo(byte[] jpeg, Place place, double height) {
        try {
            var image = Image.getInstance(jpeg);
            image.scaleAbsolute((float) place.width(), (float) height);
            image.setAbsolutePosition((float) place.x(), up(place.top() + height));
            page.addImage(image);
        } catch (IOException e) {
            throw new IllegalStateException("a photograph in memory cannot be read", e);
        }
    }

    @Override
    public void entry(Entry entry, Point corner, double width, double height) {
        entries.add(
                entry,
                new Rectangle(
                        (float) corner.x(), up(corner.y() + height), (float) (corner.x() + width), up(corner.y())));
    }

    @Override
    public void standsFor(String character, Runnable shape) {
        var told = new PdfDictionary();
        told.put(ACTUAL_TEXT, new PdfString(character, PdfString.TEXT_UNICODE));
        page.beginMarkedContentSequence(SPAN, told, true);
        shape.run();
        page.endMarkedContentSequence();
    }
}
