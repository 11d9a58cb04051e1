package fairflame.screen;

import fairflame.quote.Quote;
import fairflame.screen.bench.BenchWork;
import fairflame.screen.bench.Draft;
import fairflame.screen.handover.HandoverWork;
import fairflame.screen.ledger.LedgerWork;
import fairflame.screen.line.LineWork;
import fairflame.screen.office.OfficeWork;
import fairflame.screen.stock.StockWork;
import fairflame.visit.Progress;
import java.nio.file.Path;
import java.util.Optional;

/** All that the screens ask of the use cases: the only door between them. */
public interface ScreenWork extends BenchWork, HandoverWork, LedgerWork {
    /** The line drawing's part. */
    LineWork line();

    /** The stock room's part. */
    StockWork stock();

    /** The part of the whole office: what is due, orders, money, packets, figures, books. */
    OfficeWork office();

    /** Name of the shop as printed. */
    String shopName();

    /** True while the shop's data are the invented samples. */
    boolean demo();

    /** A fresh draft with its number, today's date and the technician at work. */
    Draft newVisit();

    /** The draft of a visit as it was last kept. */
    Optional<Draft> draft(String visit);

    /** Keeps the quote of a draft as its next revision, with its papers, and gives it. */
    Quote offer(Draft draft, Progress progress);

    /** Writes the stop-work sheet of a draft and gives its place. */
    Path printStopWork(Draft draft, Progress progress);

    /** A thing the window remembered; empty for none. */
    String remembered(String key);

    void remember(String key, String value);
}
