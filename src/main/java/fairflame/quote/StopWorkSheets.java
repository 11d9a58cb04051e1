package fairflame.quote;

import fairflame.Refusal;
import fairflame.diagnosis.Finding;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Makes the sheet that a customer gets instead of a price. */
public final class StopWorkSheets {
    private static final Pattern MONEY =
            Pattern.compile("[$\u20ac\u00a3]\\s*\\d|\\b(USD|EUR|GBP)\\b|\\d+[.,]\\d{2}\\s*(dollars|USD|EUR|GBP)");

    private StopWorkSheets() {}

    /**
     * The sheet for dangerous evidence. Where the finding brings no advice, that of the file for the gate stands.
     *
     * @param done what the technician did, a sentence each
     */
    public static StopWorkSheet of(
            Finding.StopWork finding, Cautions cautions, QuoteRequest.People people, Visit visit, List<String> done) {
        var dangers = finding.dangers().stream()
                .map(danger -> new StopWorkSheet.Danger(
                        danger.gate(), danger.title(), danger.found(), advice(danger, cautions)))
                .toList();
        var titles = finding.dangers().stream().map(Finding.Danger::title).collect(Collectors.joining("; "));
        var sheet = new StopWorkSheet(
                visit.id(),
                visit.at(),
                people.seller(),
                people.sellerLicence(),
                people.customer(),
                people.site(),
                visit.heater(),
                TemplateText.fill(cautions.stopWork().headline(), Map.of("danger", titles)),
                dangers,
                done,
                cautions.stopWork().always(),
                cautions.stopWork().receipt());
        refuseMoney(sheet);
        return sheet;
    }

    private static List<String> advice(Finding.Danger danger, Cautions cautions) {
        if (!danger.advice().isEmpty()) {
            return danger.advice();
        }
        var advice = cautions.stopWork().advice().stream()
                .filter(row -> row.gates().contains(danger.gate()))
                .flatMap(row -> row.say().stream())
                .toList();
        if (advice.isEmpty()) {
            throw Refusal.missing("advice for danger " + danger.gate(), "what to do now, in cautions.yaml");
        }
        return advice;
    }

    private static void refuseMoney(StopWorkSheet sheet) {
        var sentences = new ArrayList<String>(sheet.done());
        sentences.add(sheet.headline());
        sentences.addAll(sheet.always());
        sheet.dangers().forEach(danger -> {
            sentences.add(danger.title());
            sentences.add(danger.found());
            sentences.addAll(danger.advice());
        });
        sentences.stream()
                .filter(sentence -> MONEY.matcher(sentence).find())
                .findFirst()
                .ifPresent(sentence -> {
                    throw Refusal.stopWork("amount of money on a stop-work sheet", sentence, "no amount anywhere");
                });
    }

    /**
     * Which visit it was.
     *
     * @param heater what the plate says, in words
     */
    public record Visit(String id, OffsetDateTime at, String heater) {}
}
