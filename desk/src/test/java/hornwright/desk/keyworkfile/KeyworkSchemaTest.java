package hornwright.desk.keyworkfile;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Articulation;
import hornwright.bench.horn.BellKeySide;
import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Direction;
import hornwright.bench.horn.Face;
import hornwright.bench.horn.Form;
import hornwright.bench.horn.HornPart;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.OctaveLevers;
import hornwright.bench.horn.PadCentreKind;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.RimKind;
import hornwright.bench.horn.RodKind;
import hornwright.bench.horn.Side;
import hornwright.bench.horn.StopKind;
import hornwright.bench.horn.TouchKind;
import hornwright.bench.horn.Voice;
import hornwright.bench.horn.Word;
import hornwright.desk.house.PublishedSchema;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The published schema of keywork files says what the reader says. */
class KeyworkSchemaTest {
    static final List<String> SHIPPED = KeyworkFile.SHIPPED;
    private static final PublishedSchema SCHEMA = PublishedSchema.of("keywork");

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void every_shipped_keywork_is_valid_as_written_by_hand_and_by_the_program(String name) {
        assertThat(SCHEMA.against(KeyworkFile.text(name))).isEmpty();
        assertThat(SCHEMA.against(KeyworkFile.write(KeyworkFile.shipped(name).orElseThrow())))
                .isEmpty();
    }

    @Test
    void every_list_of_words_is_that_of_the_program() {
        Map<String, Word[]> words = Map.ofEntries(
                Map.entry("voice", Voice.values()),
                Map.entry("bellKeySide", BellKeySide.values()),
                Map.entry("pieces", Pieces.values()),
                Map.entry("articulation", Articulation.values()),
                Map.entry("octaveLevers", OctaveLevers.values()),
                Map.entry("hornPart", HornPart.values()),
                Map.entry("rimKind", RimKind.values()),
                Map.entry("rest", Rest.values()),
                Map.entry("padCentreKind", PadCentreKind.values()),
                Map.entry("face", Face.values()),
                Map.entry("side", Side.values()),
                Map.entry("form", Form.values()),
                Map.entry("cut", Cut.values()),
                Map.entry("stopKind", StopKind.values()),
                Map.entry("touchKind", TouchKind.values()),
                Map.entry("keyGroup", KeyGroup.values()),
                Map.entry("direction", Direction.values()),
                Map.entry("linkKind", LinkKind.values()),
                Map.entry("rodKind", RodKind.values()));
        words.forEach((name, values) -> assertThat(SCHEMA.words(name))
                .as(name)
                .containsExactlyElementsOf(Stream.of(values).map(Word::word).toList()));
        String ids = SCHEMA.tree().at("/$defs/place/properties/id/pattern").asString();
        assertThat(ids)
                .startsWith("^("
                        + String.join(
                                "|",
                                Stream.of(PlaceKind.values()).map(Word::word).toList()) + ")");
    }

    @Test
    void what_the_reader_refuses_for_its_shape_the_schema_refuses_too() {
        String alto = KeyworkFile.text("tarrant-loe-alto");
        List<String> damaged = List.of(
                alto.replace("\"version\": 1", "\"version\": 9"),
                alto.replace("\"id\": \"thumb-rest\"", "\"id\": \"thumb.rest\""),
                alto.replace("\"rest\": \"open\"", "\"rest\": \"ajar\""),
                alto.replace("\"diameter_mm\": 18.5", "\"diameter_mm\": -18.5"),
                alto.replace("\"wall_mm\": 0.6", "\"wall_in\": 0.6"),
                alto.replace("\"wall_mm\": 0.6, ", ""));
        assertThat(damaged).allSatisfy(text -> {
            assertThat(text).isNotEqualTo(alto);
            assertThat(SCHEMA.against(text)).isNotEmpty();
        });
    }
}
