/**
 * Complaints, gates, checks, readings, causes, rules, findings, next check, bypass tally. May import quantity and gas.
 * Knowledge stands in data files, each row with its source.
 */
@NullMarked
package fairflame.diagnosis;

import org.jspecify.annotations.NullMarked;
