package fairflame.catalog.edit;

/**
 * One value of a file that can be edited.
 *
 * @param value as text; a list of texts has a line each
 * @param lines whether it is a list of texts
 */
public record Leaf(Spot spot, String value, boolean lines) {}
