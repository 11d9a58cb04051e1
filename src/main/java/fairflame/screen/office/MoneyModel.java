package fairflame.screen.office;

import fairflame.invoice.account.Ageing;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.visit.MoneyHeld;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What customers owe and what is theirs, without a window. */
public final class MoneyModel {
    private static final int MOST_NAMES = 6;

    private final OfficeWork work;
    private final LongWork runner;
    private final Ageing ageing;
    private final List<MoneyHeld.Held> held;
    private final List<MoneyHeld.GivenUp> givenUp;
    private final List<String> customers;
    private final Typed customer = new Typed("");
    private final SpanModel span;
    private final StringProperty written = new SimpleStringProperty("");

    public MoneyModel(OfficeWork work, LongWork runner) {
        this.work = work;
        this.runner = runner;
        this.ageing = work.ageing();
        this.held = work.held();
        this.givenUp = work.givenUp();
        this.customers = work.customers();
        this.span = new SpanModel(work.today());
    }

    public Ageing ageing() {
        return ageing;
    }

    /** What a step is of the largest one, 0 to 1, for the length of its bar. */
    public double share(Ageing.Step step) {
        var largest = java.util.Arrays.stream(Ageing.Step.values())
                .mapToDouble(each -> ageing.sum(each).getAmount().doubleValue())
                .max()
                .orElse(0);
        return largest <= 0 ? 0 : ageing.sum(step).getAmount().doubleValue() / largest;
    }

    /** Deposits held for work that is not billed yet. */
    public List<MoneyHeld.Held> deposits() {
        return held.stream().filter(MoneyHeld.Held::deposit).toList();
    }

    /** Money that customers have paid beyond what was billed. */
    public List<MoneyHeld.Held> toPayBack() {
        return held.stream().filter(each -> !each.deposit()).toList();
    }

    public List<MoneyHeld.GivenUp> givenUp() {
        return givenUp;
    }

    public String visitOf(String quote) {
        return work.visitOf(quote);
    }

    /** Whose statement it is, by name. */
    public Typed customer() {
        return customer;
    }

    /** Names that hold the typed letters, at most six; none once a name is whole. */
    public List<String> names() {
        var letters = customer.text().toLowerCase(Locale.ROOT);
        return customers.stream()
                .filter(name -> name.toLowerCase(Locale.ROOT).contains(letters) && !name.equals(customer.text()))
                .limit(customers.contains(customer.text()) ? 0 : MOST_NAMES)
                .toList();
    }

    public SpanModel span() {
        return span;
    }

    /** Place of the statement; empty until it is written. */
    public StringProperty written() {
        return written;
    }

    /** Writes the statement. */
    public void statement() {
        written.set("");
        var name = customer.words("customer", "the name on a quote");
        var days = span.read();
        if (name.isPresent() && days.isPresent()) {
            runner.run(
                    "statement",
                    progress -> work.statement(name.get(), days.get()).toString(),
                    written::set,
                    Ended.in(customer.refusal()));
        }
    }
}
