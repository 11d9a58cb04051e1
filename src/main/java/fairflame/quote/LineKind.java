package fairflame.quote;

/** The kinds of line that tax rules and discounts tell apart. */
public enum LineKind {
    PART("part"),
    CONSUMABLE("consumable"),
    LABOUR("labour"),
    TRIP("trip"),
    DIAGNOSIS("diagnosis"),
    PERMIT_FEE("permit-fee"),
    SUBCONTRACT("subcontract"),
    DISPOSAL("disposal");

    private final String word;

    LineKind(String word) {
        this.word = word;
    }

    /** As in data files. */
    public String word() {
        return word;
    }
}
