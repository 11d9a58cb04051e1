package fairflame.store;

import java.time.Instant;

/** What was typed for a visit and not stored yet. */
public record Draft(String visit, Instant saved, String text) {}
