package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.edit.FieldEdit;
import fairflame.catalog.edit.Spot;
import fairflame.catalog.edit.YamlText;
import fairflame.store.Folder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A shop of one's own: the samples as a start, in files to be edited, under one's own name. */
public final class OwnShop {
    private static final String CATALOG = "catalog";
    private static final String TEMPLATES = "templates";
    private static final String COMPANY = "company.yaml";

    private OwnShop() {}

    /**
     * What stands on top of every paper.
     *
     * @param address lines as printed, at least one
     * @param licence as printed; empty for none
     */
    public record Details(String name, List<String> address, String phone, String email, String licence) {
        public Details {
            address = List.copyOf(address);
            if (name.isBlank()) {
                throw Refusal.missing("name of the shop", "the name as it stands on paper")
                        .at("name");
            }
            if (address.isEmpty()) {
                throw Refusal.missing("address of the shop", "one line or more").at("address");
            }
            if (phone.isBlank()) {
                throw Refusal.missing("telephone of the shop", "the number that customers call")
                        .at("phone");
            }
            if (!email.strip().matches("[^@\\s]+@[^@\\s]+")) {
                throw Refusal.malformed("e-mail address", email, "a name, @ and a domain, such as desk@shop.example")
                        .at("email");
            }
        }
    }

    /** The files of a shop begun in this folder; samples where none was. */
    public static Sources in(Path folder) {
        var catalog = folder.resolve(CATALOG);
        var templates = folder.resolve(TEMPLATES);
        return Files.isDirectory(catalog) && Files.isDirectory(templates)
                ? new Sources(Optional.of(catalog), Optional.empty(), Optional.of(templates))
                : Sources.samples();
    }

    /** Begins a shop in a folder; refused where one was begun before. */
    public static Sources begin(Path folder, Details details) {
        if (Files.exists(folder.resolve(CATALOG)) || Files.exists(folder.resolve(TEMPLATES))) {
            throw Refusal.unusable("folder", folder, "a folder without catalog and templates of an earlier start");
        }
        var templates = new LinkedHashMap<String, String>(Folder.shipped(TEMPLATES));
        templates.put(COMPANY, company(templates.getOrDefault(COMPANY, ""), details));
        // Read before anything is written: a shop that was begun always opens.
        Library.of(Sources.samples(), Folder.shipped("catalog-sample"), templates)
                .readWhole();
        try {
            write(folder.resolve(TEMPLATES), templates);
            for (var sheet : Folder.spreadsheets(Optional.empty()).entrySet()) {
                Files.write(folder.resolve(TEMPLATES).resolve(sheet.getKey()), sheet.getValue());
            }
            write(folder.resolve(CATALOG), Folder.shipped("catalog-sample"));
        } catch (IOException e) {
            throw Refusal.unusable("folder", folder, "a folder with room and right to write (" + e.getMessage() + ")");
        }
        return in(folder);
    }

    /** The sample's file with every detail of the demo shop replaced; its remarks stay to guide whoever edits it. */
    private static String company(String sample, Details details) {
        var own = new LinkedHashMap<Spot, String>();
        own.put(Spot.of("name"), details.name().strip());
        own.put(Spot.of("address"), String.join("\n", details.address()));
        own.put(Spot.of("phone"), details.phone().strip());
        own.put(Spot.of("email"), details.email().strip());
        own.put(Spot.of("mark"), "none");
        own.put(Spot.of("tax-registration"), "");
        for (var language : List.of("en", "es")) {
            own.put(Spot.of("licence", language), details.licence().strip());
            own.put(Spot.of("tagline", language), "");
            own.put(Spot.of("insurance", language), "");
        }
        own.put(Spot.of("pay", "en"), "Please write the invoice number on your payment.");
        own.put(Spot.of("pay", "es"), "Escriba el número de factura en su pago.");
        var text = sample.replace(" Invented for the demo: replace every line with the details of your shop.", "");
        for (var detail : own.entrySet()) {
            var yaml = YamlText.parse(COMPANY, text);
            var before = yaml.at(detail.getKey());
            if (before.isPresent()) {
                text = yaml.with(new FieldEdit(detail.getKey(), before, Optional.of(detail.getValue())));
            }
        }
        return text;
    }

    private static void write(Path folder, Map<String, String> files) throws IOException {
        for (var file : files.entrySet()) {
            var target = folder.resolve(file.getKey());
            Files.createDirectories(Optional.ofNullable(target.getParent()).orElse(folder));
            Files.writeString(target, file.getValue(), StandardCharsets.UTF_8);
        }
    }
}
