package fairflame.quote;

/**
 * What a person said of a photograph of a visit.
 *
 * @param removed taken out again; a file that a quote lists stays kept all the same
 */
public record PhotoNote(String visit, Photo photo, boolean removed) {}
