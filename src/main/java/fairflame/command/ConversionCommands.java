package fairflame.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.Refusal;
import fairflame.agreement.SigningAct;
import fairflame.money.Amounts;
import fairflame.quote.Totals;
import fairflame.visit.Billing;
import fairflame.visit.ChangeFile;
import fairflame.visit.Conversion;
import fairflame.visit.Workplace;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Part bills, credit notes, change orders, and signed work against actual work. */
final class ConversionCommands {
    private ConversionCommands() {}

    @Command(name = "part", mixinStandardHelpOptions = true, description = "Bill a part of signed work.")
    static final class Part extends ShopCommand {
        @Parameters(paramLabel = "QUOTE", description = "number of the signed quote")
        private String quote;

        @Option(names = "--done", paramLabel = "LINE=QUANTITY", required = true, description = "such as L1=1, done now")
        private Map<String, BigDecimal> done = Map.of();

        @Option(names = "--supplied", paramLabel = "DAY", description = "day of the work; today when left out")
        private @Nullable LocalDate supplied;

        @Option(names = "--due-days", description = "days until payment is due", defaultValue = "14")
        private int dueDays;

        @Override
        void run(Workplace workplace) {
            var day = supplied == null ? workplace.today() : supplied;
            var result = new Conversion(workplace).part(quote, done, new Billing.Terms(day, dueDays, false));
            print(() -> InvoiceText.data(result), out -> InvoiceText.print(out, result));
        }
    }

    @Command(
            name = "credit",
            mixinStandardHelpOptions = true,
            description = "Take an invoice back by a credit note, in whole or line by line.")
    static final class Credit extends ShopCommand {
        @Parameters(paramLabel = "INVOICE", description = "number of the invoice")
        private String invoice;

        @Option(names = "--line", paramLabel = "LINE=QUANTITY", description = "such as L1=1; everything when left out")
        private Map<String, BigDecimal> back = Map.of();

        @Option(names = "--reason", required = true, description = "why, in words")
        private String reason;

        @Override
        void run(Workplace workplace) {
            var credited = new Conversion(workplace).credit(invoice, back, reason);
            var note = credited.note();
            print(
                    () -> {
                        var root = Printing.object()
                                .put("number", note.number())
                                .put("corrects", note.corrects())
                                .put("tax", Amounts.plain(note.totals().tax()))
                                .put("total", Amounts.plain(note.totals().total()));
                        root.set("files", Printing.texts(credited.files()));
                        return root;
                    },
                    out -> out.println(note.number() + " takes back "
                            + Amounts.plain(note.totals().total().negated()) + " of " + invoice + ". Written: "
                            + String.join(", ", credited.files())));
        }
    }

    @Command(
            name = "change",
            mixinStandardHelpOptions = true,
            description = "Show what a change of signed work comes to; with the consents, sign and seal it.")
    static final class ChangeSigned extends ShopCommand {
        @Parameters(index = "0", paramLabel = "QUOTE", description = "number of the signed quote")
        private String quote;

        @Parameters(index = "1", paramLabel = "FILE", description = "change, see docs/formats/change.md")
        private Path file;

        @Option(names = "--name", description = "name as the signer writes it; without it nothing is signed")
        private @Nullable String name;

        @Option(names = "--role", description = "owner, tenant or agent", defaultValue = "owner")
        private String role;

        @Option(names = "--authorise", description = "the signer authorises the work for its new total")
        private boolean authorise;

        @Option(
                names = "--electronic",
                description = "the signer agrees to sign on a screen, paper having been offered")
        private boolean electronic;

        @Override
        void run(Workplace workplace) {
            var change = ChangeFile.read(file, workplace.library().shop().currency());
            var conversion = new Conversion(workplace);
            var signer = name;
            if (signer == null) {
                var draft = conversion.draft(quote, change);
                print("draft of " + draft.number(), draft.before(), draft.after(), "");
            } else {
                var order = conversion.sign(quote, change, act(workplace, signer));
                print(
                        order.number(),
                        order.before(),
                        order.after(),
                        order.seal().chain());
            }
        }

        private SigningAct act(Workplace workplace, String signer) {
            var accepted = new java.util.HashSet<String>();
            if (authorise) {
                accepted.add(SigningAct.AUTHORISE);
            }
            if (electronic) {
                accepted.add(SigningAct.ELECTRONIC);
            }
            return new SigningAct(
                    signer, role, workplace.now(), Set.copyOf(accepted), Map.of(), List.of(), workplace.who());
        }

        private void print(String number, Totals before, Totals after, String chain) {
            print(
                    () -> Printing.object()
                            .put("number", number)
                            .put("before", Amounts.plain(before.total()))
                            .put("after", Amounts.plain(after.total()))
                            .put("chain", chain),
                    out -> out.println(
                            number + ": " + Amounts.plain(before.total()) + " -> " + Amounts.plain(after.total())
                                    + (chain.isEmpty() ? ", not signed" : ", signed and sealed")));
        }
    }

    @Command(
            name = "compare",
            mixinStandardHelpOptions = true,
            description =
                    "Compare hours and parts as they were with what was signed; say whether a change order is due.")
    static final class Compare extends ShopCommand {
        @Parameters(paramLabel = "QUOTE", description = "number of the signed quote")
        private String quote;

        @Option(names = "--actual", paramLabel = "LINE=QUANTITY", description = "a line left out was done as signed")
        private Map<String, BigDecimal> actual = Map.of();

        @Option(names = "--outside", paramLabel = "WORDS=AMOUNT", description = "work in no signed line, before tax")
        private Map<String, String> outside = Map.of();

        @Override
        void run(Workplace workplace) {
            var worth = new LinkedHashMap<String, Money>();
            outside.forEach((words, amount) -> {
                var money = Amounts.parse(workplace.library().shop().currency(), amount);
                if (!money.isPositive()) {
                    throw Refusal.outOfRange("worth of " + words, amount, "above zero");
                }
                worth.put(words, money);
            });
            var compared = new Conversion(workplace).compare(quote, actual, worth);
            print(
                    () -> {
                        ObjectNode root = Printing.object()
                                .put("signed", Amounts.plain(compared.signed()))
                                .put("actual", Amounts.plain(compared.actual()));
                        var rows = root.putArray("lines");
                        compared.rows()
                                .forEach(row -> rows.addObject()
                                        .put("id", row.line().id())
                                        .put("signed", row.line().quantity().toPlainString())
                                        .put("actual", row.actual().toPlainString())
                                        .put("difference", row.difference().toPlainString()));
                        root.set("changeOrder", Printing.texts(compared.needsChangeOrder()));
                        return root;
                    },
                    out -> {
                        compared.rows()
                                .forEach(row -> out.printf(
                                        "%-5s signed %8s actual %8s  %s%n",
                                        row.line().id(),
                                        row.line().quantity().toPlainString(),
                                        row.actual().toPlainString(),
                                        row.line().description()));
                        compared.needsChangeOrder().forEach(reason -> out.println("change order due: " + reason));
                    });
        }
    }
}
