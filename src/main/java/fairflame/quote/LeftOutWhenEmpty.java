package fairflame.quote;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a component of a record that came later than the first sealed papers. Its field is left out of the canonical
 * form while it is empty, so that what was sealed before keeps its bytes and can be read.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface LeftOutWhenEmpty {}
