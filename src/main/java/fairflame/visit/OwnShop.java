package fairflame.visit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fairflame.Refusal;
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
                throw Refusal.missing("name of the shop", "the name as it stands on paper");
            }
            if (address.isEmpty()) {
                throw Refusal.missing("address of the shop", "one line or more");
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
        templates.put(COMPANY, company(details));
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

    private static String company(Details details) {
        var fields = new LinkedHashMap<String, Object>();
        fields.put("name", details.name().strip());
        fields.put("address", details.address());
        fields.put("phone", details.phone().strip());
        fields.put("email", details.email().strip());
        fields.put("licence", details.licence().strip());
        fields.put("mark", "none");
        try {
            return new YAMLMapper().writeValueAsString(fields);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void write(Path folder, Map<String, String> files) throws IOException {
        for (var file : files.entrySet()) {
            var target = folder.resolve(file.getKey());
            Files.createDirectories(Optional.ofNullable(target.getParent()).orElse(folder));
            Files.writeString(target, file.getValue(), StandardCharsets.UTF_8);
        }
    }
}
