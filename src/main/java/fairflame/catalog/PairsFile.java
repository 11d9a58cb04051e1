package fairflame.catalog;

import fairflame.Refusal;
import fairflame.quantity.Resistance;
import java.util.List;
import java.util.Map;

/** Reads {@code pairs.yaml}. */
final class PairsFile {
    static final String NAME = "pairs.yaml";

    private PairsFile() {}

    static List<PairRule> read(Map<String, String> files, Problems problems) {
        return TablesFile.entries(files, NAME, "pairs", problems).stream()
                .flatMap(entry -> problems.attempt(() -> pair(entry)).stream())
                .toList();
    }

    private static PairRule pair(YamlEntry entry) {
        entry.only("id", "task", "members", "damagedBelow", "dampBelow", "contactBelow", "age", "facts", "source");
        var members = entry.items("members").stream().map(PairsFile::member).toList();
        if (members.size() != 2) {
            throw Refusal.malformed("pair with members", members.size(), "two members")
                    .at(entry.where());
        }
        var rule = new PairRule(
                entry.read("id", Fields::id),
                entry.text("task"),
                members,
                entry.read("damagedBelow", Resistance::parse),
                entry.read("dampBelow", Resistance::parse),
                entry.read("contactBelow", Resistance::parse),
                age(entry.field("age").only("oldAfterYears", "checks")),
                circumstances(entry.field("facts").only("sameWater", "sameBatch", "waterStopped")),
                entry.text("source"));
        if (rule.damagedBelow().compareTo(rule.dampBelow()) > 0) {
            throw Refusal.notAllowed("damagedBelow", entry.text("damagedBelow"), "not above dampBelow")
                    .at(entry.where());
        }
        return rule;
    }

    private static PairRule.Age age(YamlEntry entry) {
        return new PairRule.Age(entry.read("oldAfterYears", text -> Fields.whole(text, 0, 50)), entry.texts("checks"));
    }

    private static PairRule.Circumstances circumstances(YamlEntry entry) {
        return new PairRule.Circumstances(entry.text("sameWater"), entry.text("sameBatch"), entry.text("waterStopped"));
    }

    private static PairRule.Member member(YamlEntry entry) {
        entry.only("id", "title", "leakChecks", "contactChecks");
        return new PairRule.Member(
                entry.read("id", Fields::id),
                entry.text("title"),
                entry.texts("leakChecks"),
                entry.texts("contactChecks"));
    }
}
