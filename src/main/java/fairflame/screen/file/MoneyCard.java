package fairflame.screen.file;

import fairflame.invoice.account.Movement;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;

/** The account of the job: what came in, went back or was given up; deposit and refund. */
final class MoneyCard extends Card {
    MoneyCard(FileModel file, Words words) {
        super(words, words.say("file.money"));
        var model = new MoneyModel(file);
        var account = file.job().account();
        var signed = file.job().agreed().signed();
        add(pair(
                words.say("file.agreed"),
                words.money(file.job().agreed().totals().total())));
        if (!file.job().papers().isEmpty()) {
            add(pair(words.say("file.billed-total"), words.money(file.job().billedTotal())));
        }
        file.job().movements().forEach(this::movement);
        var balance = account.balance();
        add(
                Texts.rule("rule"),
                balance.isNegative()
                        ? pair(words.say("file.held"), words.money(balance.negated()), "strong")
                        : pair(words.say("file.balance"), words.money(balance), "strong"));
        if (file.job().deposit().isPositive() && file.job().papers().isEmpty()) {
            add(Texts.words(
                    words.say(
                            "file.deposit-why",
                            words.money(signed.taken().deposit()),
                            words.money(file.job().deposit())),
                    "slate"));
            add(
                    new Columns(
                            LEAST,
                            12,
                            List.of(
                                    slip(model.deposit(), "deposit-amount"),
                                    slip(model.deposit(), "deposit-reference"))),
                    one("deposit-method", "method.", MoneyModel.METHODS, model.depositMethod()),
                    whole(model.deposit()),
                    keys(key("take-deposit", model::takeDeposit, "act")));
        }
        if (account.spare().isPositive()) {
            add(Texts.words(words.say("file.spare", words.money(account.spare())), "amber"));
            add(
                    new Columns(
                            LEAST,
                            12,
                            List.of(slip(model.refund(), "refund-amount"), slip(model.refund(), "refund-reason"))),
                    one("refund-method", "method.", MoneyModel.METHODS, model.refundMethod()),
                    whole(model.refund()),
                    keys(key("pay-back", model::payBack, "act")));
        }
    }

    private void movement(Movement movement) {
        var kind = movement.deposit() ? "deposit" : movement.kind().word();
        var how =
                movement.method().isEmpty() ? "" : ", " + words.sayOr("method." + movement.method(), movement.method());
        var why = movement.kind() == Movement.Kind.PAYMENT ? "" : ": " + movement.reason();
        add(pair(
                words.say("movement." + kind) + ", " + words.day(movement.on()) + how + why,
                words.amount(movement.settles().negated())));
    }
}
