package fairflame.store;

/** Everything stored, as one transaction sees it. Not to be kept beyond the transaction. */
public interface Records {
    Visits visits();

    Quotes quotes();

    Agreements agreements();

    ChangeOrders changeOrders();

    Chain chain();

    Invoices invoices();

    Payments payments();

    CompletionRecords completionRecords();

    Settings settings();

    Audit audit();

    Registers registers();

    PriceLists priceLists();

    Attachments attachments();

    PacketLog packets();
}
