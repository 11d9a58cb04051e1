package fairflame.repair;

import fairflame.catalog.Part;
import java.math.BigDecimal;

/** So many units of a part, and why they are needed. */
public record ScopedPart(Part part, BigDecimal quantity, String why) {}
