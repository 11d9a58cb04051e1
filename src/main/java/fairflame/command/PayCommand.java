package fairflame.command;

import fairflame.money.Amounts;
import fairflame.visit.Billing;
import fairflame.visit.Workplace;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a payment on an invoice, or a deposit on a signed quote. */
@Command(
        name = "pay",
        mixinStandardHelpOptions = true,
        description = "Take a payment on an invoice (I-...) or a deposit on a signed quote (Q-...).")
final class PayCommand implements Callable<Integer> {
    @Parameters(paramLabel = "NUMBER", description = "invoice, or signed quote for a deposit")
    private String number;

    @Mixin
    private WorkOptions work;

    @Option(names = "--amount", required = true, description = "in the shop's currency, such as 100.00")
    private String amount;

    @Option(names = "--method", required = true, description = "cash, card, cheque, transfer")
    private Method method;

    @Option(names = "--reference", description = "receipt or cheque number", defaultValue = "")
    private String reference;

    @Option(names = "--on", paramLabel = "DAY", description = "day of the payment; today when left out")
    private @Nullable LocalDate on;

    @Mixin
    private Printing printing;

    /** Ways of paying. */
    enum Method {
        CASH,
        CARD,
        CHEQUE,
        TRANSFER
    }

    @Override
    public Integer call() {
        try (var workplace = work.open()) {
            var billing = new Billing(workplace);
            var received = received(workplace);
            if (billing.isQuote(number)) {
                var deposit = billing.deposit(number, received);
                printing.print(
                        () -> Printing.object()
                                .put("payment", deposit.payment().id())
                                .put("quote", number)
                                .put("deposit", Amounts.plain(deposit.payment().amount()))
                                .put("left", Amounts.plain(deposit.left()))
                                .set("files", Printing.texts(deposit.files())),
                        out -> {
                            out.printf(
                                    "Deposit %s on %s taken, %s is left of the agreed price.%n",
                                    Amounts.plain(deposit.payment().amount()), number, Amounts.plain(deposit.left()));
                            out.println("Written: " + String.join(", ", deposit.files()));
                        });
            } else {
                var result = billing.pay(number, received);
                printing.print(() -> InvoiceText.data(result), out -> InvoiceText.print(out, result));
            }
            return 0;
        }
    }

    private Billing.Received received(Workplace workplace) {
        var day = on;
        return new Billing.Received(
                Amounts.parse(workplace.library().shop().currency(), amount),
                method.name().toLowerCase(java.util.Locale.ROOT),
                reference,
                day == null ? workplace.today() : day);
    }
}
