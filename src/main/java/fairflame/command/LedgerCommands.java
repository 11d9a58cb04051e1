package fairflame.command;

import fairflame.money.Amounts;
import fairflame.visit.Ledger;
import fairflame.visit.Workplace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The commands of the ledger, each of which calls one use case. */
final class LedgerCommands {
    private LedgerCommands() {}

    @Command(
            name = "ageing",
            mixinStandardHelpOptions = true,
            description = "List open invoices by how long they are overdue.")
    static final class AgeingList extends ShopCommand {
        @Override
        void run(Workplace workplace) {
            var ageing = new Ledger(workplace).ageing();
            print(() -> LedgerText.data(ageing), out -> LedgerText.print(out, ageing));
        }
    }

    @Command(
            name = "statement",
            mixinStandardHelpOptions = true,
            description = "Write a customer's statement of account as PDF.")
    static final class StatementOf extends ShopCommand {
        @Parameters(paramLabel = "CUSTOMER", description = "name as it stands on the quotes")
        private String customer;

        @Mixin
        private SpanOptions span;

        @Override
        void run(Workplace workplace) {
            var written = new Ledger(workplace).statement(customer, span.span(workplace));
            print(
                    () -> LedgerText.data(written.content(), written.files()),
                    out -> LedgerText.print(out, written.content(), written.files()));
        }
    }

    @Command(
            name = "refund",
            mixinStandardHelpOptions = true,
            description = "Pay back money of the customer that no invoice uses.")
    static final class Refund extends ShopCommand {
        @Parameters(index = "0", paramLabel = "QUOTE", description = "number of the quote")
        private String quote;

        @Parameters(index = "1", paramLabel = "AMOUNT", description = "such as 28.72")
        private String amount;

        @Option(names = "--method", required = true, description = "cash, card, cheque, transfer")
        private String method;

        @Option(names = "--reason", required = true, description = "why, in words")
        private String reason;

        @Override
        void run(Workplace workplace) {
            var money = Amounts.parse(workplace.library().shop().currency(), amount);
            var refund = new Ledger(workplace).refund(quote, money, method, reason);
            print(
                    () -> LedgerText.data(refund),
                    out -> out.println(refund.id() + ": " + refund.amount() + " paid back"));
        }
    }

    @Command(
            name = "write-off",
            mixinStandardHelpOptions = true,
            description = "Give up what is open of an invoice, or a part of it.")
    static final class WriteOff extends ShopCommand {
        @Parameters(index = "0", paramLabel = "INVOICE", description = "number of the invoice")
        private String invoice;

        @Parameters(index = "1", paramLabel = "AMOUNT", description = "such as 58.49")
        private String amount;

        @Option(names = "--reason", required = true, description = "why, in words")
        private String reason;

        @Override
        void run(Workplace workplace) {
            var money = Amounts.parse(workplace.library().shop().currency(), amount);
            var given = new Ledger(workplace).writeOff(invoice, money, reason);
            print(
                    () -> LedgerText.data(given),
                    out -> out.println(given.id() + ": " + given.amount() + " of " + invoice + " written off"));
        }
    }

    @Command(
            name = "journal",
            mixinStandardHelpOptions = true,
            description = "Write the double-entry journal as CSV, see docs/formats/journal.md.")
    static final class Journal extends ShopCommand {
        @Mixin
        private SpanOptions span;

        @Override
        void run(Workplace workplace) {
            var written = new Ledger(workplace).journal(span.span(workplace));
            var file = written.files().get(0);
            print(
                    () -> Printing.object()
                            .put("file", file)
                            .put("entries", written.content().size()),
                    out -> out.println(written.content().size() + " entries. Written: " + file));
        }
    }

    @Command(
            name = "ubl",
            mixinStandardHelpOptions = true,
            description = "Write an invoice or credit note as UBL 2.1, see docs/formats/ubl.md.")
    static final class Ubl extends ShopCommand {
        @Parameters(paramLabel = "INVOICE", description = "number of the invoice or credit note")
        private String invoice;

        @Override
        void run(Workplace workplace) {
            var file = new Ledger(workplace).electronic(invoice);
            print(
                    () -> Printing.object().put("invoice", invoice).put("file", file),
                    out -> out.println("Written: " + file));
        }
    }

    @Command(
            name = "report",
            mixinStandardHelpOptions = true,
            description = "Write the figures of the shop as charts: quotes won, revenue, hours against standard.")
    static final class Report extends ShopCommand {
        @Mixin
        private SpanOptions span;

        @Override
        void run(Workplace workplace) {
            var written = new Ledger(workplace).report(span.span(workplace));
            print(
                    () -> LedgerText.data(written.content(), written.files()),
                    out -> out.println("Written: " + String.join(", ", written.files())));
        }
    }
}
