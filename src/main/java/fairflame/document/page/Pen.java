package fairflame.document.page;

import java.util.List;

/** Draws on one page. All coordinates are points right of and below the page's upper left corner. */
public interface Pen {
    /** Sets words of which the style's face has every character; {@link Text} takes care of the others. */
    void words(String words, Style style, double x, double baseline);

    void line(Point from, Point to, Stroke stroke);

    /** An open line through all points. */
    void path(List<Point> points, Stroke stroke);

    /** A closed area. */
    void area(List<Point> points, Ink ink);

    void rectangle(Point corner, double width, double height, Ink ink);

    void frame(Point corner, double width, double height, Stroke stroke);

    void disc(Point centre, double radius, Ink ink);

    /** Content that carries meaning, as one element of the document's structure. */
    void tagged(Role role, Runnable content);

    /** An element that holds the elements drawn inside. */
    void group(Role role, Runnable content);

    /** A picture with the words that tell it to a reader who cannot see it. */
    void picture(String told, Runnable content);

    /** Decoration, or what repeats on every page: no part of the text. */
    void decor(Runnable content);

    /** A photograph, a JPEG, over the width of a place and so many points high. */
    void photo(byte[] jpeg, Place place, double height);

    /** A field to be filled in on the paper itself. */
    void entry(Entry entry, Point corner, double width, double height);

    /** A drawn shape that stands for a character. */
    void standsFor(String character, Runnable shape);
}
