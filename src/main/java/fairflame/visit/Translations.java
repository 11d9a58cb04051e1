package fairflame.visit;

import fairflame.catalog.Shop;
import fairflame.diagnosis.Knowledge;
import fairflame.store.Folder;
import fairflame.wording.Language;
import fairflame.wording.Pair;
import fairflame.wording.TextFiles;
import fairflame.wording.Told;
import fairflame.wording.Wording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a shop's files say in other languages: the pairs that travel with the program, and over them the shop's own. They go
 * by the English text, so a sentence that a shop has changed stays English until the shop translates it. Read and kept
 * when first asked for.
 */
final class Translations {
    /** Folders that travel with the program; each has a folder of texts for each language. */
    private static final List<String> SHIPPED = List.of("templates", "catalog-sample");

    private final List<Map<String, String>> folders;
    private final Map<String, String> knowledgeFiles;
    private final Map<Language, Wording> wordings = new EnumMap<>(Language.class);
    private final Map<Language, Knowledge> knowledge = new EnumMap<>(Language.class);
    private Optional<Shop> lastShop = Optional.empty();
    private final Map<Language, Shop> shops = new EnumMap<>(Language.class);

    /**
     * The translations for a shop.
     *
     * @param folders texts of the shop's own folders by file name, whose pairs count more than the shipped ones
     */
    Translations(List<Map<String, String>> folders, Map<String, String> knowledgeFiles) {
        this.folders = List.copyOf(folders);
        this.knowledgeFiles = Map.copyOf(knowledgeFiles);
    }

    /** What a customer reads, in a language. */
    synchronized Wording wording(Language language) {
        return wordings.computeIfAbsent(language, wanted -> {
            var pairs = new ArrayList<Pair>();
            if (wanted != Language.ENGLISH) {
                SHIPPED.forEach(folder -> pairs.addAll(TextFiles.read(Folder.shipped(folder), wanted)));
                pairs.addAll(TextFiles.read(Knowledge.shippedFiles(), wanted));
            }
            folders.forEach(folder -> pairs.addAll(TextFiles.read(folder, wanted)));
            pairs.addAll(TextFiles.read(knowledgeFiles, wanted));
            return Wording.of(wanted, pairs);
        });
    }

    /** The knowledge with its words in a language; what it proves is the same. */
    synchronized Knowledge knowledge(Language language) {
        return knowledge.computeIfAbsent(language, wanted -> Knowledge.parse(knowledgeFiles, wording(wanted)));
    }

    /** A shop with its words in a language; what it costs is the same. */
    synchronized Shop shop(Shop shop, Language language) {
        if (lastShop.filter(shop::equals).isEmpty()) {
            shops.clear();
            lastShop = Optional.of(shop);
        }
        return shops.computeIfAbsent(language, wanted -> Told.in(wording(wanted), shop));
    }

    /** Texts of the knowledge that a customer may come to read. */
    List<String> spokenByKnowledge() {
        return Knowledge.spoken(knowledgeFiles);
    }
}
