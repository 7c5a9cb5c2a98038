package hornwright.desk.journal;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.Means;
import hornwright.bench.horn.Word;
import hornwright.bench.job.StreamName;
import hornwright.bench.material.BenchTest;
import hornwright.bench.material.BounceTest;
import hornwright.bench.material.PackingTest;
import hornwright.bench.material.PadLoadsTest;
import hornwright.bench.material.PadTest;
import hornwright.bench.material.WeightTest;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Happening;
import hornwright.bench.survey.Observed;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategy;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.cfg.CoercionAction;
import tools.jackson.databind.cfg.CoercionInputShape;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.introspect.AnnotatedClass;
import tools.jackson.databind.introspect.AnnotatedField;
import tools.jackson.databind.introspect.AnnotatedParameter;
import tools.jackson.databind.introspect.JacksonAnnotationIntrospector;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.type.LogicalType;

/**
 * How records of the bench are written down. Words, never names of Java: a choice by its word, one of several shapes by
 * the word given here, a length with its unit in the name.
 */
final class EditMapper {
    private EditMapper() {}

    static JsonMapper strict() {
        return JsonMapper.builder()
                .changeDefaultVisibility(visible -> visible.withFieldVisibility(Visibility.ANY)
                        .withGetterVisibility(Visibility.NONE)
                        .withIsGetterVisibility(Visibility.NONE))
                .annotationIntrospector(new ByWord())
                .propertyNamingStrategy(new UnitInName())
                .addMixIn(Observed.class, Observations.class)
                .addMixIn(Decision.class, Decisions.class)
                .addMixIn(Happening.class, Happenings.class)
                .addMixIn(Means.class, AllMeans.class)
                .addMixIn(BenchTest.class, BenchTests.class)
                .addModule(new SimpleModule("dates")
                        .addSerializer(Edtf.class, new EdtfAsText())
                        .addDeserializer(Edtf.class, new EdtfFromText())
                        .addSerializer(StreamName.class, new StreamAsText())
                        .addDeserializer(StreamName.class, new StreamFromText()))
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .enable(EnumFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
                .withCoercionConfig(
                        LogicalType.Textual,
                        coercion -> coercion.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                                .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "says")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Observed.Amount.class, name = "amount"),
        @JsonSubTypes.Type(value = Observed.RimGap.class, name = "rim gap"),
        @JsonSubTypes.Type(value = Observed.Play.class, name = "play"),
        @JsonSubTypes.Type(value = Observed.TrialPad.class, name = "trial pad"),
        @JsonSubTypes.Type(value = Observed.TrialShim.class, name = "trial shim"),
        @JsonSubTypes.Type(value = Observed.Pin.class, name = "pin"),
        @JsonSubTypes.Type(value = Observed.Says.class, name = "word")
    })
    private interface Observations {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "settles")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Decision.Use.class, name = "use"),
        @JsonSubTypes.Type(value = Decision.Treat.class, name = "treatment"),
        @JsonSubTypes.Type(value = Decision.Height.class, name = "height"),
        @JsonSubTypes.Type(value = Decision.PadThickness.class, name = "pad thickness"),
        @JsonSubTypes.Type(value = Decision.PadSoftness.class, name = "pad class"),
        @JsonSubTypes.Type(value = Decision.HandedOver.class, name = "hand-over"),
        @JsonSubTypes.Type(value = Decision.Contact.class, name = "contact")
    })
    private interface Decisions {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "happened")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Happening.Reached.class, name = "stage reached"),
        @JsonSubTypes.Type(value = Happening.Worked.class, name = "work"),
        @JsonSubTypes.Type(value = Happening.Settled.class, name = "decided"),
        @JsonSubTypes.Type(value = Happening.Dropped.class, name = "decision dropped"),
        @JsonSubTypes.Type(value = Happening.Measured.class, name = "measured"),
        @JsonSubTypes.Type(value = Happening.Withdrawn.class, name = "reading withdrawn")
    })
    private interface Happenings {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "means")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Means.Examined.class, name = "horn examined"),
        @JsonSubTypes.Type(value = Means.Written.class, name = "paper of the time"),
        @JsonSubTypes.Type(value = Means.Pictured.class, name = "photograph"),
        @JsonSubTypes.Type(value = Means.Told.class, name = "testimony"),
        @JsonSubTypes.Type(value = Means.Published.class, name = "later literature"),
        @JsonSubTypes.Type(value = Means.Rumoured.class, name = "hearsay")
    })
    private interface AllMeans {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "test")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = WeightTest.class, name = "weight and two thicknesses"),
        @JsonSubTypes.Type(value = PackingTest.class, name = "fresh and packed"),
        @JsonSubTypes.Type(value = PadTest.class, name = "pad on a ring"),
        @JsonSubTypes.Type(value = PadLoadsTest.class, name = "pad on a ring, weights"),
        @JsonSubTypes.Type(value = BounceTest.class, name = "bounces counted")
    })
    private interface BenchTests {}

    private static final class ByWord extends JacksonAnnotationIntrospector {
        @Override
        public String[] findEnumValues(MapperConfig<?> config, AnnotatedClass type, Enum<?>[] values, String[] names) {
            for (int i = 0; i < values.length; i++) {
                names[i] = values[i] instanceof Word word ? word.word() : values[i].name();
            }
            return names;
        }
    }

    /** {@code thicknessMm} of a record is {@code thickness_mm} on paper. */
    private static final class UnitInName extends PropertyNamingStrategy {
        private static final Map<String, String> UNITS =
                Map.of("Mm2", "_mm2", "G", "_g", "Mm", "_mm", "Cents", "_cents", "DegC", "_degC", "Hz", "_Hz");

        @Override
        public String nameForField(MapperConfig<?> config, AnnotatedField field, String name) {
            return withUnit(name);
        }

        @Override
        public String nameForConstructorParameter(MapperConfig<?> config, AnnotatedParameter parameter, String name) {
            return withUnit(name);
        }

        private static String withUnit(String name) {
            for (Map.Entry<String, String> unit : UNITS.entrySet()) {
                if (name.endsWith(unit.getKey())) {
                    return name.substring(0, name.length() - unit.getKey().length()) + unit.getValue();
                }
            }
            return name;
        }
    }

    private static final class StreamAsText extends ValueSerializer<StreamName> {
        @Override
        public void serialize(StreamName stream, JsonGenerator out, SerializationContext context) {
            out.writeString(stream.text());
        }
    }

    private static final class StreamFromText extends ValueDeserializer<StreamName> {
        @Override
        public StreamName deserialize(JsonParser in, DeserializationContext context) {
            String text = in.getString();
            try {
                return new StreamName(text);
            } catch (IllegalArgumentException e) {
                throw context.weirdStringException(text, StreamName.class, String.valueOf(e.getMessage()));
            }
        }
    }

    private static final class EdtfAsText extends ValueSerializer<Edtf> {
        @Override
        public void serialize(Edtf date, JsonGenerator out, SerializationContext context) {
            out.writeString(date.text());
        }
    }

    private static final class EdtfFromText extends ValueDeserializer<Edtf> {
        @Override
        public Edtf deserialize(JsonParser in, DeserializationContext context) {
            String text = in.getString();
            try {
                return Edtf.parse(text);
            } catch (IllegalArgumentException e) {
                throw context.weirdStringException(text, Edtf.class, e.getMessage());
            }
        }
    }
}
