package org.leafward.climate;

import org.junit.jupiter.api.Test;
import org.leafward.climate.Microclimate.Lie;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/**
 * The amounts are common practice, from memory; no published table stands behind them.
 */
class MicroclimateTests {

	@Test
	void featuresAddUp() {
		assertThat(Microclimate.NONE.minimumOffset()).isZero();
		assertThat(Microclimate.NONE.effects()).isEmpty();
		assertThat(new Microclimate(Lie.HOLLOW, false, false, null).minimumOffset()).isEqualTo(-2);
		assertThat(new Microclimate(Lie.SLOPE, false, false, null).minimumOffset()).isEqualTo(1);
		assertThat(new Microclimate(Lie.HILLTOP, false, false, null).minimumOffset()).isZero();
		assertThat(new Microclimate(Lie.HOLLOW, true, true, null).minimumOffset()).isZero();
		assertThat(new Microclimate(Lie.HOLLOW, true, true, null).effects())
			.allSatisfy((effect) -> assertThat(effect.source()).contains("from memory"));
	}

	@Test
	void aThermometerReplacesTheEstimates() {
		Microclimate measured = new Microclimate(Lie.HOLLOW, true, true, -1.2);
		assertThat(measured.minimumOffset()).isEqualTo(-1.2);
		assertThat(measured.effects()).singleElement().satisfies((effect) -> assertThat(effect.measured()).isTrue());
		assertThat(new Microclimate(Lie.HOLLOW, false, false, 0.0).minimumOffset()).isZero();
	}

	@Test
	void offsetsAreBounded() {
		for (double wrong : new double[] { -10.01, 10.01, Double.NaN, Double.POSITIVE_INFINITY }) {
			assertThatThrownBy(() -> new Microclimate(Lie.FLAT, false, false, wrong)).isInstanceOf(BadInput.class)
				.hasMessageContaining("outside -10 to 10");
		}
		assertThat(new Microclimate(Lie.FLAT, false, false, 10.0).minimumOffset()).isEqualTo(10);
	}

}
