package fairflame.visit;

import fairflame.Refusal;
import fairflame.document.photo.ReducedPhoto;
import fairflame.quote.Photo;
import fairflame.quote.PhotoNote;
import fairflame.store.Attachment;
import fairflame.store.Records;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Photographs as evidence of a visit: taken in, told about, shown to the customer, listed in the quote. */
public final class Photos {
    private static final int LONGEST_NAME = 80;

    private final Workplace workplace;

    public Photos(Workplace workplace) {
        this.workplace = workplace;
    }

    /** Those of a visit, in the order in which they came. */
    public List<Photo> of(String visit) {
        return workplace.store().reading(records -> listed(records, visit));
    }

    static List<Photo> listed(Records records, String visit) {
        return records.registers().photos().all().stream()
                .filter(note -> note.visit().equals(visit) && !note.removed())
                .map(PhotoNote::photo)
                .toList();
    }

    /** The picture of a photograph, a JPEG. */
    public byte[] picture(String visit, String name) {
        return workplace
                .store()
                .reading(records -> records.attachments().find(visit, name))
                .map(Attachment::bytes)
                .orElseThrow(() -> unknown(name));
    }

    /** The files of a quote's photographs, by digest; one that is not here is left out. */
    static Map<String, byte[]> files(Records records, String visit, List<Photo> photos) {
        var files = new LinkedHashMap<String, byte[]>();
        for (var photo : photos) {
            records.attachments().find(visit, photo.name()).ifPresent(file -> files.put(photo.sha256(), file.bytes()));
        }
        return files;
    }

    private static Refusal unknown(String name) {
        return Refusal.unknown("photo", name, "the name of a photo of this visit");
    }

    /**
     * Takes a picture in, made smaller and without what a camera writes beside it. The same picture twice is one.
     * Refused: no picture, more than 15 MiB, an unknown visit.
     */
    public Photo add(String visit, Path file) {
        return add(visit, file, Progress.UNWATCHED);
    }

    /** As {@link #add(String, Path)}; ended before it is stored, nothing is taken in. */
    public Photo add(String visit, Path file, Progress progress) {
        progress.look();
        var name = String.valueOf(file.getFileName());
        var picture = ReducedPhoto.of(name, bytes(name, file));
        var digest = AwayPaper.digest(picture);
        progress.look();
        return workplace.store().inTransaction(workplace.by(), records -> {
            if (records.visits().find(visit).isEmpty()
                    && records.visits().draft(visit).isEmpty()) {
                throw Refusal.unknown("visit", visit, "the id of a visit in this folder");
            }
            var same = listed(records, visit).stream()
                    .filter(photo -> photo.sha256().equals(digest))
                    .findFirst();
            if (same.isPresent()) {
                return same.get();
            }
            var kept = new Attachment(visit, free(records, visit, plain(name), picture), picture);
            records.attachments().add(kept);
            var photo = new Photo(kept.name(), "", "", digest, false);
            put(records, new PhotoNote(visit, photo, false));
            return photo;
        });
    }

    private static byte[] bytes(String name, Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                throw Refusal.unusable("photo", file, "a file that is there");
            }
            if (Files.size(file) > ReducedPhoto.MOST_BYTES) {
                throw Refusal.outOfRange("size of " + name, Files.size(file) + " bytes", "at most 15 MiB");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw Refusal.unusable("photo", file, "a file that can be read (" + e.getMessage() + ")");
        }
    }

    /** A name of letters, digits and dashes without its ending. */
    private static String plain(String name) {
        var bare = name.replaceAll("\\.[^.]*$", "")
                .replaceAll("[^A-Za-z0-9_-]+", "-")
                .replaceAll("^[^A-Za-z0-9]+", "");
        var kept = bare.isEmpty() ? "photo" : bare;
        return kept.substring(0, Math.min(kept.length(), LONGEST_NAME));
    }

    private static String free(Records records, String visit, String plain, byte[] picture) {
        for (int count = 1; ; count++) {
            var name = plain + (count == 1 ? "" : "-" + count) + ".jpg";
            var there = records.attachments().find(visit, name);
            if (there.isEmpty() || Arrays.equals(there.get().bytes(), picture)) {
                return name;
            }
        }
    }

    private static void put(Records records, PhotoNote note) {
        records.registers().photos().put(note.visit() + "/" + note.photo().name(), note);
    }

    /** Says something else of a photograph. Refused for one that is sealed, and for an unknown check or gate. */
    public void tell(String visit, Photo told) {
        var knowledge = workplace.library().knowledge();
        var known = told.about().isEmpty()
                || knowledge.checks().stream().anyMatch(check -> check.id().equals(told.about()))
                || knowledge.gates().stream().anyMatch(gate -> gate.id().equals(told.about()));
        if (!known) {
            throw Refusal.unknown("what the photo belongs to", told.about(), "the id of a check or gate, or nothing");
        }
        workplace.store().change(workplace.by(), records -> {
            var photo = open(records, visit, told.name());
            put(
                    records,
                    new PhotoNote(
                            visit,
                            new Photo(photo.name(), told.caption(), told.about(), photo.sha256(), told.shown()),
                            false));
        });
    }

    /** Takes a photograph out again. Refused for one that is sealed; the file of one that a quote lists stays kept. */
    public void remove(String visit, String name) {
        workplace.store().change(workplace.by(), records -> {
            var photo = open(records, visit, name);
            put(records, new PhotoNote(visit, photo, true));
            if (!isQuoted(records, visit, photo)) {
                records.attachments().remove(visit, name);
            }
        });
    }

    private static Photo open(Records records, String visit, String name) {
        var photo = listed(records, visit).stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow(() -> unknown(name));
        var sealed = records.agreements().all().stream()
                .filter(signed -> signed.quote().visit().equals(visit))
                .anyMatch(signed -> signed.quote().photos().stream()
                        .anyMatch(each -> each.sha256().equals(photo.sha256())));
        if (sealed) {
            throw Refusal.notAllowed("photo " + name, "sealed with the signed quote", "a photo that is not sealed");
        }
        return photo;
    }

    private static boolean isQuoted(Records records, String visit, Photo photo) {
        return records.quotes().rows().stream()
                .filter(row -> row.visit().equals(visit))
                .flatMap(row -> records.quotes().revisions(row.number()).stream())
                .flatMap(quote -> quote.photos().stream())
                .anyMatch(each -> each.sha256().equals(photo.sha256()));
    }

    /** A photograph of a visit by name. */
    public Optional<Photo> find(String visit, String name) {
        return of(visit).stream().filter(photo -> photo.name().equals(name)).findFirst();
    }
}
