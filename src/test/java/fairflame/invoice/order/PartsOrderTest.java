package fairflame.invoice.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.Shop;
import fairflame.catalog.ShopFiles;
import fairflame.store.Folder;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class PartsOrderTest {
    private static final Shop SHOP = ShopFiles.parse(Folder.shipped("catalog-sample"));

    private static PartNeeded need(String quote, String part, String quantity) {
        return new PartNeeded(quote, 1, part, new BigDecimal(quantity));
    }

    @Test
    void sumsOverJobsAreRoundedUpOnceAndLengthsStayAsTheyAre() {
        var sheets = PartsOrder.sheets(
                SHOP,
                List.of(
                        need("Q-2026-0001", "SE-02", "0.4"),
                        need("Q-2026-0002", "SE-02", "0.4"),
                        need("Q-2026-0003", "SE-02", "0.4"),
                        need("Q-2026-0002", "GP-04", "12.5")),
                List.of());
        assertThat(sheets).singleElement().satisfies(sheet -> {
            assertThat(sheet.supplier().id()).isEqualTo("gantry");
            assertThat(sheet.lines())
                    .extracting(line -> line.quantity().toPlainString())
                    .containsExactly("12.5", "2");
            // 12.5 ft at 4.25 and two tubes at 6.80
            assertThat(sheet.cost(SHOP.currency()).getAmount()).isEqualByComparingTo("66.73");
        });
    }

    @Test
    void whatWasOrderedForAJobIsNotOrderedAgain() {
        var needs = List.of(need("Q-2026-0001", "SW-01", "2"), need("Q-2026-0002", "SW-01", "1"));
        var left = PartsOrder.sheets(SHOP, needs, List.of(need("Q-2026-0001", "SW-01", "2")));
        assertThat(left.get(0).lines().get(0).uses()).containsExactly(need("Q-2026-0002", "SW-01", "1"));
        assertThat(PartsOrder.sheets(SHOP, needs, needs)).isEmpty();
    }

    @Test
    void aPartThatTheShopNeverHadIsRefused() {
        assertThatThrownBy(() -> PartsOrder.sheets(SHOP, List.of(need("Q-2026-0001", "XX-99", "1")), List.of()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("XX-99");
    }
}
