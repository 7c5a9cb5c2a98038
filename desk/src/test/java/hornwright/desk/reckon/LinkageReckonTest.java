package hornwright.desk.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class LinkageReckonTest {
    private static final Engine LINKAGE = new LinkageReckon();

    private static final String STACK = """
            {'keys': [{'id': 'd'}, {'id': 'fs', 'flex_rad_per_Nmm': 3e-5}],
             'cups': [{'id': 'cup.d', 'key': 'd', 'arm_mm': 34, 'stiffness_N_per_mm': 18, 'offset_mm': 0.02},
                      {'id': 'cup.fs', 'key': 'fs', 'arm_mm': 31, 'stiffness_N_per_mm': 15}],
             'stops': [{'id': 'foot.d', 'key': 'd', 'arm_mm': 14, 'clearance_mm': 5.6, 'thickness_mm': 3.2,
                        'stiffness_N_per_mm': 74},
                       {'id': 'foot.fs', 'key': 'fs', 'arm_mm': 16, 'clearance_mm': 5.3, 'thickness_mm': 3.4,
                        'stiffness_N_per_mm': 74, 'limits': 'opening'}],
             'links': [{'id': 'd>fs', 'driver': 'd', 'driverArm_mm': 14, 'follower': 'fs', 'followerArm_mm': 16.9,
                        'space_mm': 0.8, 'thickness_mm': 0.7, 'stiffness_N_per_mm': 625, 'sense': 1}],
             'springs': [{'key': 'd', 'torque_Nmm': 4.9, 'rate_Nmm_per_rad': 4.9, 'towards': 'open'},
                         {'key': 'fs', 'torque_Nmm': 6, 'rate_Nmm_per_rad': 6, 'towards': 'open'}],
             'press': [{'key': 'd', 'force_N': 0.6, 'arm_mm': 35}],
             'sets': [{'press': 'd', 'closes': ['cup.d', 'cup.fs'], 'force_N': 0.8, 'arm_mm': 35}],
             'spread': {'thickness_mm': 0.05, 'arm_mm': 0.1, 'offset_mm': 0.03, 'draws': 500, 'seed': 1, 'closed_um': 5}}
            """;

    private static String with(String from, String to) {
        assertThat(STACK).contains(from);
        return STACK.replace(from, to);
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::stringValue)
                .toList();
    }

    @Test
    void millimetres_and_newtons_come_back_as_millimetres_and_newtons() {
        String lever = """
                {'keys': [{'id': 'k'}], 'press': [{'key': 'k', 'force_N': 0.5, 'arm_mm': 40}],
                 'cups': [{'id': 'one', 'key': 'k', 'arm_mm': 30, 'stiffness_N_per_mm': 2},
                          {'id': 'two', 'key': 'k', 'arm_mm': 20, 'stiffness_N_per_mm': 5, 'offset_mm': 0.1}]}
                """;
        JsonNode out = Asked.out(LINKAGE, lever);
        assertThat(out.at("/keys/0/rotation_rad").doubleValue()).isCloseTo(-0.15 / 19, within(1e-12));
        assertThat(out.at("/cups/0/force_N").doubleValue()).isCloseTo(9 / 19.0, within(1e-9));
        assertThat(out.at("/cups/1/force_N").doubleValue()).isCloseTo(5.5 / 19, within(1e-9));
        assertThat(out.at("/cups/1/gap_mm").doubleValue()).isCloseTo(-1.1 / 19, within(1e-9));
        assertThat(out.at("/heights/1/height_mm").doubleValue()).isCloseTo(0.1, within(1e-12));
        assertThat(out.get("yield").isNull()).isTrue();
    }

    @Test
    void the_set_thickness_is_that_worked_by_hand() {
        JsonNode out = Asked.out(LINKAGE, STACK);
        // d closes at -0.02/34: 0.8 - 14 × 0.02/34
        double thickness = 0.8 - 14 * 0.02 / 34;
        assertThat(out.at("/set/0/link").stringValue()).isEqualTo("d>fs");
        assertThat(out.at("/set/0/thickness_mm").doubleValue()).isCloseTo(thickness, within(1e-12));
        assertThat(out.at("/set/0/change_mm").doubleValue()).isCloseTo(thickness - 0.7, within(1e-12));
    }

    @Test
    void every_field_of_the_answer_is_there_in_its_order() {
        JsonNode out = Asked.out(LINKAGE, STACK);
        assertThat(out.propertyNames())
                .containsExactly(
                        "keys",
                        "cups",
                        "stops",
                        "links",
                        "heights",
                        "set",
                        "sensitivity",
                        "order",
                        "circles",
                        "conflicts",
                        "yield");
        assertThat(out.get("sensitivity")).hasSize(2);
        assertThat(out.at("/sensitivity/1").propertyNames()).containsExactly("link", "cup", "gap_um_per_0.1mm");
        assertThat(texts(out.get("order"))).containsExactly("d>fs");
        assertThat(out.get("circles")).isEmpty();
        assertThat(out.get("yield").propertyNames()).containsExactly("all_closed", "worst_cup", "gap_p95_um");
        assertThat(out.at("/yield/all_closed").doubleValue()).isBetween(0.2, 1.0);
    }

    @Test
    void a_thinner_contact_than_needed_leaves_the_driven_cup_open() {
        JsonNode out = Asked.out(LINKAGE, STACK);
        assertThat(out.at("/cups/0/gap_mm").doubleValue()).isNegative();
        assertThat(out.at("/cups/1/gap_mm").doubleValue()).isPositive();
        assertThat(out.at("/sensitivity/1/gap_um_per_0.1mm").doubleValue()).isNegative();
    }

    @Test
    void sets_that_cannot_both_be_had_are_named_and_the_exit_is_short() {
        String two = STACK.replace(
                        "'stiffness_N_per_mm': 15}]",
                        "'stiffness_N_per_mm': 15}, {'id': 'cup.2', 'key': 'fs', 'arm_mm': 20,"
                                + " 'stiffness_N_per_mm': 15, 'offset_mm': 0.05}]")
                .replace(
                        "'force_N': 0.8, 'arm_mm': 35}]",
                        "'force_N': 0.8, 'arm_mm': 35},"
                                + " {'press': 'd', 'closes': ['cup.2'], 'force_N': 0.8, 'arm_mm': 35}]");
        Answer answer = Asked.answer(LINKAGE, two);
        assertThat(answer.shortfall()).contains("d>fs");
        JsonNode conflict = answer.out().node().at("/conflicts/0");
        assertThat(conflict.get("link").stringValue()).isEqualTo("d>fs");
        assertThat(conflict.get("most_mm").doubleValue()
                        - conflict.get("least_mm").doubleValue())
                .isCloseTo(16.9 * 0.05 / 20, within(1e-9));
        assertThat(Asked.answer(LINKAGE, STACK).shortfall()).isNull();
    }

    @Test
    void a_thickness_below_nothing_cannot_be_had() {
        Answer answer = Asked.answer(LINKAGE, with("'offset_mm': 0.02", "'offset_mm': 2.5"));
        assertThat(answer.shortfall()).contains("d>fs").contains("space");
    }

    @Test
    void a_load_that_nothing_balances_is_a_fault_at_its_key() {
        String thrown = "{'keys': [{'id': 'a'}, {'id': 'b'}], 'springs':"
                + " [{'key': 'b', 'torque_Nmm': 5, 'rate_Nmm_per_rad': 0, 'towards': 'open'}]}";
        assertThat(Asked.faults(LINKAGE, thrown)).containsExactly("/keys/1");
        String pressed = "{'keys': [{'id': 'a'}, {'id': 'b'}], 'press': [{'key': 'a', 'force_N': 1, 'arm_mm': 30},"
                + " {'key': 'b', 'force_N': 1, 'arm_mm': -30}]}";
        assertThat(Asked.faults(LINKAGE, pressed)).containsExactly("/keys/0", "/keys/1");
    }

    @Test
    void a_spent_spring_and_an_idle_key_are_no_faults() {
        String idle = "{'keys': [{'id': 'a'}, {'id': 'b'}], 'springs':"
                + " [{'key': 'b', 'torque_Nmm': 5, 'rate_Nmm_per_rad': 20, 'towards': 'open'}]}";
        JsonNode out = Asked.out(LINKAGE, idle);
        assertThat(out.at("/keys/0/rotation_rad").doubleValue()).isZero();
        assertThat(out.at("/keys/1/rotation_rad").doubleValue()).isCloseTo(0.25, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            'id': 'fs'                | 'id': 'd'              | /keys/1/id
            'id': 'cup.fs'            | 'id': 'cup.d'          | /cups/1/id
            'id': 'foot.fs'           | 'id': 'foot.d'         | /stops/1/id
            'key': 'd', 'arm_mm': 34  | 'key': 'x', 'arm_mm': 34 | /cups/0/key
            'driver': 'd'             | 'driver': 'x'          | /links/0/driver
            'follower': 'fs'          | 'follower': 'd'        | /links/0/follower
            'press': 'd'              | 'press': 'x'           | /sets/0/press
            'cup.d', 'cup.fs']        | 'cup.d', 'cup.x']      | /sets/0/closes/1
            'cup.d', 'cup.fs']        | 'cup.d', 'cup.d']      | /sets/0/closes/1
            ['cup.d', 'cup.fs']       | []                     | /sets/0/closes
            'sense': 1                | 'sense': 2             | /links/0/sense
            'sense': 1                | 'sense': null          | /links/0/sense
            'limits': 'opening'       | 'limits': 'open'       | /stops/1/limits
            'space_mm': 0.8           | 'space_mm': -0.8       | /links/0/space_mm
            'driverArm_mm': 14        | 'driverArm_mm': 0      | /links/0/driverArm_mm
            'force_N': 0.6            | 'force_mN': 600        | /press/0/force_N
            'draws': 500              | 'draws': 0             | /spread/draws
            'draws': 500              | 'draws': 20000000      | /spread/draws
            'seed': 1                 | 'seed': 1.5            | /spread/seed
            'flex_rad_per_Nmm': 3e-5  | 'flex_rad_per_Nmm': -1 | /keys/1/flex_rad_per_Nmm
            """)
    void each_fault_is_told_at_its_place(String from, String to, String pointer) {
        assertThat(Asked.faults(LINKAGE, with(from, to))).contains(pointer);
    }

    @Test
    void a_missing_key_is_told_once_as_missing() {
        assertThat(Asked.faults(LINKAGE, with("'key': 'd', 'arm_mm': 34", "'arm_mm': 34")))
                .containsExactly("/cups/0/key");
    }

    @Test
    void all_faults_are_told_at_once() {
        String many = with("'space_mm': 0.8", "'space_mm': -1").replace("'draws': 500", "'draws': 1.5");
        assertThat(Asked.faults(LINKAGE, many)).containsExactly("/links/0/space_mm", "/spread/draws");
    }
}
