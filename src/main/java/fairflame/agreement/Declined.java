package fairflame.agreement;

import org.joda.money.Money;

/** A choice that was offered and not taken, with its price then and the customer's acknowledgement. */
public record Declined(String choice, String title, Money total, String acknowledgement) {}
