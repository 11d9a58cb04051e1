package fairflame.document.page;

import com.lowagie.text.Rectangle;

/** Paper sizes, in points of 1/72 inch. */
public enum PageFormat {
    LETTER(612, 792),
    /** ISO 216: 210 mm by 297 mm. */
    A4(210 / 25.4 * 72, 297 / 25.4 * 72);

    /** Free paper left and right. */
    public static final double SIDE = 54;
    /** Free paper above the first line. */
    public static final double TOP = 45;
    /** Free paper below the last line of the running foot. */
    public static final double BOTTOM = 36;

    private final double width;
    private final double height;

    PageFormat(double width, double height) {
        this.width = width;
        this.height = height;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** Between the side margins. */
    public double textWidth() {
        return width - 2 * SIDE;
    }

    Rectangle rectangle() {
        return new Rectangle((float) width, (float) height);
    }
}
