package fairflame.diagnosis;

import fairflame.gas.Fuel;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Pressure;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the data plate of the heater says. Minimum and maximum inlet pressure are never assumed: without them no
 * pressure can pass.
 *
 * @param description kind in maker-neutral words, such as "gas pool heater, fan assisted"
 * @param input rated input
 * @param inletMinimum lowest inlet pressure while firing
 * @param inletMaximum highest inlet pressure
 * @param manifold pressure at the valve outlet while firing
 * @param flameMinimum lowest flame signal of this control module, microamperes
 * @param riseMaximum highest temperature rise of the water, degrees Fahrenheit
 * @param efficiency thermal efficiency in percent
 * @param ageYears age of the heater
 */
public record RatingPlate(
        String description,
        Fuel fuel,
        Optional<HeatRate> input,
        Optional<Pressure> inletMinimum,
        Optional<Pressure> inletMaximum,
        Optional<Pressure> manifold,
        Optional<BigDecimal> flameMinimum,
        Optional<BigDecimal> riseMaximum,
        Optional<BigDecimal> efficiency,
        Optional<Integer> ageYears) {}
