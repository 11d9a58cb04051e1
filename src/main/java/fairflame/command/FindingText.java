package fairflame.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Evidence;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.NextCheck;
import fairflame.visit.Examination;
import java.io.PrintWriter;
import java.util.List;

/** An examination for people and for programs. */
final class FindingText {
    private FindingText() {}

    static String outcome(Finding finding) {
        return finding.match(settled -> "settled", unsettled -> "not-settled", danger -> "stop-work");
    }

    static ObjectNode data(Examination examined) {
        var finding = examined.finding();
        var root = Printing.object()
                .put("visit", examined.visit().id())
                .put("complaint", examined.file().complaint())
                .put("outcome", outcome(finding));
        var findings = root.putArray("findings");
        finding.candidates().forEach(candidate -> add(findings, candidate));
        finding.match(
                settled -> root.putNull("nextCheck"),
                unsettled -> root.set("nextCheck", check(unsettled.next().get(0))),
                danger -> root.putNull("nextCheck"));
        var next = root.putArray("nextChecks");
        next(finding).forEach(each -> next.add(check(each)));
        var repairs = root.putArray("repairs");
        settled(finding).stream()
                .flatMap(cause -> cause.repairs().stream())
                .distinct()
                .forEach(repairs::add);
        root.set("conflicts", Printing.texts(finding.conflicts()));
        root.set("dangers", dangers(finding));
        root.set("readings", verdicts(examined));
        examined.file()
                .pipe()
                .ifPresent(pipe -> root.putObject("pipe")
                        .put(
                                "verdict",
                                pipe.verdict()
                                        .name()
                                        .toLowerCase(java.util.Locale.ROOT)
                                        .replace('_', '-'))
                        .put("words", pipe.words()));
        root.put("bypassLeadsStillPlaced", examined.file().leadsStillPlaced());
        return root;
    }

    static void print(PrintWriter out, Examination examined) {
        var finding = examined.finding();
        out.println("Outcome: " + outcome(finding));
        finding.match(
                settled -> {
                    settled.causes().forEach(cause -> cause(out, cause));
                    return out;
                },
                unsettled -> {
                    out.println("Not settled, so no repair is priced. Next:");
                    unsettled.next().stream()
                            .limit(3)
                            .forEach(check -> out.printf(
                                    "  %s (%d min, %s, %s): %s%n",
                                    check.title(), check.minutes(), check.hazard(), check.who(), check.reason()));
                    return out;
                },
                danger -> {
                    danger.dangers().forEach(each -> {
                        out.println("STOP WORK, " + each.gate() + ": " + each.title() + ". " + each.found());
                        each.advice().forEach(advice -> out.println("  " + advice));
                    });
                    return out;
                });
        finding.conflicts().forEach(conflict -> out.println("Conflict: " + conflict));
        examined.file().pipe().ifPresent(pipe -> out.println("Gas line: " + pipe.words()));
        finding.candidates().stream()
                .filter(candidate -> candidate.standing() == Candidate.Standing.RULED_OUT)
                .forEach(candidate -> out.println("Ruled out: " + candidate.title() + reasons(candidate.against())));
        if (examined.file().leadsStillPlaced() > 0) {
            out.println("BYPASS LEADS STILL PLACED: " + examined.file().leadsStillPlaced());
        }
    }

    private static void cause(PrintWriter out, Candidate cause) {
        out.println("Settled: " + cause.cause() + " " + cause.title());
        out.println("  rests on: " + cause.restsOn());
        cause.supports().forEach(each -> out.println("  for: " + each.words() + " [" + each.source() + "]"));
        cause.against().forEach(each -> out.println("  against: " + each.words() + " [" + each.source() + "]"));
    }

    private static String reasons(List<Evidence> evidence) {
        return evidence.isEmpty()
                ? ""
                : " (" + String.join(" ", evidence.stream().map(Evidence::words).toList()) + ")";
    }

    private static List<Candidate> settled(Finding finding) {
        return finding.match(Finding.Settled::causes, unsettled -> List.of(), danger -> List.of());
    }

    private static List<NextCheck> next(Finding finding) {
        return finding.match(settled -> List.of(), Finding.Unsettled::next, danger -> List.of());
    }

    private static void add(ArrayNode findings, Candidate candidate) {
        var node = findings.addObject()
                .put("cause", candidate.cause())
                .put("title", candidate.title())
                .put(
                        "standing",
                        candidate
                                .standing()
                                .name()
                                .toLowerCase(java.util.Locale.ROOT)
                                .replace('_', '-'))
                .put("restsOn", candidate.restsOn());
        node.set("supports", evidence(candidate.supports()));
        node.set("against", evidence(candidate.against()));
        node.set("missing", Printing.texts(candidate.missing()));
        node.set("devices", Printing.texts(candidate.devices()));
    }

    private static ArrayNode evidence(List<Evidence> evidence) {
        var array = Printing.object().putArray("evidence");
        evidence.forEach(each -> array.addObject()
                .put("rule", each.rule())
                .put("text", each.words())
                .put("source", each.source())
                .set("checks", Printing.texts(each.checks())));
        return array;
    }

    private static ObjectNode check(NextCheck check) {
        return Printing.object()
                .put("check", check.check())
                .put("title", check.title())
                .put("reason", check.reason())
                .put("minutes", check.minutes())
                .put("hazard", check.hazard())
                .put("who", check.who())
                .put("instrument", check.instrument());
    }

    private static ArrayNode dangers(Finding finding) {
        var array = Printing.object().putArray("dangers");
        List<Finding.Danger> dangers =
                finding.match(settled -> List.of(), unsettled -> List.of(), Finding.StopWork::dangers);
        dangers.forEach(danger -> array.addObject()
                .put("gate", danger.gate())
                .put("title", danger.title())
                .put("found", danger.found())
                .put("source", danger.source())
                .set("advice", Printing.texts(danger.advice())));
        return array;
    }

    private static ArrayNode verdicts(Examination examined) {
        var array = Printing.object().putArray("readings");
        examined.verdicts()
                .forEach(verdict -> array.addObject()
                        .put("check", verdict.reading().check())
                        .put("value", verdict.reading().value().toString())
                        .put("verdict", verdict.verdict().word())
                        .set("words", Printing.texts(verdict.words())));
        return array;
    }
}
