package fairflame.store;

import fairflame.catalog.edit.ShopEdit;
import fairflame.catalog.upkeep.ColumnMapping;
import fairflame.invoice.account.Movement;
import fairflame.invoice.actual.Actuals;
import fairflame.invoice.order.Delivery;
import fairflame.invoice.order.PlacedOrder;
import fairflame.invoice.permit.Booking;
import fairflame.invoice.permit.GasWork;
import fairflame.invoice.permit.Permit;
import fairflame.invoice.permit.Waiver;
import fairflame.invoice.report.ActualHours;
import fairflame.invoice.report.TimeDecision;
import fairflame.quote.PhotoNote;

/** The registers of the office. Keys: the quote's number and revision, an id, a supplier. */
public interface Registers {
    /** By quote and revision. */
    Register<Permit> permits();

    /** By quote and revision. */
    Register<GasWork> gasWork();

    /** Refunds and write-offs, by id. */
    Register<Movement> movements();

    /** By quote, task and condition. */
    Register<ActualHours> hours();

    /** Orders placed, by number. */
    Register<PlacedOrder> orders();

    /** What came of orders, by order and part. */
    Register<Delivery> deliveries();

    /** Layouts of price lists, by supplier. */
    Register<ColumnMapping> mappings();

    /** Changes made in the stock room, by number. */
    Register<ShopEdit> shopEdits();

    /** Standard times that a person changed, by task. */
    Register<TimeDecision> timeDecisions();

    /** The buyer's own waiver of the right to cancel in an emergency, by quote and revision. */
    Register<Waiver> waivers();

    /** Days on which signed work begins, by quote and revision. */
    Register<Booking> bookings();

    /** Work as it was done, by quote and revision. */
    Register<Actuals> actuals();

    /** Photographs of visits, by visit and name. */
    Register<PhotoNote> photos();

    /** Key of what belongs to a signed revision. */
    static String key(String quote, int revision) {
        return quote + " revision " + revision;
    }
}
