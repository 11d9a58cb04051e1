package fairflame.screen.bench;

import fairflame.diagnosis.Knowledge;
import fairflame.screen.photo.PhotoWork;
import java.util.List;

/** What the bench asks of the use cases. */
public interface BenchWork {
    Knowledge knowledge();

    /** Places whose rules the shop knows, id and name. */
    List<Option> places();

    /** Zones of the trip charge. */
    List<Option> zones();

    /** Conditions of the site that change the standard times. */
    List<Option> timeConditions();

    /** Facts that the shop's repairs may depend on and that the technician can state. */
    List<Option> facts();

    /** Judges the text of a visit file; a refusal names the field. */
    Judged judge(String visitJson);

    /** Saves a draft so that it outlives the process. */
    void keep(Draft draft);

    /** The part for photographs. */
    PhotoWork photos();

    /** Something to choose from. */
    record Option(String id, String title) {}
}
