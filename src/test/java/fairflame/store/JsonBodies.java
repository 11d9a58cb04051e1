package fairflame.store;

import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.deser.std.FromStringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import fairflame.agreement.ChangeOrder;
import fairflame.agreement.SignedRevision;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.quote.Quote;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Plain JSON for the tests of the store, which does not care what the bytes mean. */
final class JsonBodies {
    private static final JsonMapper JSON = JsonMapper.builder()
            .addModules(new Jdk8Module(), new JavaTimeModule(), money())
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(com.fasterxml.jackson.databind.DeserializationFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
            .build();

    static final Bodies ALL = new Bodies(
            body(Quote.class),
            body(SignedRevision.class),
            body(ChangeOrder.class),
            body(Invoice.class),
            body(Completion.class));

    private JsonBodies() {}

    private static <T> Body<T> body(Class<T> type) {
        return new Body<>() {
            @Override
            public byte[] write(T thing) {
                try {
                    return JSON.writeValueAsBytes(thing);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }

            @Override
            public T read(byte[] bytes) {
                try {
                    return JSON.readValue(bytes, type);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        };
    }

    private static SimpleModule money() {
        return new SimpleModule()
                .addSerializer(Money.class, new ToStringSerializer())
                .addSerializer(CurrencyUnit.class, new ToStringSerializer())
                .addDeserializer(Money.class, new FromStringDeserializer<>(Money.class) {
                    @Override
                    protected Money _deserialize(String text, DeserializationContext context) {
                        return Money.parse(text);
                    }
                })
                .addDeserializer(CurrencyUnit.class, new FromStringDeserializer<>(CurrencyUnit.class) {
                    @Override
                    protected CurrencyUnit _deserialize(String text, DeserializationContext context) {
                        return CurrencyUnit.of(text);
                    }
                });
    }
}
