/**
 * Register of permits, inspections and licensed gas work, and the list of what is due. Pure. May import invoice and
 * below.
 */
@NullMarked
package fairflame.invoice.permit;

import org.jspecify.annotations.NullMarked;
