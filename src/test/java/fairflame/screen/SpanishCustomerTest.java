package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.diagnosis.Finding;
import fairflame.quote.Quote;
import fairflame.screen.bench.DraftOfVisit;
import fairflame.screen.bench.Drafting;
import fairflame.screen.handover.HandoverModel;
import fairflame.screen.kit.AtOnce;
import fairflame.screen.look.Words;
import fairflame.store.Folder;
import fairflame.visit.Library;
import fairflame.visit.Progress;
import fairflame.visit.Sources;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A technician who works in English hands the screen to a customer who reads Spanish. */
class SpanishCustomerTest {
    private static final Library LIBRARY = Library.load(Sources.samples());

    @TempDir
    Path folder;

    @Test
    void theBenchStaysEnglishAndThePaperBesideItIsSpanish() {
        try (var workplace = open()) {
            var screens = new WorkplaceScreens(workplace, true);
            var draft = DraftOfVisit.read(visit()).with("customer.language", "es");
            var judged = screens.judge(Drafting.visitText(draft));
            assertThat(((Finding.Settled) judged.finding()).causes().get(0).title())
                    .isEqualTo("Both water-side temperature switches leak to ground");
            var quote = judged.quote().orElseThrow();
            assertThat(quote.language()).isEqualTo("es");
            assertThat(quote.finding().causes().get(0)).startsWith("Los dos interruptores");
        }
    }

    @Test
    void theCustomersPagePromisesInSpanishWhateverTheWindowSpeaks() {
        try (var workplace = open()) {
            var screens = new WorkplaceScreens(workplace, true);
            var quote = screens.offer(DraftOfVisit.read(visit()).with("customer.language", "es"), Progress.UNWATCHED);
            var page = new HandoverModel(
                    screens, new HandoverModel.Offered(quote, Optional.empty()), "Ines Calloway", new AtOnce());
            assertThat(Words.in(page.language()).language()).isEqualTo("es");
            for (var language : Words.LANGUAGES) {
                assertThat(screens.promises(quote, "both", language))
                        .extracting(promise -> promise.words())
                        .allSatisfy(words -> assertThat(words).containsPattern("(He leído|Acepto|Me ofrecieron)"));
            }
        }
    }

    @Test
    void aTypedNameSignsAndALateSignatureIsRefusedInTheCustomersWords() {
        Quote quote;
        try (var workplace = open()) {
            var screens = new WorkplaceScreens(workplace, true);
            quote = screens.offer(DraftOfVisit.read(visit()).with("customer.language", "es"), Progress.UNWATCHED);
        }
        try (var late = open("2026-09-01T15:00:00Z")) {
            var page = page(late, quote);
            page.sign(List.of());
            assertThat(page.signed().get()).isEmpty();
            assertThat(page.refusal().get())
                    .isEqualTo("Firmar Q-2026-0001, revisión 1: venció el 2026-07-03."
                            + " Lo que es posible: una revisión nueva con los precios de hoy.");
        }
        try (var workplace = open()) {
            var page = page(workplace, quote);
            page.byName().set(false);
            assertThat(page.missing().get()).isEqualTo("handover.missing.stroke");
            page.byName().set(true);
            assertThat(page.missing().get()).isEmpty();
            page.sign(List.of(List.of(1, 1, 900, 300)));
            var signature = page.signed().get().orElseThrow().signature();
            assertThat(signature.name()).isEqualTo("Marguerite Oduya");
            assertThat(signature.strokes())
                    .as("what was drawn before counts no more")
                    .isEmpty();
        }
    }

    private static HandoverModel page(Workplace workplace, Quote quote) {
        var page = new HandoverModel(
                new WorkplaceScreens(workplace, true),
                new HandoverModel.Offered(quote, Optional.empty()),
                "Ines Calloway",
                new AtOnce());
        page.choice().set("both");
        page.promises().forEach(promise -> page.accepted().add(promise.id()));
        page.name().set("Marguerite Oduya");
        page.byName().set(true);
        return page;
    }

    @Test
    void aDraftKeepsTheLanguageOnItsWayThroughTheVisitFile() {
        var draft = DraftOfVisit.read(visit()).with("customer.language", "es");
        assertThat(DraftOfVisit.read(Drafting.visitText(draft)).get("customer.language"))
                .isEqualTo("es");
    }

    private static String visit() {
        return Folder.shipped("fairflame/demo").get("visit-1.json");
    }

    private Workplace open() {
        return open("2026-06-03T15:00:00Z");
    }

    private Workplace open(String now) {
        var clock = Clock.fixed(Instant.parse(now), ZoneOffset.ofHours(-5));
        return Workplace.open(folder, LIBRARY, clock, "Ines Calloway");
    }
}
