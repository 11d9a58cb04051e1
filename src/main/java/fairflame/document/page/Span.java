package fairflame.document.page;

/** Words in one style. */
public record Span(String words, Style style) {}
