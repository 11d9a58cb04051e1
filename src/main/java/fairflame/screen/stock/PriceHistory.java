package fairflame.screen.stock;

import fairflame.catalog.upkeep.PastPrice;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;

/** What a part has cost: a line that steps at each change, and the same in words below. */
final class PriceHistory extends VBox {
    PriceHistory(List<PastPrice> prices, Words words) {
        super(Texts.GAP);
        getChildren().add(Texts.words(words.say("stock.history"), "semi"));
        if (prices.size() > 1) {
            getChildren()
                    .add(new Steps(prices.stream()
                            .map(price -> price.cost().getAmount().doubleValue())
                            .toList()));
        }
        for (int i = prices.size() - 1; i >= 0; i--) {
            var price = prices.get(i);
            var list =
                    price.listPrice().map(amount -> "  \u00B7  " + words.say("stock.list-price", words.money(amount)));
            getChildren()
                    .add(Texts.words(words.day(price.since()) + ":  " + words.money(price.cost()) + list.orElse("")
                            + "  \u00B7  "
                            + words.sayOr("stock.from." + price.from().replace(' ', '-'), price.from())));
        }
    }

    /** The steps alone; said in words beside it, so a screen reader passes it over. */
    private static final class Steps extends Pane {
        private static final double HEIGHT = 90;
        private static final double EDGE = 10;

        private final List<Double> costs;

        Steps(List<Double> costs) {
            this.costs = costs;
            getStyleClass().add("steps");
            setMinHeight(HEIGHT);
            setPrefHeight(HEIGHT);
        }

        @Override
        protected void layoutChildren() {
            getChildren().clear();
            var lowest = costs.stream().min(Double::compare).orElse(0.0);
            var highest = costs.stream().max(Double::compare).orElse(1.0);
            var span = Math.max(0.01, highest - lowest);
            var wide = (getWidth() - 2 * EDGE) / costs.size();
            for (int i = 0; i < costs.size(); i++) {
                var y = EDGE + (HEIGHT - 2 * EDGE) * (1 - (costs.get(i) - lowest) / span);
                var from = EDGE + wide * i;
                draw(new Line(from, y, from + wide, y));
                if (i > 0) {
                    var before = EDGE + (HEIGHT - 2 * EDGE) * (1 - (costs.get(i - 1) - lowest) / span);
                    draw(new Line(from, before, from, y));
                }
                var dot = new Circle(from, y, 4);
                dot.getStyleClass().add("step-dot");
                getChildren().add(dot);
            }
        }

        private void draw(Line line) {
            line.getStyleClass().add("step-line");
            getChildren().add(line);
        }
    }
}
