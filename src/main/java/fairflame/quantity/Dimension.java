package fairflame.quantity;

/** What a unit measures. Two measures can be compared only within one dimension. */
public enum Dimension {
    PRESSURE("pressure"),
    LENGTH("length"),
    GAS_FLOW("gas flow"),
    GAS_VOLUME("gas volume"),
    HEAT_RATE("heat rate"),
    ENERGY("energy"),
    HEATING_VALUE("heating value"),
    TEMPERATURE("temperature"),
    TEMPERATURE_RISE("temperature rise"),
    VOLTAGE("voltage"),
    CURRENT("current"),
    RESISTANCE("resistance"),
    APPARENT_POWER("apparent power"),
    WATER_FLOW("water flow"),
    WATER_VOLUME("water volume"),
    TIME("time"),
    CONCENTRATION("concentration"),
    SHARE("share"),
    COUNT("count");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** As said in a sentence. */
    public String words() {
        return words;
    }
}
