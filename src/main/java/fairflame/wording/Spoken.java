package fairflame.wording;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a component of a record whose texts a customer reads: {@link Told} puts them into the customer's language. The
 * component is text, or a list, set, optional or map with texts; of a map the values are meant.
 */
@Documented
@Target(ElementType.RECORD_COMPONENT)
@Retention(RetentionPolicy.RUNTIME)
public @interface Spoken {}
