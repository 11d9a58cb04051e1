package fairflame.visit;

import fairflame.Refusal;
import fairflame.store.Records;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * The digits by which a person leaves the customer's page, each person their own. Kept as a salted slow hash; wrong
 * tries are counted in the database and slowed down. Digits keep a customer on the customer's page; they are no lock
 * against somebody who takes the database away.
 */
public final class Pins {
    /** Digits of the demo shop, for whoever has none of their own. */
    public static final String DEMO = "2468";

    private static final String KEPT = "pin.";
    private static final String TRIES = "pin-tries.";
    private static final String FORM = "PBKDF2WithHmacSHA256";
    // Long enough to be felt by a program, short enough not to be felt by a person: common practice, no source.
    private static final int ROUNDS = 200_000;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BITS = 256;
    private static final int FREE_TRIES = 3;
    private static final Duration FIRST_WAIT = Duration.ofSeconds(5);
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(5);
    private static final int MOST_DOUBLINGS = 6;

    private final Workplace workplace;
    private final boolean demo;

    /** The digits of a shop; {@code demo} while its data are the invented samples. */
    public Pins(Workplace workplace, boolean demo) {
        this.workplace = workplace;
        this.demo = demo;
    }

    /**
     * What came of a try.
     *
     * @param pause how long no other try is looked at; zero for none
     */
    public record Try(boolean opens, Duration pause) {}

    /** Whether a person has digits of their own. */
    public boolean has(String person) {
        return workplace
                .store()
                .reading(records -> records.settings().find(KEPT + person).isPresent());
    }

    /** Whether these are a person's digits. The fourth wrong try in a row and each after it has to wait longer. */
    public Try opens(String person, String digits) {
        var now = workplace.now().toInstant();
        return workplace.store().inTransaction(workplace.by(), records -> {
            var tries = Tries.parse(records.settings().find(TRIES + person));
            if (now.isBefore(tries.until())) {
                return new Try(false, Duration.between(now, tries.until()));
            }
            if (matches(records, person, digits)) {
                keep(records, person, new Tries(0, Instant.EPOCH));
                return new Try(true, Duration.ZERO);
            }
            var wrong = tries.count() + 1;
            var pause = pause(wrong);
            keep(records, person, new Tries(wrong, now.plus(pause)));
            return new Try(false, pause);
        });
    }

    private boolean matches(Records records, String person, String digits) {
        var kept = records.settings().find(KEPT + person);
        return kept.isPresent() ? same(kept.get(), digits) : demo && digits.equals(DEMO);
    }

    private static Duration pause(int wrong) {
        if (wrong < FREE_TRIES) {
            return Duration.ZERO;
        }
        var pause = FIRST_WAIT.multipliedBy(1L << Math.min(wrong - FREE_TRIES, MOST_DOUBLINGS));
        return pause.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : pause;
    }

    /**
     * Sets other digits; refused unless the old ones are right. A person without digits in a shop of their own sets
     * the first ones with empty old ones.
     */
    public void change(String person, String old, String fresh) {
        checked(fresh);
        if (has(person) || demo) {
            var tried = opens(person, old);
            if (!tried.opens()) {
                throw Refusal.notAllowed(
                        "old digits",
                        "wrong",
                        tried.pause().isZero()
                                ? "the digits of " + person
                                : "a new try in " + (tried.pause().toSeconds() + 1) + " s");
            }
        }
        put(person, fresh);
    }

    /** Sets the digits of a person who forgot theirs, for the office. Stands in the journal with who did it. */
    public void replace(String person, String fresh) {
        if (person.isBlank()) {
            throw Refusal.missing("name of the person", "the name that the window is opened with");
        }
        checked(fresh);
        put(person, fresh);
    }

    private static void checked(String fresh) {
        if (!fresh.matches("\\d{4,12}")) {
            throw Refusal.malformed("new digits", fresh.length() + " characters", "4 to 12 digits");
        }
        if (fresh.equals(DEMO) || fresh.chars().distinct().count() == 1) {
            throw Refusal.notAllowed(
                    "new digits", "the demo's or all the same", "digits that a customer would not try first");
        }
    }

    private void put(String person, String fresh) {
        var hash = hash(fresh);
        workplace.store().change(workplace.by(), records -> {
            records.settings().put(KEPT + person, hash);
            keep(records, person, new Tries(0, Instant.EPOCH));
        });
    }

    private static void keep(Records records, String person, Tries tries) {
        records.settings().put(TRIES + person, tries.text());
    }

    private static String hash(String digits) {
        var salt = new byte[SALT_BYTES];
        new SecureRandom().nextBytes(salt);
        var hex = HexFormat.of();
        return ROUNDS + ":" + hex.formatHex(salt) + ":" + hex.formatHex(derived(digits, salt, ROUNDS));
    }

    private static boolean same(String kept, String digits) {
        var parts = kept.split(":", -1);
        var hex = HexFormat.of();
        return parts.length == 3
                && MessageDigest.isEqual(
                        hex.parseHex(parts[2]), derived(digits, hex.parseHex(parts[1]), Integer.parseInt(parts[0])));
    }

    // RFC 8018, section 5.2.
    private static byte[] derived(String digits, byte[] salt, int rounds) {
        try {
            var key = new PBEKeySpec(digits.toCharArray(), salt, rounds, HASH_BITS);
            return SecretKeyFactory.getInstance(FORM).generateSecret(key).getEncoded();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has " + FORM, e);
        }
    }

    /** Wrong tries in a row, and until when no other is looked at. */
    private record Tries(int count, Instant until) {
        static Tries parse(Optional<String> kept) {
            var parts = kept.orElse("").split(" ", -1);
            return parts.length == 2
                    ? new Tries(Integer.parseInt(parts[0]), Instant.parse(parts[1]))
                    : new Tries(0, Instant.EPOCH);
        }

        String text() {
            return count + " " + until;
        }
    }
}
