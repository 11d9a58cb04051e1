package fairflame.document.page;

/** A place on a page, in points right of and below its upper left corner. */
public record Point(double x, double y) {}
