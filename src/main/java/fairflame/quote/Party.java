package fairflame.quote;

import java.util.List;

/**
 * A person or business on paper.
 *
 * @param address lines as printed
 * @param role owner, tenant, agent; empty for the shop
 */
public record Party(String name, List<String> address, String phone, String email, String role) {
    public Party {
        address = List.copyOf(address);
    }
}
