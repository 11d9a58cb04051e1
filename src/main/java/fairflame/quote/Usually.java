package fairflame.quote;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A text that came to a record after the first ones were sealed. With this value it is left out of the canonical form, so
 * that what was sealed before keeps its bytes; any other value is written and sealed like every field.
 */
@Documented
@Target(ElementType.RECORD_COMPONENT)
@Retention(RetentionPolicy.RUNTIME)
public @interface Usually {
    /** The value that is left out. */
    String value();
}
