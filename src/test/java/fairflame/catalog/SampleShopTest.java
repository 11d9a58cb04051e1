package fairflame.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.Refusal;
import org.junit.jupiter.api.Test;

class SampleShopTest {
    private final Shop shop = SampleFolder.shop();

    @Test
    void theWholeFolderIsReadWithoutAProblem() {
        assertThat(ShopFiles.problems(SampleFolder.files()).stream().map(Refusal::getMessage))
                .isEmpty();
    }

    @Test
    void itHoldsEnoughPartsAndTasksForTheTrade() {
        assertThat(shop.parts()).hasSizeGreaterThanOrEqualTo(120);
        assertThat(shop.tasks()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(shop.jurisdictions()).hasSizeGreaterThanOrEqualTo(3);
    }
}
