package fairflame.store;

import org.jdbi.v3.core.Handle;

/** The repositories of one transaction. */
final class SqliteRecords implements Records {
    private final Handle handle;
    private final Journal journal;
    private final Bodies bodies;

    SqliteRecords(Handle handle, Journal journal, Bodies bodies) {
        this.handle = handle;
        this.journal = journal;
        this.bodies = bodies;
    }

    @Override
    public Visits visits() {
        journal.refuseWhenOver();
        return new SqliteVisits(handle, journal);
    }

    @Override
    public Quotes quotes() {
        journal.refuseWhenOver();
        return new SqliteQuotes(handle, journal, bodies.quote());
    }

    @Override
    public Agreements agreements() {
        journal.refuseWhenOver();
        return new SqliteAgreements(handle, journal, bodies);
    }

    @Override
    public ChangeOrders changeOrders() {
        journal.refuseWhenOver();
        return new SqliteChangeOrders(handle, journal, bodies.changeOrder());
    }

    @Override
    public Chain chain() {
        journal.refuseWhenOver();
        return new SqliteChain(handle);
    }

    @Override
    public Invoices invoices() {
        journal.refuseWhenOver();
        return new SqliteInvoices(handle, journal, bodies.invoice());
    }

    @Override
    public Payments payments() {
        journal.refuseWhenOver();
        return new SqlitePayments(handle, journal);
    }

    @Override
    public CompletionRecords completionRecords() {
        journal.refuseWhenOver();
        return new SqliteCompletionRecords(handle, journal, bodies.completion());
    }

    @Override
    public Settings settings() {
        journal.refuseWhenOver();
        return new SqliteSettings(handle, journal);
    }

    @Override
    public Audit audit() {
        journal.refuseWhenOver();
        return new SqliteAudit(handle, journal);
    }

    @Override
    public Registers registers() {
        return new SqliteRegisters(handle, journal);
    }

    @Override
    public PriceLists priceLists() {
        return new SqlitePriceLists(handle, journal);
    }

    @Override
    public Attachments attachments() {
        return new SqliteAttachments(handle, journal);
    }

    @Override
    public PacketLog packets() {
        return new SqlitePacketLog(handle, journal);
    }
}
