/**
 * What the shop can learn from its own jobs: hours against standard times, win rate, revenue. Pure. May import invoice
 * and below.
 */
@NullMarked
package fairflame.invoice.report;

import org.jspecify.annotations.NullMarked;
