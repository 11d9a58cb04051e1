/**
 * A small typesetter: blocks that know their height, break over pages and draw themselves with a pen into a tagged PDF
 * with embedded fonts. Knows nothing of quotes. May import only the root. Colours and type: the design of the paper;
 * contrast by WCAG 2.1, relative luminance and contrast ratio.
 */
@NullMarked
package fairflame.document.page;

import org.jspecify.annotations.NullMarked;
