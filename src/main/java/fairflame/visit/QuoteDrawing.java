package fairflame.visit;

import fairflame.document.GasLinePicture;
import fairflame.document.page.Drawing;
import fairflame.gas.Layout;
import fairflame.gas.LayoutDrawing;
import fairflame.quote.Quote;
import java.util.Optional;

/** The gas line of a quote as the customer sees it: before, and after the suggested work. */
final class QuoteDrawing {
    private final Library library;

    QuoteDrawing(Library library) {
        this.library = library;
    }

    /**
     * The picture for a quote; none when the visit has no layout. The line after the work is drawn only while the shop's
     * files still give this very quote, so that no paper shows a plan that was not priced.
     */
    Optional<Drawing> of(Quote quote, Optional<String> visitText) {
        var told = library.in(quote);
        return told.wording().isEnglish() ? drawn(quote, visitText) : new QuoteDrawing(told).drawn(quote, visitText);
    }

    private Optional<Drawing> drawn(Quote quote, Optional<String> visitText) {
        return visitText
                .map(text -> library.visits().read(text))
                .map(visit -> Examination.of(visit, library))
                .flatMap(examined -> examined.layout().map(layout -> drawn(quote, examined, layout)))
                .map(GasLinePicture::of);
    }

    private fairflame.gas.Drawing drawn(Quote quote, Examination examined, Layout layout) {
        return plan(quote, examined)
                .map(found -> LayoutDrawing.beforeAndAfter(library.tables(), layout, found, library.wording()))
                .orElseGet(
                        () -> LayoutDrawing.of(library.tables(), layout, "The gas line as it is", library.wording()));
    }

    /** The work on the line that a quote suggests, while the shop's files still give this very quote. */
    Optional<fairflame.gas.Plan> plan(Quote quote, Examination examined) {
        var making = new QuoteMaking(library);
        return quote.repair() && isStill(quote, examined, making)
                ? PipeWork.suggested(examined, library, making.place(examined.visit()))
                : Optional.empty();
    }

    private static boolean isStill(Quote quote, Examination examined, QuoteMaking making) {
        return making.quote(examined, quote.number(), quote.revision(), quote.made())
                .equals(quote);
    }
}
