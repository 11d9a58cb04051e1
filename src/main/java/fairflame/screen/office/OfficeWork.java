package fairflame.screen.office;

import fairflame.invoice.account.Ageing;
import fairflame.invoice.account.Statement;
import fairflame.invoice.order.OrderSheet;
import fairflame.invoice.report.ShopReport;
import fairflame.invoice.report.TimeDecision;
import fairflame.visit.Deliveries;
import fairflame.visit.DueVisits;
import fairflame.visit.Handoff;
import fairflame.visit.MoneyHeld;
import fairflame.visit.Progress;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the pages of the office ask of the use cases. Files written are told by their place. */
public interface OfficeWork {
    LocalDate today();

    /** Folder of the shop's papers. */
    Path papers();

    /** Everything that is due, the earliest day first. */
    List<DueVisits.Row> due();

    /** Writes what is due as a calendar file. */
    Path calendar();

    /** What is still to be ordered, a sheet for each supplier. */
    List<OrderSheet> toOrder();

    /** All orders placed, the last first. */
    List<Deliveries.Standing> orders();

    /** What goes on the truck for each job. */
    List<Deliveries.Load> truck();

    /** Marks these parts as ordered and writes the order as PDF and spreadsheet. */
    List<Path> order(String supplier, Set<String> parts);

    /** Says that a part of an order has come, or is not here after all. */
    void mark(String order, String part, boolean here);

    Ageing ageing();

    /** Money of customers that no invoice has used. */
    List<MoneyHeld.Held> held();

    /** All write-offs. */
    List<MoneyHeld.GivenUp> givenUp();

    /** Names of all customers with a quote. */
    List<String> customers();

    /** Id of the visit of a quote; empty when the quote is not here. */
    String visitOf(String quote);

    /** Writes the statement of a customer. */
    Path statement(String customer, Statement.Span span);

    /** Name of this laptop; empty until it was told. */
    String laptop();

    /** Names this laptop and its series of quotes. */
    void name(String laptop, String series);

    /** Writes everything taken down and sealed here into one file. */
    Path export();

    /** Takes a packet in, all of it or nothing. */
    Handoff.Taken take(Path file, Progress progress);

    /** Everything that disagreed, settled or not. */
    List<Handoff.Conflict> conflicts();

    /** A person has looked at both sides and dealt with it. */
    void settle(int number, String words);

    ShopReport figures(Statement.Span span);

    /** Words for the ids in a report. */
    Map<String, String> names();

    /** Writes the figures as PDF. */
    Path report(Statement.Span span);

    /** Every standard time that a person changed. */
    List<TimeDecision> decisions();

    /** A person changes the standard times of a task from now on. */
    TimeDecision decide(String task, BigDecimal factor, String reason);

    /** Writes the journal of some days. */
    Journal journal(Statement.Span span);

    /** Numbers of all invoices and credit notes, the last issued first. */
    List<String> invoices();

    /** Writes an invoice or credit note as UBL 2.1. */
    Path electronic(String number);

    /** Writes everything that is stored as data lines; gives the number of rows. */
    long exportAll(Path file, Progress progress);

    /** Makes the database of a folder from an export; gives the number of rows. */
    long importAll(Path file, Path folder, Progress progress);

    /** Copies the database beside running work. */
    void backup(Path copy, Progress progress);

    /** Puts a backup into a folder whose database is gone. */
    void restore(Path copy, Path folder, Progress progress);

    /** A journal that was written, and the number of its entries. */
    record Journal(Path file, int entries) {}
}
