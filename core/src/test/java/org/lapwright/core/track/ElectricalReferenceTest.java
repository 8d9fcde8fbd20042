package org.lapwright.core.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.PhysicsFiles;
import org.lapwright.core.track.rails.Conductor;

/** Resistance of rails and wires. */
class ElectricalReferenceTest {
    private static final JsonNode EXAMPLES = PhysicsFiles.json("electrical_examples.json");

    /** Constructed: a closed ring of two steel rails fed at one place; each rail is two halves in parallel. */
    @Test
    void aRingFedAtOnePlace() {
        JsonNode half = PhysicsFiles.entry(EXAMPLES, "EL2");
        JsonNode input = half.get("inputs");
        double lap = input.get("lap_m").asDouble();
        Conductor rail =
                new Conductor(input.get("rho").asDouble(), input.get("area_mm2").asDouble());
        JsonNode expected = half.get("expected");
        assertClose(rail.ohmPerM(), expected.get("rail_ohm_per_m").asDouble(), 3e-6);
        Power power = new Power(12, 0, rail.pairOhmPerM(), List.of(0.0), OptionalDouble.empty());
        assertClose(
                power.railOhmPerM() * power.feedLengthM(lap / 2, lap),
                expected.get("loop_ohm_at_half_lap").asDouble(),
                1e-6);
        JsonNode places = PhysicsFiles.entry(EXAMPLES, "EL3");
        for (int i = 0; i < places.get("inputs").get("s").size(); i++) {
            double s = places.get("inputs").get("s").get(i).asDouble();
            double ohm = places.get("expected_ohm").get(i).asDouble();
            assertClose(power.railOhmPerM() * power.feedLengthM(s, lap), ohm, 1e-6);
            // The same from the other side, and from a feed half a lap on.
            assertClose(power.railOhmPerM() * power.feedLengthM(lap - s, lap), ohm, 1e-6);
            Power opposite = new Power(12, 0, rail.pairOhmPerM(), List.of(0.5), OptionalDouble.empty());
            assertClose(opposite.railOhmPerM() * opposite.feedLengthM((s + lap / 2) % lap, lap), ohm, 1e-6);
        }
    }

    /** Voltage drop of 350 ft of paired 18 AWG at 1 A, worked example one of nebulan.net/solar/voltagedrop.asp: 4.445 V. */
    @Test
    void aPairOfWires() {
        double drop = Conductor.copperOfGauge(18).pairOhmPerM() * 350 * 0.3048;
        // The example reckons with a rounded 1.27 V for 100 ft.
        assertClose(drop, PhysicsFiles.entry(EXAMPLES, "EL1").get("expected_V").asDouble(), 0.006);
    }

    /** Rule of the American wire gauge, 0.127 · 92^((36 − n)/39) mm (wp.1728.org, daycounter.com). */
    @Test
    void diametersOfTheWireGauge() {
        JsonNode rule = PhysicsFiles.entry(EXAMPLES, "EL4");
        for (int i = 0; i < rule.get("inputs").get("n").size(); i++) {
            assertClose(
                    Conductor.gaugeDiameterMm(rule.get("inputs").get("n").get(i).asInt()),
                    rule.get("expected_mm").get(i).asDouble(),
                    1e-4);
        }
        double three = Conductor.copperOfGauge(21).ohmPerM()
                / Conductor.copperOfGauge(18).ohmPerM();
        double ten = Conductor.copperOfGauge(28).ohmPerM()
                / Conductor.copperOfGauge(18).ohmPerM();
        assertThat(three).as("three gauges double the resistance").isCloseTo(2, within(0.01));
        assertThat(ten).as("ten gauges make it tenfold").isCloseTo(10, within(0.2));
    }

    /**
     * Copper wires: solid by gauge (tables of wp.1728.org and daycounter.com) within 1 %; the greatest resistance that
     * IEC 60228 allows a wire of its nominal section lies up to 20 % above that of pure copper, never below.
     */
    @Test
    void copperWires() {
        for (Map<String, String> row : PhysicsFiles.rows("wire_resistance.csv")) {
            double tabled = PhysicsFiles.number(row, "ohm_per_km_20C") / 1000;
            if (PhysicsFiles.text(row, "size").endsWith("AWG")) {
                int gauge = Integer.parseInt(PhysicsFiles.text(row, "size").split(" ")[0]);
                assertClose(Conductor.copperOfGauge(gauge).ohmPerM(), tabled, 0.01);
            } else {
                double ours = new Conductor(Conductor.COPPER_OHM_M, PhysicsFiles.number(row, "area_mm2")).ohmPerM();
                assertThat(ours).as(row.toString()).isBetween(tabled / 1.2, tabled);
            }
        }
    }

    /** Tables of preproom.org and kutayzorlu.com. */
    @Test
    void resistivities() {
        assertClose(Conductor.COPPER_OHM_M, tabled("annealed copper (IACS)"), 0.003);
        assertClose(Conductor.STEEL_OHM_M, tabled("carbon steel (1010)"), 1e-9);
    }

    @Test
    void whatIsNoWireIsRefused() {
        assertThatThrownBy(() -> Conductor.copperOfGauge(41)).hasMessage("wire gauge is 41; it must be from 0 to 40");
        assertThatThrownBy(() -> new Conductor(1e-7, 0)).hasMessageContaining("cross-section is 0 mm²");
    }

    private static double tabled(String material) {
        return PhysicsFiles.number(PhysicsFiles.row("resistivity.csv", material), "rho_ohm_m_20C");
    }

    private static void assertClose(double found, double expected, double share) {
        assertThat(found).isCloseTo(expected, within(share * expected));
    }
}
