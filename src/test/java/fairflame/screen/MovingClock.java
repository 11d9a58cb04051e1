package fairflame.screen;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** A clock that stands still until a test moves it on. */
final class MovingClock extends Clock {
    private final ZoneId zone = ZoneId.of("America/Los_Angeles");
    private volatile Instant now = Instant.parse("2026-06-03T17:05:00Z");

    void days(int days) {
        now = now.plus(Duration.ofDays(days));
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        return Clock.fixed(now, other);
    }

    @Override
    public Instant instant() {
        return now;
    }
}
