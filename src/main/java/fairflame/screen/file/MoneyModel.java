package fairflame.screen.file;

import fairflame.money.Amounts;
import fairflame.screen.file.FileWork.Received;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.joda.money.CurrencyUnit;

/** Deposits taken and money paid back. */
public final class MoneyModel {
    static final List<String> METHODS = List.of("cash", "card", "cheque", "transfer");

    private final FileModel file;
    private final Form deposit = new Form();
    private final Form refund = new Form();
    private final StringProperty depositMethod = new SimpleStringProperty(METHODS.get(1));
    private final StringProperty refundMethod = new SimpleStringProperty(METHODS.get(1));

    public MoneyModel(FileModel file) {
        this.file = file;
        deposit.with("deposit-amount", Amounts.plain(file.job().deposit())).beside("deposit", "deposit-amount");
        refund.with("refund-amount", Amounts.plain(file.job().account().spare()))
                .beside("refund", "refund-amount")
                .beside("amount of refund", "refund-amount")
                .beside("reason of refund", "refund-reason");
    }

    public Form deposit() {
        return deposit;
    }

    public Form refund() {
        return refund;
    }

    public StringProperty depositMethod() {
        return depositMethod;
    }

    public StringProperty refundMethod() {
        return refundMethod;
    }

    private CurrencyUnit currency() {
        return file.job().agreed().signed().quote().currency();
    }

    public void takeDeposit() {
        file.written(deposit, "file.said.deposit", () -> {
            var received = new Received(
                    deposit.money("deposit-amount", currency()),
                    depositMethod.get(),
                    deposit.text("deposit-reference"));
            return progress -> file.work().deposit(file.quote(), received, progress);
        });
    }

    public boolean payBack() {
        return file.act(
                refund,
                "file.said.refund",
                () -> file.work()
                        .refund(
                                file.quote(),
                                new Received(refund.money("refund-amount", currency()), refundMethod.get(), ""),
                                refund.words("refund-reason")));
    }
}
