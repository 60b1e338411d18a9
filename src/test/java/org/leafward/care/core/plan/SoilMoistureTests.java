package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.WaterView;
import org.leafward.measure.Explanation;
import org.leafward.register.SoilTexture;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * FAO-56, chapter 8: plants feel drought when the depletion passes the readily available
 * water, 30 mm here; below half of it the soil counts as moist by our choice.
 */
class SoilMoistureTests {

	private static final LocalDate TODAY = LocalDate.of(2026, 7, 10);

	@ParameterizedTest
	@CsvSource({
			// depletion, days without a measurement, dry, moist
			"10,0,false,true", "20,0,false,false", "31,0,true,false",
			// rain may have gone unseen: moist stays moist, the rest is open
			"10,2,false,true", "20,2,false,", "31,2,,", "10,8,," })
	void tellsDryFromMoistAndNeitherFromUnknown(double depletion, int gaps, Boolean dry, Boolean moist) {
		SoilMoisture soil = new SoilMoisture(Optional.of(view(depletion, gaps)));
		assertThat(soil.dry().holds()).isEqualTo(dry);
		assertThat(soil.moist().holds()).isEqualTo(moist);
	}

	@Test
	void knowsNothingWithoutStations() {
		SoilMoisture soil = new SoilMoisture(Optional.empty());
		assertThat(soil.dry().holds()).isNull();
		assertThat(soil.moist().holds()).isNull();
		assertThat(soil.moist().explanation().value()).isEqualTo("not known");
	}

	@Test
	void whatIsWateredTodayCountsToo() {
		assertThat(SoilMoisture.bed(SoilTexture.SAND, TODAY, Map.of(TODAY, 10.0, TODAY.minusDays(1), 5.0)).waterings())
			.isEqualTo(Map.of(TODAY.minusDays(1), 15.0));
	}

	private static WaterView view(double depletion, int gaps) {
		return new WaterView(60, IntStream.rangeClosed(1, SoilMoisture.DAYS)
			.mapToObj((day) -> new WaterView.Day(TODAY.minusDays(SoilMoisture.DAYS + 1L - day), 0, 0, 3, 3, 0,
					depletion, 30, 1, depletion > 30, false, depletion <= 15, day, day <= SoilMoisture.DAYS - gaps))
			.toList(), Explanation.of("Water", "so much"));
	}

}
