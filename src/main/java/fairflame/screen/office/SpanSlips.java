package fairflame.screen.office;

import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.look.Words;
import java.util.List;

/** Two fields for a span of days. */
final class SpanSlips {
    private static final double LEAST = 150;

    private SpanSlips() {}

    static Columns of(String id, SpanModel span, Words words) {
        return new Columns(
                LEAST,
                12,
                List.of(
                        new Slip(
                                id + "-from",
                                words.say("office.from"),
                                span.from().value(),
                                span.from().refusal()),
                        new Slip(
                                id + "-to",
                                words.say("office.to"),
                                span.to().value(),
                                span.to().refusal())));
    }
}
