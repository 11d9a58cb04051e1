package fairflame.invoice.books;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import fairflame.Refusal;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which account each kind of amount goes to. A role may be narrowed after a colon: {@code revenue:part} is looked up
 * first, then {@code revenue}.
 */
public final class Chart {
    /** Name of the shop's file. */
    public static final String FILE = "accounts.csv";

    /** Every chart has these; the deposit is a liability until the work is invoiced. */
    private static final Map<String, Account.Type> NEEDED = Map.of(
            "bank", Account.Type.ASSET,
            "receivable", Account.Type.ASSET,
            "deposits", Account.Type.LIABILITY,
            "sales-tax", Account.Type.LIABILITY,
            "revenue", Account.Type.INCOME,
            "discounts", Account.Type.INCOME,
            "bad-debt", Account.Type.EXPENSE);

    private static final List<String> COLUMNS = List.of("role", "number", "name", "type", "source");

    private final Map<String, Account> accounts;

    private Chart(Map<String, Account> accounts) {
        this.accounts = Map.copyOf(accounts);
    }

    /** Reads the shop's file: columns role, number, name, type, source. */
    public static Chart parse(String csv) {
        var schema = CsvSchema.emptySchema().withHeader();
        var accounts = new HashMap<String, Account>();
        try (MappingIterator<Map<String, String>> rows =
                new CsvMapper().readerForMapOf(String.class).with(schema).readValues(csv)) {
            for (int row = 2; rows.hasNextValue(); row++) {
                add(rows.nextValue(), FILE + " row " + row, accounts);
            }
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("table", e.getOriginalMessage(), "comma-separated values (RFC 4180)")
                    .at(FILE);
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory could not be read", e);
        }
        NEEDED.forEach((role, type) -> check(accounts, role, type));
        return new Chart(accounts);
    }

    private static void add(Map<String, String> row, String where, Map<String, Account> accounts) {
        for (var column : COLUMNS) {
            if (row.getOrDefault(column, "").isBlank()) {
                throw Refusal.missing(column, "a filled cell in each of the columns " + String.join(", ", COLUMNS))
                        .at(where);
            }
        }
        var role = row.getOrDefault("role", "").strip();
        if (!NEEDED.containsKey(role.replaceFirst(":.*", ""))) {
            throw Refusal.unknown(
                            "role",
                            role,
                            String.join(", ", NEEDED.keySet().stream().sorted().toList()))
                    .at(where);
        }
        try {
            var account = new Account(
                    row.getOrDefault("number", "").strip(),
                    row.getOrDefault("name", "").strip(),
                    Account.Type.parse(row.getOrDefault("type", "")));
            if (accounts.put(role, account) != null) {
                throw Refusal.notAllowed("role", role, "each role once");
            }
        } catch (Refusal refusal) {
            throw refusal.at(where);
        }
    }

    private static void check(Map<String, Account> accounts, String role, Account.Type type) {
        if (!accounts.containsKey(role)) {
            throw Refusal.missing(
                            "role " + role,
                            "a row for each of the roles "
                                    + String.join(
                                            ", ",
                                            NEEDED.keySet().stream().sorted().toList()))
                    .at(FILE);
        }
        accounts.forEach((name, account) -> {
            if (name.replaceFirst(":.*", "").equals(role) && account.type() != type) {
                throw Refusal.notAllowed("type of " + name, account.type().word(), type.word())
                        .at(FILE);
            }
        });
    }

    /** The account of a role, narrowed when the chart has a narrower one. */
    Account of(String role, String narrower) {
        var account = accounts.get(role + ":" + narrower);
        return account != null ? account : of(role);
    }

    Account of(String role) {
        var account = accounts.get(role);
        if (account == null) {
            throw new IllegalStateException("no account for " + role);
        }
        return account;
    }
}
