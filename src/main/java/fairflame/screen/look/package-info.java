/**
 * How the screens look and speak: two palettes, type, text size, words by language. May import only the root and JavaFX.
 * Contrast rule: WCAG 2.2, success criteria 1.4.3 and 1.4.11.
 */
@NullMarked
package fairflame.screen.look;

import org.jspecify.annotations.NullMarked;
