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
import org.jdbi.v3.core.Handle;

final class SqliteRegisters implements Registers {
    private final Handle handle;
    private final Journal journal;

    SqliteRegisters(Handle handle, Journal journal) {
        this.handle = handle;
        this.journal = journal;
    }

    @Override
    public Register<Permit> permits() {
        return new SqliteRegister<>(handle, journal, "permit", Permit.class);
    }

    @Override
    public Register<GasWork> gasWork() {
        return new SqliteRegister<>(handle, journal, "gas work", GasWork.class);
    }

    @Override
    public Register<Movement> movements() {
        return new SqliteRegister<>(handle, journal, "movement", Movement.class);
    }

    @Override
    public Register<ActualHours> hours() {
        return new SqliteRegister<>(handle, journal, "hours", ActualHours.class);
    }

    @Override
    public Register<PlacedOrder> orders() {
        return new SqliteRegister<>(handle, journal, "order", PlacedOrder.class);
    }

    @Override
    public Register<Delivery> deliveries() {
        return new SqliteRegister<>(handle, journal, "delivery", Delivery.class);
    }

    @Override
    public Register<ColumnMapping> mappings() {
        return new SqliteRegister<>(handle, journal, "column mapping", ColumnMapping.class);
    }

    @Override
    public Register<ShopEdit> shopEdits() {
        return new SqliteRegister<>(handle, journal, "shop edit", ShopEdit.class);
    }

    @Override
    public Register<TimeDecision> timeDecisions() {
        return new SqliteRegister<>(handle, journal, "standard time", TimeDecision.class);
    }

    @Override
    public Register<Waiver> waivers() {
        return new SqliteRegister<>(handle, journal, "waiver", Waiver.class);
    }

    @Override
    public Register<Booking> bookings() {
        return new SqliteRegister<>(handle, journal, "booking", Booking.class);
    }

    @Override
    public Register<Actuals> actuals() {
        return new SqliteRegister<>(handle, journal, "actual work", Actuals.class);
    }

    @Override
    public Register<PhotoNote> photos() {
        return new SqliteRegister<>(handle, journal, "photo", PhotoNote.class);
    }
}
