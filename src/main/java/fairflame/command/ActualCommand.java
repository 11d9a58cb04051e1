package fairflame.command;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.Refusal;
import fairflame.invoice.actual.ActualEntry;
import fairflame.invoice.actual.Actuals;
import fairflame.invoice.actual.OutsideWork;
import fairflame.money.Amounts;
import fairflame.quote.LineKind;
import fairflame.visit.JobActuals;
import fairflame.visit.Workplace;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Keeps hours and parts as they were for a signed quote, and says what has to be signed before it is billed. */
@Command(
        name = "actual",
        mixinStandardHelpOptions = true,
        description = "Keep hours and parts as they were for a signed quote; without options, show what is kept.")
final class ActualCommand extends ShopCommand {
    @Parameters(paramLabel = "QUOTE", description = "number of the signed quote")
    private String quote;

    @Option(names = "--line", paramLabel = "LINE=QUANTITY", description = "hours or pieces done, such as L1=1.75")
    private Map<String, BigDecimal> lines = Map.of();

    @Option(
            names = "--outside",
            paramLabel = "[KIND:]WORDS=AMOUNT",
            description = "work in no signed line, before tax; KIND part, labour (when left out), ...; 0 takes it back")
    private Map<String, String> outside = Map.of();

    @Option(names = "--own-cost", paramLabel = "LINE|WORDS", description = "what goes beyond is borne by the shop")
    private List<String> borne = List.of();

    @Option(names = "--not-own-cost", paramLabel = "LINE", description = "takes --own-cost of a line back")
    private List<String> charged = List.of();

    @Option(names = "--task", paramLabel = "TASK=HOURS", description = "own hours of a task, without access")
    private Map<String, BigDecimal> tasks = Map.of();

    @Option(names = "--note", description = "has to be given when a figure told before changes", defaultValue = "")
    private String note;

    @Override
    void run(Workplace workplace) {
        var actuals = new JobActuals(workplace);
        var entry = entry(workplace.library().shop().currency());
        var shows = lines.isEmpty()
                && outside.isEmpty()
                && borne.isEmpty()
                && charged.isEmpty()
                && tasks.isEmpty()
                && note.isBlank();
        var view = shows ? actuals.of(quote) : actuals.enter(quote, entry);
        print(() -> data(view), out -> print(out, view));
    }

    private ActualEntry entry(CurrencyUnit currency) {
        var works = new ArrayList<OutsideWork>();
        var lineIds = new ArrayList<>(borne);
        outside.forEach((words, amount) -> {
            var read = outside(words, Amounts.parse(currency, amount));
            works.add(read);
            lineIds.removeIf(read::isCalled);
        });
        return new ActualEntry(lines, works, Set.copyOf(lineIds), Set.copyOf(charged), tasks, note);
    }

    private OutsideWork outside(String told, org.joda.money.Money worth) {
        var kind = Arrays.stream(LineKind.values())
                .filter(each -> told.startsWith(each.word() + ":"))
                .findFirst();
        var words = kind.map(each -> told.substring(each.word().length() + 1)).orElse(told);
        if (words.isBlank()) {
            throw Refusal.missing("work outside", "what was done, in words");
        }
        var own = borne.stream().anyMatch(each -> each.strip().equalsIgnoreCase(words.strip()));
        return new OutsideWork(words.strip(), kind.orElse(LineKind.LABOUR), worth, own);
    }

    private static JsonNode data(JobActuals.View view) {
        var compared = view.work();
        var root = Printing.object()
                .put("signed", Amounts.plain(compared.signed()))
                .put("actual", Amounts.plain(compared.actual()))
                .put("most", Amounts.plain(compared.most()));
        var rows = root.putArray("lines");
        compared.rows()
                .forEach(row -> rows.addObject()
                        .put("id", row.line().id())
                        .put("description", row.line().description())
                        .put("unit", row.line().unit())
                        .put("signed", row.line().quantity().toPlainString())
                        .put("told", row.told())
                        .put("actual", row.actual().toPlainString())
                        .put("covered", row.covered().toPlainString())
                        .put("beyond", row.beyond().toPlainString())
                        .put("ownCost", row.borne()));
        root.set("changeOrder", Printing.texts(compared.needsChangeOrder()));
        var states = root.putArray("states");
        view.history().forEach(state -> {
            var node = states.addObject()
                    .put("by", state.by())
                    .put("at", state.at().toString())
                    .put("note", state.note());
            var quantities = node.putObject("lines");
            new java.util.TreeMap<>(state.quantities())
                    .forEach((id, quantity) -> quantities.put(id, quantity.toPlainString()));
            var works = node.putArray("outside");
            state.outside()
                    .forEach(each -> works.addObject()
                            .put("words", each.words())
                            .put("kind", each.kind().word())
                            .put("worth", Amounts.plain(each.worth()))
                            .put("ownCost", each.borne()));
            var hours = node.putObject("tasks");
            new java.util.TreeMap<>(state.tasks()).forEach((id, told) -> hours.put(id, told.toPlainString()));
        });
        return root;
    }

    private static void print(PrintWriter out, JobActuals.View view) {
        var compared = view.work();
        compared.rows()
                .forEach(row -> out.printf(
                        "%-5s signed %8s  %s %8s  %s%s%n",
                        row.line().id(),
                        row.line().quantity().toPlainString(),
                        "done",
                        row.told() ? row.actual().toPlainString() : "-",
                        row.line().description(),
                        row.borne() ? " (own cost)" : ""));
        view.latest().stream()
                .flatMap(state -> state.outside().stream())
                .forEach(each -> out.println("outside: " + each.words() + ", " + Amounts.plain(each.worth())
                        + (each.borne() ? " (own cost)" : "")));
        view.latest()
                .ifPresent(state -> out.println("told by " + state.by() + ", " + state.at() + note(state) + "; "
                        + view.history().size() + " states kept"));
        compared.needsChangeOrder().forEach(reason -> out.println("change order due: " + reason));
    }

    private static String note(Actuals state) {
        return state.note().isEmpty() ? "" : " (" + state.note() + ")";
    }
}
