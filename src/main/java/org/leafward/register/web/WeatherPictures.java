package org.leafward.register.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.leafward.climate.HeatSoFar;
import org.leafward.climate.TemperatureSeason;
import org.leafward.climate.WaterView;
import org.leafward.pages.DegreeDayCurve;
import org.leafward.pages.TemperatureBand;
import org.leafward.pages.WaterBalancePicture;

/** Hands the weather of a site to the pictures. */
final class WeatherPictures {

	private WeatherPictures() {
	}

	static DegreeDayCurve heat(HeatSoFar heat, LocalDate today) {
		return new DegreeDayCurve("degree-days", heat.base().words(), today, sums(heat.observed()),
				heat.normal()
					.stream()
					.map((one) -> new DegreeDayCurve.Band(one.day(), one.low(), one.middle(), one.high()))
					.toList(),
				sums(heat.projected()),
				heat.goals()
					.stream()
					.filter((goal) -> goal.date() != null)
					.map((goal) -> new DegreeDayCurve.Goal(goal.sum(), Objects.requireNonNull(goal.date())))
					.toList());
	}

	private static List<DegreeDayCurve.Sum> sums(List<HeatSoFar.Sum> sums) {
		return sums.stream().map((one) -> new DegreeDayCurve.Sum(one.day(), one.sum())).toList();
	}

	static TemperatureBand temperatures(TemperatureSeason season, LocalDate today) {
		return new TemperatureBand("temperatures", today, season.days()
			.stream()
			.map((day) -> new TemperatureBand.Day(day.date(), day.low(), day.high(), day.normalLow(), day.normalHigh()))
			.toList());
	}

	static WaterBalancePicture water(WaterView water) {
		return new WaterBalancePicture("water", water.availableMillimetres(),
				water.days()
					.stream()
					.map((day) -> new WaterBalancePicture.Day(day.date(), day.rain(), day.watering(), day.loss(),
							day.depletion(), day.readily(), day.stressed(), day.due()))
					.toList());
	}

}
